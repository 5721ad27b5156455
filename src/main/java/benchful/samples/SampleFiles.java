package benchful.samples;

import benchful.catalogue.CatalogueSpec;
import benchful.classes.ClassSetup;
import benchful.classes.ClassSetup.Meeting;
import benchful.projects.ProjectSpec;
import benchful.projects.pictures.Picture;
import benchful.reviews.ReviewSpec;
import benchful.venues.VenueSpec;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.annotation.JsonProperty;
import io.quarkus.runtime.util.ClassPathUtils;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The files of {@code sample-classes/} as sheets. A project lists its drawings by name; their content lies under
 * {@code pictures/<name of the project's file>/}.
 */
public record SampleFiles(
        CatalogueSpec catalogue, List<VenueSpec> venues, List<ProjectSpec> projects, List<SampleClass> classes) {

    private static final String FOLDER = "samples";

    /**
     * A class of the samples.
     *
     * @param project name of its project
     * @param venue name of its venue
     * @param review what happened, for a past class; null for a coming one
     */
    public record SampleClass(String project, String venue, @JsonProperty("class") ClassSetup setup, ReviewSpec review) {
        SampleClass movedBy(long weeks) {
            return new SampleClass(project, venue, setup.movedBy(weeks), review);
        }
    }

    /** The first coming class stands so many weeks ahead at the least. */
    private static final int WEEKS_AHEAD = 3;
    private static final int DAYS_A_WEEK = 7;

    /**
     * The same with all classes moved by whole weeks, so that each keeps its weekday and its distance from the others, and the
     * first of those without a review comes three to four weeks after the given day.
     */
    public SampleFiles comingAfter(LocalDate today) {
        LocalDate first = classes.stream().filter(c -> c.review() == null).flatMap(c -> c.setup().meetings().stream())
                .map(Meeting::date).min(Comparator.naturalOrder()).orElse(today);
        long days = ChronoUnit.DAYS.between(first, today.plusWeeks(WEEKS_AHEAD));
        long weeks = Math.floorDiv(days + DAYS_A_WEEK - 1, DAYS_A_WEEK);
        return new SampleFiles(catalogue, venues, projects, classes.stream().map(c -> c.movedBy(weeks)).toList());
    }

    /** @throws IllegalStateException that names the file and its first fault; the files come with the program */
    public static SampleFiles read() {
        List<SampleFiles> found = new ArrayList<>();
        try {
            ClassPathUtils.consumeAsPaths(FOLDER, folder -> found.add(in(folder)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return found.get(0);
    }

    /** @param folder laid out as {@code sample-classes/} */
    public static SampleFiles in(Path folder) {
        return new SampleFiles(
                sheet(folder.resolve("catalogue.yaml"), CatalogueSpec.class),
                each(folder.resolve("venues"), f -> sheet(f, VenueSpec.class)),
                each(folder.resolve("projects"), f -> illustrated(f, folder.resolve("pictures").resolve(stem(f)))),
                each(folder.resolve("classes"), SampleFiles::sampleClass));
    }

    private static ProjectSpec illustrated(Path file, Path pictures) {
        ProjectSpec sheet = sheet(file, ProjectSpec.class);
        return sheet.withPictures(sheet.pictures().stream().map(p -> filled(p, pictures)).toList());
    }

    private static Picture filled(Picture picture, Path folder) {
        return picture.content().length > 0 ? picture : picture.withContent(bytes(folder.resolve(picture.name() + ".svg")));
    }

    private static SampleClass sampleClass(Path file) {
        try {
            return SpecFormat.yaml().readValue(bytes(file), SampleClass.class);
        } catch (IOException e) {
            throw new IllegalStateException("Sample %s: %s".formatted(file.getFileName(), e.getMessage()), e);
        }
    }

    private static <T> T sheet(Path file, Class<T> type) {
        SpecReader.Reading<T> reading = new SpecReader<>(type, s -> List.of()).file(bytes(file));
        if (reading instanceof SpecReader.Read<T> good) {
            return good.sheet();
        }
        throw new IllegalStateException("Sample %s: %s".formatted(file.getFileName(), ((SpecReader.Faulty<T>) reading).faults().get(0)));
    }

    private static <T> List<T> each(Path folder, Function<Path, T> read) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().map(read).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String stem(Path file) {
        return file.getFileName().toString().replaceFirst("\\.yaml$", "");
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
