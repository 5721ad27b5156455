package benchful.documents;

import benchful.classes.ClassFile;
import benchful.core.Fault;
import benchful.documents.handout.HandoutContent;
import benchful.documents.handout.Handouts;
import benchful.documents.handout.Needed;
import benchful.documents.handout.Readers;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.PagePictures;
import benchful.plans.materials.Requirements;
import benchful.projects.ProjectSpec;
import benchful.projects.writing.Preview;
import benchful.projects.writing.Sights;
import benchful.web.tasks.Asker;
import benchful.web.tasks.Workroom;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Stream;

/** The handout of a project that is being written, typeset as it is printed and drawn page by page. */
@ApplicationScoped
class HandoutSights implements Sights {
    private final WithoutClass loose;
    private final DocumentService documents;
    private final Workroom workroom;

    HandoutSights(WithoutClass loose, DocumentService documents, Workroom workroom) {
        this.loose = loose;
        this.documents = documents;
        this.workroom = workroom;
    }

    @Override
    public Preview.Sight of(ProjectSpec whole, String size) {
        ClassFile file = loose.file(whole);
        PrintSource source = loose.source(file, workroom.work(() -> Requirements.of(file)), whole);
        List<Handouts.Reader> readers = Readers.eachSize(source, Version.NORMAL);
        Handouts.Reader reader = readers.stream().filter(r -> r.size().equals(size)).findFirst().orElse(readers.get(0));
        PrintOptions options = PrintOptions.usual(source.studio(), Version.NORMAL);
        Asker.check();
        PagePictures pages = workroom.work(() -> PagePictures.of(pdf(source, options, reader), Asker::check));
        return new Preview.Sight(reader.size(), readers.stream().map(Handouts.Reader::size).toList(), lists(Needed.of(source, options, reader)), pages.sources(), pages.inAll(),
                source.needs().faults().stream().map(Fault::detail).distinct().toList());
    }

    private byte[] pdf(PrintSource source, PrintOptions options, Handouts.Reader reader) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            documents.writeHandout(source, options, reader, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Preview.Listed> lists(Needed needed) {
        return Stream.of(listed("In the kit", needed.kit()), listed("Beside the kit", needed.bench()), new Preview.Listed("Tools", needed.tools()))
                .filter(list -> !list.lines().isEmpty()).toList();
    }

    private static Preview.Listed listed(String title, List<HandoutContent.KitLine> lines) {
        return new Preview.Listed(title, lines.stream().map(line -> "%s %s%s".formatted(line.amount(), line.material(), line.note().isEmpty() ? "" : ", " + line.note())).toList());
    }
}
