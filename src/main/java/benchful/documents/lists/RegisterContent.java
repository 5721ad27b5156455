package benchful.documents.lists;

import benchful.classes.ClassSetup;
import benchful.core.needs.Take;
import benchful.documents.handout.Readers;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.PrintSource;
import benchful.plans.materials.kits.Kit;
import benchful.web.Formats;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Who is here, with needs and whom to call. A sheet of its own, so that it can be kept out of sight.
 *
 * @param meetings all of them, with hours
 * @param days "18 Mar" for each meeting, to tick who is here; one empty word where there is only one
 */
public record RegisterContent(PrintHead head, List<Line> lines, String meetings, List<String> days) {

    /** @param name empty where the student is not known yet */
    public record Line(String seat, String name, String needs, String contact, String phone) {}

    public static RegisterContent of(PrintSource source, PrintOptions options) {
        PrintHead head = PrintHead.of(source, "Register: " + source.title(), Stylesheet.landscape(options.paper(), options.version()),
                options.paper(), options.version(), List.of(new PrintHead.Bookmark("Register", "top")));
        List<Line> lines = source.needs().kits().stream().filter(kit -> kit.taker() == Take.Taker.STUDENT).map(kit -> line(source, kit)).toList();
        return new RegisterContent(head, lines, source.meetings(), days(source));
    }

    private static List<String> days(PrintSource source) {
        List<ClassSetup.Meeting> meetings = source.file().setup().meetings();
        return meetings.size() < 2 ? List.of("") : meetings.stream().map(meeting -> Formats.day(meeting.date())).toList();
    }

    private static Line line(PrintSource source, Kit kit) {
        ClassSetup.Student student = Readers.student(source, kit);
        return new Line(kit.seat() == null ? "" : kit.seat(), kit.name() == null ? "" : kit.name(), student == null ? "" : needs(student),
                contact(student, ClassSetup.Contact::name), contact(student, ClassSetup.Contact::phone));
    }

    private static String contact(ClassSetup.Student student, Function<ClassSetup.Contact, String> part) {
        return student == null ? "" : Optional.ofNullable(student.emergency()).map(part).orElse("");
    }

    private static String needs(ClassSetup.Student student) {
        StringBuilder needs = new StringBuilder(student.needs() == null ? "" : student.needs().strip());
        if (Boolean.TRUE.equals(student.leftHanded())) {
            needs.append(needs.isEmpty() ? "" : " ").append("Left-handed.");
        }
        if (Boolean.TRUE.equals(student.largePrint())) {
            needs.append(needs.isEmpty() ? "" : " ").append("Large print.");
        }
        return needs.toString();
    }
}
