package benchful.home;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.home.Licences.Licence;
import benchful.home.Licences.Part;
import java.util.List;
import org.junit.jupiter.api.Test;

class LicencesTest {

    @Test
    void areReadFromTheListThatTheBuildMakes() {
        String list = """

                Lists of 3 third-party dependencies.
                     (MIT) Logging API (of Java) (org.logs:logs-api:2.0.17 - http://logs.example)
                     (EPL-2.0) (GPL-2.0-with-classpath-exception) Annotations (jakarta.notes:notes-api:3.0.0 - https://notes.example/a)
                     (MIT) Amounts (com.amounts:core:1.0 - no url defined)
                """;

        assertThat(Licences.of(list)).containsExactly(
                new Licence("EPL-2.0 or GPL-2.0-with-classpath-exception", List.of(new Part("Annotations", "jakarta.notes:notes-api", "3.0.0"))),
                new Licence("MIT", List.of(new Part("Amounts", "com.amounts:core", "1.0"),
                        new Part("Logging API (of Java)", "org.logs:logs-api", "2.0.17"))));
    }
}
