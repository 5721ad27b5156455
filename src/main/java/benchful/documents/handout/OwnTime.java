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

    private Duration usual(Step step) {
        BigDecimal times = piece.repeats().getOrDefault(step.id(), BigDecimal.ONE).setScale(0, RoundingMode.CEILING).max(BigDecimal.ONE);
        return Duration.ofSeconds(Math.round(step.student().usual().toSeconds() * times.doubleValue() * pace));
    }

    /** To whole minutes, above twenty to five. */
    private static Duration rounded(Duration time) {
        long unit = time.compareTo(LONG) > 0 ? 300 : time.compareTo(Duration.ofMinutes(1)) < 0 ? 1 : 60;
        return Duration.ofSeconds(Math.round((double) time.toSeconds() / unit) * unit);
    }
}
