package benchful.plans;

import benchful.classes.ClassSetup;
import benchful.core.needs.Take;
import java.util.Map;

/** One kit to be made: for whom, and in which size. */
record Seat(Take.Taker taker, String title, String name, String seat, String size, Map<String, String> choices) {
    static Seat known(ClassSetup.Student student, String size) {
        return new Seat(Take.Taker.STUDENT, student.name(), student.name(), student.seat(), size, student.choices());
    }

    static Seat of(Take.Taker taker, String title, String size) {
        return new Seat(taker, title, null, null, size, Map.of());
    }
}
