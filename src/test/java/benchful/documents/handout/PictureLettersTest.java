package benchful.documents.handout;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.documents.PrintSamples;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.projects.pictures.Picture;
import benchful.studio.Paper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Words inside the samples' drawings, as large as handouts print them. The limits are those of the style sheet [mm], the letters those of the drawings. */
class PictureLettersTest {
    private static final double SMALLEST = 6;
    private static final double POINTS = 72 / 25.4;
    private static final Pattern LETTERS = Pattern.compile("<text[^>]*font-size=\"([\\d.]+)\"");
    private static final Pattern BOX = Pattern.compile("viewBox=\"[\\d.]+ [\\d.]+ ([\\d.]+) ([\\d.]+)\"");

    static Stream<List<String>> samples() {
        return PrintSamples.all().stream();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void areSixPointsHighAtLeast(List<String> files) throws IOException {
        PrintSource source = PrintSamples.source(files);
        HandoutContent sheet = new Handouts(source, new PrintOptions(Paper.A4, Version.NORMAL, true, null, "")).sheet(
                Readers.of(source, source.needs().kits().get(0), Version.NORMAL), new PictureBag(Version.NORMAL));
        List<String> small = new ArrayList<>(small(source, sheet.cover(), limits(".piece img")));
        for (HandoutContent.Step step : sheet.steps()) {
            for (HandoutContent.Figure figure : step.beside()) {
                small.addAll(small(source, figure, limits(step.beside().size() > 1 ? ".step .of-2 img" : ".step .picture img")));
            }
            for (HandoutContent.Figure figure : step.below().stream().flatMap(List::stream).toList()) {
                small.addAll(small(source, figure, limits(".across img")));
            }
        }
        assertThat(small).isEmpty();
    }

    private static List<String> small(PrintSource source, HandoutContent.Figure figure, double[] limits) {
        Picture picture = source.pictures().values().stream().filter(p -> Objects.equals(p.alt(), figure.alt())).findFirst().orElseThrow();
        String drawing = new String(picture.content(), StandardCharsets.UTF_8);
        Matcher box = BOX.matcher(drawing);
        assertThat(box.find()).as(picture.name()).isTrue();
        double scale = Math.min(limits[0] / Double.parseDouble(box.group(1)), limits[1] / Double.parseDouble(box.group(2))) * POINTS;
        return LETTERS.matcher(drawing).results().mapToDouble(size -> Double.parseDouble(size.group(1)) * scale).filter(points -> points < SMALLEST)
                .mapToObj(points -> "%s: %.1f pt".formatted(picture.name(), points)).toList();
    }

    /** Width and height; where a rule of two names its height alone, the width is that of one. */
    private static double[] limits(String rule) throws IOException {
        try (InputStream in = Objects.requireNonNull(PictureLettersTest.class.getResourceAsStream("/documents/print.css"))) {
            String css = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return new double[] {limit(css, rule, "max-width", ".step .picture img"), limit(css, rule, "max-height", rule)};
        }
    }

    private static double limit(String css, String rule, String what, String otherwise) {
        Matcher found = Pattern.compile("(?m)^" + Pattern.quote(rule) + " \\{[^}]*" + what + ": (\\d+)mm").matcher(css);
        return found.find() ? Double.parseDouble(found.group(1)) : limit(css, otherwise, what, otherwise);
    }
}
