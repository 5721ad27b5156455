package benchful.documents.lists;

import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.PrintSource;

/** The timed plan on its own, on its side, to hang on the wall or lay beside the clock. */
public record PlanContent(PrintHead head, PlanTable plan) {
    public static PlanContent of(PrintSource source, PrintOptions options, PictureBag bag) {
        PrintHead head = PrintHead.of(source, "Timed plan: " + source.title(), Stylesheet.landscape(options.paper(), options.version()),
                options.paper(), options.version(), java.util.List.of(new PrintHead.Bookmark("Picture", "top"), new PrintHead.Bookmark("Table", "table")));
        return new PlanContent(head, new PlanTableWriter(source).wide(bag, options.version()));
    }
}
