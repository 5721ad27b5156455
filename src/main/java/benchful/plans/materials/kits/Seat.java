package benchful.plans.materials.kits;

import benchful.classes.ClassSetup;
import benchful.classes.Picks;
import benchful.core.needs.Take;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

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
     * @param chosen the material that was chosen; null where nobody chose
     */
    public record Pick(String material, String wanted, String chosen) {
        /**
         * @param size what this one takes of another material; null for what serves all
         * @param open which variant is taken of a line where nobody chose; null for the line's own material
         */
        static List<Pick> of(ProjectSpec project, Picks picks, ClassSetup.Student student, Size size, Function<MaterialLine, String> open) {
            return project.materials().stream().map(line -> of(line, picks, student, size, open)).toList();
        }

        private static Pick of(MaterialLine line, Picks picks, ClassSetup.Student student, Size size, Function<MaterialLine, String> open) {
            String chosen = picks.chosen(line, student);
            Optional<String> bySize = Optional.ofNullable(size).flatMap(s -> s.taken(line.material())).map(Size.Taken::use);
            String wanted = bySize.or(() -> Optional.ofNullable(chosen)).or(() -> Optional.ofNullable(open.apply(line))).orElse(line.material());
            return new Pick(picks.taken(wanted, student), wanted, bySize.isPresent() ? wanted : chosen);
        }

        /** What the material stands in for; null where it is the one that was wanted. */
        String insteadOf() {
            return Objects.equals(material, wanted) ? null : wanted;
        }
    }

    /** How many make a piece in the class, the tutor's demonstration counted in; spare kits are for nobody yet. */
    static int makers(List<Seat> seats) {
        return (int) seats.stream().filter(seat -> seat.taker() != Take.Taker.SPARE).count();
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
