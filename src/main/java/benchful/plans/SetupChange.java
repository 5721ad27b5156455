package benchful.plans;

import benchful.classes.ClassSetup;
import benchful.classes.ClassSetup.Meeting;
import benchful.core.lesson.advice.Change;
import java.time.Duration;
import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A suggested change as a word that a button can send, and what it does to the setup of a class. A change that the setup
 * has no place for, such as working in groups, has no word: it is advice only.
 */
final class SetupChange {
    private SetupChange() {}

    /** {@code helper}, {@code tool 2 knotting awl}, {@code fewer 1}, {@code ahead cut,thread}, {@code earlier 15}, {@code longer 15}, {@code meeting P7D}. */
    static Optional<String> word(Change change) {
        if (change instanceof Change.Helper) {
            return Optional.of("helper");
        } else if (change instanceof Change.MoreTools more) {
            return Optional.of("tool %d %s".formatted(more.more(), more.tool()));
        } else if (change instanceof Change.FewerStudents fewer) {
            return Optional.of("fewer " + fewer.fewer());
        } else if (change instanceof Change.PrepareAhead ahead) {
            return Optional.of("ahead " + String.join(",", ahead.steps()));
        } else if (change instanceof Change.EarlierStart earlier) {
            return Optional.of("earlier " + earlier.by().toMinutes());
        } else if (change instanceof Change.LongerBooking longer) {
            return Optional.of("longer " + longer.by().toMinutes());
        } else if (change instanceof Change.OneMoreMeeting meeting) {
            return Optional.of("meeting " + meeting.later());
        }
        return Optional.empty();
    }

    /** @throws IllegalArgumentException if the word is none of {@link #word} */
    static ClassSetup applied(ClassSetup s, String word) {
        String[] parts = word.split(" ", 2);
        String rest = parts.length > 1 ? parts[1] : "";
        return switch (parts[0]) {
            case "helper" -> with(s, s.meetings(), s.headcount(), s.helpers() + 1, s.preparedAhead(), s.tools());
            case "tool" -> with(s, s.meetings(), s.headcount(), s.helpers(), s.preparedAhead(), moreTools(s.tools(), rest.split(" ", 2)));
            case "fewer" -> with(s, s.meetings(), Math.max(1, s.headcount() - Integer.parseInt(rest)), s.helpers(), s.preparedAhead(), s.tools());
            case "ahead" -> with(s, s.meetings(), s.headcount(), s.helpers(),
                    Stream.concat(s.preparedAhead().stream(), Stream.of(rest.split(","))).distinct().toList(), s.tools());
            case "earlier" -> with(s, earlier(s.meetings(), Duration.ofMinutes(Long.parseLong(rest))), s.headcount(), s.helpers(), s.preparedAhead(), s.tools());
            case "longer" -> with(s, longer(s.meetings(), Duration.ofMinutes(Long.parseLong(rest))), s.headcount(), s.helpers(), s.preparedAhead(), s.tools());
            case "meeting" -> with(s, oneMore(s.meetings(), rest), s.headcount(), s.helpers(), s.preparedAhead(), s.tools());
            default -> throw new IllegalArgumentException("“%s” is no change.".formatted(word));
        };
    }

    private static Map<String, Integer> moreTools(Map<String, Integer> tools, String[] numberAndName) {
        Map<String, Integer> more = new LinkedHashMap<>(tools);
        more.merge(numberAndName[1], Integer.parseInt(numberAndName[0]), Integer::sum);
        return more;
    }

    private static List<Meeting> earlier(List<Meeting> meetings, Duration by) {
        List<Meeting> changed = new ArrayList<>(meetings);
        Meeting first = changed.get(0);
        changed.set(0, new Meeting(first.date(), first.starts().minus(by), first.ends()));
        return changed;
    }

    private static List<Meeting> longer(List<Meeting> meetings, Duration by) {
        List<Meeting> changed = new ArrayList<>(meetings);
        Meeting last = changed.remove(changed.size() - 1);
        changed.add(new Meeting(last.date(), last.starts(), last.ends().plus(by)));
        return changed;
    }

    private static List<Meeting> oneMore(List<Meeting> meetings, String later) {
        List<Meeting> changed = new ArrayList<>(meetings);
        Meeting last = changed.get(changed.size() - 1);
        changed.add(new Meeting(last.date().plus(Period.parse(later)), last.starts(), last.ends()));
        return changed;
    }

    private static ClassSetup with(
            ClassSetup s, List<Meeting> meetings, int headcount, int helpers, List<String> ahead, Map<String, Integer> tools) {
        return new ClassSetup(s.title(), meetings, headcount, s.level(), s.sizes(), s.students(), s.demonstration(), s.spares(), helpers,
                s.groups(), s.ownPace(), s.share(), s.breaks(), ahead, tools, s.currency(), s.costs(), s.youngest(), s.notes());
    }
}
