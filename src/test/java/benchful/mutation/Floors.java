package benchful.mutation;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Holds each package's share of noticed changes against its floor: 85 %, or what {@code floors.csv} says of it. Changes that make
 * no difference, listed with their reason in {@code equivalent.csv}, are left out. As a program it prints the shares and what
 * was not noticed, and fails where a package lies below its floor.
 *
 * @param floors     by package [percent]
 * @param equivalent how many changes of a class, method and kind make no difference
 */
public record Floors(Map<String, Integer> floors, Map<String, Integer> equivalent) {
    private static final int FLOOR = 85;
    private static final Path LISTS = Path.of("src/test/mutation");
    private static final Path REPORTS = Path.of("target/pit-reports");
    private static final CSVFormat CSV = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

    /**
     * @param noticed changes that tests noticed
     * @param all changes that make a difference
     * @param floor [percent]
     */
    record Share(String name, int noticed, int all, int floor) {
        boolean reached() {
            return 100 * noticed >= floor * all;
        }

        @Override
        public String toString() {
            return "%-32s %4d of %4d noticed, %5.1f %%, floor %d %%".formatted(name, noticed, all, 100.0 * noticed / all, floor);
        }
    }

    static Floors listed() throws IOException {
        Map<String, Integer> equivalent = new HashMap<>();
        rows("equivalent.csv").forEach(row -> equivalent.merge(kind(row.get("class"), row.get("method"), row.get("mutator")),
                Integer.valueOf(row.get("number")), Integer::sum));
        return new Floors(rows("floors.csv").stream().collect(Collectors.toMap(row -> row.get("package"), row -> Integer.valueOf(row.get("floor")))), equivalent);
    }

    private static List<CSVRecord> rows(String list) throws IOException {
        try (Reader reader = Files.newBufferedReader(LISTS.resolve(list))) {
            return CSV.parse(reader).getRecords();
        }
    }

    private static String kind(String type, String method, String mutator) {
        return type + " " + method + " " + mutator;
    }

    /** What nobody noticed though it makes a difference. */
    List<Mutant> unnoticed(List<Mutant> mutants) {
        Map<String, Integer> left = new HashMap<>(equivalent);
        return mutants.stream().filter(m -> !m.noticed() && left.merge(kind(m.type(), m.method(), m.mutator()), -1, Integer::sum) < 0).toList();
    }

    /** By package, in order of their names. */
    List<Share> shares(List<Mutant> mutants) {
        Map<String, Integer> unnoticed = new TreeMap<>();
        unnoticed(mutants).forEach(m -> unnoticed.merge(m.inPackage(), 1, Integer::sum));
        Map<String, Integer> noticed = new TreeMap<>();
        mutants.forEach(m -> noticed.merge(m.inPackage(), m.noticed() ? 1 : 0, Integer::sum));
        List<Share> shares = new ArrayList<>();
        noticed.forEach((name, n) -> shares.add(new Share(name, n, n + unnoticed.getOrDefault(name, 0), floors.getOrDefault(name, FLOOR))));
        return shares.stream().filter(share -> share.all() > 0).toList();
    }

    /** @param args none */
    public static void main(String[] args) throws IOException {
        Floors floors = listed();
        List<Mutant> mutants = reports().flatMap(Floors::mutants).toList();
        List<Share> shares = floors.shares(mutants);
        StringBuilder told = new StringBuilder("\nNot noticed:\n");
        floors.unnoticed(mutants).forEach(m -> told.append("  ").append(m).append('\n'));
        shares.forEach(share -> told.append(share).append('\n'));
        System.out.println(told);
        List<Share> below = shares.stream().filter(share -> !share.reached()).toList();
        if (shares.isEmpty() || !below.isEmpty()) {
            throw new IllegalStateException(shares.isEmpty() ? "No change was tried." : "Tests notice too little: " + below);
        }
    }

    private static Stream<Path> reports() throws IOException {
        try (Stream<Path> files = Files.walk(REPORTS)) {
            return files.filter(file -> file.endsWith("mutations.xml")).toList().stream();
        }
    }

    private static Stream<Mutant> mutants(Path report) {
        try {
            return Mutant.read(report).stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
