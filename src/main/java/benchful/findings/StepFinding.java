package benchful.findings;

import benchful.core.learning.StepPace;
import benchful.core.learning.StepPace.Seen;
import benchful.plans.pictures.PacePicture;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import io.quarkus.qute.TemplateData;
import java.time.Duration;
import java.util.List;

/**
 * What classes showed of one step.
 *
 * @param typed what the tutor typed; what was taken from classes is no typing
 * @param evidence the reviews that it comes from, each with what it says
 * @param refused whether the tutor refused just this and nothing new is known
 */
@TemplateData
public record StepFinding(Step step, Setting typed, StepPace pace, String evidence, boolean refused) implements ForSheet {
    /** Less is not worth a change of the sheet (common practice, no source). */
    private static final double WORTH_A_CHANGE = 0.03;

    private static final double SURE = 0.8;

    @Override
    public String key() {
        return step.id();
    }

    @Override
    public String title() {
        return step.title();
    }

    @Override
    public Setting now() {
        return Setting.of(step);
    }

    @Override
    public Setting proposed() {
        return typed.each(pace::of);
    }

    @Override
    public boolean differs() {
        double change = proposed().against(now());
        return change > 0 && Math.abs(change - 1) >= WORTH_A_CHANGE;
    }

    /** Whether it runs over at the minutes that stand in the project, and how sure that is. */
    public double chanceOfRunningOver() {
        return pace.chanceOfRunningOver(now().against(typed));
    }

    public boolean runsOver() {
        return chanceOfRunningOver() >= SURE;
    }

    @Override
    public int classes() {
        return pace.seen().size();
    }

    /** In how many of the classes somebody counted who had finished when. */
    public int counted() {
        return (int) pace.seen().stream().filter(s -> s.precision() != 1).count();
    }

    /** "5 min to 6 min 20 s": where the true middle lies with nine chances in ten. */
    public Duration least() {
        return time(pace.least());
    }

    public Duration most() {
        return time(pace.most());
    }

    public Duration middle() {
        return time(pace.multiple());
    }

    private Duration time(double multiple) {
        return Duration.ofSeconds(Math.round(typed.middle().toSeconds() * multiple));
    }

    public String picture() {
        List<Double> seen = pace.seen().stream().map(Seen::multiple).toList();
        return PacePicture.of(step.id(), step.title(), typed.middle(), StepPace.PRIOR, pace.after(), seen);
    }

    @Override
    public ProjectSpec in(ProjectSpec project) {
        return project.withSteps(project.steps().stream().map(s -> s.id().equals(step.id()) ? proposed().in(s) : s).toList());
    }
}
