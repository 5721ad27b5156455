package benchful.documents.handout;

import benchful.core.SkillLevel;
import benchful.core.lesson.StepKind;
import benchful.plans.materials.sizes.SizedPiece;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.web.Formats;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;

/** How long a step takes whoever reads about it: one student of her level at her piece, who waits for no tool and no other. */
final class OwnTime {
    private static final Duration LONG = Duration.ofMinutes(20);

    private final SizedPiece piece;
    private final double pace;

    OwnTime(ProjectSpec project, SizedPiece piece, SkillLevel level) {
        this.piece = piece;
        this.pace = project.pace(level);
    }

    /** "about 8 min", "about 1 h 45 min"; "10 min" of what all do together; empty for a wait, which says itself how long it is. */
    String words(Step step) {
        if (step.kind().isOwnWork()) {
            return "about " + Formats.words(rounded(usual(step)));
        }
        if (step.kind() == StepKind.HOMEWORK) {
            return "about " + Formats.words(step.lasts());
        }
        return (step.kind().isGathering() || step.kind() == StepKind.BETWEEN) && !step.lasts().isZero() ? Formats.words(step.lasts()) : "";
    }

    /** Of a make step, from the quick to the slow: "8 to 15 min", "45 min to 1 h 10 min". */
    String range(Step step) {
        Duration quick = rounded(own(step, step.student().quick()));
        Duration slow = rounded(own(step, step.student().slow()));
        boolean minutes = quick.toSecondsPart() == 0 && slow.compareTo(Duration.ofHours(1)) < 0;
        return quick.equals(slow) ? "about " + Formats.words(slow) : "%s to %s".formatted(minutes ? quick.toMinutes() : Formats.words(quick), Formats.words(slow));
    }

    private Duration usual(Step step) {
        return own(step, step.student().usual());
    }

    /** What a time of the project becomes for the piece and level. */
    private Duration own(Step step, Duration time) {
        BigDecimal times = piece.repeats().getOrDefault(step.id(), BigDecimal.ONE).setScale(0, RoundingMode.CEILING).max(BigDecimal.ONE);
        return Duration.ofSeconds(Math.round(time.toSeconds() * times.doubleValue() * pace));
    }

    /** To whole minutes, above twenty to five. */
    private static Duration rounded(Duration time) {
        long unit = time.compareTo(LONG) > 0 ? 300 : time.compareTo(Duration.ofMinutes(1)) < 0 ? 1 : 60;
        return Duration.ofSeconds(Math.round((double) time.toSeconds() / unit) * unit);
    }
}
