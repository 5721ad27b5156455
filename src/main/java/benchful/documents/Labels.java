package benchful.documents;

import benchful.hazards.HazardSheet;
import benchful.hazards.Signs;
import benchful.plans.Kit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Fills sheets of kit labels, one for each kit, from the position where the sheet's first label is left. */
final class Labels {
    private static final int SHEETS_IN_A_BUNDLE = 6;

    private final PrintSource source;
    private final PrintOptions options;
    private final LabelSetting setting;
    private final LabelFitter fitter;

    Labels(PrintSource source, PrintOptions options) {
        this.source = source;
        this.options = options;
        this.setting = options.labels();
        int most = source.materials().kits().stream().mapToInt(kit -> signs(kit).size()).max().orElse(0);
        this.fitter = new LabelFitter(setting.sheet(), options.address() != null, setting.test() ? 0 : most);
    }

    /** How many bundles of sheets there are: a few at a time are typeset much faster than hundreds. */
    int bundles() {
        return (sheets() - 1) / SHEETS_IN_A_BUNDLE + 1;
    }

    /** @param bundle from 0 */
    LabelsSheet bundle(int bundle, PictureBag bag) {
        LabelSheet sheet = setting.sheet();
        List<LabelsSheet.Page> pages = new ArrayList<>();
        for (int page = bundle * SHEETS_IN_A_BUNDLE; page < end(bundle); page++) {
            int first = page * sheet.perPage();
            List<LabelsSheet.Label> labels = IntStream.range(Math.max(first, skipped()), Math.min(first + sheet.perPage(), end()))
                    .mapToObj(position -> setting.test() ? outline(position) : kit(position, bag)).toList();
            pages.add(new LabelsSheet.Page("Sheet " + (page + 1), labels));
        }
        return new LabelsSheet(head(), Millimetres.words(sheet.paper().width()), Millimetres.words(sheet.paper().height() - 0.2), pages);
    }

    /** "Sheets 7 to 12". */
    String name(int bundle) {
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
        return setting.test() ? setting.sheet().perPage() : skipped() + source.materials().kits().size();
    }

    private int skipped() {
        return setting.test() ? 0 : setting.start() - 1;
    }

    /** What the label of a kit says. */
    KitLabel label(Kit kit) {
        Amounts amounts = Amounts.briefly(setting.sheet().paper());
        List<String> contents = kit.contents().stream()
                .map(content -> amounts.words(content) + " " + content.material() + (content.detail() == null ? "" : ", " + content.detail())).toList();
        List<String> cautions = hazards(kit).map(hazard -> hazard.name().toLowerCase(Locale.ROOT)).toList();
        String seat = kit.seat() == null ? "" : "Seat " + kit.seat() + " · ";
        return new KitLabel(kit.title(), seat + kit.size() + " · " + source.file().project().name(), contents, cautions,
                options.address() == null ? "" : options.address() + Readers.path(kit));
    }

    private Stream<HazardNote> hazards(Kit kit) {
        List<String> names = kit.contents().stream().map(Kit.Content::material).toList();
        return new HazardUse(source.file()).ofMaterials(names).stream().map(source::hazard).flatMap(Optional::stream);
    }

    /** The signs that are drawn, of all that a kit holds, each once. */
    private List<HazardSheet.Sign> signs(Kit kit) {
        return hazards(kit).flatMap(hazard -> hazard.signs().stream()).distinct().filter(sign -> Signs.svg(sign.code()).isPresent()).toList();
    }

    private List<LabelsSheet.Sign> placed(List<HazardSheet.Sign> signs, PictureBag bag) {
        return IntStream.range(0, Math.min(signs.size(), fitter.signs())).mapToObj(i -> {
            LabelFitter.Place place = fitter.sign(i);
            String picture = bag.stampedSign(signs.get(i).code(), Signs.svg(signs.get(i).code()).orElseThrow());
            return new LabelsSheet.Sign(picture, signs.get(i).code() + " " + signs.get(i).name(), Millimetres.words(place.left()), Millimetres.words(place.top()), Millimetres.words(place.size()));
        }).toList();
    }

    private SheetHead head() {
        String title = (setting.test() ? "Test sheet for labels: " : "Kit labels: ") + source.title();
        return SheetHead.of(source, title, Stylesheet.bare(setting.sheet().paper()), setting.sheet().paper(), Version.NORMAL, List.of());
    }

    private LabelsSheet.Label kit(int position, PictureBag bag) {
        Kit kit = source.materials().kits().get(position - skipped());
        KitLabel label = label(kit);
        String code = fitter.code() == 0 ? null : bag.code("kit-" + kit.number(), label.address());
        return placed(position % setting.sheet().perPage(), fitter.fit(label).stream().map(Labels::text).toList(), code, label.address(), placed(signs(kit), bag), false);
    }

    /** An outline with its position in it, to hold behind a sheet against the light. */
    private LabelsSheet.Label outline(int position) {
        List<String> lines = position == 0 ? List.of("1", setting.sheet().title(), "Hold this page behind a label sheet", "against the light.")
                : List.of(String.valueOf(position + 1));
        return placed(position, List.of(new LabelsSheet.Text(false, "8", "10", lines)), null, "", List.of(), true);
    }

    private LabelsSheet.Label placed(int position, List<LabelsSheet.Text> texts, String code, String address, List<LabelsSheet.Sign> signs, boolean outline) {
        LabelSheet sheet = setting.sheet();
        return new LabelsSheet.Label(Millimetres.words(sheet.x(position) + setting.right()), Millimetres.words(sheet.y(position) + setting.down()),
                Millimetres.words(sheet.width()), Millimetres.words(sheet.height()), Millimetres.words(fitter.edge()), texts, code,
                Millimetres.words(fitter.code()), address, signs, outline);
    }

    private static LabelsSheet.Text text(LabelFitter.Text text) {
        return new LabelsSheet.Text(text.bold(), Millimetres.words(text.size()), Millimetres.words(text.leading()), text.lines());
    }
}
