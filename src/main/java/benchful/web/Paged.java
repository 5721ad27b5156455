package benchful.web;

import io.quarkus.hibernate.orm.panache.PanacheQuery;
import io.quarkus.qute.TemplateData;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;

/**
 * One page of a long list.
 *
 * @param total lines of the whole list
 */
@TemplateData
public record Paged<T>(List<T> rows, long total, Sought sought) {
    public Paged {
        rows = List.copyOf(rows);
    }

    /** Of what a query finds, the page that is sought. */
    public static <T> Paged<T> of(PanacheQuery<T> found, Sought sought) {
        return new Paged<>(found.page(sought.page() - 1, Sought.LINES).list(), found.count(), sought);
    }

    /** The same page with each line shown in another way. */
    public <R> Paged<R> shown(Function<? super T, R> line) {
        return with(rows.stream().map(line).toList());
    }

    public <R> Paged<R> with(List<R> others) {
        return new Paged<>(others, total, sought);
    }

    public int size() {
        return rows.size();
    }

    public boolean several() {
        return total > Sought.LINES || sought.page() > 1;
    }

    /** True where a search is worth its room. */
    public boolean searchable() {
        return several() || !sought.find().isEmpty();
    }

    public boolean first() {
        return sought.page() == 1;
    }

    public boolean last() {
        return sought.skipped() + rows.size() >= total;
    }

    /** The number of the page before, at most the last there is. */
    public int previous() {
        return (int) Math.max(1, Math.min(sought.page() - 1L, pages()));
    }

    public int next() {
        return sought.page() + 1;
    }

    public long pages() {
        return Math.max(1, (total + Sought.LINES - 1) / Sought.LINES);
    }

    /** "51 to 100 of 5,046". */
    public String place() {
        return rows.isEmpty() ? "none of %,d".formatted(total) : "%,d to %,d of %,d".formatted(sought.skipped() + 1, sought.skipped() + rows.size(), total);
    }

    /** The words sought, as an address carries them. */
    public String sent() {
        return URLEncoder.encode(sought.find(), StandardCharsets.UTF_8);
    }
}
