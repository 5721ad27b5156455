package benchful.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimesTest {
    @ParameterizedTest
    @CsvSource({
        "20 min, PT20M", "20min, PT20M", " 20 , PT20M", "1 h 30 min, PT1H30M", "1h30min, PT1H30M", "24 h, PT24H", "90 s, PT1M30S",
        "2 d, PT48H", "1 d 2 h 3 min 4 s, PT26H3M4S", "5 mins, PT5M", "1 hour 5 minutes, PT1H5M", "2 days, PT48H", "30 seconds, PT30S",
        "0 min, PT0S", "0, PT0S", "-5 min, -PT5M", "-1 h 30 min, -PT1H30M",
        "1.5 h, PT1H30M", "1.5 min, PT1M30S", "'1,5 min', PT1M30S", "2.5, PT2M30S", "½ h, PT30M", "1 1/2 h, PT1H30M", "1½ h, PT1H30M", "1:30, PT1H30M", "0:45:30, PT45M30S",
        "1:30 min, PT1M30S", "90 sec, PT1M30S", "2 hrs, PT2H", "5 min., PT5M", "10', PT10M", "0.333 min, PT20S"
    })
    void readsWhatATutorWrites(String written, Duration time) {
        assertThat(Times.parse(written)).isEqualTo(time);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "soon", "-", "5 min -1 h", "1:75", "30 min 1 h", "1 h 30", "99999999 min", "NaN", "5 m", "1e3 min", "5 min!"})
    void refusesWhatIsNoTime(String written) {
        assertThatThrownBy(() -> Times.parse(written)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("“%s” is not a time. Write it like 20 min, 1 h 30 min, 24 h or 90 s.".formatted(written));
    }

    @ParameterizedTest
    @CsvSource({"PT0S, 0 min", "PT0.4S, 0 min", "PT90S, 1 min 30 s", "PT72H, 72 h", "PT95H59M, 95 h 59 min", "PT96H, 4 days", "PT168H, 7 days", "PT117H36M, 4 days 21 h 36 min", "-PT168H, -7 days", "PT1H30M, 1 h 30 min", "-PT1H30M, -1 h 30 min", "PT59S, 59 s"})
    void writesTimes(Duration time, String words) {
        assertThat(Times.words(time)).isEqualTo(words);
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, 59, 60, 61, 3599, 3600, 86_399, 86_400, 5_184_000})
    void readsBackWhatItWrites(long seconds) {
        assertThat(Times.parse(Times.words(Duration.ofSeconds(seconds)))).isEqualTo(Duration.ofSeconds(seconds));
    }
}
