package benchful.core.needs;

import static java.util.Objects.requireNonNull;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Adds up what a class needs of a material: what each size takes, shared amounts, and on each line its allowance. Counted
 * materials are rounded up to whole pieces once, at the end. Of cut pieces the allowance is whole pieces of the line's
 * longest length, since a longer piece serves any student.
 */
public final class NeedsCalculator {
    private final NeedRequest request;
    private final List<CutNeed> cuts = new ArrayList<>();
    private final List<Sentence> reasons = new ArrayList<>();
    private Quantity net;
    private Quantity waste;

    private NeedsCalculator(NeedRequest request) {
        this.request = request;
        this.net = Quantity.zero(request.unit());
        this.waste = Quantity.zero(request.unit());
    }

    public static Need need(NeedRequest request) {
        NeedsCalculator calculator = new NeedsCalculator(request);
        request.lines().forEach(calculator::add);
        return calculator.answer();
    }

    private void add(NeedLine line) {
        if (line.shared() != null) {
            Quantity all = line.shared().times(line.servings());
            net = net.plus(all);
            reasons.add(NeedWords.shared(line.shared(), line.servings()));
            allow(line, all.in(request.unit()));
            return;
        }
        line.takes().stream().filter(take -> take.kits() > 0 && take.amount().signum() > 0).forEach(this::take);
        if (line.cut()) {
            allowPieces(line);
        } else {
            allow(line, line.takes().stream().map(Take::amount).reduce(Quantity.zero(request.unit()), Quantity::plus));
        }
    }

    private void take(Take take) {
        net = net.plus(take.amount());
        reasons.add(NeedWords.take(take));
        if (take.pieces() != null) {
            int count = Math.multiplyExact(take.kits(), take.pieces());
            cuts.add(new CutNeed(NeedWords.label(take), take.rectangle() == null ? take.each() : null, take.rectangle(), take.grain(), count));
        }
    }

    private void allow(NeedLine line, Quantity amount) {
        if (amount.signum() == 0) {
            return;
        }
        if (line.allowance() instanceof Allowance.Confidence risk && counted()) {
            int needed = amount.base().setScale(0, RoundingMode.CEILING).intValueExact();
            int brought = Spoilage.bring(needed, fraction(risk.spoils()), risk.confidence().doubleValue());
            waste = waste.plus(Quantity.of(brought - needed, Unit.PIECE));
            reasons.add(NeedWords.risk(risk, needed, brought));
        } else {
            share(amount, percent(line.allowance()));
        }
    }

    private void share(Quantity amount, BigDecimal percent) {
        Quantity added = amount.times(percent.movePointLeft(2)).measurable();
        waste = waste.plus(added);
        if (added.signum() > 0) {
            reasons.add(Sentence.of("%s %% is added for waste: %s.", percent.toPlainString(), added));
        }
    }

    private void allowPieces(NeedLine line) {
        int count = line.takes().stream().mapToInt(take -> Math.multiplyExact(take.kits(), requireNonNull(take.pieces()))).sum();
        int extra = count == 0 ? 0 : extra(line.allowance(), count);
        if (extra > 0 && line.takes().get(0).rectangle() != null) {
            reserve(line, extra);
        } else if (extra > 0) {
            Quantity longest = line.takes().stream().filter(Take::cuts).map(Take::each)
                    .max(Comparator.naturalOrder()).orElseThrow();
            cuts.add(new CutNeed(CutNeed.RESERVE, longest, extra));
            waste = waste.plus(longest.times(extra).in(request.unit()).measurable());
            reasons.add(Sentence.of("These are %s of the longest, %s.", NeedWords.counted(extra, "piece"), longest));
        }
    }

    /** As long as the longest and as wide as the widest, so that it serves anybody. */
    private void reserve(NeedLine line, int extra) {
        boolean grain = line.takes().get(0).grain();
        Extent all = line.takes().stream().filter(Take::cuts).map(t -> requireNonNull(t.rectangle()))
                .map(rectangle -> grain ? rectangle : rectangle.upright()).reduce(NeedsCalculator::around).orElseThrow();
        cuts.add(new CutNeed(CutNeed.RESERVE, all, grain, extra));
        waste = waste.plus(all.area().times(extra).in(request.unit()).measurable());
        reasons.add(Sentence.of("These are %s of %s x %s, large enough for anybody.", NeedWords.counted(extra, "piece"), all.length(), all.width()));
    }

    private static Extent around(Extent a, Extent b) {
        return new Extent(a.length().compareTo(b.length()) >= 0 ? a.length() : b.length(), a.width().compareTo(b.width()) >= 0 ? a.width() : b.width());
    }

    private int extra(Allowance allowance, int count) {
        if (allowance instanceof Allowance.Confidence risk) {
            int brought = Spoilage.bring(count, fraction(risk.spoils()), risk.confidence().doubleValue());
            reasons.add(NeedWords.risk(risk, count, brought));
            return brought - count;
        }
        BigDecimal percent = percent(allowance);
        int extra = percent.movePointLeft(2).multiply(BigDecimal.valueOf(count)).setScale(0, RoundingMode.CEILING).intValueExact();
        if (extra > 0) {
            reasons.add(Sentence.of("%s %% of %s is added for waste, rounded up.", percent.toPlainString(), NeedWords.counted(count, "piece")));
        }
        return extra;
    }

    private Need answer() {
        Quantity total = net.plus(waste);
        Quantity whole = counted() ? Quantity.ofBase(total.base().setScale(0, RoundingMode.CEILING), request.unit()) : total;
        if (!whole.equals(total)) {
            reasons.add(Sentence.of("%s is rounded up to %s.", total, whole));
        }
        return new Need(request.material(), net, whole.minus(net), whole, cuts, reasons);
    }

    private boolean counted() {
        return request.unit().dimension().equals(Dimension.COUNT);
    }

    private static BigDecimal percent(Allowance allowance) {
        return allowance instanceof Allowance.Percentage share ? share.percent() : ((Allowance.Confidence) allowance).spoils();
    }

    private static double fraction(BigDecimal percent) {
        return percent.movePointLeft(2).doubleValue();
    }
}
