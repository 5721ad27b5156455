package benchful.documents;

import benchful.core.Fault;
import benchful.documents.paper.LabelKind;
import benchful.documents.paper.LabelSetting;
import benchful.documents.paper.LabelStock;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.studio.Paper;
import benchful.studio.StudioSpec;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Reads options as they were typed; what can't be is said at its field. */
final class OptionsReader {
    private static final int LONGEST_ADDRESS = 120;

    private final PrintForm form;
    private final StudioSpec studio;
    private final List<Fault> faults = new ArrayList<>();

    OptionsReader(PrintForm form, StudioSpec studio) {
        this.form = form;
        this.studio = studio;
    }

    /** At least one fault after {@link #read()} means that its answer is not to be used. */
    List<Fault> faults() {
        return List.copyOf(faults);
    }

    /** @param path of the class's documents, below the address */
    PrintOptions read(String path) {
        Paper paper = Paper.of(form.value("paper")).orElseGet(() -> chosen("paper", "Choose A4 or US Letter.", Paper.A4));
        Version version = Version.of(form.value("version")).orElseGet(() -> chosen("version", "Choose normal, large print or low ink.", Version.NORMAL));
        return new PrintOptions(paper, studio.customary(paper), version, form.is("for", "student"), labels(), address(path));
    }

    private <T> T chosen(String field, String fault, T otherwise) {
        faults.add(new Fault(field, fault));
        return otherwise;
    }

    private String address(String path) {
        String typed = form.value("address").replaceAll("(?<!/)/++$", "");
        if (typed.isEmpty()) {
            return null;
        }
        if (typed.length() > LONGEST_ADDRESS || !isAddress(typed)) {
            return chosen("address", "Type the address as in a browser, such as http://192.168.1.20:8080, or leave it empty to print no codes.", null);
        }
        return typed + path;
    }

    private static boolean isAddress(String typed) {
        try {
            URI uri = URI.create(typed);
            String scheme = uri.getScheme() == null ? "" : uri.getScheme().toLowerCase(Locale.ROOT);
            return uri.getHost() != null && (scheme.equals("http") || scheme.equals("https"));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private LabelSetting labels() {
        LabelStock sheet = sheet();
        int start = whole("start", sheet.perPage());
        LabelKind kind = LabelKind.of(form.value("labels")).orElseGet(() -> chosen("labels", "Choose kit labels, seat labels or a test sheet.", LabelKind.KITS));
        try {
            return new LabelSetting(sheet, start, number("right"), number("down"), kind);
        } catch (IllegalArgumentException e) {
            return chosen(start < 1 || start > sheet.perPage() ? "start" : "right", e.getMessage(), LabelSetting.of(sheet));
        }
    }

    private LabelStock sheet() {
        String typed = form.value("sheet");
        if (typed.equals("own")) {
            return own();
        }
        boolean known = typed.matches("[1-9]\\d?") && Integer.parseInt(typed) <= LabelStock.COMMON.size();
        return known ? LabelStock.COMMON.get(Integer.parseInt(typed) - 1) : chosen("sheet", "Choose a sheet of labels.", LabelStock.COMMON.get(0));
    }

    private LabelStock own() {
        Paper paper = Paper.of(form.value("paper")).orElse(Paper.A4);
        LabelStock first = LabelStock.COMMON.get(0);
        int before = faults.size();
        int columns = whole("columns", 20);
        int rows = whole("rows", 40);
        double[] mm = {number("width"), number("height"), number("left"), number("top"), number("pitchX"), number("pitchY")};
        if (faults.size() > before) {
            return first;
        }
        try {
            return LabelStock.of(paper, columns, rows, mm[0], mm[1], mm[2], mm[3], mm[4], mm[5]);
        } catch (IllegalArgumentException e) {
            return chosen("columns", e.getMessage(), first);
        }
    }

    private int whole(String field, int most) {
        String typed = form.value(field);
        return typed.matches("\\d{1,3}") ? Integer.parseInt(typed) : chosen(field, "Enter a whole number from 1 to %d.".formatted(most), 1);
    }

    private double number(String field) {
        String typed = form.value(field).replace(',', '.');
        return typed.matches("-?\\d{1,3}(\\.\\d{1,4})?") ? Double.parseDouble(typed) : chosen(field, "Enter millimetres, such as 63.5.", 0.0);
    }
}
