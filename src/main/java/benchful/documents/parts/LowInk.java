package benchful.documents.parts;

import benchful.plans.pictures.Palette;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Drawings as black lines: readable from any printer, and without painted areas. */
final class LowInk {
    /** A ground painted all over, as signs of command, rescue and fire have. */
    private static final Pattern GROUND = Pattern.compile("(<(?:circle|rect) [^>]*)fill=\"#(?:005387|237f52|9b2423)\"/>");
    /** The ring and the bar of a sign that forbids. */
    private static final Pattern THICK = Pattern.compile("stroke=\"#9b2423\" stroke-width=\"(?:8|10)\"");
    private static final Pattern COLOURS = Pattern.compile("#(?:005387|237f52|9b2423|c8102e)");
    private static final String OUTLINE = "fill=\"#fff\" stroke=\"#000\" stroke-width=\"3\"/>";
    /** Of plans and cutting pictures, whose kinds differ by bands and patterns as well. */
    private static final Pattern TINTS = Pattern.compile(String.join("|", Palette.TINTS));

    private LowInk() {}

    /** A plan or a cutting picture without its tints. */
    static String drawing(String svg) {
        return TINTS.matcher(svg).replaceAll(Palette.PAPER);
    }

    /** A sign or pictogram. */
    static String sign(String svg) {
        Matcher ground = GROUND.matcher(svg);
        String lines = ground.find() ? ground.replaceFirst("$1" + OUTLINE).replace("stroke=\"#fff\"", "stroke=\"#000\"").replace("fill=\"#fff\"/>", OUTLINE) : svg;
        lines = THICK.matcher(lines).replaceAll("stroke=\"#000\" stroke-width=\"4\"");
        return COLOURS.matcher(lines).replaceAll("#000").replace("#f9a800", "#fff");
    }
}
