package benchful.documents;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.documents.pdf.PdfReading;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.URL;
import org.junit.jupiter.api.Test;

/** The emergency card of a room, without any class. */
@QuarkusTest
class VenueCardPagesTest {
    @TestHTTPResource
    URL address;

    @Test
    void printsWhatTheRoomSaysAndLinesForTheRest() throws IOException {
        Visitor tutor = new Visitor(address).open("/venues/new").type("/name", "Chart room").type("/address", "2 Slip Lane").type("/emergency/call", "112")
                .type("/emergency/exits", "Two doors to the quay").press("Save");
        String room = tutor.path();
        try (PdfReading card = PdfReading.of(tutor.follow("Print the card for the door").bytes())) {
            assertThat(card.barriers()).isEmpty();
            assertThat(card.pages()).isEqualTo(1);
            assertThat(card.text()).contains("In an emergency", "Chart room, 2 Slip Lane", "112", "Two doors to the quay", "Nearest hospital", "First aider today");
        }
        try (PdfReading card = PdfReading.of(tutor.open(room).follow("in large print").bytes())) {
            assertThat(card.barriers()).isEmpty();
            assertThat(card.glyphs()).allSatisfy(glyph -> assertThat(glyph.size()).isGreaterThanOrEqualTo(17.9));
        }
        assertThat(tutor.open(room + "/emergency.pdf?version=tiny").status()).isEqualTo(404);
    }

    @Test
    void hasLinesToWriteOnWhereTheRoomSaysNothing() throws IOException {
        Visitor tutor = new Visitor(address).open("/venues/new").type("/name", "Bare room").press("Save");
        assertThat(tutor.page().text()).contains("Nothing is written down yet: the card has lines to write on.");
        try (PdfReading card = PdfReading.of(tutor.follow("Print the card for the door").bytes())) {
            assertThat(card.text()).contains("Bare room", "Ways out", "Defibrillator");
        }
    }
}
