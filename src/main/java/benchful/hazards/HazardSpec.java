package benchful.hazards;

import benchful.catalogue.HazardName;
import benchful.venues.VenueSpec;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Matching;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.Spec;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.List;

/**
 * A hazard in plain words.
 *
 * @param id short name, by which materials, tools and steps carry it: {@code solvent-vapour}
 * @param who may be harmed, in words
 * @param harm what can happen, a sentence
 * @param cautions sentences, the weightiest first
 * @param ghs statements usual for the material (UN GHS); the label on the bottle decides
 * @param signal usual signal word of the material's label (UN GHS); null where it bears none
 * @param precautions precautionary statements usual on the material's label (CLP Annex IV)
 * @param pictograms of the GHS
 * @param signs of ISO 7010
 * @param ventilation what the room's air needs; null where nothing is said
 * @param firstResponse what to do first if it happens
 * @param minimumAge youngest age in years at which a closely supervised student usually does this; null for none
 * @param severity starting value for a risk assessment, 1 to 5; null where not judged
 * @param likelihood the same
 * @param sources where each part comes from, or that there is no source: {@link Sourced} reads them
 */
@Spec(name = "hazard-1", title = "A hazard of the bench, with its usual cautions")
public record HazardSpec(
        @Required @HazardName @Mend("Give a short name of small letters, digits and -, such as “sharp-tools”.") String id,
        @Required @Filled(120) @Mend("Give the hazard a name.") String name,
        @Length(most = 300) @Mend("Say in up to 300 characters who may be harmed.") String who,
        @Required @Filled(600) @Mend("Say in up to 600 characters what can happen.") String harm,
        @Required @Length(least = 1, most = 30) @Mend("Write at least one caution.") List<@Advice String> cautions,
        @Length(most = 20) List<Statement> ghs,
        Signal signal,
        @Length(most = 20) List<Statement> precautions,
        @Length(most = 9) List<Sign> pictograms,
        @Length(most = 20) List<Sign> signs,
        @Length(most = 20) List<@Advice String> protectiveGear,
        VenueSpec.Ventilation ventilation,
        @Required @Length(least = 1, most = 20) @Mend("Write at least one line on what to do first.") List<@Advice String> firstResponse,
        @Range(from = 3, to = 99) @Mend("Give the youngest age in whole years, from 3 to 99.") Integer minimumAge,
        @Advice String storage,
        @Advice String disposal,
        @Grade Integer severity,
        @Grade Integer likelihood,
        @Length(most = 20) List<@Advice String> sources) {

    public HazardSpec {
        cautions = copy(cautions);
        ghs = copy(ghs);
        precautions = copy(precautions);
        pictograms = copy(pictograms);
        signs = copy(signs);
        protectiveGear = copy(protectiveGear);
        firstResponse = copy(firstResponse);
        sources = copy(sources);
    }

    /** The word that a label says first. */
    public enum Signal { DANGER, WARNING }

    /** A hazard statement or a precautionary one: H317, May cause an allergic skin reaction. */
    public record Statement(
            @Required @Code String code, @Required @Length(least = 1, most = 300) @Mend("Write the statement’s words after its code.") String text) {}

    /** A sign or pictogram: W021, Flammable material. */
    public record Sign(
            @Required @Code String code, @Required @Length(least = 1, most = 120) @Mend("Write the sign’s name after its code.") String name) {}

    /** A line of what is said about it. */
    @Length(least = 1, most = 600)
    @Mend("Write at most 600 characters a line.")
    @Target(ElementType.TYPE_USE)
    @Retention(RetentionPolicy.RUNTIME)
    @interface Advice {}

    @Matching("^[A-Z0-9+]{2,20}$")
    @Mend("Begin with the code in capitals, such as H317 or W021.")
    @Target(ElementType.TYPE_USE)
    @Retention(RetentionPolicy.RUNTIME)
    @interface Code {}

    @Range(from = 1, to = 5)
    @Mend("Give a whole number from 1 to 5.")
    @Target(ElementType.TYPE_USE)
    @Retention(RetentionPolicy.RUNTIME)
    @interface Grade {}

    private static <T> List<T> copy(List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }
}
