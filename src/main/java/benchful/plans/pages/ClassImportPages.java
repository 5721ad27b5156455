package benchful.plans.pages;

import benchful.classes.ClassFile;
import benchful.core.Fault;
import benchful.plans.ClassFileReader;
import benchful.web.Pages;
import benchful.web.forms.FileFault;
import benchful.web.forms.SentForm;
import benchful.web.forms.SpecReader;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;

/** Bringing a class in from its file, as its page exports it. */
@Path("/classes/imports")
@Produces(MediaType.TEXT_HTML)
class ClassImportPages {
    private final ClassFileReader files;
    private final ClassImport imports;

    ClassImportPages(ClassFileReader files, ClassImport imports) {
        this.files = files;
        this.imports = imports;
    }

    @CheckedTemplate(basePath = "plans")
    static class Templates {
        static native TemplateInstance imports(List<FileFault> faults);

        private Templates() {}
    }

    @GET
    public TemplateInstance show() {
        return Templates.imports(List.of());
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Transactional
    public Response create(MultipartFormDataInput input) {
        SentForm form = SentForm.of(input);
        if (form.file("file").isEmpty()) {
            return faulty(FileFault.of("Choose a file first."));
        }
        SpecReader.Reading<ClassFile> reading = files.read(form.file("file").get().content());
        if (reading instanceof SpecReader.Faulty<ClassFile> f) {
            return faulty(FileFault.of(f));
        }
        ClassFile file = ((SpecReader.Read<ClassFile>) reading).sheet();
        List<Fault> faults = imports.faults(file);
        return faults.isEmpty() ? Pages.seeOther("/classes/" + imports.store(file)) : faulty(FileFault.of(faults));
    }

    private static Response faulty(List<FileFault> faults) {
        return Pages.faulty(Templates.imports(faults));
    }
}
