package benchful.documents.labels;

import benchful.core.needs.Take;
import benchful.core.quantity.Dimension;
import benchful.documents.handout.Readers;
import benchful.documents.paper.LabelKind;
import benchful.documents.paper.LabelSetting;
import benchful.documents.paper.LabelStock;
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
import benchful.hazards.HazardSpec;
import benchful.hazards.Signs;
import benchful.plans.materials.kits.Kit;
import benchful.web.Formats;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Fills sheets of labels, one for each kit or each student's seat, from the position where the sheet's first label is left. */
public final class Labels {
    private static final int SHEETS_IN_A_BUNDLE = 6;

    private final PrintSource source;
    private final PrintOptions options;
    private final LabelSetting setting;
    private final List<Kit> kits;
    private final LabelFitter fitter;

    public Labels(PrintSource source, PrintOptions options) {
        this.source = source;
        this.options = options;
        this.setting = options.labels();
        this.kits = source.needs().kits().stream().filter(kit -> setting.kind() != LabelKind.SEATS || kit.taker() == Take.Taker.STUDENT).toList();
        int most = setting.kind() == LabelKind.KITS ? kits.stream().mapToInt(kit -> signs(kit).size()).max().orElse(0) : 0;
        this.fitter = new LabelFitter(setting.sheet(), options.address() != null, most);
    }

    /** How many bundles of sheets there are: a few at a time are typeset much faster than hundreds. */
    public int bundles() {
        return (sheets() - 1) / SHEETS_IN_A_BUNDLE + 1;
    }

    /** @param bundle from 0 */
    public LabelsContent bundle(int bundle, PictureBag bag) {
        LabelStock sheet = setting.sheet();
        List<LabelsContent.Page> pages = new ArrayList<>();
        for (int page = bundle * SHEETS_IN_A_BUNDLE; page < end(bundle); page++) {
            int first = page * sheet.perPage();
            List<LabelsContent.Label> labels = IntStream.range(Math.max(first, skipped()), Math.min(first + sheet.perPage(), end()))
                    .mapToObj(position -> label(position, bag)).toList();
            pages.add(new LabelsContent.Page("Sheet " + (page + 1), labels));
        }
        return new LabelsContent(head(), Millimetres.words(sheet.paper().width()), Millimetres.words(sheet.paper().height() - 0.2), pages);
    }

    /** "Sheets 7 to 12". */
    public String name(int bundle) {
        int first = bundle * SHEETS_IN_A_BUNDLE + 1;
        return first == end(bundle) ? "Sheet " + first : "Sheets %d to %d".formatted(first, end(bundle));
    }

    /** Behind the last sheet of a bundle, counted from 0. */
    private int end(int bundle) {
        return Math.min(sheets(), (bundle + 1) * SHEETS_IN_A_BUNDLE);
    }

    private int sheets() {
        return Math.max(1, (end() - 1) / setting.sheet().perPage() + 1);
    }

    /** Positions run on over all sheets, from 0; this is the first behind the last label. */
    private int end() {
        return test() ? setting.sheet().perPage() : skipped() + kits.size();
    }

    private int skipped() {
        return test() ? 0 : setting.start() - 1;
    }

    /** What the label of a kit says. */
    KitLabel label(Kit kit) {
        Amounts amounts = Amounts.briefly(options);
        List<String> contents = kit.contents().stream()
                .map(content -> Formats.unparted("%s %s%s".formatted(amounts.words(content), content.material(), content.detail() == null ? "" : ", " + content.detail()))).toList();
        List<String> cautions = hazards(kit).map(hazard -> hazard.name().toLowerCase(Locale.ROOT)).toList();
        String seat = kit.seat() == null ? "" : "Seat " + kit.seat() + " · ";
        return new KitLabel(kit.title(), seat + kit.size(), source.file().project().name(), contents, from(), cautions);
    }

    private String from() {
        String studio = source.studio().name() == null ? "" : source.studio().name().strip();
        return source.batch() == null ? studio : String.join(", ", Stream.concat(Stream.of(source.batch()), source.studio().sender().stream()).toList());
    }

    private SeatLabel seat(Kit kit) {
        return new SeatLabel(kit.title(), kit.seat() == null ? "" : "Seat " + kit.seat(), kit.size() + " · " + source.file().project().name());
    }

    /** What the code opens; empty for no code. */
    private String address(Kit kit) {
        return options.address() == null ? "" : options.address() + Readers.path(kit);
    }

    private boolean test() {
        return setting.kind() == LabelKind.TEST;
    }

    private Stream<HazardNote> hazards(Kit kit) {
        return hazards(kit.contents().stream().map(Kit.Content::material).toList());
    }

    private Stream<HazardNote> hazards(List<String> names) {
        return new HazardUse(source.file()).ofMaterials(names).stream().map(source::hazard).flatMap(Optional::stream);
    }

    /**
     * The signs that are drawn and belong on a bag, each once: no sign of safe condition, such as first aid, and the pictogram of a chemical
     * only where the kit holds some; beads, silk and clasps are articles and carry none (CLP, Regulation (EC) 1272/2008, Article 4(8)).
     */
    private List<HazardSpec.Sign> signs(Kit kit) {
        List<String> chemicals = kit.contents().stream().filter(Labels::isMeasuredOut).map(Kit.Content::material).toList();
        List<HazardSpec.Sign> pictograms = hazards(chemicals).flatMap(hazard -> hazard.signs().stream()).toList();
        return hazards(kit).flatMap(hazard -> hazard.signs().stream()).distinct().filter(sign -> !sign.code().startsWith("E"))
                .filter(sign -> !sign.code().startsWith("GHS") || pictograms.contains(sign)).filter(sign -> Signs.svg(sign.code()).isPresent()).toList();
    }

    /** What is weighed or poured is a substance or a mixture; what is counted or cut is an article. */
    private static boolean isMeasuredOut(Kit.Content content) {
        return content.amount().dimension().equals(Dimension.MASS) || content.amount().dimension().equals(Dimension.VOLUME);
    }

    private List<LabelsContent.Sign> placed(List<HazardSpec.Sign> signs, PictureBag bag) {
        return IntStream.range(0, Math.min(signs.size(), fitter.signs())).mapToObj(i -> {
            LabelFitter.Place place = fitter.sign(i);
            String picture = bag.stampedSign(signs.get(i).code(), Signs.svg(signs.get(i).code()).orElseThrow());
            return new LabelsContent.Sign(picture, signs.get(i).name(), Millimetres.words(place.left()), Millimetres.words(place.top()), Millimetres.words(place.size()));
        }).toList();
    }

    private PrintHead head() {
        String title = setting.kind().title() + ": " + source.title();
        return PrintHead.of(source, title, Stylesheet.bare(setting.sheet().paper()), setting.sheet().paper(), Version.NORMAL, List.of());
    }

    private LabelsContent.Label label(int position, PictureBag bag) {
        if (test()) {
            return outline(position);
        }
        Kit kit = kits.get(position - skipped());
        List<LabelFitter.Text> texts = setting.kind() == LabelKind.SEATS ? fitter.fit(seat(kit)) : fitter.fit(label(kit));
        List<HazardSpec.Sign> signs = setting.kind() == LabelKind.SEATS ? List.of() : signs(kit);
        String address = address(kit);
        String code = fitter.code() == 0 ? null : bag.code("kit-" + kit.number(), address);
        return placed(position % setting.sheet().perPage(), texts.stream().map(Labels::text).toList(), code, address, placed(signs, bag), false);
    }

    /** An outline with its position in it, to hold behind a sheet against the light. */
    private LabelsContent.Label outline(int position) {
        List<String> lines = position == 0 ? List.of("1", setting.sheet().title(), "Hold this page behind a label sheet", "against the light.")
                : List.of(String.valueOf(position + 1));
        return placed(position, List.of(new LabelsContent.Text(false, "8", "10", lines)), null, "", List.of(), true);
    }

    private LabelsContent.Label placed(int position, List<LabelsContent.Text> texts, String code, String address, List<LabelsContent.Sign> signs, boolean outline) {
        LabelStock sheet = setting.sheet();
        return new LabelsContent.Label(Millimetres.words(sheet.x(position) + setting.right()), Millimetres.words(sheet.y(position) + setting.down()),
                Millimetres.words(sheet.width()), Millimetres.words(sheet.height()), Millimetres.words(fitter.edge()), texts, code,
                Millimetres.words(fitter.code()), address, signs, outline);
    }

    private static LabelsContent.Text text(LabelFitter.Text text) {
        return new LabelsContent.Text(text.bold(), Millimetres.words(text.size()), Millimetres.words(text.leading()), text.lines());
    }
}
