package benchful.plans.materials.kits;

import benchful.classes.ClassSetup;
import benchful.classes.Picks;
import benchful.core.needs.Take;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import java.util.List;
import java.util.Objects;

/**
 * One kit to be made: for whom, in which size, and of what.
 *
 * @param picks by the project's lines, what is taken on each
 */
public record Seat(Take.Taker taker, String title, String name, String seat, String size, List<Pick> picks) {
    public Seat {
        picks = List.copyOf(picks);
    }

    /**
     * What is taken on a line.
     *
     * @param wanted the material that was chosen, or the line's own
     * @param chosen what was chosen, a material or a word; null where nobody chose
     */
    public record Pick(String material, String wanted, String chosen) {
        static List<Pick> of(ProjectSpec project, ClassSetup setup, ClassSetup.Student student) {
            Picks picks = new Picks(setup);
            return project.materials().stream().map(line -> of(line, picks, student)).toList();
        }

        private static Pick of(MaterialLine line, Picks picks, ClassSetup.Student student) {
            return new Pick(picks.material(line, student), picks.wanted(line, student), picks.chosen(line, student));
        }

        /** What the material stands in for; null where it is the one that was wanted. */
        String insteadOf() {
            return Objects.equals(material, wanted) ? null : wanted;
        }
    }

    static Seat known(ClassSetup.Student student, String size, List<Pick> picks) {
        return new Seat(Take.Taker.STUDENT, student.name(), student.name(), student.seat(), size, picks);
    }

    static Seat of(Take.Taker taker, String title, String size, List<Pick> picks) {
        return new Seat(taker, title, null, null, size, picks);
    }

    /** The same kit of other materials. */
    public Seat of(List<Pick> other) {
        return new Seat(taker, title, name, seat, size, other);
    }

    /** The material of a line. */
    String material(int line) {
        return picks.get(line).material();
    }
}
