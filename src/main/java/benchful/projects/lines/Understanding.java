package benchful.projects.lines;

import java.util.List;

/**
 * What was understood of a box.
 *
 * @param lines one for each row, in order
 * @param taken the lines whose rows were taken out, since they are there no more
 */
public record Understanding(List<Line> lines, List<String> taken) {
    public Understanding {
        lines = List.copyOf(lines);
        taken = List.copyOf(taken);
    }

    /**
     * @param at the row it became: {@code /steps/3}
     * @param parts what its words were taken for, keyed by places of the sheet; empty where the line is as it was
     */
    public record Line(String at, String text, List<Part> parts) {
        public Line {
            parts = List.copyOf(parts);
        }
    }

    /** The parts that were taken for granted. */
    public List<Part> doubts() {
        return lines.stream().flatMap(line -> line.parts().stream()).filter(part -> part.doubt() != null).toList();
    }
}
