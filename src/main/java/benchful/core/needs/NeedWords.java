package benchful.core.needs;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.util.Locale;

/** The sentences that go with a need. */
final class NeedWords {
    private NeedWords() {}

    static Sentence take(Take take) {
        String who = who(take) + (take.size() == null ? "" : " in size “" + take.size() + "”");
        String verb = take.kits() == 1 ? "takes" : "take";
        String each = take.kits() == 1 ? "" : " each: %s in all";
        String what = take.pieces() == null ? "%s" : counted(take.pieces(), "piece") + (take.rectangle() == null ? " of %s" : " of " + take.rectangle() + " (%s)");
        String words = "%s %s " + what + each + ".";
        return take.kits() == 1
                ? Sentence.of(words, who, verb, take.each())
                : Sentence.of(words, who, verb, take.each(), take.amount());
    }

    static Sentence shared(Quantity amount, int servings) {
        return servings == 1 ? Sentence.of("%s serve the whole class.", amount)
                : Sentence.of("%s is there %s times, once for some students each: %s in all.", amount, servings, amount.times(servings));
    }

    static Sentence risk(Allowance.Confidence risk, int needed, int brought) {
        double chance = Spoilage.enough(needed, brought, risk.spoils().movePointLeft(2).doubleValue());
        return Sentence.of("Of %s brought, %s stay good with a chance of %s; %s was asked. Each spoils with a chance of %s %%.",
                brought, needed, String.format(Locale.ROOT, "%.3f", chance), risk.confidence().toPlainString(), risk.spoils().toPlainString());
    }

    static String label(Take take) {
        return switch (take.taker()) {
            case STUDENT -> take.size() == null ? "student" : take.size();
            case DEMONSTRATION -> "demonstration";
            case SPARE -> "spare kit";
            case SHARED -> "bench";
        };
    }

    static String counted(int n, String noun) {
        return n + " " + noun + (n == 1 ? "" : "s");
    }


    private static String who(Take take) {
        return switch (take.taker()) {
            case STUDENT -> counted(take.kits(), "student");
            case DEMONSTRATION -> take.kits() == 1 ? "The demonstration piece" : counted(take.kits(), "demonstration piece");
            case SPARE -> counted(take.kits(), "spare kit");
            case SHARED -> take.kits() == 1 ? "The whole class" : take.kits() + " groups of students";
        };
    }
}
