package benchful.web;

import io.quarkus.qute.EngineBuilder;
import io.quarkus.qute.Expression;
import io.quarkus.qute.HtmlEscaper;
import io.quarkus.qute.TemplateNode.Origin;
import io.quarkus.qute.Variant;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;

/** The character of code 0, which no page can hold, is shown as the sign for what is missing. */
@ApplicationScoped
class PageSigns {
    void show(@Observes EngineBuilder engine) {
        engine.addResultMapper(new Shown());
    }

    private static final class Shown extends HtmlEscaper {
        Shown() {
            super(List.of(Variant.TEXT_HTML));
        }

        @Override
        public int getPriority() {
            return super.getPriority() + 1;
        }

        @Override
        public boolean appliesTo(Origin origin, Object result) {
            return result instanceof String text && text.indexOf('\0') >= 0 && super.appliesTo(origin, result);
        }

        @Override
        public String map(Object result, Expression expression) {
            return super.map(result.toString().replace('\0', '\uFFFD'), expression);
        }
    }
}
