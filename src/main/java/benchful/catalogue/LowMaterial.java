package benchful.catalogue;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import io.quarkus.qute.TemplateData;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A material of which less is free than should lie on the shelf, or of which more was taken than was counted.
 *
 * @param free in the material's unit
 * @param low false where it is only less than nothing
 */
@TemplateData
public record LowMaterial(long id, String name, Quantity free, boolean low) {
    /** In one pass over the movements. */
    private static final String SUMS = """
            select m.id, m.name, m.unit, m.minimum, coalesce(sum(s.amount), 0) as free,
                coalesce(sum(s.amount) filter (where s.kind <> 'RESERVED'), 0) < 0 as negative
            from material m left join stock_movement s on s.material_id = m.id
            %s
            group by m.id
            %s
            order by lower(m.name)""";
    private static final String KEPT = SUMS.formatted("where m.minimum is not null", "");
    private static final String KEPT_OR_NEGATIVE = SUMS.formatted("", "having m.minimum is not null or coalesce(sum(s.amount) filter (where s.kind <> 'RESERVED'), 0) < 0");

    /** Those below their least, by name; a material whose least can't be read is left to its own page. */
    public static List<LowMaterial> all() {
        return read(KEPT).stream().filter(m -> m.low).toList();
    }

    /** The same and those of which there is less than nothing. */
    static List<LowMaterial> withNegative() {
        return read(KEPT_OR_NEGATIVE);
    }

    private static List<LowMaterial> read(String query) {
        List<Tuple> rows = Material.getEntityManager().createNativeQuery(query, Tuple.class).getResultList();
        return rows.stream().flatMap(row -> of(row).stream()).toList();
    }

    private static Optional<LowMaterial> of(Tuple row) {
        try {
            Unit unit = Unit.parse((String) row.get("unit")).orElseThrow(IllegalArgumentException::new);
            Quantity free = new Quantity((BigDecimal) row.get("free"), Unit.held(unit.dimension()).orElseThrow()).in(unit);
            boolean negative = (Boolean) row.get("negative");
            boolean low = row.get("minimum") != null && free.compareTo(Quantity.parse((String) row.get("minimum"))) < 0;
            return low || negative ? Optional.of(new LowMaterial(((Number) row.get("id")).longValue(), (String) row.get("name"), free, low)) : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
