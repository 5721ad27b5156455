package benchful.stock.lists;

import benchful.catalogue.MaterialRules;
import benchful.core.quantity.MeasuringRange;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.core.quantity.WrittenPrice;
import benchful.web.tables.Table;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the cells of one row and gathers what is wrong with them. An empty cell is read as null. */
public final class RowReader {
    private static final int LONGEST_NAME = 120;
    private static final BigDecimal HIGHEST_PRICE = BigDecimal.valueOf(1_000_000);

    private final Table.Row row;
    private final List<String> faults = new ArrayList<>();

    public RowReader(Table.Row row) {
        this.row = row;
    }

    /** The name of something; a fault where it is missing or too long. */
    public String name(String column) {
        String name = row.get(column);
        if (name.isEmpty() || name.length() > LONGEST_NAME) {
            faults.add("%s: give a name of up to %d characters.".formatted(column, LONGEST_NAME));
        }
        return name;
    }

    public String text(String column) {
        return row.get(column).isEmpty() ? null : row.get(column);
    }

    /** @param unit of a number that stands without one; null where it then counts pieces */
    public Quantity amount(String column, Unit unit) {
        String written = row.get(column);
        if (written.isEmpty()) {
            return null;
        }
        try {
            boolean bare = unit != null && written.matches("[\\d.,]+");
            Quantity amount = MeasuringRange.bounded(Quantity.parse(bare ? written + " " + unit.symbol() : written));
            amount = unit == null ? amount : amount.sized(unit);
            return amount.signum() < 0 ? faulty(column, "give an amount of 0 or more.") : amount;
        } catch (IllegalArgumentException e) {
            return faulty(column, e.getMessage());
        }
    }

    public Unit unit(String column) {
        String symbol = row.get(column);
        Optional<Unit> unit = Unit.parse(symbol).filter(MaterialRules::counts);
        return symbol.isEmpty() || unit.isPresent() ? unit.orElse(null) : faulty(column, "“%s” is no unit that materials are counted in here.".formatted(symbol));
    }

    /**
     * A price; a comma in it is a decimal one, unless it may as well part thousands.
     *
     * @param currency that the price is in; null where that is not known, which is a fault elsewhere
     */
    public BigDecimal price(String column, String currency) {
        String written = row.get(column);
        if (written.isEmpty()) {
            return null;
        }
        Optional<WrittenPrice> price = WrittenPrice.of(written).filter(p -> p.amount() == null || p.amount().compareTo(HIGHEST_PRICE) <= 0);
        if (price.isEmpty()) {
            return faulty(column, "“%s” is no price. Write a number from 0 to 1,000,000, such as 4.50.".formatted(written));
        }
        return price.get().unfit(currency).map(detail -> this.<BigDecimal>faulty(column, detail)).orElse(price.get().amount());
    }

    public Integer whole(String column) {
        String written = row.get(column);
        if (written.isEmpty()) {
            return null;
        }
        return written.matches("\\d{1,6}") ? Integer.valueOf(written) : faulty(column, "“%s” is no whole number.".formatted(written));
    }

    /** Adds what is wrong beyond the cells themselves; reads as null. */
    public <T> T faulty(String column, String detail) {
        faults.add("%s: %s".formatted(column, detail));
        return null;
    }

    public List<String> faults() {
        return List.copyOf(faults);
    }
}
