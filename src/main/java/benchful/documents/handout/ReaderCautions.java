package benchful.documents.handout;

import benchful.documents.parts.HazardNote;
import benchful.documents.parts.PrintedSigns;
import benchful.web.Formats;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Cautions as they are told to whoever does the work: in full before the step that first meets a hazard, by name after that. What is said to
 * the tutor of the group, the room or its bookings stands on her checklist and on no handout.
 */
final class ReaderCautions {
    private static final int BESIDE_A_STEP = 2;
    private static final Pattern TO_THE_TUTOR = Pattern.compile("\\b(?:students?|class(?:es)?|group|venue|benches|trained|book(?:ed|ing)?s?|on the day|insurer|lux|suppliers?|children (?:sort|work|sit)|one adult|two adults|adult alone)\\b",
            Pattern.CASE_INSENSITIVE);

    private final PrintedSigns signs;
    private final Map<String, Integer> saidAt = new LinkedHashMap<>();

    ReaderCautions(PrintedSigns signs) {
        this.signs = signs;
    }

    /** Those that a step is the first to meet. */
    List<HandoutContent.Caution> first(List<HazardNote> hazards, int step) {
        return hazards.stream().filter(hazard -> saidAt.putIfAbsent(hazard.id(), step) == null).map(this::caution).toList();
    }

    /** "As at step 3: sharp tools. As at step 5: hot metal."; empty where all is new. */
    String again(List<HazardNote> hazards, int step) {
        Map<Integer, List<String>> known = new LinkedHashMap<>();
        hazards.forEach(hazard -> Optional.ofNullable(saidAt.get(hazard.id())).filter(at -> at != step)
                .ifPresent(at -> known.computeIfAbsent(at, any -> new ArrayList<>()).add(Formats.small(hazard.name()))));
        return String.join(" ", known.entrySet().stream().map(e -> "%s: as at step %d.".formatted(Formats.capital(String.join("; ", e.getValue())), e.getKey())).toList());
    }

    /** Those that no step has met: of the materials, for the wearer. */
    List<HandoutContent.Caution> rest(List<HazardNote> hazards) {
        return hazards.stream().filter(hazard -> !saidAt.containsKey(hazard.id())).map(this::caution).filter(caution -> !caution.sentences().isEmpty()).toList();
    }

    private HandoutContent.Caution caution(HazardNote hazard) {
        return new HandoutContent.Caution(hazard.name(), hazard.cautions().stream().filter(ReaderCautions::isForTheReader).limit(BESIDE_A_STEP).toList(), signs.ofHazard(hazard));
    }

    static boolean isForTheReader(String sentence) {
        return !TO_THE_TUTOR.matcher(sentence).find();
    }
}
