package benchful.documents.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Where a table goes on on another page: its heading above, two rows at least. */
class LastRowsTest {
    private static final String PAGES = """
            <html lang="en"><head><title>t</title><style>@page { size: A4; margin: 15mm } body { font-family: 'DejaVu Sans'; font-size: 11pt }
            table { -fs-table-paginate: paginate; width: 100%%; border-collapse: collapse } tr, .kept { page-break-inside: avoid } td { padding: 1mm }</style></head>
            <body><table><thead><tr><th>Heading</th></tr></thead>%s</table></body></html>""";

    private static final Pattern ROW = Pattern.compile("row \\d+");

    private final PdfRenderer renderer = new PdfRenderer();

    private static String rows(int count) {
        return IntStream.rangeClosed(1, count).mapToObj("<tr><td>row %d</td></tr>"::formatted).collect(Collectors.joining());
    }

    /** What each page holds. */
    private List<String> pages(String bodies) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        renderer.write(new Manuscript(PAGES.formatted(bodies), Map.of()), out);
        try (PdfReading pdf = PdfReading.of(out.toByteArray())) {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= pdf.pages(); page++) {
                pages.add(pdf.text(page));
            }
            return pages;
        }
    }

    private static long rows(String page) {
        return ROW.matcher(page).results().count();
    }

    @Test
    void bringAnotherRowAndTheHeadingToTheirPage() throws IOException {
        boolean broken = false;
        for (int count = 34; count < 44; count++) {
            List<String> pages = pages("<tbody class=\"rows\">" + rows(count) + "</tbody>");
            assertThat(pages.stream().mapToLong(LastRowsTest::rows).sum()).isEqualTo(count);
            assertThat(pages).as("%d rows", count).allSatisfy(page -> assertThat(page).contains("Heading").satisfies(text -> assertThat(rows(text)).isGreaterThanOrEqualTo(2)));
            broken |= pages.size() > 1;
        }
        assertThat(broken).as("some of them take two pages").isTrue();
    }

    @Test
    void stayWithTheirSums() throws IOException {
        for (int count = 32; count < 42; count++) {
            List<String> pages = pages("<tbody class=\"rows\">" + rows(count) + "</tbody><tbody class=\"sums\"><tr><td>Goods</td></tr><tr><td>To pay</td></tr></tbody>");
            String last = pages.get(pages.size() - 1);
            assertThat(last).as("%d rows", count).contains("Heading", "row " + count, "Goods", "To pay");
            assertThat(last.indexOf("row " + count)).isLessThan(last.indexOf("Goods"));
        }
    }

    @Test
    void areAllThereInFewAndInSeveralBodies() throws IOException {
        assertThat(pages("<tbody class=\"rows\"></tbody>").get(0)).contains("Heading");
        assertThat(rows(pages("<tbody class=\"rows\">" + rows(1) + "</tbody>").get(0))).isEqualTo(1);
        assertThat(rows(pages("<tbody class=\"rows\">" + rows(2) + "</tbody><tbody class=\"rows\">" + rows(3) + "</tbody>").get(0))).isEqualTo(5);
    }

    @Test
    void refusePagesThatAreNotWellFormed() {
        assertThatThrownBy(() -> LastRows.kept("<html><body><p></body></html>")).isInstanceOf(IOException.class).hasMessageContaining("not well-formed");
    }
}
