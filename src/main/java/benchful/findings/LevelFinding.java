package benchful.findings;

import benchful.core.SkillLevel;
import benchful.core.learning.LevelPace;
import benchful.projects.ProjectSpec;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What classes showed of how long a level takes against those whose times the project gives.
 *
 * @param typed how many times as long the tutor typed; what was taken from classes is no typing
 * @param evidence the reviews that it comes from, each with what it says
 * @param refused whether the tutor refused just this and nothing new is known
 */
@TemplateData
public record LevelFinding(SkillLevel level, SkillLevel timesOf, Setting now, Setting typed, LevelPace pace, String evidence, boolean refused) implements ForSheet {
    static final String KEY = "level:";

    /** Nobody types a pace closer than to a twentieth. */
    private static final BigDecimal GRAIN = new BigDecimal("0.05");

    private static final BigDecimal MOST = BigDecimal.valueOf(5);

    static String key(SkillLevel level) {
        return KEY + level.word();
    }

    @Override
    public String key() {
        return key(level);
    }

    /** "Pace of the experienced". */
    @Override
    public String title() {
        return "Pace of " + (level == SkillLevel.EXPERIENCED ? "the experienced" : level.word() + "s");
    }

    @Override
    public Setting proposed() {
        BigDecimal grains = BigDecimal.valueOf(typed.pace().doubleValue() * pace.multiple()).divide(GRAIN, 0, RoundingMode.HALF_UP).max(BigDecimal.ONE);
        return Setting.pace(grains.multiply(GRAIN).min(MOST));
    }

    @Override
    public int classes() {
        return pace.classes();
    }

    @Override
    public boolean differs() {
        return proposed().pace().subtract(now.pace()).abs().compareTo(GRAIN) >= 0;
    }

    /** "1.55": with nine chances in ten they take at least so many times as long. */
    public String least() {
        return times(pace.least());
    }

    public String most() {
        return times(pace.most());
    }

    private String times(double multiple) {
        return Formats.number(typed.pace().multiply(BigDecimal.valueOf(multiple)), 2);
    }

    @Override
    public ProjectSpec in(ProjectSpec project) {
        return project.withPace(level, proposed().pace());
    }
}
