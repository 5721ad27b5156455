package benchful.web;

import io.quarkus.qute.EngineBuilder;
import io.quarkus.qute.TemplateExtension;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/** Every template, page or print-out, is filled in the {@link Writing} that applies. */
@ApplicationScoped
public class PageWriting {
    void write(@Observes EngineBuilder engine) {
        engine.addTemplateInstanceInitializer(template -> template.setAttribute(TemplateInstance.LOCALE, Writing.current().locale()));
    }

    /** What a page says of its own language, after BCP 47. */
    @TemplateExtension(namespace = "writing")
    public static String language() {
        return Writing.current().language();
    }
}
