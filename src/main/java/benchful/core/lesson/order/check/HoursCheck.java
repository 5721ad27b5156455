package benchful.core.lesson.order.check;

import benchful.core.lesson.Break;
import benchful.core.lesson.Conflict;
import benchful.core.lesson.Conflict.Kind;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.MinuteWords;
import benchful.core.quantity.Sentence;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Finds meetings and breaks that contradict each other. */
final class HoursCheck {

    private HoursCheck() {
    }

    static List<Conflict> conflicts(LessonRequest request) {
        List<Conflict> conflicts = new ArrayList<>();
        List<Meeting> meetings = request.meetings();
        for (int i = 0; i < meetings.size(); i++) {
            meeting(meetings, i, conflicts);
        }
        if (conflicts.isEmpty()) {
            request.breaks().forEach(pause -> pause(pause, meetings, conflicts));
        }
        return conflicts;
    }

    private static void meeting(List<Meeting> meetings, int i, List<Conflict> conflicts) {
        Meeting meeting = meetings.get(i);
        if (!meeting.end().isAfter(meeting.start())) {
            conflicts.add(wrong(Kind.HOURS_WRONG, Sentence.of("Meeting %s ends at %s, not after its start at %s.", i + 1, meeting.end(), meeting.start()), "Enter an end after the start."));
        } else if (i > 0 && meeting.start().isBefore(meetings.get(i - 1).end())) {
            conflicts.add(wrong(Kind.HOURS_WRONG, Sentence.of("Meeting %s starts at %s, before the meeting before it ends.", i + 1, meeting.start()), "Enter the meetings in order, without overlap."));
        }
    }

    private static void pause(Break pause, List<Meeting> meetings, List<Conflict> conflicts) {
        Sentence name = Sentence.of("The break at %s", pause.start().toLocalTime());
        Duration length = Duration.between(pause.start(), pause.end());
        Duration longest = meetings.stream().map(HoursCheck::length).max(Duration::compareTo).orElse(Duration.ZERO);
        if (length.isNegative() || length.isZero()) {
            conflicts.add(wrong(Kind.BREAK_WRONG, Sentence.of("%s ends at %s, not after its start at %s.", name, pause.end(), pause.start()), "Enter an end after the start."));
        } else if (length.compareTo(longest) >= 0) {
            conflicts.add(wrong(Kind.BREAK_WRONG, Sentence.of("%s takes %s but the class has only %s.", name, MinuteWords.minutes(length), MinuteWords.minutes(longest)),
                    "Shorten the break, or book more hours."));
        } else if (meetings.stream().noneMatch(meeting -> holds(meeting, pause))) {
            conflicts.add(wrong(Kind.BREAK_WRONG, Sentence.of("The break from %s to %s lies outside the class's hours.", pause.start(), pause.end()), "Move it inside a meeting."));
        }
    }

    private static Duration length(Meeting meeting) {
        return Duration.between(meeting.start(), meeting.end());
    }

    private static boolean holds(Meeting meeting, Break pause) {
        return !pause.start().isBefore(meeting.start()) && !pause.end().isAfter(meeting.end());
    }

    private static Conflict wrong(Kind kind, Sentence what, String mend) {
        return new Conflict(kind, List.of(), what, mend);
    }
}
