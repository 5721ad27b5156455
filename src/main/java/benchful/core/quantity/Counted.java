package benchful.core.quantity;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A thing that goods are counted by: a sheet of 70 x 50 cm, a card of 2 m, a tube of 9 ml, a pair, a metre off a
 * roll 140 cm wide. Where somebody writes only
 * "20 sheets", its size is not known until it is met by the material's own way to count ({@link Quantity#sized}).
 *
 * @param each how much one holds; null for a sheet, and where it is not known
 * @param sheet how large a sheet is, or a metre or yard off the roll; null for other things, and where it is not known
 */
public record Counted(Container container, @Nullable Quantity each, @Nullable Extent sheet) {
    private static final String NUMBER = "(\\d++(?:[.,]\\d++)?+)\\s*+";
    private static final String SYMBOL = "((?!x[\\s\\d])[A-Za-z]\\w*+)?+\\s*+";
    private static final Pattern WRITTEN = Pattern.compile(
            "\\s*+([A-Za-z]++)\\s*+(?:of\\s++)?+(?:" + NUMBER + SYMBOL + "(?:[x×]\\s*+" + NUMBER + SYMBOL + ")?+)?+");
    private static final Pattern RUNNING = Pattern.compile("\\s*+([A-Za-z]++)\\s*+[x×]\\s*+" + NUMBER + SYMBOL);

    /** Reads {@code sheets 70 x 50 cm}, {@code cards of 2 m}, {@code m x 140 cm}, {@code dozen}; nothing where it is something else. */
    static Optional<Counted> parse(String written) {
        Matcher running = RUNNING.matcher(written);
        if (running.matches()) {
            return unit(running.group(1), null).flatMap(Container::running).flatMap(container -> running(container, running));
        }
        Matcher m = WRITTEN.matcher(written);
        return m.matches() ? Container.of(m.group(1)).flatMap(container -> of(container, m)) : Optional.empty();
    }

    private static Optional<Counted> of(Container container, Matcher m) {
        if (m.group(2) == null) {
            return Optional.of(container.pieces() == 0 ? new Counted(container, null, null) : new Counted(container, Quantity.of(container.pieces(), Unit.PIECE), null));
        }
        if (container.pieces() != 0 || (container == Container.SHEET) != (m.group(4) != null)) {
            return Optional.empty();
        }
        return container == Container.SHEET ? sheet(m) : unit(m.group(3), Unit.PIECE).map(u -> amount(m.group(2), u)).filter(q -> q.signum() > 0)
                .map(q -> new Counted(container, q, null));
    }

    private static Optional<Counted> running(Container container, Matcher m) {
        return unit(m.group(3), null).filter(u -> u.dimension().equals(Dimension.LENGTH)).map(u -> amount(m.group(2), u)).filter(width -> width.signum() > 0)
                .map(width -> new Counted(container, null, new Extent(Quantity.of(1, Objects.requireNonNull(container.run())), width)));
    }

    /** An edge that is written without a unit has the other's. */
    private static Optional<Counted> sheet(Matcher m) {
        Optional<Unit> across = unit(m.group(5), null);
        Optional<Unit> along = m.group(3) == null ? across : unit(m.group(3), null);
        if (along.isEmpty() || across.isEmpty() || !along.get().dimension().equals(Dimension.LENGTH) || !across.get().dimension().equals(Dimension.LENGTH)) {
            return Optional.empty();
        }
        Quantity length = amount(m.group(2), along.get());
        Quantity width = amount(m.group(4), across.get());
        return length.signum() > 0 && width.signum() > 0 ? Optional.of(of(new Extent(length, width))) : Optional.empty();
    }

    private static Optional<Unit> unit(@Nullable String symbol, @Nullable Unit otherwise) {
        return symbol == null ? Optional.ofNullable(otherwise) : Unit.of(symbol).filter(u -> u != Unit.PERCENT);
    }

    private static Quantity amount(String number, Unit unit) {
        return new Quantity(new BigDecimal(number.replace(',', '.')), unit);
    }

    public static Counted of(Extent sheet) {
        return new Counted(Container.SHEET, null, sheet);
    }

    /** True for what runs off a roll of a known width, so that metres that are bought together lie in one length. */
    public boolean runs() {
        return run() != null;
    }

    /** So many metres or yards off the roll, in one length. */
    public Extent length(BigDecimal many) {
        Extent one = Objects.requireNonNull(run());
        return new Extent(new Quantity(one.length().amount().multiply(many), one.length().unit()), one.width());
    }

    /** A metre or yard of what runs off a roll; null for other things. */
    @Nullable Extent run() {
        return container.run() == null ? null : sheet;
    }

    /** True where it is known how much one is. */
    public boolean sized() {
        return each != null || sheet != null;
    }

    Dimension dimension() {
        return sheet != null ? Dimension.AREA : each != null ? each.dimension() : Dimension.UNSIZED;
    }

    BigDecimal base() {
        return sheet != null ? sheet.area().base() : each != null ? each.base() : BigDecimal.ONE;
    }

    /** "sheet" or "sheets". */
    public String word(BigDecimal number) {
        return number.compareTo(BigDecimal.ONE) == 0 ? container.one() : container.many();
    }

    /** As it is read back, for one or for many: {@code 70 cm x 50 cm}, {@code of 2 m}; empty where nothing needs to be said. */
    String size() {
        return sheet != null ? " " + sheet : each == null || container.pieces() != 0 ? "" : " of " + each;
    }

    @Override
    public String toString() {
        return container.run() != null && sheet != null ? container.run() + " x " + sheet.width() : container.one() + size();
    }
}
