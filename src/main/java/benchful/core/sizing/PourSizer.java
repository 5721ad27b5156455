package benchful.core.sizing;

import static java.util.Objects.requireNonNull;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Works out a pour. By weight: mass = volume x density, shared in the ratio of the weights. By volume: the volume is shared
 * in the ratio of the volumes; masses follow only where the densities are given. Volumes are taken to add up in mixing, and
 * the density of a mix of known parts is (a + b) / (a / density a + b / density b), a and b by weight. Source: arithmetic.
 */
public final class PourSizer {
    private PourSizer() {}

    public static Pour size(PourRequest request) {
        Quantity volume = request.volume();
        Quantity density = density(request);
        Quantity mass = density == null ? null : grams(volume.base().multiply(density.base()));
        Mix mix = request.mix();
        Pour.Part a = mix == null ? Pour.Part.UNKNOWN : part(request, mix, mass, mix.a(), request.densityA());
        Pour.Part b = mix == null ? Pour.Part.UNKNOWN : part(request, mix, mass, mix.b(), request.densityB());
        return new Pour(volume, mass, a, b, reasons(request, density, mass, a, b));
    }

    private static @Nullable Quantity density(PourRequest request) {
        if (request.density() != null || request.mix() == null || request.densityA() == null || request.densityB() == null) {
            return request.density();
        }
        Mix mix = request.mix();
        BigDecimal a = request.densityA().base();
        BigDecimal b = request.densityB().base();
        boolean weight = mix.by() == Mix.By.WEIGHT;
        BigDecimal mass = weight ? mix.sum() : mix.a().multiply(a).add(mix.b().multiply(b));
        BigDecimal volume = weight ? over(mix.a(), a).add(over(mix.b(), b)) : mix.sum();
        return Quantity.ofBase(over(mass, volume), Unit.G_PER_CM3);
    }

    private static Pour.Part part(PourRequest request, Mix mix, @Nullable Quantity mass, BigDecimal parts, @Nullable Quantity density) {
        BigDecimal sum = mix.sum();
        if (mix.by() == Mix.By.WEIGHT) {
            Quantity grams = grams(over(requireNonNull(mass).base().multiply(parts), sum));
            return new Pour.Part(grams, density == null ? null : volume(over(grams.base(), density.base())));
        }
        Quantity volume = volume(over(request.volume().base().multiply(parts), sum));
        return new Pour.Part(density == null ? null : grams(volume.base().multiply(density.base())), volume);
    }

    private static List<Sentence> reasons(PourRequest request, @Nullable Quantity density, @Nullable Quantity mass, Pour.Part a, Pour.Part b) {
        List<Sentence> reasons = new ArrayList<>();
        if (density != null && mass != null) {
            reasons.add(Sentence.of("%s at %s weighs %s.", request.volume(), density, mass));
        }
        if (request.mix() != null) {
            boolean weight = request.mix().by() == Mix.By.WEIGHT;
            reasons.add(Sentence.of("Mix %s: %s of part a and %s of part b. A ratio by %s is not one by %s.", request.mix().words(),
                    requireNonNull(weight ? a.mass() : a.volume()), requireNonNull(weight ? b.mass() : b.volume()), weight ? "weight" : "volume", weight ? "volume" : "weight"));
        }
        return reasons;
    }

    private static Quantity grams(BigDecimal base) {
        return new Quantity(base.round(Quantity.PRECISION), Unit.G);
    }

    private static Quantity volume(BigDecimal base) {
        return Quantity.ofBase(base, Unit.ML);
    }

    private static BigDecimal over(BigDecimal a, BigDecimal b) {
        return a.divide(b, Quantity.PRECISION);
    }
}
