package benchful.web;

import benchful.core.quantity.Counted;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import io.quarkus.qute.TemplateExtension;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Numbers, times and amounts as people read them, in the {@link Writing} that applies: the only place where a value becomes text on a page or a print-out. */
@TemplateExtension
public final class Formats {
    private static final Quantity FINE = Quantity.of(10, Unit.G);
    private static final Pattern PARTED = Pattern.compile("(?<=\\d) (?=(?:(?:mm|cm|m|g|kg|ml|l|in|ft|yd|oz|fl|lb|days|h|min|s)\\b|°C|%|×|x\\b))|(?<=\\d[ \u00a0](?:[x×]|days|h|min)) (?=\\d)|(?<=\\d[ \u00a0][x×]) |(?<=\\d) (?=\\d{1,2}/\\d)");

    /** How values within sentences are read. */
    private static final Sentence.Pen PEN = new Sentence.Pen() {
        @Override
        public String words(Quantity amount) {
            return Formats.words(amount);
        }

        @Override
        public String words(LocalTime time) {
            return Formats.words(time);
        }

        @Override
        public String words(LocalDateTime moment) {
            return Formats.words(moment);
        }
    };

    private Formats() {}

    /** Words in which no line ends between a number and its unit, or within a time such as 2 min 46 s. */
    public static String unparted(String words) {
        return PARTED.matcher(words).replaceAll("\u00a0");
    }

    /** "18:30", with its day where that is another than the day of the moment before it. */
    public static String clockAfter(LocalDateTime moment, LocalDateTime before) {
        return moment.toLocalDate().equals(before.toLocalDate()) ? clock(moment) : words(moment);
    }

    /** "6 Mar"; "Mar 6" in American writing. */
    public static String day(LocalDate date) {
        return Writing.current().shortDay().format(date);
    }

    /** "Sat 6 Mar 2027"; "Sat, Mar 6, 2027" in American writing. */
    public static String words(LocalDate date) {
        return Writing.current().day().format(date);
    }

    /** "18:30"; "6:30 PM" in American writing. */
    public static String words(LocalTime time) {
        return Writing.current().clock().format(time);
    }

    /** "Sat 6 Mar 2027, 18:30". */
    public static String words(LocalDateTime moment) {
        return words(moment.toLocalDate()) + ", " + words(moment.toLocalTime());
    }

    /** "18:30", without its day. */
    public static String clock(LocalDateTime moment) {
        return words(moment.toLocalTime());
    }

    /** "1 h 30 min", rounded to whole minutes from five minutes on. */
    public static String words(Duration time) {
        boolean fine = time.abs().compareTo(Duration.ofMinutes(5)) < 0;
        return Times.words(fine ? time : Duration.ofMinutes(Math.round(time.toSeconds() / 60.0)));
    }

    /** "12", "1.25 m", "0.035 g": at most two decimals, or two digits where it is smaller; pieces without their unit. */
    public static String words(Quantity quantity) {
        return quantity.unit().counted() == null ? measure(quantity) : counted(quantity);
    }

    /** "20 sheets 70 × 50 cm", "3 cards of 2 m"; what is a part of one is measured, but of a sheet. */
    private static String counted(Quantity quantity) {
        Counted thing = quantity.unit().counted();
        if (thing.each() != null && !quantity.whole()) {
            return words(quantity.in(thing.each().unit()));
        }
        if (thing.runs()) {
            return "%s %s".formatted(number(quantity.amount(), 2), running(thing));
        }
        return "%s %s%s".formatted(number(quantity.amount(), 2), thing.word(quantity.amount()), size(thing));
    }

    /** "m × 140 cm": of a roll so wide. */
    private static String running(Counted thing) {
        return "%s × %s".formatted(thing.sheet().length().unit().symbol(), words(thing.sheet().width()));
    }

    private static String size(Counted thing) {
        if (thing.sheet() != null) {
            return " " + words(thing.sheet());
        }
        return thing.each() == null || thing.container().pieces() != 0 ? "" : " of " + words(thing.each());
    }

    /** "sheets 70 × 50 cm", "cm": what something is counted in. */
    public static String words(Unit unit) {
        Counted thing = unit.counted();
        return thing == null ? unit.symbol() : thing.runs() ? running(thing) : thing.container().many() + size(thing);
    }

    /** "sheet", "m", "piece": what one of the unit is called where its size is known. */
    public static String one(Unit unit) {
        return unit.counted() != null ? unit.counted().container().one() : unit == Unit.PIECE ? "piece" : unit.symbol();
    }

    private static String measure(Quantity quantity) {
        int zeros = quantity.amount().scale() - quantity.amount().precision();
        String number = figure(quantity, Math.max(2, Math.min(zeros, 8) + 2));
        String unit = quantity.unit().symbol();
        return switch (unit) {
            case "pcs" -> number;
            case "mm2", "cm2", "m2", "in2" -> number + " " + unit.replace("2", "²");
            default -> number + " " + unit;
        };
    }

    /** "7 1/2" of inches in American writing, as far as a rule shows it. */
    private static String figure(Quantity quantity, int places) {
        boolean inches = quantity.unit() == Unit.INCH && Writing.current() == Writing.AMERICAN;
        return (inches ? UsMeasures.exact(quantity.amount()) : Optional.<String>empty()).orElseGet(() -> number(quantity.amount(), places));
    }

    /** "12 pcs", "1.25 m": with its unit even where it counts pieces. */
    public static String withUnit(Quantity quantity) {
        return withUnit(words(quantity), quantity);
    }

    /** @param words of the quantity, which say no pieces */
    public static String withUnit(String words, Quantity quantity) {
        return quantity.unit() == Unit.PIECE ? words + " " + Unit.PIECE.symbol() : words;
    }

    /** As it is measured out where it was written in inches, ounces and the like; in American writing by the fractions of a rule. */
    public static String asWritten(Quantity amount) {
        return Writing.current() == Writing.AMERICAN ? UsMeasures.measured(amount) : words(amount);
    }

    /** The same of a rectangle. */
    public static String asWritten(Extent rectangle) {
        boolean inches = rectangle.length().unit() == Unit.INCH && Writing.current() == Writing.AMERICAN;
        return inches ? "%s × %s in".formatted(UsMeasures.nearest(rectangle.length().amount()), UsMeasures.nearest(rectangle.width().in(Unit.INCH).amount())) : words(rectangle);
    }

    /** As a hand at the bench measures it: lengths in millimetres below 10 cm, then centimetres, from 2 m on metres; below 10 g to the tenth that its scale shows. In American writing inches stay inches. */
    public static String measured(Quantity amount) {
        if (Writing.current() == Writing.AMERICAN && amount.unit().isCustomary()) {
            return UsMeasures.measured(amount);
        }
        if (amount.unit() == Unit.G && amount.amount().stripTrailingZeros().scale() <= 0 && amount.signum() > 0 && amount.compareTo(FINE) < 0) {
            return words(amount).replace(" g", ".0 g");
        }
        if (!amount.dimension().equals(Dimension.LENGTH) || amount.unit().counted() != null && amount.whole()) {
            return words(amount);
        }
        Quantity shown = amount.in(Unit.M);
        if (amount.compareTo(Quantity.of(10, Unit.CM)) < 0) {
            shown = amount.in(Unit.MM);
        } else if (amount.compareTo(Quantity.of(2, Unit.M)) < 0) {
            shown = amount.in(Unit.CM);
        }
        return number(shown.amount(), shown.unit() == Unit.M ? 2 : 1) + " " + shown.unit().symbol();
    }

    /** "3 of 102 × 76 mm"; of one, its size alone. */
    public static String several(int pieces, String size) {
        return pieces == 1 ? size : "%d of %s".formatted(pieces, size);
    }

    /** "60 × 40 mm", both in the unit of the length. */
    public static String words(Extent rectangle) {
        return "%s × %s".formatted(figure(rectangle.length(), 2), words(rectangle.width().in(rectangle.length().unit())));
    }

    /** A reason with its amounts and moments as people read them. */
    public static String words(Sentence sentence) {
        return sentence.text(PEN);
    }

    /** A price that may go below the penny: "£0.035". */
    public static String words(BigMoney price) {
        NumberFormat format = currency(price.getCurrencyUnit());
        format.setMaximumFractionDigits(6);
        return format.format(price.getAmount());
    }

    /** "£12.50", "$12.50" in American writing; the code before the amount where the currency has no sign of its own here. */
    public static String words(Money money) {
        return currency(money.getCurrencyUnit()).format(money.getAmount());
    }

    private static NumberFormat currency(CurrencyUnit unit) {
        NumberFormat format = NumberFormat.getCurrencyInstance(Writing.current().locale());
        format.setCurrency(Currency.getInstance(unit.getCode()));
        return format;
    }

    /** Grouped by thousands, rounded half up to at most {@code places} decimals, with a true minus sign. */
    public static String number(BigDecimal value, int places) {
        NumberFormat format = NumberFormat.getNumberInstance(Locale.UK);
        format.setMaximumFractionDigits(places);
        format.setRoundingMode(RoundingMode.HALF_UP);
        String written = format.format(value);
        return written.equals("-0") ? "0" : written.replace('-', '−');
    }

    /** "320 kB", "1.4 MB": of a file, in thousands as file managers count. */
    public static String size(long bytes) {
        boolean small = bytes < 1_000_000;
        return number(BigDecimal.valueOf(bytes, small ? 3 : 6), small ? 0 : 1) + (small ? " kB" : " MB");
    }

    /** "89 %" of a chance, rounded down: 89.9 % are not nine in ten. */
    public static String chance(double share) {
        return (long) Math.floor(100 * share + 1e-9) + " %";
    }

    /** "125 %". */
    public static String percent(double ratio) {
        return Math.round(100 * ratio) + " %";
    }

    /** "1 student", "9 students", "2 classes". */
    public static String counted(int number, String noun) {
        return number + " " + (number == 1 ? noun : noun.endsWith("s") ? noun + "es" : noun + "s");
    }

    /** "1 call", "1.5 calls". */
    public static String counted(BigDecimal number, String noun) {
        return number(number, 2) + " " + (number.compareTo(BigDecimal.ONE) == 0 ? noun : noun + "s");
    }

    /** The program's own words as the writing spells them; quoted words of others stay. */
    public static String spelt(String words) {
        return Writing.current().speltAroundQuotes(words);
    }

    /** An enumeration's word: "make", "not yet". */
    public static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The same with a capital, for headings and cells. */
    public static String title(Enum<?> value) {
        return capital(word(value));
    }

    /** Words as a sentence begins with them. */
    public static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** Words as they go on within a sentence. */
    public static String small(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }
}
