package benchful.documents.handout;

import benchful.core.SkillLevel;
import benchful.core.quantity.Quantity;
import benchful.core.sizing.Strand;
import benchful.documents.paper.Millimetres;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.paper.Version;
import benchful.documents.parts.Amounts;
import benchful.documents.parts.HazardNote;
import benchful.documents.parts.HazardUse;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.PrintSource;
import benchful.documents.parts.PrintedSigns;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.kits.Kit;
import benchful.plans.materials.sizes.SizedPiece;
import benchful.plans.pictures.StrandPicture;
import benchful.projects.Measure;
import benchful.projects.ProjectSpec;
import benchful.projects.pictures.Picture;
import benchful.studio.Paper;
import benchful.web.Formats;
import benchful.web.Markdown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Fills handouts: one for a size, or one for a student with name, own size and own texts. */
public final class Handouts {
    private static final int TALLEST_ROWS = 12;

    private final PrintSource source;
    private final PrintOptions options;
    private final ProjectSpec project;
    private final Amounts amounts;

    public Handouts(PrintSource source, PrintOptions options) {
        this.source = source;
        this.options = options;
        this.project = source.file().project();
        this.amounts = Amounts.on(options);
    }

    /** @param reader whom it is for */
    public HandoutContent sheet(Reader reader, PictureBag bag) {
        MaterialsPlan.SizeTaken size = size(reader.size());
        ReaderCautions cautions = new ReaderCautions(new PrintedSigns(bag));
        OwnFigures figures = new OwnFigures(project, size.piece(), amounts);
        HandoutSteps steps = new HandoutSteps(source, new OwnTime(project, size.piece(), reader.level()), figures, bag, cautions, reader.leftHanded());
        List<StepBlock> all = StepBlock.of(steps.all(), reader.version());
        List<HandoutContent.FullSize> strands = strands(size.piece(), bag);
        Needed needed = Needed.of(source, options, reader);
        String address = options.address() == null ? "" : options.address() + reader.address();
        return new HandoutContent(
                head(reader, needed, !strands.isEmpty()), source.sign() == null ? null : bag.picture(source.sign()), about(), project.name(), reader.forWhom(), "Size " + reader.size(),
                Markdown.markdown(source.isClass() ? null : project.summary()), facts(size.piece()), cover(bag), needed, steps.prepared(), steps.ready(), all, strands,
                cautions.rest(hazards()), steps.atHome(), Markdown.markdown(figures.in(project.care())),
                address.isEmpty() ? null : bag.code("handout-code", address), address, source.studio().line(), source.studio().more(), maker());
    }

    /** Who made a kit that is sold, and which, as Regulation (EU) 2023/988 asks in its Article 9(5) and (6); empty for what is not sold. */
    private List<String> maker() {
        return source.batch() == null ? List.of() : Stream.concat(Stream.of(source.batch()), source.studio().sender().stream()).toList();
    }

    /**
     * Whom a handout is for.
     *
     * @param name and seat; empty for anybody
     * @param kit what they find in their kit
     * @param bench their part of what waits on the bench
     * @param level how practised they are
     * @param version as they asked for it
     * @param address path of this handout under the class's address
     */
    public record Reader(String name, String size, List<Kit.Content> kit, List<Kit.Content> bench, SkillLevel level, boolean leftHanded, Version version, String address) {
        String forWhom() {
            return name.isEmpty() ? "" : "for " + name;
        }

        /** In a list of handouts. */
        public String title() {
            return name.isEmpty() ? "Size " + size : "%s, size %s".formatted(name, size);
        }
    }

    private String about() {
        String title = source.title().equals(project.name()) ? project.craft() : source.title();
        return source.isClass() ? source.title() + ", " + source.meetings() : title;
    }

    private PrintHead head(Reader reader, Needed needed, boolean strands) {
        List<PrintHead.Bookmark> bookmarks = new ArrayList<>();
        bookmarks.add(new PrintHead.Bookmark(project.name(), "top"));
        bookmarks.add(new PrintHead.Bookmark(needed.title(), "kit"));
        bookmarks.add(new PrintHead.Bookmark("Step by step", "steps"));
        if (strands) {
            bookmarks.add(new PrintHead.Bookmark("At full size", "strand"));
        }
        bookmarks.add(new PrintHead.Bookmark("At home", "home"));
        String title = "%s: handout, size %s%s".formatted(project.name(), reader.size(), reader.forWhom().isEmpty() ? "" : ", " + reader.forWhom());
        return PrintHead.of(source, title, Stylesheet.of(options.paper(), reader.version()), options.paper(), reader.version(), bookmarks).underAll(source, reader.version());
    }

    private MaterialsPlan.SizeTaken size(String name) {
        return source.needs().sizes().stream().filter(size -> size.name().equals(name)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Nobody in this class makes the size “%s”.".formatted(name)));
    }

    private List<HandoutContent.Fact> facts(SizedPiece piece) {
        List<HandoutContent.Fact> facts = new ArrayList<>();
        for (Measure measure : project.measures()) {
            Quantity value = piece.values().get(measure.name());
            if (value != null) {
                facts.add(new HandoutContent.Fact(measure.label(), amounts.asWritten(value)));
            }
        }
        for (Strand strand : piece.strands().values()) {
            facts.add(new HandoutContent.Fact("Comes out at", amounts.words(strand.length())));
            facts.add(new HandoutContent.Fact("Beads", String.valueOf(strand.beads().size())));
            if (strand.knots() > 0) {
                facts.add(new HandoutContent.Fact("Knots", String.valueOf(strand.knots())));
            }
        }
        return facts;
    }

    private HandoutContent.Figure cover(PictureBag bag) {
        Picture cover = source.pictures().get("cover");
        return cover == null ? null : new HandoutContent.Figure(bag.picture(cover), words(cover.alt(), project.name()));
    }

    private List<HandoutContent.FullSize> strands(SizedPiece piece, PictureBag bag) {
        List<HandoutContent.FullSize> all = new ArrayList<>();
        for (Map.Entry<String, Strand> entry : piece.strands().entrySet()) {
            StrandPicture picture = new StrandPicture(entry.getValue(), options.paper().width() - 32, options.paper() == Paper.LETTER);
            List<StrandPicture.Row> rows = picture.rows();
            if (rows.size() <= TALLEST_ROWS) {
                all.add(fullSize(entry.getKey(), entry.getValue(), picture, rows, bag));
            }
        }
        return all;
    }

    private HandoutContent.FullSize fullSize(String name, Strand strand, StrandPicture picture, List<StrandPicture.Row> rows, PictureBag bag) {
        List<HandoutContent.FullRow> figures = new ArrayList<>();
        for (StrandPicture.Row row : rows) {
            String drawing = bag.drawing("strand-%s-%d".formatted(name, figures.size()), row.svg());
            figures.add(new HandoutContent.FullRow(drawing, Millimetres.words(picture.width()), Millimetres.words(row.height()), row.words()));
        }
        List<HandoutContent.Legend> legend = new ArrayList<>();
        for (String kind : picture.kinds()) {
            legend.add(new HandoutContent.Legend(bag.drawing("bead-%s-%d".formatted(name, legend.size()), picture.sample(kind)), strand.counts().get(kind) + " " + kind));
        }
        return new HandoutContent.FullSize(Formats.number(java.math.BigDecimal.valueOf(strand.beads().size()), 0) + " beads", strand.knots() > 0, figures, legend);
    }

    /** What the piece itself may do to its wearer. */
    private List<HazardNote> hazards() {
        return new HazardUse(source.file()).ofThePiece().stream().map(source::hazard).flatMap(Optional::stream).toList();
    }

    private static String words(String text, String otherwise) {
        return text == null || text.isBlank() ? otherwise : text;
    }
}
