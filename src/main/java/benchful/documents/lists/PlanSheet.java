package benchful.documents.lists;

import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.documents.parts.SheetHead;

/** The timed plan on its own, on its side, to hang on the wall or lay beside the clock. */
public record PlanSheet(SheetHead head, PlanTable plan) {
    public static PlanSheet of(PrintSource source, PrintOptions options, PictureBag bag) {
        SheetHead head = SheetHead.of(source, "Timed plan: " + source.title(), Stylesheet.landscape(options.paper(), options.version()),
                options.paper(), options.version(), java.util.List.of(new SheetHead.Bookmark("Picture", "top"), new SheetHead.Bookmark("Table", "table")));
        return new PlanSheet(head, new PlanTables(source).wide(bag, options.version()));
    }
}
