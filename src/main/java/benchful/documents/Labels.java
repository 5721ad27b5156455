package benchful.documents;

import benchful.plans.Kit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Fills sheets of kit labels, one for each kit, from the position where the sheet's first label is left. */
final class Labels {
    private final PrintSource source;
    private final PrintOptions options;
    private final LabelSetting setting;
    private final LabelFitter fitter;

    Labels(PrintSource source, PrintOptions options) {
        this.source = source;
        this.options = options;
        this.setting = options.labels();
        this.fitter = new LabelFitter(setting.sheet(), options.address() != null);
    }

    LabelsSheet sheet(PictureBag bag) {
        List<LabelsSheet.Label> labels = setting.test() ? outlines() : kits(bag);
        LabelSheet sheet = setting.sheet();
        int skipped = setting.test() ? 0 : setting.start() - 1;
        List<LabelsSheet.Page> pages = new ArrayList<>();
        for (int from = 0; from < labels.size(); ) {
            int to = Math.min(labels.size(), from + sheet.perPage() - (from == 0 ? skipped : 0));
            pages.add(new LabelsSheet.Page(labels.subList(from, to)));
            from = to;
        }
        return new LabelsSheet(head(), Millimetres.words(sheet.paper().width()), Millimetres.words(sheet.paper().height() - 0.2), pages);
    }

    /** What the label of a kit says. */
    KitLabel label(Kit kit) {
        List<String> names = kit.contents().stream().map(Kit.Content::material).toList();
        Amounts amounts = Amounts.briefly(setting.sheet().paper());
        List<String> contents = kit.contents().stream()
                .map(content -> amounts.words(content) + " " + content.material() + (content.detail() == null ? "" : ", " + content.detail())).toList();
        List<String> cautions = new HazardUse(source.file()).ofMaterials(names).stream().map(source::hazard).flatMap(Optional::stream)
                .map(hazard -> hazard.name().toLowerCase(Locale.ROOT)).toList();
        String seat = kit.seat() == null ? "" : "Seat " + kit.seat() + " · ";
        return new KitLabel(kit.title(), seat + kit.size() + " · " + source.file().project().name(), contents, cautions,
                options.address() == null ? "" : options.address() + Readers.path(kit));
    }

    private SheetHead head() {
        String title = (setting.test() ? "Test sheet for labels: " : "Kit labels: ") + source.title();
        return SheetHead.of(source, title, Stylesheet.bare(setting.sheet().paper()), setting.sheet().paper(), Version.NORMAL, List.of());
    }

    private List<LabelsSheet.Label> kits(PictureBag bag) {
        List<LabelsSheet.Label> labels = new ArrayList<>();
        for (Kit kit : source.materials().kits()) {
            KitLabel label = label(kit);
            String code = fitter.code() == 0 ? null : bag.code("kit-" + kit.number(), label.address());
            List<LabelsSheet.Text> texts = fitter.fit(label).stream().map(Labels::text).toList();
            labels.add(placed((labels.size() + setting.start() - 1) % setting.sheet().perPage(), texts, code, label.address(), false));
        }
        return labels;
    }

    /** One page of outlines with the position in each, to hold behind a sheet against the light. */
    private List<LabelsSheet.Label> outlines() {
        List<LabelsSheet.Label> labels = new ArrayList<>();
        for (int i = 0; i < setting.sheet().perPage(); i++) {
            List<String> lines = i == 0 ? List.of("1", setting.sheet().title(), "Hold this page behind a label sheet", "against the light.") : List.of(String.valueOf(i + 1));
            labels.add(placed(i, List.of(new LabelsSheet.Text(false, "8", "10", lines)), null, "", true));
        }
        return labels;
    }

    private LabelsSheet.Label placed(int position, List<LabelsSheet.Text> texts, String code, String address, boolean outline) {
        LabelSheet sheet = setting.sheet();
        return new LabelsSheet.Label(Millimetres.words(sheet.x(position) + setting.right()), Millimetres.words(sheet.y(position) + setting.down()),
                Millimetres.words(sheet.width()), Millimetres.words(sheet.height()), Millimetres.words(fitter.edge()), texts, code,
                Millimetres.words(fitter.code()), address, outline);
    }

    private static LabelsSheet.Text text(LabelFitter.Text text) {
        return new LabelsSheet.Text(text.bold(), Millimetres.words(text.size()), Millimetres.words(text.leading()), text.lines());
    }
}
