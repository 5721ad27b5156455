package benchful.documents;

import benchful.classes.CraftClass;
import benchful.core.Progress;
import benchful.documents.paper.PrintOptions;
import benchful.documents.parts.PrintSource;
import benchful.web.tasks.BackgroundTask;
import benchful.web.tasks.BackgroundTasks;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Print-outs of many parts, typeset beside the pages; one for each class and what is wanted of it, given up when nobody asks any more. */
@ApplicationScoped
class PrintJobs {
    private final DocumentService documents;
    private final BackgroundTasks tasks;

    PrintJobs(DocumentService documents, BackgroundTasks tasks) {
        this.documents = documents;
        this.tasks = tasks;
    }

    /** The one under way or finished for the same content, or a new one. */
    BackgroundTask<PrintedFile> of(CraftClass craftClass, Wanted what, PrintSource source, PrintOptions options) {
        List<Object> input = List.of(source.file(), source.hazards(), options);
        return tasks.send(purpose(craftClass, what), input, task -> printed(what, source, options, task));
    }

    void stop(CraftClass craftClass, Wanted what) {
        tasks.keepOnlyFor(purpose(craftClass, what), List.of());
    }

    private static String purpose(CraftClass craftClass, Wanted what) {
        return "%s for class %d".formatted(what.slug(), craftClass.id());
    }

    private PrintedFile printed(Wanted what, PrintSource source, PrintOptions options, Progress progress) {
        try {
            Path file = Files.createTempFile("benchful-print", ".pdf");
            PrintedFile printed = PrintedFile.at(file);
            try (OutputStream out = Files.newOutputStream(file)) {
                documents.write(what, source, options, out, progress);
            }
            return printed;
        } catch (IOException e) {
            throw new UncheckedIOException("A print-out can't be written to the temporary folder.", e);
        }
    }
}
