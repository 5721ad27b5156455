package benchful.documents.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;

class PagePicturesTest {
    private static byte[] pdf(int pages) throws IOException {
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i < pages; i++) {
                document.addPage(new PDPage());
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    @Test
    void drawsTheFirstSixPagesAndCountsAll() throws IOException {
        PagePictures pages = PagePictures.of(pdf(8), () -> { });
        assertThat(pages.sources()).hasSize(6).allMatch(source -> source.startsWith("data:image/png;base64,"));
        assertThat(pages.inAll()).isEqualTo(8);
    }

    @Test
    void drawsNoMoreOnceNobodyWaits() throws IOException {
        byte[] pdf = pdf(8);
        AtomicInteger asked = new AtomicInteger();
        assertThatThrownBy(() -> PagePictures.of(pdf, () -> {
            if (asked.incrementAndGet() == 3) {
                throw new CancellationException();
            }
        })).isInstanceOf(CancellationException.class);
        assertThat(asked.get()).isEqualTo(3);
    }
}
