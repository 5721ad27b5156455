package benchful.start;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import org.junit.jupiter.api.Test;

/** A program that was not started by a double press; {@link DeskPackageIT} stops one that was. */
@QuarkusTest
class StopPagesTest {
    @TestHTTPResource
    URL start;

    @Test
    void isNotToBeStoppedFromItsPages() {
        Visitor tutor = new Visitor(start);
        assertThat(tutor.open("/").page().select("footer a[href=/stop]")).isEmpty();
        assertThat(tutor.open("/stop").status()).isEqualTo(404);
    }
}
