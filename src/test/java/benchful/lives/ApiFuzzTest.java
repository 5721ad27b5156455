package benchful.lives;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Class files that are wrong somewhere, sent to be planned: each is planned, or refused in words that say where. */
@QuarkusTest
class ApiFuzzTest {
    private static final long FIRST = Long.getLong("benchful.lives.first", 1);
    private static final int FILES = Effort.of(150, 20_000);

    @TestHTTPResource("/api/plan")
    URI api;

    private final HttpClient client = HttpClient.newHttpClient();

    @Test
    void plansOrSaysWhereEveryFileIsWrong() throws IOException, InterruptedException {
        Outcomes outcomes = new Outcomes("files");
        for (long seed = FIRST; seed < FIRST + FILES; seed++) {
            byte[] file = file(seed);
            long before = System.nanoTime();
            HttpResponse<String> answer = answer(seed, file);
            outcomes.answered("file " + seed, "answers " + answer.statusCode(), Duration.ofNanos(System.nanoTime() - before));
            outcomes.count(answer.statusCode() == 200 ? "planned" : "refused");
            for (String w : wrong(answer)) {
                outcomes.fault("file %d: %s".formatted(seed, w));
            }
        }
        outcomes.tell();
        assertThat(outcomes.faults()).isEmpty();
        assertThat(outcomes.slowest()).isLessThan(Effort.longest());
        assertThat(outcomes.of("planned")).as("a third do in the long run: a fifth at least get as far as the plan, and some are refused").isBetween(FILES / 5, FILES - 1);
    }

    private static byte[] file(long seed) throws IOException {
        Chance chance = new Chance(seed);
        ObjectNode file = new ClassFileMaker(seed).made();
        boolean gentle = !chance.once(3);
        if (gentle) {
            new Mutation(chance).changeGently(file);
        } else {
            new Mutation(chance).change(file);
        }
        byte[] whole = (chance.once(2) ? SpecFormat.yaml() : SpecFormat.json()).writeValueAsBytes(file);
        return !gentle && chance.once(5) ? torn(whole, chance) : whole;
    }

    /** Cut off, or with a byte that does not belong there. */
    private static byte[] torn(byte[] whole, Chance chance) {
        byte[] torn = java.util.Arrays.copyOf(whole, chance.between(0, whole.length));
        if (torn.length > 0 && chance.once(2)) {
            torn[chance.between(0, torn.length - 1)] = (byte) chance.between(0, 255);
        }
        return torn;
    }

    private HttpResponse<String> answer(long seed, byte[] file) throws IOException, InterruptedException {
        try {
            return sent(file);
        } catch (HttpTimeoutException e) {
            throw new AssertionError("file %d is not answered within a minute".formatted(seed), e);
        }
    }

    private HttpResponse<String> sent(byte[] file) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(api).header("Content-Type", "application/yaml").timeout(Duration.ofSeconds(60))
                .POST(HttpRequest.BodyPublishers.ofByteArray(file)).build();
        return client.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    private static List<String> wrong(HttpResponse<String> answer) throws IOException {
        List<String> wrong = new ArrayList<>(Words.foreign(answer.body()));
        if (answer.statusCode() == 422) {
            JsonNode errors = SpecFormat.json().readTree(answer.body()).path("errors");
            if (errors.isEmpty() || !errors.findValuesAsText("detail").stream().allMatch(d -> d.matches("(?s).*\\p{L}{2}.*[.?!]\"?”?"))) {
                wrong.add("no sentence: " + answer.body());
            }
            errors.forEach(e -> {
                if (!e.path("pointer").asText().startsWith("/") && e.path("line").asInt() < 1 && !e.path("detail").asText().contains("ine ")) {
                    wrong.add("no place: " + e);
                }
            });
        } else if (answer.statusCode() != 200) {
            wrong.add("answers " + answer.statusCode() + " " + answer.body());
        }
        return wrong;
    }
}
