package benchful.projects.writing;

import benchful.projects.Project;
import benchful.projects.ProjectFiles;
import benchful.projects.ProjectSpec;
import benchful.projects.pictures.Picture;
import benchful.web.forms.Difference;
import benchful.web.forms.FileFault;
import benchful.web.forms.SpecReader.Faulty;
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
public record ProjectImport(List<FileFault> faults, Clash clash, String held) {

    @TemplateData
    public record Clash(long id, String name, long version, List<Difference> differences) {}

    static ProjectImport blank() {
        return new ProjectImport(List.of(), null, null);
    }

    static ProjectImport faulty(String sentence) {
        return new ProjectImport(FileFault.of(sentence), null, null);
    }

    static ProjectImport faulty(Faulty<ProjectSpec> reading) {
        return new ProjectImport(FileFault.of(reading), null, null);
    }

    static ProjectImport clash(Project stored, ProjectSpec sheet, byte[] file) {
        List<Picture> bare = sheet.pictures().stream().map(Picture::withoutContent).toList();
        List<Difference> differences = Difference.between(
                ProjectFiles.READER.written(stored.toSpec()), ProjectFiles.READER.written(sheet.withPictures(bare)));
        return new ProjectImport(List.of(), new Clash(stored.id(), stored.name(), stored.version(), differences),
                Base64.getEncoder().encodeToString(file));
    }
}
