package benchful.documents.lists;

import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.PrintSource;
import java.util.List;

/** A sheet to write on when somebody was hurt, or nearly. It asks what an accident book asks, and what changes for the next class. */
public record IncidentContent(PrintHead head, List<String> brief, List<String> full) {

    public static IncidentContent of(PrintSource source, PrintOptions options) {
        PrintHead head = PrintHead.of(source, "Incident sheet: " + source.title(), Stylesheet.of(options.paper(), options.version()), options.paper(), options.version(),
                List.of(new PrintHead.Bookmark("Incident sheet", "top"), new PrintHead.Bookmark("What changes", "after")));
        return new IncidentContent(head,
                List.of("Date and time", "Who was hurt, or nearly", "Student, helper, tutor or visitor", "Step, tool and material", "Who saw it"),
                List.of("What happened", "What was hurt, and how", "First aid: what was given, and by whom", "What followed: back to work, home, doctor, hospital"));
    }
}
