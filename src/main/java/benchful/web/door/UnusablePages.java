package benchful.web.door;

import benchful.web.Mending;
import benchful.web.Trouble;
import benchful.web.Unusable;
import benchful.web.forms.Problem;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.inject.Instance;
import jakarta.persistence.PersistenceException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.sql.SQLException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** Where a page needs something that can't be used: what it is, and where it is mended. */
public final class UnusablePages {
    private final Instance<Mending> features;

    UnusablePages(Instance<Mending> features) {
        this.features = features;
    }

    @CheckedTemplate(basePath = "web", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance unusable(Trouble trouble);

        private Templates() {}
    }

    @ServerExceptionMapper
    Response unusable(Unusable failure, UriInfo uri) {
        return answer(features, uri.getPath(), failure).orElseGet(() -> page(failure, uri));
    }

    private static Response page(Unusable failure, UriInfo uri) {
        Trouble trouble = Trouble.of("This page", List.of(), failure);
        return uri.getPath().startsWith("/api/") ? Problem.of(409, "Can't be used", trouble.sentence())
                : Response.status(Response.Status.CONFLICT).type(MediaType.TEXT_HTML + ";charset=UTF-8").entity(Templates.unusable(trouble).render()).build();
    }

    /** What the feature that a page belongs to has to say of its failure; of a database that does not answer, nobody has. */
    public static Optional<Response> answer(Instance<Mending> features, String path, Throwable failure) {
        boolean database = Stream.iterate(failure, Objects::nonNull, Throwable::getCause).anyMatch(c -> c instanceof PersistenceException || c instanceof SQLException);
        return database ? Optional.empty() : features.stream().flatMap(f -> f.answer(path, failure).stream()).findFirst();
    }
}
