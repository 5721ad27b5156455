package benchful.findings;

import benchful.core.learning.CallRate;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What classes showed of how often a student asks for help at a step. How long a call lasts is not learned.
 *
 * @param typed what the tutor typed; what was taken from classes is no typing, and a call of which nothing was typed is as long as those of the other steps
 * @param rate of students of the level whose times the steps give
 * @param evidence the reviews that it comes from, each with what it says
 * @param refused whether the tutor refused just this and nothing new is known
 */
@TemplateData
public record HelpFinding(Step step, Setting typed, CallRate rate, String evidence, boolean refused) implements ForSheet {
    static final String KEY = "help:";

    /** Nobody types calls closer than to a half an hour (common practice, no source). */
    private static final BigDecimal GRAIN = new BigDecimal("0.5");

    /** As many as a sheet may say. */
    private static final BigDecimal MOST = BigDecimal.valueOf(60);

    static String key(Step step) {
        return KEY + step.id();
    }

    @Override
    public String key() {
        return key(step);
    }

    /** "Help with Knot the strand". */
    @Override
    public String title() {
        return "Help with " + step.title();
    }

    @Override
    public Setting now() {
        return Setting.help(step.help());
    }

    @Override
    public Setting proposed() {
        BigDecimal grains = BigDecimal.valueOf(rate.after().mean()).divide(GRAIN, 0, RoundingMode.HALF_UP);
        return Setting.help(new Step.Help(grains.multiply(GRAIN).min(MOST), typed.help().lasts()));
    }

    @Override
    public int classes() {
        return rate.classes();
    }

    /** "3.4 times an hour". */
    public String usual() {
        return Formats.number(BigDecimal.valueOf(rate.after().mean()), 1) + " times an hour";
    }

    public String least() {
        return Formats.number(BigDecimal.valueOf(rate.after().least()), 1);
    }

    public String most() {
        return Formats.number(BigDecimal.valueOf(rate.after().most()), 1);
    }

    @Override
    public boolean differs() {
        return proposed().help().calls().subtract(now().help().calls()).abs().compareTo(GRAIN) >= 0;
    }

    /** What stands in the project once what is proposed is taken, or, where it was refused, what stands there. */
    Step.Help likely() {
        return open() ? proposed().help() : step.help();
    }

    @Override
    public ProjectSpec in(ProjectSpec project) {
        Step.Help help = new Step.Help(new BigDecimal(proposed().help().calls().stripTrailingZeros().toPlainString()), proposed().help().lasts());
        return project.withSteps(project.steps().stream().map(s -> s.id().equals(step.id()) ? s.withHelp(help) : s).toList());
    }
}
