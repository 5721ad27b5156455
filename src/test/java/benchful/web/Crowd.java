package benchful.web;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;

/** Several people who do the same at the same moment. */
public final class Crowd {
    private Crowd() {}

    /**
     * @param ready one after the other, by their numbers from 0
     * @param act what all then do at once
     * @return the people afterwards, in the order of their numbers
     */
    public static List<Visitor> together(int people, IntFunction<Visitor> ready, UnaryOperator<Visitor> act) throws Exception {
        List<Callable<Visitor>> acts = new ArrayList<>();
        for (int i = 0; i < people; i++) {
            Visitor person = ready.apply(i);
            acts.add(() -> act.apply(person));
        }
        ExecutorService room = Executors.newFixedThreadPool(people);
        try {
            List<Visitor> done = new ArrayList<>();
            for (Future<Visitor> one : room.invokeAll(acts)) {
                done.add(one.get());
            }
            return done;
        } finally {
            room.shutdown();
        }
    }
}
