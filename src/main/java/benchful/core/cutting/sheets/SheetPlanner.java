package benchful.core.cutting.sheets;

import static java.util.Objects.requireNonNull;

import benchful.core.cutting.CutSheet;
import benchful.core.cutting.NotCuttable;
import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetOutcome;
import benchful.core.cutting.SheetPlan;
import benchful.core.cutting.SheetStock;
import benchful.core.cutting.StockFloor;
import benchful.core.cutting.patterns.ColumnGeneration;
import benchful.core.cutting.patterns.Micrometres;
import benchful.core.cutting.patterns.Work;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Plans the cutting of rectangles from sheets by straight cuts from edge to edge, as shears, a guillotine or a knife along a
 * rule make them, so that the new sheets cost least; what is on hand costs nothing. A piece and its cuts take length + loss by
 * width + loss; a whole sheet gives length + loss by width + loss, since nothing is cut off at its edges.
 */
public final class SheetPlanner {
    private static final int MOST_PIECES = 3_000;
    private static final Extent LARGEST = new Extent(Quantity.of(30, Unit.M), Quantity.of(30, Unit.M));

    private final SheetCuttingRequest request;
    private final SheetKinds kinds;
    private final long loss;
    private final Work work;

    private SheetPlanner(SheetCuttingRequest request, Work work) {
        this.work = work;
        this.request = request;
        this.loss = Micrometres.up(request.loss());
        this.kinds = SheetKinds.of(request);
    }

    public static SheetOutcome plan(SheetCuttingRequest request) {
        return plan(request, Work.among(1));
    }

    /** @param work shared with other attempts at the same pieces */
    public static SheetOutcome plan(SheetCuttingRequest request, Work work) {
        return NotCuttable.ifMore(request.pieces().stream().mapToLong(Rectangle::count).sum(), MOST_PIECES)
                .or(() -> tooVast(request)).<SheetOutcome>map(reason -> reason).orElseGet(() -> new SheetPlanner(request, work).plan());
    }

    /** A floor under all plans for these pieces, of those that most raise what must be bought beside what is planned; empty where none is found. */
    public static Optional<StockFloor> floor(SheetCuttingRequest request, Work work) {
        SheetKinds kinds = SheetKinds.of(request);
        return BestLayout.of(kinds, work).flatMap(pricing -> new ColumnGeneration(kinds.areas(), List.of(), pricing, work).floor())
                .map(floor -> new StockFloor(request.stocks().stream().map(stock -> floor.worths().get(kinds.of(stock.size(), Micrometres.up(request.loss())))).toList(), floor.least()));
    }

    /** Areas are counted in square micrometres, and all of them together must still be a whole number of 64 bits. */
    private static Optional<NotCuttable> tooVast(SheetCuttingRequest request) {
        Stream<Extent> sheets = Stream.concat(Stream.concat(request.onHand().stream(), request.planned().stream()), request.stocks().stream().map(SheetStock::size));
        return Stream.concat(sheets, request.pieces().stream().map(Rectangle::size)).filter(size -> !size.within(LARGEST)).findFirst()
                .map(size -> new NotCuttable(Sentence.of("%s x %s is more than can be planned; a sheet has at most %s x %s.",
                        size.length(), size.width(), LARGEST.length(), LARGEST.width())));
    }

    private SheetOutcome plan() {
        return tooLarge().<SheetOutcome>map(reason -> reason).orElseGet(() -> SheetSearch.search(kinds, work).<SheetOutcome>map(this::plan).orElseGet(() ->
                new NotCuttable(Sentence.of("No way was found to cut all rectangles from the sheets on hand, and no new sheet is offered."))));
    }

    private Optional<NotCuttable> tooLarge() {
        return request.pieces().stream().filter(p -> kinds.sheets().stream().noneMatch(s -> fits(p, s))).findFirst().map(p -> new NotCuttable(
                kinds.sheets().isEmpty() ? Sentence.of("There is no sheet to cut the rectangles for %s from, of %s x %s each.", Sentence.named(p.label()), p.size().length(), p.size().width())
                        : Sentence.of("A rectangle for %s takes %s x %s, which lies on no sheet there is. Offer a larger one, or join pieces.",
                                Sentence.named(p.label()), p.size().length(), p.size().width())));
    }

    private boolean fits(Rectangle piece, SheetKinds.Shape sheet) {
        SheetKinds.Shape shape = SheetKinds.shape(piece, loss);
        return shape.fits(sheet.length(), sheet.width(), false) || shape.fits(sheet.length(), sheet.width(), true);
    }

    private SheetPlan plan(SheetSearch.Found found) {
        BigDecimal cost = BigDecimal.valueOf(SheetFill.cost(kinds, found.layouts()), 4);
        BigDecimal bound = BigDecimal.valueOf(found.bound(), 4);
        List<CutSheet> sheets = sheets(found.layouts());
        return new SheetPlan(sheets, cost, bound, proof(cost, bound), List.of(made(sheets)));
    }

    /** Gives each layout's pieces their labels. */
    private List<CutSheet> sheets(List<SheetKinds.Layout> layouts) {
        Map<Integer, Deque<String>> labels = new HashMap<>();
        request.pieces().forEach(p -> labels.computeIfAbsent(kinds.shapes().indexOf(SheetKinds.shape(p, loss)), k -> new ArrayDeque<>())
                .addAll(Collections.nCopies(p.count(), p.label())));
        return layouts.stream().sorted(Comparator.comparingInt(SheetKinds.Layout::sheet))
                .map(l -> new SheetLaying(kinds, loss, request.keep(), kind -> requireNonNull(labels.get(kind)).remove(), l.counts()).sheet(l)).toList();
    }

    private Sentence made(List<CutSheet> sheets) {
        Map<Extent, Long> bought = sheets.stream().filter(CutSheet::bought)
                .collect(Collectors.groupingBy(CutSheet::size, LinkedHashMap::new, Collectors.counting()));
        long onHand = sheets.stream().filter(s -> !s.bought()).count();
        List<String> from = new ArrayList<>();
        List<Object> parts = new ArrayList<>(List.of(counted(kinds.areas().pieces(), "rectangle")));
        if (onHand > 0) {
            from.add(counted(onHand, "sheet") + " on hand");
        }
        bought.forEach((size, number) -> {
            from.add(counted(number, "new sheet") + " of %s x %s");
            Stream.of(size.length(), size.width()).forEach(parts::add);
        });
        parts.add(request.loss());
        return Sentence.of("%s are cut from " + String.join(" and ", from) + "; each cut loses %s.", parts.toArray());
    }

    private String proof(BigDecimal cost, BigDecimal bound) {
        if (cost.compareTo(bound) == 0) {
            String grain = request.pieces().stream().anyMatch(Rectangle::grain) ? ", all grain lying one way" : "";
            return request.stocks().size() > 1 ? "Proven least: no other cuts from edge to edge cost less for new sheets%s, deliveries left aside.".formatted(grain)
                    : "Proven least: no other cuts from edge to edge take fewer new sheets%s.".formatted(grain);
        }
        return request.stocks().size() > 1
                ? "Best cutting found; another might cost up to %s less for new sheets.".formatted(cost.subtract(bound).stripTrailingZeros().toPlainString())
                : "Best cutting found with %s; fewer than %s can't do.".formatted(counted(sheets(cost), "new sheet"), sheets(bound));
    }

    private long sheets(BigDecimal cost) {
        BigDecimal each = request.stocks().isEmpty() ? BigDecimal.ONE : request.stocks().get(0).cost();
        return each.signum() == 0 ? 0 : cost.divide(each, 0, RoundingMode.CEILING).longValueExact();
    }

    private static String counted(long n, String noun) {
        return n + " " + noun + (n == 1 ? "" : "s");
    }
}
