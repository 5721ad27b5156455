package benchful.core.quantity;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A price as people write it: {@code £4.50}, {@code 4,50 €}, {@code EUR 1.234,50}, {@code 4.50}. A sign that several countries use
 * means any of their currencies. Signs as in Unicode CLDR, codes of ISO 4217.
 *
 * @param written as it stands there
 * @param amount the number; null where it may be a thousand and more or a little over one
 * @param currencies codes of those it may be in; empty where it names none
 */
public record WrittenPrice(String written, @Nullable BigDecimal amount, Set<String> currencies) {
    private static final String DOLLARS = "USD AUD BBD BMD BND BSD BZD CAD FJD GYD HKD JMD KYD LRD NAD NZD SBD SGD SRD TTD TWD XCD ARS CLP COP MXN UYU";
    private static final Map<String, String> SIGNS = Map.ofEntries(
            Map.entry("€", "EUR"), Map.entry("£", "GBP EGP FKP GIP LBP SHP SYP"), Map.entry("$", DOLLARS), Map.entry("US$", "USD"), Map.entry("A$", "AUD"),
            Map.entry("C$", "CAD"), Map.entry("CA$", "CAD"), Map.entry("NZ$", "NZD"), Map.entry("HK$", "HKD"), Map.entry("S$", "SGD"), Map.entry("R$", "BRL"), Map.entry("R", "ZAR"),
            Map.entry("¥", "JPY CNY"), Map.entry("kr", "SEK NOK DKK ISK"), Map.entry("kr.", "DKK"), Map.entry("Fr.", "CHF"), Map.entry("zł", "PLN"), Map.entry("Kč", "CZK"),
            Map.entry("Ft", "HUF"), Map.entry("₹", "INR"), Map.entry("₩", "KRW"), Map.entry("₪", "ILS"), Map.entry("₺", "TRY"), Map.entry("₴", "UAH"), Map.entry("₽", "RUB"));
    private static final Set<String> CODES = Currency.getAvailableCurrencies().stream().map(Currency::getCurrencyCode).collect(Collectors.toUnmodifiableSet());
    private static final Pattern PRICE = Pattern.compile("((?:[^\\d\\s.,+-]{1,3}\\.?)?) ?(\\d[\\d.,' \\u2019]{0,30}) ?([^\\d\\s,+-]{0,3})");
    private static final Pattern PLAIN = Pattern.compile("\\d{1,15}(?:[.,]\\d{1,12})?");
    private static final Pattern PARTED = Pattern.compile("[1-9]\\d{0,2}(?:([.,' \\u2019])\\d{3})(?:\\1\\d{3})*(?:([.,])\\d{1,2})?");
    private static final int THOUSAND = 3;
    private static final Pattern EITHER = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");

    public WrittenPrice {
        currencies = Set.copyOf(currencies);
    }

    /** Nothing where it is no price. */
    public static Optional<WrittenPrice> of(String text) {
        String written = text.replace('\u00A0', ' ').replace('\u202F', ' ').strip();
        Matcher price = PRICE.matcher(written);
        if (!price.matches() || !price.group(1).isEmpty() && !price.group(3).isEmpty()) {
            return Optional.empty();
        }
        String number = price.group(2).strip();
        String sign = price.group(1) + price.group(3);
        Set<String> currencies = currencies(sign);
        boolean readable = PLAIN.matcher(number).matches() || isParted(number);
        return readable && (sign.isEmpty() || !currencies.isEmpty()) ? Optional.of(new WrittenPrice(written, amount(number, !sign.isEmpty()), currencies)) : Optional.empty();
    }

    /** True where it is a number and nothing else. */
    public boolean plain() {
        return PLAIN.matcher(written).matches();
    }

    private static Set<String> currencies(String sign) {
        String code = sign.toUpperCase(Locale.ROOT);
        return SIGNS.containsKey(sign) ? new TreeSet<>(List.of(SIGNS.get(sign).split(" "))) : CODES.contains(code) ? Set.of(code) : Set.of();
    }

    /** Thousands are parted by one sign, and the decimals by another. */
    private static boolean isParted(String number) {
        Matcher parted = PARTED.matcher(number);
        return parted.matches() && !parted.group(1).equals(parted.group(2));
    }

    /** A number alone, with a point and three decimals, is one that a program wrote. */
    private static @Nullable BigDecimal amount(String number, boolean signed) {
        if (EITHER.matcher(number).matches() && (signed || number.contains(","))) {
            return null;
        }
        if (PLAIN.matcher(number).matches()) {
            return new BigDecimal(number.replace(',', '.'));
        }
        int last = Math.max(number.lastIndexOf('.'), number.lastIndexOf(','));
        boolean decimals = last >= 0 && number.length() - last - 1 < THOUSAND;
        String whole = (decimals ? number.substring(0, last) : number).replaceAll("\\D", "");
        return new BigDecimal(decimals ? whole + "." + number.substring(last + 1) : whole);
    }

    /**
     * What is wrong with it.
     *
     * @param currency that the price is in; null where that is not known, and told elsewhere
     * @return nothing where it can be taken
     */
    public Optional<String> unfit(@Nullable String currency) {
        if (amount == null) {
            String number = written.replaceAll("[^\\d.,]", "");
            return Optional.of("“%s” may be a thousand and more or a little over one. Write it as %s or as %s.".formatted(written, number.replaceAll("\\D", ""), number.replace(',', '.')));
        }
        if (currency == null || currencies.isEmpty() || currencies.contains(currency)) {
            return Optional.empty();
        }
        return Optional.of("“%s” is not in %s, as this price is. Give it in %s, such as %s.".formatted(written, currency, currency, "4.50"));
    }
}
