package benchful.documents.checklist;

import benchful.core.lesson.Block;
import benchful.core.lesson.Break;
import benchful.core.lesson.Lane;
import benchful.documents.parts.PrintSource;
import benchful.plans.BetweenMeetings;
import benchful.plans.StepNumbers;
import benchful.web.Formats;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** While the class goes on: when waits are over, breaks, and half-way looks at the clock. */
final class During {
    private During() {}

    static ChecklistContent.Section section(PrintSource source) {
        List<Timed> timed = new ArrayList<>();
        Map<String, Integer> numbers = StepNumbers.of(source.lesson());
        Set<String> outside = BetweenMeetings.of(source.file().project(), source.lesson()).stream().map(BetweenMeetings.Item::step).collect(Collectors.toSet());
        source.lesson().blocks().stream().filter(block -> !outside.contains(block.step())).forEach(block -> add(source, timed, block, numbers.get(block.step())));
        source.plan().timing().breaks().forEach(pause -> timed.add(pause(source, pause)));
        timed.sort(Comparator.comparing(Timed::at));
        List<ChecklistContent.Item> items = new ArrayList<>();
        items.add(ChecklistContent.Item.of("Write on the review sheet when each step really ends."));
        timed.forEach(entry -> items.add(entry.item()));
        items.add(ChecklistContent.Item.of("Every quarter of an hour: is anybody waiting for me or for a tool, tired, or stuck?"));
        return new ChecklistContent.Section("During the class", "", items);
    }

    private record Timed(LocalDateTime at, ChecklistContent.Item item) {}

    private static void add(PrintSource source, List<Timed> timed, Block block, int number) {
        String at = at(source, block.start());
        if (block.lane() == Lane.WAIT || block.lane() == Lane.EQUIPMENT) {
            timed.add(new Timed(block.start(), new ChecklistContent.Item(at, "step %d begins: %s; ready %s.".formatted(number, block.title(), Formats.clockAfter(block.end(), block.start())), "")));
        } else if (block.lane() == Lane.HOME) {
            timed.add(new Timed(block.start(), new ChecklistContent.Item(at, "step %d, %s, goes on at home: say until %s.".formatted(number, block.title(), Formats.words(block.end())), "")));
        }
    }

    private static Timed pause(PrintSource source, Break pause) {
        return new Timed(pause.start(), new ChecklistContent.Item(at(source, pause.start()), "%s until %s.".formatted(pause.title(), Formats.clock(pause.end())), ""));
    }

    /** With the day where there is more than one. */
    private static String at(PrintSource source, LocalDateTime moment) {
        return source.lesson().meetings().size() > 1 ? Formats.words(moment) : Formats.clock(moment);
    }
}
