package benchful.core.lesson.risk;

import benchful.core.lesson.risk.Script.Bench;
import benchful.core.lesson.risk.Script.Part;
import java.util.Arrays;

/**
 * Students working through make steps side by side. Each student has one next event; the soonest of all is played, until as many as
 * must have finished every step. Tools and help are given first come, first served; whoever stays beside a student answers nobody else
 * meanwhile, and who calls is answered before somebody goes on to the next student's side. What is shown to one group begins when as
 * many of it as must have finished what comes before, and cuts off the rest; it takes one of those who help, before anybody who calls,
 * and only one group is shown something at a time. Cost O(log students) an event.
 */
final class BenchRun {

    private static final byte ARRIVE = 0;
    private static final byte CALL = 1;
    private static final byte HELPED = 2;
    private static final byte FINISH = 3;
    private static final byte WAIT_FOR_GROUP = 4;
    private static final byte SHOW = 5;
    private static final byte SHOWN = 6;
    /** Of clock and working time [s]. */
    private static final double ROUNDING = 1e-6;

    private final Script script;
    private final Replication lesson;
    private final Part[] parts;
    private final int students;
    private final Soonest soonest;
    private final byte[] event;
    private final int[] at;
    private final int[][] list;
    private final double[] left;
    private final double[] since;
    private final long[] state;
    private final int[] freeTools;
    private final Line forTools;
    private final Line forHelp;
    private int freePeople;
    private final int[] finished;
    private final boolean attended;
    private final boolean shows;
    /** By group, the place in its list of what it is shown next. */
    private final int[] nextShow;
    private final Line forTutor;
    private boolean showing;
    private int open;
    private double end;

    BenchRun(Script script, Replication lesson) {
        this.script = script;
        this.lesson = lesson;
        this.parts = script.parts().toArray(Part[]::new);
        this.students = script.students().length;
        soonest = new Soonest(students);
        event = new byte[students];
        at = new int[students];
        list = new int[students][];
        left = new double[students];
        since = new double[students];
        state = new long[students];
        freeTools = new int[script.tools().length];
        forTools = new Line(students);
        forHelp = new Line(students);
        finished = new int[parts.length];
        attended = script.parts().stream().anyMatch(Part::beside);
        shows = script.stages().stream().anyMatch(stage -> stage instanceof Bench bench && Arrays.stream(bench.parts()).anyMatch(this::isShow));
        nextShow = new int[Arrays.stream(script.students()).max().orElse(0) + 1];
        forTutor = new Line(students);
    }

    private boolean isShow(int part) {
        return parts[part].pace() == null;
    }

    /** Plays a bench from a clock time on; {@code own} holds the working time at which each student is free, and is moved on. */
    double play(Bench bench, double[] own, double from) {
        double begin = script.clock().toWorking(from);
        prepare(bench, begin);
        for (int s = 0; s < students; s++) {
            lose(bench.cause(), s, begin - own[s]);
            enter(s, begin, own);
        }
        for (int group = 1; shows && group < nextShow.length; group++) {
            gatherIfDone(group, begin, own);
        }
        while (open > 0) {
            int s = soonest.student();
            play(s, soonest.time(s), own);
        }
        close(bench, own);
        return script.clock().toClock(end);
    }

    private void prepare(Bench bench, double begin) {
        System.arraycopy(script.tools(), 0, freeTools, 0, freeTools.length);
        forTools.clear();
        forHelp.clear();
        forTutor.clear();
        showing = false;
        freePeople = script.helpers();
        open = bench.parts().length;
        end = begin;
        for (int part : bench.parts()) {
            finished[part] = 0;
            if (!script.limits().isEmpty()) {
                Arrays.fill(lesson.begun[part], Double.NaN);
            }
            lesson.start[part] = Double.MAX_VALUE;
        }
        for (int s = 0; s < students; s++) {
            at[s] = 0;
            list[s] = bench.lists()[script.students()[s] - 1];
        }
        for (int group = 1; shows && group < nextShow.length; group++) {
            nextShow[group] = showFrom(bench.lists()[group - 1], 0);
        }
    }

    /** The place of the first show from a place on; the end of the list where there is none. */
    private int showFrom(int[] list, int from) {
        int place = from;
        while (place < list.length && !isShow(list[place])) {
            place++;
        }
        return place;
    }

    private void lose(int cause, int student, double time) {
        if (cause >= 0 && time > 0) {
            lesson.lost[cause][student] += time;
        }
    }

    /** Is free for the next step, if there is one and the group has moved on. */
    private void enter(int s, double time, double[] own) {
        own[s] = time;
        if (at[s] == list[s].length || isHeldWithGroup(s) || shows && isShow(list[s][at[s]])) {
            event[s] = WAIT_FOR_GROUP;
            soonest.never(s);
        } else {
            goTo(s, time);
        }
    }

    /** What ages is not kept waiting for the others. */
    private boolean isHeldWithGroup(int s) {
        return script.together() && at[s] > 0 && !parts[list[s][at[s]]].tied() && !hasMovedOn(list[s][at[s] - 1]);
    }

    private boolean hasMovedOn(int part) {
        return finished[part] >= Math.max(1, parts[part].mustFinish());
    }

    private void goTo(int s, double time) {
        Part part = parts[list[s][at[s]]];
        double ready = script.clock().toWorking(lesson.ready(part, s));
        if (part.length() > 0) {
            ready = untilItFits(part.length(), Math.max(time, ready));
        }
        if (ready > time) {
            lose(lesson.cause(part, s), s, ready - time);
        } else if (part.scarcest() < 0) {
            begin(s, time);
            return;
        }
        event[s] = ARRIVE;
        soonest.set(s, Math.max(time, ready));
    }

    /** What may not pause is not begun shortly before a break; judged by its planned length. */
    private double untilItFits(double length, double time) {
        return script.clock().toWorking(script.clock().wholeFrom(script.clock().toClockOnward(time), length));
    }

    private void play(int s, double time, double[] own) {
        switch (event[s]) {
            case ARRIVE -> arrive(s, time);
            case CALL -> call(s, time);
            case HELPED -> helped(s, time);
            case SHOW -> show(s, time);
            case SHOWN -> shown(s, time, own);
            default -> finish(s, time, own);
        }
    }

    private void arrive(int s, double time) {
        if (takesTools(s)) {
            begin(s, time);
        } else {
            since[s] = time;
            forTools.add(s);
            soonest.never(s);
        }
    }

    private boolean takesTools(int s) {
        Part part = parts[list[s][at[s]]];
        int[] units = part.units();
        if (part.beside() && freePeople == 0) {
            return false;
        }
        for (int tool = 0; tool < units.length; tool++) {
            if (units[tool] > freeTools[tool]) {
                return false;
            }
        }
        for (int tool = 0; tool < units.length; tool++) {
            freeTools[tool] -= units[tool];
        }
        freePeople -= part.beside() ? 1 : 0;
        return true;
    }

    private void begin(int s, double time) {
        Part part = parts[list[s][at[s]]];
        state[s] = lesson.stepState(s, part);
        left[s] = lesson.work(s, part, state[s]);
        lesson.start[part.index()] = Math.min(lesson.start[part.index()], time);
        if (!script.limits().isEmpty()) {
            lesson.begun[part.index()][s] = script.clock().toClockOnward(time);
        }
        goOn(s, time, part);
    }

    private double draw(int s) {
        state[s] = Draws.mix(state[s], 1);
        return Draws.exponential(state[s]);
    }

    /** Works on until the next call or to the end. */
    private void goOn(int s, double time, Part part) {
        double untilCall = part.callRate() > 0 ? draw(s) / part.callRate() : Double.POSITIVE_INFINITY;
        boolean calls = untilCall < left[s];
        event[s] = calls ? CALL : FINISH;
        double work = calls ? untilCall : left[s];
        left[s] -= work;
        soonest.set(s, time + work);
    }

    private void call(int s, double time) {
        if (freePeople > 0) {
            help(s, time);
        } else {
            since[s] = time;
            forHelp.add(s);
            soonest.never(s);
        }
    }

    /** The piece grows while the student is helped. */
    private void help(int s, double time) {
        freePeople--;
        double length = draw(s) * parts[list[s][at[s]]].answer();
        left[s] = Math.max(0, left[s] - length);
        event[s] = HELPED;
        soonest.set(s, time + length);
    }

    private void helped(int s, double time) {
        goOn(s, time, parts[list[s][at[s]]]);
        free(time);
        if (attended) {
            handOn(time);
        }
    }

    /** Whoever helped, showed or stayed beside a student goes to the group that waits to be shown something, or else answers the next call. */
    private void free(double time) {
        freePeople++;
        while (!showing && !forTutor.isEmpty()) {
            showOrWaitForBreak(nextForTutor(), time);
        }
        if (freePeople > 0 && !forHelp.isEmpty()) {
            int next = forHelp.take(0);
            lose(script.helpCause(), next, time - since[next]);
            help(next, time);
        }
    }

    private void finish(int s, double time, double[] own) {
        Part part = parts[list[s][at[s]]];
        lesson.done[part.index()][s] = script.clock().toClock(time);
        at[s]++;
        if (++finished[part.index()] == part.mustFinish()) {
            lesson.end[part.index()] = lesson.done[part.index()][s];
            open--;
            end = time;
            own[s] = time;
            moveOn(part, time, own);
        }
        enter(s, time, own);
        if (part.scarcest() >= 0) {
            giveBack(part, time);
            handOn(time);
        }
        if (shows) {
            gatherIfDone(script.students()[s], time, own);
        }
    }

    /** A group gathers for what it is shown next when it has moved on from all before. */
    private void gatherIfDone(int group, double time, double[] own) {
        int first = firstOf(group);
        int[] mine = list[first];
        int place = nextShow[group];
        if (place == mine.length || !Arrays.stream(mine, 0, place).allMatch(this::hasMovedOn)) {
            return;
        }
        nextShow[group] = showFrom(mine, place + 1);
        cutOff(group, place, time, own);
        await(group, parts[mine[place]], time, own);
    }

    /** From when all are there until it can begin, if the tutor is free. */
    private void await(int group, Part part, double time, double[] own) {
        int first = firstOf(group);
        double ready = time;
        for (int s = first; isIn(group, s); s++) {
            lose(part.index(), s, time - own[s]);
            own[s] = time;
            ready = Math.max(ready, script.clock().toWorking(lesson.ready(part, s)));
        }
        lesson.spareBefore(part.index());
        double begin = untilItFits(lesson.length(part), ready);
        for (int s = first; isIn(group, s); s++) {
            lose(lesson.cause(part, s), s, begin - time);
        }
        since[first] = begin;
        event[first] = SHOW;
        soonest.set(first, begin);
    }

    private int firstOf(int group) {
        int s = 0;
        while (script.students()[s] != group) {
            s++;
        }
        return s;
    }

    /** Groups sit side by side. */
    private boolean isIn(int group, int seat) {
        return seat < students && script.students()[seat] == group;
    }

    /** Whoever has not come so far stops, and lets go of tools and of who helps. */
    private void cutOff(int group, int place, double time, double[] own) {
        int first = firstOf(group);
        for (int s = first; isIn(group, s); s++) {
            if (at[s] < place) {
                forTools.remove(s);
                forHelp.remove(s);
            }
        }
        boolean stopped = false;
        for (int s = first; isIn(group, s); s++) {
            if (at[s] < place) {
                stop(s, place, time, own);
                stopped = true;
            }
        }
        if (stopped) {
            handOn(time);
        }
    }

    private void stop(int s, int place, double time, double[] own) {
        Part part = parts[list[s][at[s]]];
        byte was = event[s];
        for (int i = at[s]; i < place; i++) {
            lesson.done[list[s][i]][s] = script.clock().toClock(time);
        }
        at[s] = place;
        own[s] = time;
        event[s] = WAIT_FOR_GROUP;
        soonest.never(s);
        if (was == CALL || was == HELPED || was == FINISH) {
            giveBack(part, time);
        }
        if (was == HELPED) {
            free(time);
        }
    }

    /** The group is ready, and there is time for it before a break. */
    private void show(int s, double time) {
        if (freePeople > 0 && !showing && !isAnothersTurn(s, time)) {
            beginShow(s, time);
        } else {
            forTutor.add(s);
            soonest.never(s);
        }
    }

    /** Of two groups that are ready at once the plan says which is first. */
    private boolean isAnothersTurn(int s, double time) {
        for (int other = 0; other < students; other++) {
            if (event[other] == SHOW && soonest.time(other) == time && list[other][at[other]] < list[s][at[s]]) {
                return true;
            }
        }
        return false;
    }

    /** The first in the plan of those who wait. */
    private int nextForTutor() {
        int next = 0;
        for (int i = 1; i < forTutor.size(); i++) {
            int one = forTutor.get(i);
            int best = forTutor.get(next);
            next = list[one][at[one]] < list[best][at[best]] ? i : next;
        }
        return forTutor.take(next);
    }

    /** Who has waited so long that a break comes first waits for its end. */
    private void showOrWaitForBreak(int s, double time) {
        double begin = untilItFits(lesson.length(parts[list[s][at[s]]]), time);
        if (begin > time + ROUNDING) {
            soonest.set(s, begin);
        } else {
            beginShow(s, time);
        }
    }

    private void beginShow(int first, double time) {
        Part part = parts[list[first][at[first]]];
        freePeople--;
        showing = true;
        lesson.start[part.index()] = time;
        for (int s = first; isIn(part.group(), s); s++) {
            lose(script.helpCause(), s, time - since[first]);
            lesson.begun[part.index()][s] = script.clock().toClockOnward(time);
        }
        event[first] = SHOWN;
        soonest.set(first, time + lesson.length(part));
    }

    private void shown(int first, double time, double[] own) {
        Part part = parts[list[first][at[first]]];
        finished[part.index()] = part.members();
        lesson.end[part.index()] = script.clock().toClock(time);
        open--;
        end = time;
        for (int s = first; isIn(part.group(), s); s++) {
            lesson.done[part.index()][s] = lesson.end[part.index()];
            at[s]++;
            enter(s, time, own);
        }
        gatherIfDone(part.group(), time, own);
        showing = false;
        free(time);
        if (attended) {
            handOn(time);
        }
    }

    /** Whoever waited for the group at this part goes on; the quick had time to spare. */
    private void moveOn(Part part, double time, double[] own) {
        int next = -1;
        for (int m = 0; m < students && script.together(); m++) {
            if (event[m] == WAIT_FOR_GROUP && at[m] > 0 && at[m] < list[m].length && list[m][at[m] - 1] == part.index() && !isShow(list[m][at[m]])) {
                next = list[m][at[m]];
                lose(next, m, time - own[m]);
                goTo(m, time);
            }
        }
        if (next >= 0) {
            lesson.spareBefore(next);
        }
    }

    private void giveBack(Part part, double time) {
        for (int tool = 0; tool < part.units().length; tool++) {
            freeTools[tool] += part.units()[tool];
        }
        if (part.beside()) {
            free(time);
        }
    }

    private void handOn(double time) {
        for (int i = 0; i < forTools.size(); i++) {
            int next = forTools.get(i);
            if (takesTools(next)) {
                forTools.take(i--);
                lose(script.toolCause(parts[list[next][at[next]]].scarcest()), next, time - since[next]);
                begin(next, time);
            }
        }
    }

    /** Whoever has not finished stops here, with the class. */
    private void close(Bench bench, double[] own) {
        double clock = script.clock().toClock(end);
        for (int s = 0; s < students; s++) {
            for (int i = at[s]; i < list[s].length; i++) {
                lesson.done[list[s][i]][s] = clock;
                own[s] = end;
            }
        }
        for (int part : bench.parts()) {
            lesson.unfinished[part] = 1 - (double) finished[part] / parts[part].members();
            lesson.start[part] = script.clock().toClockOnward(lesson.start[part]);
        }
        Arrays.fill(at, 0);
    }
}
