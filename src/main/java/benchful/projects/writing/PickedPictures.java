package benchful.projects.writing;

import benchful.core.Fault;
import benchful.projects.pictures.PictureFile;
import benchful.web.forms.SentForm.SentFile;
import com.fasterxml.jackson.databind.JsonNode;
import jakarta.ws.rs.core.MultivaluedMap;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The files that were picked in a project's form, made fit and put into its fields: {@code file:/pictures/2} becomes the content of that
 * row, and those of {@code file:/steps/3/pictures} become pictures of their own, named after the step, which the step shows.
 */
final class PickedPictures {
    private static final Pattern PLACE = Pattern.compile("/pictures/(\\d{1,4})(/.*)?");
    private static final Pattern STEP = Pattern.compile("(/steps/\\d{1,4})/pictures");
    private static final int LONGEST_NAME = 60;

    private final MultivaluedMap<String, String> fields;
    private final Map<String, String> refusedByName = new HashMap<>();
    private final Map<String, String> refusedByStep = new HashMap<>();

    PickedPictures(MultivaluedMap<String, String> fields) {
        this.fields = fields;
    }

    void take(String field, List<SentFile> files) {
        String at = field.replaceFirst("^file:", "");
        Matcher step = STEP.matcher(at);
        if (step.matches()) {
            files.forEach(file -> onStep(step.group(1), file));
        } else if (PLACE.matcher(at).matches()) {
            inRow(at, files.get(0));
        }
    }

    private void inRow(String row, SentFile file) {
        String typed = fields.getFirst(row + "/name");
        String name = typed == null || typed.isBlank() ? shortName(file.name().replaceFirst("^.*[/\\\\]", "").replaceFirst("\\.[^.]*$", "")) : typed.strip();
        fields.putSingle(row + "/name", name);
        PictureFile picture = PictureFile.of(file.content());
        if (picture instanceof PictureFile.Fit fit) {
            hold(row, fit);
        } else if (picture instanceof PictureFile.Unfit unfit) {
            refusedByName.put(name, unfit.sentence());
        }
    }

    private void onStep(String step, SentFile file) {
        PictureFile picture = PictureFile.of(file.content());
        if (picture instanceof PictureFile.Fit fit) {
            String row = "/pictures/" + next("/pictures/");
            String title = fields.getFirst(step + "/title");
            String name = free(shortName(title == null ? "" : title));
            fields.putSingle(row + "/name", name);
            fields.putSingle(step + "/pictures/" + next(step + "/pictures/"), name);
            hold(row, fit);
        } else if (picture instanceof PictureFile.Unfit unfit) {
            refusedByStep.merge(step + "/pictures", "“%s”: %s".formatted(file.name(), unfit.sentence()), "%s %s"::formatted);
        }
    }

    private void hold(String row, PictureFile.Fit fit) {
        fields.putSingle(row + "/content", Base64.getEncoder().encodeToString(fit.content()));
        fields.putSingle(row + "/media_type", fit.mediaType());
        fields.remove(row + "/turned");
        FormPictures.SIDES.forEach(side -> fields.remove(row + "/cut/" + side));
    }

    /** The number behind the last row of a list, blank or not. */
    private int next(String list) {
        return 1 + fields.entrySet().stream().filter(e -> e.getKey().startsWith(list) && e.getValue().stream().anyMatch(v -> !v.isBlank()))
                .map(e -> e.getKey().substring(list.length()).replaceFirst("/.*", "")).filter(number -> number.matches("\\d{1,4}"))
                .mapToInt(Integer::parseInt).max().orElse(-1);
    }

    private String free(String name) {
        Set<String> used = fields.entrySet().stream().filter(e -> e.getKey().matches("/pictures/\\d{1,4}/name")).map(e -> e.getValue().get(0).strip()).collect(Collectors.toSet());
        String free = name;
        for (int i = 2; used.contains(free); i++) {
            String number = "-" + i;
            free = name.substring(0, Math.min(name.length(), LONGEST_NAME - number.length())) + number;
        }
        return free;
    }

    private static String shortName(String words) {
        String name = Normalizer.normalize(words, Normalizer.Form.NFD).toLowerCase(Locale.ROOT).replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9_]+", "-").replaceFirst("^[-_]+", "").replaceFirst("-+$", "");
        return name.isEmpty() ? "picture" : name.substring(0, Math.min(LONGEST_NAME, name.length()));
    }

    /** What was refused, at its place in the form's tree. */
    List<Fault> refusals(JsonNode tree) {
        List<Fault> faults = new ArrayList<>();
        JsonNode pictures = tree.path("pictures");
        for (int i = 0; i < pictures.size(); i++) {
            String sentence = refusedByName.get(pictures.path(i).path("name").asText());
            if (sentence != null) {
                faults.add(new Fault("/pictures/" + i + "/content", sentence));
            }
        }
        refusedByStep.forEach((step, sentence) -> faults.add(new Fault(step, sentence)));
        return faults;
    }
}
