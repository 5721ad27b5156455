package benchful.projects.writing;

import benchful.projects.Project;
import benchful.projects.ProjectCopies;
import benchful.projects.ProjectFiles;
import benchful.projects.ProjectSpec;
import benchful.web.Pages;
import benchful.web.Writing;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecReader.Read;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import jakarta.transaction.Transactional;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What a new project can start from: the pieces that come with the program as files, each a skeleton of its craft to be changed,
 * and copies of what is stored. Times and amounts of the pieces are common practice, no source.
 */
@Named("pieces")
@ApplicationScoped
public class StartingPieces {
    /** The files below {@code starting-pieces}. */
    public static final List<String> FILES = List.of("bead", "clay", "cloth", "glass", "leather", "metal", "paper", "print", "resin", "soap", "wax", "wood", "yarn");

    private static final String PIECE = "piece:";
    private static final String PROJECT = "project:";
    private static final Map<String, ProjectSpec> READ = new ConcurrentHashMap<>();

    /**
     * One to choose.
     *
     * @param value as the page's address names it
     */
    @TemplateData
    public record Start(String value, String craft, String title) {}

    /** The pieces that come with the program, by craft. */
    public List<Start> all() {
        List<Start> all = new ArrayList<>();
        FILES.forEach(file -> all.add(new Start(PIECE + file, Writing.current().spelt(sheet(file).craft()), Writing.current().spelt(sheet(file).name()))));
        all.sort(Comparator.comparing(Start::craft));
        return all;
    }

    /** The stored projects, by name. */
    @Transactional
    public List<Start> projects() {
        return Project.offered().stream().map(p -> new Start(PROJECT + p.id(), p.craft(), p.name())).toList();
    }

    /** The form of a new project that starts from one of these, or from nothing. */
    SpecForm begun(String from) {
        if (from == null || from.isBlank()) {
            return ProjectFormFiller.blank();
        }
        Optional<Long> project = Pages.number(from.replaceFirst("^" + PROJECT, ""));
        if (project.isPresent()) {
            ProjectSpec sheet = Pages.existing(Project.class, project.get()).toFullSheet();
            return form(sheet.withName(ProjectCopies.name(sheet.name(), 1)));
        }
        String file = from.replaceFirst("^" + PIECE, "");
        return FILES.contains(file) ? form(sheet(file)) : ProjectFormFiller.blank();
    }

    private static SpecForm form(ProjectSpec sheet) {
        return SpecForm.of((ObjectNode) ProjectFiles.READER.written(sheet), 0);
    }

    /** @param file one of {@link #FILES} */
    public static ProjectSpec sheet(String file) {
        return READ.computeIfAbsent(file, StartingPieces::read);
    }

    private static ProjectSpec read(String file) {
        try (InputStream in = Objects.requireNonNull(StartingPieces.class.getResourceAsStream("/starting-pieces/" + file + ".yaml"), file)) {
            return ((Read<ProjectSpec>) ProjectFiles.READER.file(in.readAllBytes())).sheet();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
