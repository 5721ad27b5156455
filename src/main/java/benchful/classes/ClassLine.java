package benchful.classes;

import benchful.core.SkillLevel;
import io.quarkus.qute.TemplateData;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * A class as a line of a list, read without its setup and its project's sheet.
 *
 * @param title     its own, or its project's name
 * @param venue     null while the room is not known
 * @param headcount null where what is stored can't be read
 * @param skill     the level as it is written; null where what is stored can't be read
 */
@TemplateData
public record ClassLine(
        long id, String title, long project, LocalDateTime startsAt, LocalDateTime endsAt, String venue, Long venueId, String headcount, String skill, boolean sample) {

    /** Null where it can't be read. */
    public SkillLevel level() {
        return Optional.ofNullable(skill).flatMap(s -> Arrays.stream(SkillLevel.values()).filter(l -> l.name().equals(s.toUpperCase(Locale.ROOT))).findFirst()).orElse(null);
    }
}
