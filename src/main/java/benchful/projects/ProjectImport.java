package benchful.projects;

import benchful.core.Fault;
import benchful.web.Difference;
import benchful.web.SheetReader.Faulty;
import io.quarkus.qute.TemplateData;
import java.util.Base64;
import java.util.List;

/**
 * What the import page shows: at first nothing, then what is wrong with a file, or the project whose name it bears.
 *
 * @param clash the stored project of the same name; null where there is none
 * @param held the file that waits for a decision, base64
 */
@TemplateData
public record ProjectImport(List<Row> faults, Clash clash, String held) {

    /** A fault, with its line in the file where that can be told (else 0). */
    @TemplateData
    public record Row(String detail, String pointer, int line) {}

    @TemplateData
    public record Clash(long id, String name, long version, List<Difference> differences) {}

    static ProjectImport blank() {
        return new ProjectImport(List.of(), null, null);
    }

    static ProjectImport faulty(String sentence) {
        return new ProjectImport(List.of(new Row(sentence, "", 0)), null, null);
    }

    static ProjectImport faulty(Faulty<ProjectSheet> reading) {
        return new ProjectImport(reading.faults().stream().map(f -> row(f, reading)).toList(), null, null);
    }

    static ProjectImport clash(Project stored, ProjectSheet sheet, byte[] file) {
        List<Picture> bare = sheet.pictures().stream().map(Picture::withoutContent).toList();
        List<Difference> differences = Difference.between(
                ProjectFiles.READER.written(stored.toSheet()), ProjectFiles.READER.written(sheet.withPictures(bare)));
        return new ProjectImport(List.of(), new Clash(stored.id(), stored.name(), stored.version(), differences),
                Base64.getEncoder().encodeToString(file));
    }

    private static Row row(Fault fault, Faulty<ProjectSheet> reading) {
        return new Row(fault.detail(), fault.pointer(), reading.line(fault.pointer()).orElse(0));
    }
}
