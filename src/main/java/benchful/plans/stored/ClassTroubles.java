package benchful.plans.stored;

import benchful.classes.ClassLine;
import benchful.classes.CraftClass;
import benchful.web.Mending;
import benchful.web.Trouble;
import benchful.web.tasks.Tried;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The one place where a class that can't be planned is told: beside the others where several are worked out, or on a page of
 * its own that keeps the ways to mend it and to remove it.
 */
@ApplicationScoped
public class ClassTroubles implements Mending {
    private static final Pattern PAGE = Pattern.compile("/classes/(\\d{1,18})(/.*)?");

    @CheckedTemplate(basePath = "plans")
    static class Templates {
        static native TemplateInstance trouble(TroublePage page);

        private Templates() {}
    }

    /** What the page of such a class shows. */
    @TemplateData
    record TroublePage(ClassLine line, Trouble trouble) {}

    /** What is worked out for one of several classes. */
    public <T> Tried<T> tried(ClassLine line, Supplier<T> work) {
        return Tried.of(work, failure -> trouble(line, failure));
    }

    /** Its own page stays a page; at others nothing could be done. */
    @Override
    public Optional<Response> answer(String path, Throwable failure) {
        Matcher page = PAGE.matcher(path);
        return !page.matches() ? Optional.empty() : line(Long.parseLong(page.group(1))).map(line -> Response.status(page.group(2) == null ? 200 : 409)
                .type(MediaType.TEXT_HTML + ";charset=UTF-8").entity(Templates.trouble(new TroublePage(line, trouble(line, failure))).render()).build());
    }

    private static Optional<ClassLine> line(long id) {
        return QuarkusTransaction.requiringNew().call(() -> CraftClass.line(id));
    }

    static Trouble trouble(ClassLine line, Throwable failure) {
        return Trouble.of("“%s”".formatted(line.title()), mends(line), failure);
    }

    private static List<Trouble.Mend> mends(ClassLine line) {
        List<Trouble.Mend> mends = new ArrayList<>(List.of(new Trouble.Mend("Change the class", "/classes/" + line.id() + "/setup"),
                new Trouble.Mend("Change its project", "/projects/" + line.project() + "/edit")));
        if (line.venueId() != null) {
            mends.add(new Trouble.Mend("Change its venue", "/venues/" + line.venueId() + "/edit"));
        }
        mends.add(new Trouble.Mend("Look through the materials", "/materials"));
        return mends;
    }
}
