package benchful.findings;

import benchful.core.learning.WasteRate;
import benchful.projects.ProjectSpec;
import io.quarkus.qute.TemplateData;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What classes showed of what spoils of one material.
 *
 * @param material as the project's lines name it
 * @param now the allowance with which the project is planned
 * @param taken things that all kits of the last class took
 * @param byChance whether the material is brought with a probability, so that the allowance is the chance that one spoils
 */
@TemplateData
public record MaterialFinding(String material, Setting now, WasteRate rate, double taken, boolean byChance, String evidence, boolean refused) implements ForSheet {
    static final String KEY = "material:";
    private static final BigDecimal MOST = BigDecimal.valueOf(95);

    @Override
    public String key() {
        return KEY + material;
    }

    @Override
    public String title() {
        return material;
    }

    @Override
    public int classes() {
        return rate.classes();
    }

    /** So much that for the last class it would have been enough with nine chances in ten, in whole percent. */
    @Override
    public Setting proposed() {
        double share = byChance ? rate.share() : rate.enough(taken) / taken;
        return Setting.waste(BigDecimal.valueOf(100 * share).setScale(0, byChance ? RoundingMode.HALF_UP : RoundingMode.CEILING).min(MOST));
    }

    /** Whether another number of things would have been brought for the last class. */
    @Override
    public boolean differs() {
        return brought(now) != brought(proposed());
    }

    private long brought(Setting allowance) {
        return byChance ? Math.round(allowance.waste().doubleValue()) : (long) Math.ceil(allowance.waste().doubleValue() / 100 * taken - 1e-9);
    }

    public double share() {
        return rate.share();
    }

    public double least() {
        return rate.after().least();
    }

    public double most() {
        return rate.after().most();
    }

    @Override
    public ProjectSpec in(ProjectSpec project) {
        BigDecimal waste = proposed().waste();
        return project.withMaterials(project.materials().stream().map(line -> Spoilt.learns(line) && line.material().equals(material) ? line.withWaste(waste) : line).toList());
    }
}
