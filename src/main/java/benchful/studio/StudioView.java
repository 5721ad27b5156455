package benchful.studio;

import benchful.core.SkillLevel;
import benchful.web.Formats;
import benchful.web.Writing;
import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.util.Arrays;
import java.util.List;

/**
 * What the page of the studio shows.
 *
 * @param logo whether there is a picture of its sign
 * @param fault what was wrong with a picture that was brought; null for nothing
 */
@TemplateData
public record StudioView(SpecForm form, boolean logo, String fault) {

    public List<String> papers() {
        return words(Paper.values());
    }

    public List<String> units() {
        return words(StudioSpec.Units.values());
    }

    public List<String> levels() {
        return words(SkillLevel.values());
    }

    public List<String> writings() {
        return words(Writing.values());
    }

    /** What stands for a name of the tax that is not given. */
    public String taxHint() {
        return Writing.current() == Writing.AMERICAN ? "Empty: sales tax." : "Empty: VAT. Elsewhere GST, IVA, MwSt., sales tax.";
    }

    private static List<String> words(Enum<?>... values) {
        return Arrays.stream(values).map(Formats::word).toList();
    }
}
