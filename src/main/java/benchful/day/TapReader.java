package benchful.day;

import benchful.core.day.Tap;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.ws.rs.core.MultivaluedMap;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;

/**
 * Reads what was tapped: of a plain form one tap, by the button that was pressed ("count knot 4"), as of now; of a browser with scripts
 * all that it has not seen in the log yet, each with its own id and its time by the device's clock, and how far that clock is off.
 */
final class TapReader {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int LONGEST = 500;
    private static final int LONGEST_STEP = 80;
    private static final int MOST = 2_000;
    private static final int GREATEST = 1_000;
    /** Of some years at most. */
    private static final String MILLISECONDS = "-?\\d{1,12}";

    private static final String ID = "[A-Za-z0-9-]{1,60}";

    private TapReader() {}

    /** @throws IllegalArgumentException with a sentence for the person */
    static List<Tap> read(MultivaluedMap<String, String> form, LocalDateTime now) {
        String sent = form.getFirst("taps");
        return sent == null ? List.of(pressed(form, now)) : sent(sent, clock(form.getFirst("clock")));
    }

    private static Tap pressed(MultivaluedMap<String, String> form, LocalDateTime now) {
        String[] words = String.valueOf(form.getFirst("tap")).split(" ", 3);
        String text = form.getFirst("text") == null ? "" : form.getFirst("text").strip();
        String number = words.length > 2 ? words[2].strip() : "0";
        return tap(UUID.randomUUID().toString(), now, words[0], words.length > 1 ? words[1] : "", number, text);
    }

    /** What is to be added to the times of a device [ms]; nothing where it does not say. */
    private static Duration clock(String off) {
        if (off == null || off.isEmpty()) {
            return Duration.ZERO;
        }
        if (!off.matches(MILLISECONDS)) {
            throw new IllegalArgumentException("What was tapped can't be read. Load the page again.");
        }
        return Duration.ofMillis(Long.parseLong(off));
    }

    private static List<Tap> sent(String json, Duration off) {
        try {
            JsonNode all = JSON.readTree(json);
            if (!all.isArray() || all.size() > MOST) {
                throw new IllegalArgumentException("What was tapped came in another shape than a list of at most %d.".formatted(MOST));
            }
            List<Tap> taps = new ArrayList<>();
            for (JsonNode t : all) {
                taps.add(tap(t.path("id").asText(), LocalDateTime.parse(t.path("at").asText()).plus(off), t.path("kind").asText(), t.path("step").asText(""),
                        t.path("number").asText("0"), t.path("text").asText("")));
            }
            return taps;
        } catch (JsonProcessingException | DateTimeException e) {
            throw new IllegalArgumentException("What was tapped can't be read. Load the page again.", e);
        }
    }

    private static Tap tap(String id, LocalDateTime at, String kind, String step, String number, String text) {
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException("Write a note in at most %d letters.".formatted(LONGEST));
        }
        if (!id.matches(ID) || step.length() > LONGEST_STEP || !number.matches("-?\\d{1,4}") || Math.abs(Integer.parseInt(number)) > GREATEST) {
            throw new IllegalArgumentException("What was tapped can't be read. Load the page again.");
        }
        Tap.Kind known = kind(kind);
        if ((known == Tap.Kind.NOTE || known == Tap.Kind.INCIDENT) && text.isBlank()) {
            throw new IllegalArgumentException("Write what is to be remembered.");
        }
        return new Tap(id, at.truncatedTo(ChronoUnit.MILLIS), known, step.isEmpty() || step.equals("-") ? null : step, Integer.parseInt(number), text);
    }

    private static Tap.Kind kind(String word) {
        try {
            return Tap.Kind.valueOf(word.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("What was tapped can't be read. Load the page again.", e);
        }
    }
}
