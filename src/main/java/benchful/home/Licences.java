package benchful.home;

import io.quarkus.qute.TemplateData;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The open-source parts that the program is built from, under their licences, as the build listed them. */
final class Licences {
    /** Made by the build when it packages the program. */
    private static final String LIST = "licences/third-party.txt";
    /** A line of it: (licence) (another licence) Name (group:artifact:version - address). */
    private static final Pattern LINE = Pattern.compile("\\s+((?:\\([^()]+\\) )+)(.+) \\(([^:() ]+:[^:() ]+):([^:() ]+) - .*\\)");

    private Licences() {}

    /**
     * Parts under one licence, or under a choice of licences.
     *
     * @param name of the licence, in the short form of SPDX where it has one
     */
    @TemplateData
    record Licence(String name, List<Part> parts) {}

    /**
     * One part.
     *
     * @param place where it is to be had: group and name in the public repository of Java libraries
     */
    @TemplateData
    record Part(String name, String place, String version) {}

    /** Empty where the program was not packaged. */
    static List<Licence> ofThisBuild() {
        try (InputStream list = Licences.class.getClassLoader().getResourceAsStream(LIST)) {
            return list == null ? List.of() : of(new String(list.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("The list of licences can't be read from the program.", e);
        }
    }

    static List<Licence> of(String list) {
        Map<String, List<Part>> byLicence = new TreeMap<>();
        list.lines().map(LINE::matcher).filter(Matcher::matches).forEach(line ->
                byLicence.computeIfAbsent(name(line.group(1)), name -> new ArrayList<>())
                        .add(new Part(line.group(2), line.group(3), line.group(4))));
        return byLicence.entrySet().stream().map(entry -> new Licence(entry.getKey(), sorted(entry.getValue()))).toList();
    }

    private static String name(String licences) {
        return licences.strip().replaceAll("^\\(|\\)$", "").replace(") (", " or ");
    }

    private static List<Part> sorted(List<Part> parts) {
        return parts.stream().sorted(Comparator.comparing(Part::place)).toList();
    }
}
