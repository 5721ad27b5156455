package benchful.plans;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Published scheduling instances with the best finish known, from the folder that {@code benchful.published} names. */
public final class PublishedOptima {

    /** What every user says where there is no such folder. */
    public static final String SKIPPED = "Skipped: -Dbenchful.published names no folder with published scheduling instances";

    private PublishedOptima() {
    }

    /** @param optimum a number, {@code unsat} where there is no schedule, or {@code a..b} where only bounds are known */
    public record Known(Path file, String optimum) {
        public boolean isImpossible() {
            return optimum.equals("unsat");
        }

        public boolean isProven() {
            return optimum.matches("\\d+");
        }

        /** No schedule finishes before this. */
        public long least() {
            String bound = optimum.replaceFirst("\\.\\..*", "");
            return bound.isEmpty() ? 0 : Long.parseLong(bound);
        }

        /** A schedule is known that finishes then; none where there is no schedule. */
        public long most() {
            return isImpossible() ? -1 : Long.parseLong(optimum.replaceFirst(".*\\.\\.", ""));
        }
    }

    /** The folder, if it is there. */
    public static Optional<Path> folder() {
        return Optional.ofNullable(System.getProperty("benchful.published")).map(home -> Path.of(home, "scheduling"))
                .filter(Files::isDirectory);
    }

    /** The instances of a set, in the order of its list of optima. */
    public static List<Known> of(Path scheduling, String set) throws IOException {
        Path optima = scheduling.resolve(set + "-optimum.csv");
        List<String> lines = Files.readAllLines(Files.exists(optima) ? optima : scheduling.resolve(set + "-best.csv"));
        List<Known> known = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",");
            known.add(new Known(scheduling.resolve(set).resolve(cells[0]), cells[1]));
        }
        return known;
    }
}
