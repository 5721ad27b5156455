package benchful.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;

/** The honest endings of a page's form: saved and gone to the result, shown again with its faults, or met by another's change. */
public final class Pages {
    /** Unprocessable content, RFC 9110 section 15.5.21. */
    public static final int UNPROCESSABLE = 422;

    private Pages() {}

    /** Saved: the browser fetches {@code path} afresh, so that reloading does not send the form again. */
    public static Response seeOther(String path) {
        return Response.seeOther(URI.create(path)).build();
    }

    public static Response faulty(TemplateInstance form) {
        return shown(UNPROCESSABLE, form);
    }

    public static Response stale(TemplateInstance form) {
        return shown(Response.Status.CONFLICT.getStatusCode(), form);
    }

    /** Shown again because a list button was pressed; nothing is saved. */
    public static Response again(TemplateInstance form) {
        return shown(Response.Status.OK.getStatusCode(), form);
    }

    /** What an address names. */
    public static <E extends StoredEntity> E existing(Class<E> type, long id) {
        return StoredEntity.byId(type, id).orElseThrow(NotFoundException::new);
    }

    /** The same, kept from everybody else until the transaction ends. */
    public static <E extends StoredEntity> E toChange(Class<E> type, long id) {
        return StoredEntity.toChange(type, id).orElseThrow(NotFoundException::new);
    }

    /** What a form names by its number. */
    public static <E extends StoredEntity> E named(Class<E> type, String id) {
        return number(id).flatMap(n -> StoredEntity.byId(type, n)).orElseThrow(NotFoundException::new);
    }

    /** The version of the stored sheet that a form started from; 0, which fits no stored one, where the field was tampered with. */
    public static long version(MultivaluedMap<String, String> form) {
        return number(form.getFirst("version")).orElse(0L);
    }

    /** A number such as an identifier that stands in a form or an address; none where it is blank or no number. */
    public static Optional<Long> number(String text) {
        return text != null && text.matches("\\d{1,18}") ? Optional.of(Long.parseLong(text)) : Optional.empty();
    }

    /** An address as it was asked, as a link that leads nowhere else: two strokes at its start would name another host. */
    public static String own(String asked) {
        return "/" + asked.replaceFirst("^(https?://[^/]*)?/*", "");
    }

    /** @param status where none of the other endings fits */
    public static Response shown(int status, TemplateInstance page) {
        return Response.status(status).type(MediaType.TEXT_HTML + ";charset=UTF-8").entity(page).build();
    }
}
