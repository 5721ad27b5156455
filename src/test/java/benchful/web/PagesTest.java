package benchful.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PagesTest {
    @ParameterizedTest
    @CsvSource({"/classes/1?a=b, /classes/1?a=b", "//elsewhere.example/classes, /elsewhere.example/classes", "http://elsewhere.example//classes, /classes", "https://elsewhere.example, /"})
    void leadsNowhereElse(String asked, String own) {
        assertThat(Pages.own(asked)).isEqualTo(own);
    }
}
