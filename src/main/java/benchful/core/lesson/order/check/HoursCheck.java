package benchful.core.lesson.order.check;

import benchful.core.lesson.Break;
import benchful.core.lesson.Conflict;
import benchful.core.lesson.Conflict.Kind;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.MinuteWords;
import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Finds meetings and breaks that contradict each other. */
final class HoursCheck {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

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
            conflicts.add(wrong(Kind.HOURS_WRONG, "Meeting " + (i + 1) + " ends at " + CLOCK.format(meeting.end())
                    + ", not after its start at " + CLOCK.format(meeting.start()) + ".", "Enter an end after the start."));
        } else if (i > 0 && meeting.start().isBefore(meetings.get(i - 1).end())) {
            conflicts.add(wrong(Kind.HOURS_WRONG, "Meeting " + (i + 1) + " starts at " + CLOCK.format(meeting.start())
                    + ", before the meeting before it ends.", "Enter the meetings in order, without overlap."));
        }
    }

    private static void pause(Break pause, List<Meeting> meetings, List<Conflict> conflicts) {
        String name = "The break \"" + pause.title() + "\" ";
        Duration length = Duration.between(pause.start(), pause.end());
        Duration longest = meetings.stream().map(HoursCheck::length).max(Duration::compareTo).orElse(Duration.ZERO);
        if (length.isNegative() || length.isZero()) {
            conflicts.add(wrong(Kind.BREAK_WRONG, name + "ends at " + CLOCK.format(pause.end()) + ", not after its start at "
                    + CLOCK.format(pause.start()) + ".", "Enter an end after the start."));
        } else if (length.compareTo(longest) >= 0) {
            conflicts.add(wrong(Kind.BREAK_WRONG, name + "takes " + MinuteWords.minutes(length) + " but the class has only "
                    + MinuteWords.minutes(longest) + ".", "Shorten the break, or book more hours."));
        } else if (meetings.stream().noneMatch(meeting -> holds(meeting, pause))) {
            conflicts.add(wrong(Kind.BREAK_WRONG, name + "from " + CLOCK.format(pause.start()) + " to " + CLOCK.format(pause.end())
                    + " lies outside the class's hours.", "Move it inside a meeting."));
        }
    }

    private static Duration length(Meeting meeting) {
        return Duration.between(meeting.start(), meeting.end());
    }

    private static boolean holds(Meeting meeting, Break pause) {
        return !pause.start().isBefore(meeting.start()) && !pause.end().isAfter(meeting.end());
    }

    private static Conflict wrong(Kind kind, String what, String mend) {
        return new Conflict(kind, List.of(), what, mend);
    }
}
