package benchful.documents;

import benchful.hazards.HazardSheet;
import benchful.hazards.Signs;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts signs on paper: in the colours of their standards, or in low ink as outlines with black symbols. */
final class PrintedSigns {
    /** A ground painted all over, as signs of command, rescue and fire have. */
    private static final Pattern GROUND = Pattern.compile("(<(?:circle|rect) [^>]*)fill=\"#(?:005387|237f52|9b2423)\"/>");
    /** The ring and the bar of a sign that forbids. */
    private static final Pattern THICK = Pattern.compile("stroke=\"#9b2423\" stroke-width=\"(?:8|10)\"");
    private static final Pattern COLOURS = Pattern.compile("#(?:005387|237f52|9b2423|c8102e)");
    private static final String OUTLINE = "fill=\"#fff\" stroke=\"#000\" stroke-width=\"3\"/>";

    private final PictureBag bag;
    private final Version version;

    PrintedSigns(PictureBag bag, Version version) {
        this.bag = bag;
        this.version = version;
    }

    /** What the hazard calls for: the signs of a workplace first, then the pictograms on the bottle. */
    Signage of(HazardNote hazard) {
        return new Signage(hazard.signs().stream().map(this::sign).toList());
    }

    private Signage.Sign sign(HazardSheet.Sign sign) {
        String picture = Signs.svg(sign.code()).map(svg -> bag.drawing("sign-" + sign.code(), version == Version.LOW_INK ? thrifty(svg) : svg)).orElse(null);
        return new Signage.Sign(picture, sign.code(), sign.name());
    }

    /** The same sign as black lines: readable from any printer, and without a painted ground. */
    static String thrifty(String svg) {
        Matcher ground = GROUND.matcher(svg);
        String lines = ground.find() ? ground.replaceFirst("$1" + OUTLINE).replace("stroke=\"#fff\"", "stroke=\"#000\"").replace("fill=\"#fff\"/>", OUTLINE) : svg;
        lines = THICK.matcher(lines).replaceAll("stroke=\"#000\" stroke-width=\"4\"");
        return COLOURS.matcher(lines).replaceAll("#000").replace("#f9a800", "#fff");
    }
}
