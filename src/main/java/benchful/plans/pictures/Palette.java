package benchful.plans.pictures;

import java.util.List;

/** The colours of drawings. What they tell is told by a pattern or in words as well, for black-and-white printers and eyes. */
public final class Palette {
    public static final String INK = "#22282b";
    public static final String QUIET = "#555f63";
    public static final String LINE = "#b9b3a5";
    public static final String PAPER = "#ffffff";
    /** Planned as against what was. */
    public static final String ACCENT = "#1f4e5f";
    public static final String OVERRUN = "#8a3b12";
    public static final String OVERRUN_GROUND = "#fbeee2";
    /** Where hands are at work, and what they have cut. */
    public static final String WORK = "#e3edef";
    public static final String WORK_BAND = "#8fb0b9";
    /** Where hands rest: all watch, or there is a pause. */
    public static final String REST = "#f3efe4";
    public static final String TOGETHER = "#e9e5da";

    /** What a printer that should save ink leaves white. */
    public static final List<String> TINTS = List.of(WORK, WORK_BAND, REST, TOGETHER, "#efefef");

    /** Kinds of bead beside each other. */
    static final List<String> BEADS = List.of(PAPER, "#c9c9c9", PAPER, "#8f8f8f", "#efefef", PAPER);

    private Palette() {}
}
