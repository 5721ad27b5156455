package benchful.catalogue;

import benchful.bin.EarlierVersion;
import benchful.core.SkillLevel;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.web.EditedEntity;
import benchful.web.Paged;
import benchful.web.Sought;
import benchful.web.Unusable;
import jakarta.persistence.CascadeType;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.LockModeType;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.hibernate.annotations.BatchSize;
import org.hibernate.annotations.Formula;

/**
 * A stored material: written down once, named by projects, bought in packs, counted by its movements of stock. Its name is
 * unlike every other's, whatever the case of its letters. What lies on the shelf is never written here: it is the sum of
 * the movements, read along with the material.
 */
@Entity
public class Material extends EditedEntity {
    String name;
    Unit unit;

    /** Null for a material that is no variant. */
    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "variant_of")
    Material variantOf;

    BigDecimal wasteBeginner;
    BigDecimal wasteImprover;
    BigDecimal wasteExperienced;
    BigDecimal confidence;
    StoredAmount cutLoss;
    StoredAmount unitMass;
    StoredAmount minimum;
    List<String> hazards = new ArrayList<>();
    String note;
    boolean sample;

    @OneToMany(mappedBy = "material", cascade = CascadeType.ALL, orphanRemoval = true)
    @OrderBy("position")
    @BatchSize(size = 500)
    List<SupplierOffer> offers = new ArrayList<>();

    @Formula("(select coalesce(sum(m.amount), 0) from stock_movement m where m.material_id = id and m.kind <> 'RESERVED')")
    BigDecimal onHand;

    @Formula("(select coalesce(sum(m.amount), 0) from stock_movement m where m.material_id = id)")
    BigDecimal free;

    @Formula("(exists (select 1 from stock_movement m where m.material_id = id))")
    boolean moved;

    /** For the database only; see {@link #stored}. */
    protected Material() {}

    /**
     * Stores a new material. What its sheet says to be on hand is not taken: that is for a movement of stock.
     *
     * @param suppliers finds a supplier by its name
     * @param sample true for one that came with the program and leaves with the samples
     */
    public static Material stored(MaterialSpec sheet, Function<String, Supplier> suppliers, boolean sample, LocalDate today) {
        Material material = new Material();
        material.sample = sample;
        material.hold(sheet, suppliers, today);
        material.persist();
        return material;
    }

    /**
     * Takes a new sheet in place of the old one; an offer of the same pack stays the same offer. Another editor's form is
     * outdated by it even where only offers differ.
     */
    public void replace(MaterialSpec sheet, Function<String, Supplier> suppliers, LocalDate today) {
        getEntityManager().lock(this, LockModeType.PESSIMISTIC_FORCE_INCREMENT);
        EarlierVersion.keep("material", id, readable().isPresent() ? MaterialsPages.formSheet(this) : withoutAmounts(), sheet);
        hold(sheet, suppliers, today);
    }

    private void hold(MaterialSpec given, Function<String, Supplier> suppliers, LocalDate today) {
        MaterialSpec sheet = given.inSheets();
        name = sheet.name().strip();
        unit = sheet.unit();
        variantOf = sheet.variantOf() == null ? null : byName(sheet.variantOf()).orElse(null);
        wasteBeginner = sheet.waste().get(SkillLevel.BEGINNER);
        wasteImprover = sheet.waste().get(SkillLevel.IMPROVER);
        wasteExperienced = sheet.waste().get(SkillLevel.EXPERIENCED);
        confidence = sheet.confidence();
        cutLoss = StoredAmount.of(sheet.cutLoss());
        unitMass = StoredAmount.of(sheet.unitMass());
        minimum = StoredAmount.of(sheet.minimum());
        hazards = new ArrayList<>(sheet.hazards());
        note = sheet.note();
        replaceOffers(sheet.offers(), suppliers, today);
    }

    private void replaceOffers(List<Offer> wanted, Function<String, Supplier> suppliers, LocalDate today) {
        List<SupplierOffer> kept = new ArrayList<>();
        for (Offer offer : wanted) {
            Supplier supplier = suppliers.apply(offer.supplier());
            SupplierOffer stored = offers.stream()
                    .filter(o -> o.isFor(supplier, offer) && !kept.contains(o))
                    .findFirst()
                    .orElseGet(() -> new SupplierOffer(this, supplier));
            stored.take(offer, kept.size(), today);
            kept.add(stored);
        }
        offers.retainAll(kept);
        kept.stream().filter(o -> !offers.contains(o)).forEach(offers::add);
    }

    /** Sets the least that should lie on the shelf, of the kind the material is counted in. */
    public void keepAtLeast(Quantity least) {
        minimum = StoredAmount.of(least);
    }

    /** The sheet, with what is free to use (on the shelf and not reserved) as what is on hand. */
    public MaterialSpec toSpec() {
        return toSpec(free());
    }

    /** The same; nothing where an amount of it can't be read. */
    public Optional<MaterialSpec> readable() {
        try {
            return Optional.of(toSpec());
        } catch (Unusable e) {
            return Optional.empty();
        }
    }

    /** The sheet, with a given amount on hand; none where it is nothing or less. A variant's says all, also what is as with its material. */
    public MaterialSpec toSpec(Quantity amount) {
        return variantOf == null ? own(amount) : own(amount).like(variantOf.own(amount));
    }

    /** Only what is said of itself. */
    MaterialSpec own(Quantity amount) {
        return MaterialSpec.of(name, unit).withVariantOf(variantOf == null ? null : variantOf.name).withWaste(waste()).withConfidence(confidence).withCutLoss(read(cutLoss))
                .withUnitMass(read(unitMass)).withOnHand(amount.signum() > 0 ? amount : null).withMinimum(minimum())
                .withHazards(hazards).withOffers(offers.stream().map(SupplierOffer::toSpec).toList()).withNote(note);
    }

    /** The sheet without its amounts, to which {@link #amounts} are put as they are written. */
    MaterialSpec withoutAmounts() {
        return MaterialSpec.of(name, unit).withVariantOf(variantOf == null ? null : variantOf.name).withWaste(waste()).withConfidence(confidence).withHazards(hazards)
                .withOffers(offers.stream().map(SupplierOffer::priceOnly).toList()).withNote(note);
    }

    /** What is written for each amount of the sheet, read or not, by its JSON Pointer. */
    Map<String, StoredAmount> amounts() {
        Map<String, StoredAmount> amounts = new LinkedHashMap<>();
        amounts.put("/cut_loss", cutLoss);
        amounts.put("/unit_mass", unitMass);
        amounts.put("/minimum", minimum);
        for (int i = 0; i < offers.size(); i++) {
            amounts.put("/offers/" + i + "/holds", offers.get(i).holds);
            amounts.put("/offers/" + i + "/sheet/length", offers.get(i).sheetLength);
            amounts.put("/offers/" + i + "/sheet/width", offers.get(i).sheetWidth);
        }
        amounts.values().removeIf(Objects::isNull);
        return amounts;
    }

    private Map<SkillLevel, BigDecimal> waste() {
        Map<SkillLevel, BigDecimal> waste = new EnumMap<>(SkillLevel.class);
        putGiven(waste, SkillLevel.BEGINNER, wasteBeginner);
        putGiven(waste, SkillLevel.IMPROVER, wasteImprover);
        putGiven(waste, SkillLevel.EXPERIENCED, wasteExperienced);
        return waste;
    }

    private static void putGiven(Map<SkillLevel, BigDecimal> waste, SkillLevel level, BigDecimal percent) {
        if (percent != null) {
            waste.put(level, percent);
        }
    }

    /** What lies on the shelf, reserved or not, in the material's unit; below zero where more was taken than was counted. */
    public Quantity onHand() {
        return shown(onHand);
    }

    /** What lies on the shelf and is reserved for no class, in the material's unit. */
    public Quantity free() {
        return shown(free);
    }

    /** True where any stock was ever moved: its unit must then keep measuring the same kind of thing. */
    public boolean moved() {
        return moved;
    }

    /** True where less is free than should lie on the shelf. */
    public boolean low() {
        return minimum != null && free().compareTo(minimum()) < 0;
    }

    /** The unit in which movements of stock are held. */
    public Unit held() {
        return Unit.held(unit.dimension()).orElseThrow();
    }

    /** An amount in the held unit, as the tutor counts it; nothing for a material not read from the database yet. */
    public Quantity shown(BigDecimal heldAmount) {
        return heldAmount == null ? Quantity.zero(unit) : new Quantity(heldAmount, held()).in(unit).measurable();
    }

    /** The same for all ways to write a material's name. */
    public static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** Whatever the case of its letters and the blanks around them. */
    public static Optional<Material> byName(String name) {
        return find("lower(name) = ?1", key(name)).firstResultOptional();
    }

    /** True where a material is called just so, letter for letter. */
    public static boolean isListed(String name) {
        return byName(name).filter(m -> m.name().equals(name)).isPresent();
    }

    /** Their names, in order. */
    public static List<String> names() {
        return getEntityManager().createQuery("select name from Material order by lower(name)", String.class).getResultList();
    }

    /** All, by name. */
    public static List<Material> all() {
        return list("order by lower(name)");
    }

    /** A page of them, by name. */
    static Paged<Material> page(Sought sought) {
        return Paged.of(find("lower(name) like ?1 escape '!' order by lower(name)", sought.pattern()), sought);
    }

    /** A page of those that run low, by name. */
    static Paged<Material> lowPage(Sought sought) {
        String find = sought.find().toLowerCase(Locale.ROOT);
        List<Long> low = LowMaterial.withNegative().stream().filter(m -> m.name().toLowerCase(Locale.ROOT).contains(find)).map(LowMaterial::id).toList();
        List<Long> shown = low.stream().skip(sought.skipped()).limit(Sought.LINES).toList();
        return new Paged<>(list("id in ?1 order by lower(name)", shown), low.size(), sought);
    }

    /** Those that have a least, and have less than it or are among the named, by name. */
    public static List<Material> toFill(Collection<String> names) {
        return list("minimum is not null and (id in ?1 or lower(name) in ?2) order by lower(name)",
                LowMaterial.all().stream().map(LowMaterial::id).toList(), names.stream().map(Material::key).toList());
    }

    /** Those that carry a hazard, by name. */
    public static List<Material> carrying(String hazard) {
        List<Long> ids = getEntityManager().createNativeQuery("select id from material where :hazard = any(hazards)", Long.class).setParameter("hazard", hazard).getResultList();
        return list("id in ?1 order by lower(name)", ids);
    }

    /** Those with these names, whatever the case of their letters; names not in the catalogue are left out. */
    public static List<Material> named(Collection<String> names) {
        List<String> lower = names.stream().map(Material::key).distinct().toList();
        return lower.isEmpty() ? List.of() : list("lower(name) in ?1 order by lower(name)", lower);
    }

    /** The same and all their variants. */
    public static List<Material> withVariants(Collection<String> names) {
        List<String> lower = names.stream().map(Material::key).distinct().toList();
        List<Long> ids = lower.isEmpty() ? List.of()
                : getEntityManager().createQuery("select id from Material where lower(name) in :names", Long.class).setParameter("names", lower).getResultList();
        return ids.isEmpty() ? List.of() : list("from Material m left join fetch m.variantOf where m.id in ?1 or m.variantOf.id in ?1 order by lower(m.name)", ids);
    }

    public String name() {
        return name;
    }

    public Unit unit() {
        return unit;
    }

    public boolean sample() {
        return sample;
    }

    /** Least that should lie on the shelf; null for none. */
    public Quantity minimum() {
        Quantity least = read(minimum);
        return least == null || unit.counted() == null || !least.dimension().equals(unit.dimension()) ? least : least.in(unit).measurable();
    }

    Quantity read(StoredAmount amount) {
        return StoredAmount.read(amount, "the material “%s”".formatted(name), "/materials/" + id + "/edit");
    }

    /** Those it is bought by: its own, else its material's. */
    public List<SupplierOffer> sold() {
        return offers.isEmpty() && variantOf != null ? variantOf.offers() : offers();
    }

    /** The material that it is a variant of; null for none. */
    public Material material() {
        return variantOf;
    }

    /** Its variants, in the order they were written down. */
    public List<Material> variants() {
        return list("variantOf = ?1 order by id", this);
    }

    /** The variant of this name; a new one where there is none yet. */
    public Material variant(String word, LocalDate today) {
        String full = MaterialSpec.nameOf(name, word);
        return byName(full).orElseGet(() -> stored(MaterialSpec.of(full, unit).withVariantOf(name), supplier -> null, sample, today));
    }

    /** What distinguishes the variants of each of these materials, by its name. */
    public static Map<String, List<String>> variantWords(Collection<String> names) {
        Map<String, List<String>> words = new LinkedHashMap<>();
        List<Material> variants = names.isEmpty() ? List.of() : list("variantOf.name in ?1 order by id", names);
        variants.forEach(v -> words.computeIfAbsent(v.variantOf.name, n -> new ArrayList<>()).add(v.own(Quantity.zero(v.unit)).variant()));
        return words;
    }

    public List<SupplierOffer> offers() {
        return List.copyOf(offers);
    }
}
