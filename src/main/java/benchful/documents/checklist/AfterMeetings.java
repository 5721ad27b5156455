package benchful.documents.checklist;

import benchful.core.lesson.StepKind;
import benchful.documents.parts.PrintSource;
import benchful.plans.BetweenMeetings;
import benchful.web.Formats;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What goes on after each meeting: the tutor's own work with its dates, what she tells the students, and what is ready when. */
final class AfterMeetings {
    private AfterMeetings() {}

    static List<ChecklistContent.Section> sections(PrintSource source) {
        Map<Integer, List<ChecklistContent.Item>> byMeeting = BetweenMeetings.of(source.file().project(), source.lesson()).stream()
                .collect(Collectors.groupingBy(BetweenMeetings.Item::after, TreeMap::new, Collectors.mapping(AfterMeetings::item, Collectors.toList())));
        return byMeeting.entrySet().stream().map(entry -> new ChecklistContent.Section(title(source, entry.getKey()), "", entry.getValue())).toList();
    }

    private static String title(PrintSource source, int meeting) {
        return source.lesson().meetings().size() == 1 ? "After the class" : "After the meeting of " + Formats.words(source.lesson().meetings().get(meeting - 1).start().toLocalDate());
    }

    private static ChecklistContent.Item item(BetweenMeetings.Item item) {
        String step = "step %d, %s".formatted(item.number(), item.title());
        if (item.kind() == StepKind.COLLECT) {
            return new ChecklistContent.Item("From " + Formats.words(item.from()) + ":", step + ". Tell the students.", "");
        }
        if (item.kind().isUnattended()) {
            return new ChecklistContent.Item(Formats.words(item.from()), "%s begins; ready %s.".formatted(step, Formats.clockAfter(item.end(), item.from())), "");
        }
        String done = item.by() == null ? "" : ", done " + item.latest();
        return item.kind() == StepKind.HOMEWORK
                ? new ChecklistContent.Item("Tell the students:", "%s, at home, about %s%s.".formatted(step, item.takes(), done), "")
                : new ChecklistContent.Item("From " + Formats.words(item.from()) + ":", "%s, %s%s.".formatted(step, item.takes(), done), "");
    }
}
