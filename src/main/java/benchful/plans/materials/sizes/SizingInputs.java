package benchful.plans.materials.sizes;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.core.sizing.Arrangement;
import benchful.core.sizing.BeadRun;
import benchful.core.sizing.Knots;
import benchful.core.sizing.Mix;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** The values of one working, evaluated, as its engine asks for them. Messages name the value that must be mended. */
record SizingInputs(Map<String, Quantity> given, List<Bead> beads) {

    /** A run of the pattern with its size worked out. */
    record Bead(String bead, Quantity size, int count) {}

    Quantity get(String name) {
        return given.get(name);
    }

    Quantity length(String name) {
        return length(name, Quantity.zero(Unit.MM));
    }

    Quantity length(String name, Quantity otherwise) {
        return given.getOrDefault(name, otherwise);
    }

    boolean flag(String name) {
        return given.containsKey(name) && given.get(name).signum() > 0;
    }

    BigDecimal number(String name, int otherwise) {
        return given.containsKey(name) ? given.get(name).base() : BigDecimal.valueOf(otherwise);
    }

    Integer whole(String name, Integer otherwise) {
        if (!given.containsKey(name)) {
            return otherwise;
        }
        try {
            return given.get(name).base().intValueExact();
        } catch (ArithmeticException e) {
            throw new IllegalArgumentException("“%s” must be a whole number, but is %s.".formatted(name, given.get(name)), e);
        }
    }

    List<BeadRun> pattern() {
        return beads.stream().map(b -> new BeadRun(b.bead(), b.size(), b.count())).toList();
    }

    Arrangement arrangement() {
        if (flag("graduated")) {
            return Arrangement.GRADUATED;
        }
        return flag("symmetric") ? Arrangement.MIRRORED : Arrangement.REPEATED;
    }

    Knots knots() {
        boolean between = flag("knots");
        int ends = whole("ends", 0);
        if (!between && ends == 0) {
            return Knots.none();
        }
        if (!given.containsKey("cord") && !(given.containsKey("knot") && given.containsKey("take"))) {
            throw new IllegalArgumentException("Knots need the diameter of the cord: give a value for “cord”.");
        }
        Quantity along = given.containsKey("knot") ? get("knot") : get("cord").times(Knots.ALONG);
        Quantity takes = given.containsKey("take") ? get("take") : get("cord").times(Knots.TAKES);
        return new Knots(between, ends, along, takes);
    }

    /** Null for a pour of one part. */
    Mix mix() {
        boolean weight = given.containsKey("weight_a") || given.containsKey("weight_b");
        boolean volume = given.containsKey("volume_a") || given.containsKey("volume_b");
        if (weight && volume) {
            throw new IllegalArgumentException("Give the parts by weight or by volume, not both: the two ratios differ.");
        }
        if (!weight && !volume) {
            return null;
        }
        String by = weight ? "weight" : "volume";
        if (!given.containsKey(by + "_a") || !given.containsKey(by + "_b")) {
            throw new IllegalArgumentException("A mix needs both parts: give “%s_a” and “%s_b”.".formatted(by, by));
        }
        return new Mix(weight ? Mix.By.WEIGHT : Mix.By.VOLUME, get(by + "_a").base(), get(by + "_b").base());
    }
}
