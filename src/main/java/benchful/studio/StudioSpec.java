package benchful.studio;

import benchful.core.SkillLevel;
import benchful.web.Writing;
import benchful.web.forms.fields.CurrencyCode;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Matching;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.ShortText;
import benchful.web.forms.fields.Spec;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The studio, as others read of it, and what new things begin with. All of it may be left empty.
 *
 * @param address its lines
 * @param deliverTo lines of the address to which goods are sent; null for the address
 * @param taxNumber its number for sales tax, as invoices carry it
 * @param taxName what sales tax is called in its country: VAT, GST, MwSt.
 * @param greeting the first line of an order
 * @param currency ISO 4217 code that new suppliers and classes begin with
 * @param paper that print-outs are made for unless another is chosen
 * @param units that print-outs are written in; null for those usual with the paper
 * @param level that new classes begin with; null for the project's
 * @param writing of days, clocks, inches and words on pages and paper; null for the British
 * @param buyMore where students buy more of the materials, printed at the end of handouts
 */
@Spec(name = "studio-1", title = "The studio: who teaches, and what new things begin with")
@RecordBuilder
public record StudioSpec(
        @Length(most = 120) @Mend("Write the name in at most 120 characters.") String name,
        @Length(most = 400) @Mend("Write the address in at most 400 characters.") String address,
        @Length(most = 400) @Mend("Write the address for deliveries in at most 400 characters.") String deliverTo,
        @Length(most = 120) @Matching("^\\s*$|@") @Mend("Give the address for mail, such as studio@example.com.") String mail,
        @Length(most = 60) @Mend("Write the telephone number in at most 60 characters.") String telephone,
        @Length(most = 200) @Mend("Write the address of the website in at most 200 characters.") String website,
        @Length(most = 40) @Mend("Write the number in at most 40 characters.") String taxNumber,
        @Length(most = 20) @Mend("Name the tax in at most 20 characters, such as VAT.") String taxName,
        @ShortText String greeting,
        @CurrencyCode String currency,
        Paper paper,
        Units units,
        SkillLevel level,
        Writing writing,
        @Length(most = 300) @Mend("Say in at most 300 characters where to buy more.") String buyMore) implements StudioSpecBuilder.With {
    /** Of which nothing is written down. */
    public static final StudioSpec NONE = StudioSpecBuilder.builder().build();

    private static final String GREETING = "Hello,";

    /** What amounts are written in on paper. */
    public enum Units {
        METRIC,
        CUSTOMARY
    }

    /** What sales tax is called. */
    public String tax() {
        return given(taxName) ? taxName.strip() : usualTax();
    }

    /** What it is called where nothing else is written down. */
    public String usualTax() {
        return writes().spelt("VAT");
    }

    public Writing writes() {
        return Objects.requireNonNullElse(writing, Writing.BRITISH);
    }

    /** What an order begins with. */
    public String hello() {
        return given(greeting) ? greeting.strip() : GREETING;
    }

    public String coin() {
        return Objects.requireNonNullElse(currency, "GBP");
    }

    public Paper printsOn() {
        return Objects.requireNonNullElse(paper, Paper.A4);
    }

    /** Whether print-outs on this paper are written in US customary units. */
    public boolean customary(Paper chosen) {
        return units == null ? chosen == Paper.LETTER : units == Units.CUSTOMARY;
    }

    /** Where students buy more of the materials, in a line; empty where nothing is known. */
    public String more() {
        return String.join(", ", lines(buyMore).toList());
    }

    /** Where goods are sent, in lines; null where nothing is known. */
    public String delivery() {
        return given(deliverTo) ? deliverTo.strip() : given(address) ? address.strip() : null;
    }

    /** The sender of a letter: name, address, and how to reach it; only what is known. */
    public List<String> sender() {
        return Stream.concat(Stream.concat(Stream.of(name).filter(StudioSpec::given), lines(address)), reached()).map(String::strip).toList();
    }

    /** Name, mail and the like in one line; empty where nothing is known. */
    public String line() {
        return String.join(" · ", Stream.concat(Stream.of(name).filter(StudioSpec::given), reached()).map(String::strip).toList());
    }

    private Stream<String> reached() {
        return Stream.of(telephone, mail, website).filter(StudioSpec::given);
    }

    /** Lines of a text that hold anything; none of null. */
    public static Stream<String> lines(String text) {
        return text == null ? Stream.of() : text.lines().map(String::strip).filter(line -> !line.isEmpty());
    }

    private static boolean given(String text) {
        return text != null && !text.isBlank();
    }
}
