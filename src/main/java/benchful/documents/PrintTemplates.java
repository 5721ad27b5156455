package benchful.documents;

import benchful.documents.pdf.Manuscript;
import io.quarkus.qute.Engine;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;

/** The plain templates of print-outs. They have no logic: a sheet holds every text as it is printed. */
@ApplicationScoped
class PrintTemplates {
    private final Engine engine;

    PrintTemplates(Engine engine) {
        this.engine = engine;
    }

    /**
     * @param template under {@code templates/documents}, without its ending
     * @param sheet its record
     */
    Manuscript fill(String template, Object sheet, Map<String, byte[]> pictures) {
        String xhtml = engine.getTemplate("documents/" + template + ".html").data("sheet", sheet).render();
        return new Manuscript(xhtml, pictures);
    }
}
