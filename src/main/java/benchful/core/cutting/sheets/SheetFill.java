package benchful.core.cutting.sheets;

import benchful.core.cutting.patterns.EqualLengths;
import benchful.core.cutting.sheets.SheetKinds.Layout;
import benchful.core.cutting.sheets.SheetKinds.Shape;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One piece after the other, the largest first, into the free rectangle that it fills best; what remains beside it is divided
 * by two cuts. Sheets on hand or planned are opened first. Several orders, ways to divide and sheets to open are tried, and the cheapest
 * plan is taken; of equal ones that with the largest rest in one piece.
 */
final class SheetFill {
    private static final int NONE = -1;
    private static final List<Comparator<Shape>> ORDERS = List.of(
            Comparator.comparingLong(Shape::area).reversed(),
            Comparator.comparingLong((Shape s) -> Math.max(s.length(), s.width())).reversed(),
            Comparator.comparingLong((Shape s) -> Math.min(s.length(), s.width())).reversed());

    private final SheetKinds kinds;
    private final Manner manner;
    private final int[] demand;
    private final int[] left;
    private final List<Part> sheets = new ArrayList<>();
    private final List<Integer> which = new ArrayList<>();

    private SheetFill(SheetKinds kinds, Manner manner, Lot lot) {
        this.kinds = kinds;
        this.manner = manner;
        this.demand = lot.demand();
        this.left = lot.sheets().clone();
    }

    /**
     * @param preferred the new sheet that is opened where the piece lies on it; {@link #NONE} for the first that it lies on
     * @param wideRest the kinds of pieces beside which the rest remains as wide as can be
     */
    record Manner(int preferred, BitSet wideRest) {
        static Manner of(int preferred, boolean wide, int kinds) {
            BitSet rest = new BitSet();
            rest.set(0, kinds, wide);
            return new Manner(preferred, rest);
        }
    }

    /**
     * What is laid, on what.
     *
     * @param demand [kinds]
     * @param sheets so many there are of each
     */
    record Lot(int[] demand, int[] sheets) {
        static Lot all(SheetKinds kinds) {
            return new Lot(kinds.areas().demand(), kinds.areas().lengths().stream().mapToInt(EqualLengths::available).toArray());
        }

        /** The pieces of some filled sheets, while others stay as they are. */
        static Lot of(SheetKinds kinds, List<Layout> emptied, List<Layout> kept) {
            int[] demand = new int[kinds.shapes().size()];
            emptied.forEach(layout -> Arrays.setAll(demand, kind -> demand[kind] + layout.counts()[kind]));
            int[] sheets = all(kinds).sheets();
            kept.stream().filter(layout -> kinds.areas().lengths().get(layout.sheet()).limited()).forEach(layout -> sheets[layout.sheet()]--);
            return new Lot(demand, sheets);
        }
    }

    /** Layouts that give every piece; empty where the sheets do not reach. */
    static Optional<List<Layout>> fill(SheetKinds kinds) {
        int[] stocks = kinds.areas().stocks().toArray();
        return IntStream.of(stocks.length == 0 ? new int[] {NONE} : stocks).boxed()
                .flatMap(s -> ORDERS.stream().flatMap(order -> Stream.of(true, false).map(wide -> new SheetFill(kinds, Manner.of(s, wide, kinds.shapes().size()), Lot.all(kinds)).filled(order))))
                .filter(Optional::isPresent).map(Optional::get)
                .min(Comparator.comparingLong(SheetFill::newCost).thenComparing(Comparator.comparingLong(SheetFill::largestRest).reversed()))
                .map(SheetFill::layouts);
    }

    private long newCost() {
        return which.stream().mapToLong(s -> kinds.areas().lengths().get(s).cost()).sum();
    }

    private long largestRest() {
        return sheets.stream().mapToLong(Part::largestRest).max().orElse(0);
    }

    static long cost(SheetKinds kinds, List<Layout> layouts) {
        return layouts.stream().mapToLong(l -> kinds.areas().lengths().get(l.sheet()).cost()).sum();
    }

    private Optional<SheetFill> filled(Comparator<Shape> order) {
        return filled(IntStream.range(0, kinds.shapes().size()).boxed().sorted(Comparator.comparing(kinds.shapes()::get, order)).toList());
    }

    /** Layouts of the pieces in this order of kinds; empty where the sheets do not reach. */
    static Optional<List<Layout>> fill(SheetKinds kinds, Manner manner, Lot lot, List<Integer> order) {
        return new SheetFill(kinds, manner, lot).filled(order).map(SheetFill::layouts);
    }

    private Optional<SheetFill> filled(List<Integer> order) {
        for (int kind : order) {
            if (!put(kind)) {
                return Optional.empty();
            }
        }
        return Optional.of(this);
    }

    private List<Layout> layouts() {
        return IntStream.range(0, sheets.size()).mapToObj(this::layout).toList();
    }

    private Layout layout(int i) {
        CutTree tree = sheets.get(i).tree();
        int[] counts = new int[kinds.shapes().size()];
        tree.count(counts);
        return new Layout(which.get(i), counts, tree);
    }

    /** All pieces of a kind. A sheet that takes none of them any more is not asked again. */
    private boolean put(int kind) {
        Shape shape = kinds.shapes().get(kind);
        List<Part> able = new ArrayList<>(sheets);
        for (int piece = 0; piece < demand[kind]; piece++) {
            @Nullable Place best = best(able, shape);
            if (best == null && open(shape)) {
                able.add(sheets.get(sheets.size() - 1));
                best = best(able, shape);
            }
            if (best == null) {
                return false;
            }
            best.part().fill(kind, shape, best.turned());
        }
        return true;
    }

    private static @Nullable Place best(List<Part> able, Shape shape) {
        @Nullable Place best = null;
        for (Iterator<Part> sheets = able.iterator(); sheets.hasNext();) {
            @Nullable Place place = sheets.next().best(shape);
            if (place == null) {
                sheets.remove();
            }
            best = better(best, place);
        }
        return best;
    }

    /** Of equal ones the first. */
    private static @Nullable Place better(@Nullable Place first, @Nullable Place second) {
        return first == null || second != null && second.spare() < first.spare() ? second : first;
    }

    private boolean open(Shape shape) {
        int[] fitting = IntStream.range(0, left.length).filter(s -> left[s] > 0 && holds(s, shape)).toArray();
        if (fitting.length == 0) {
            return false;
        }
        boolean prefers = manner.preferred() != NONE && !kinds.areas().lengths().get(fitting[0]).limited() && holds(manner.preferred(), shape);
        int sheet = prefers ? manner.preferred() : fitting[0];
        left[sheet] -= kinds.areas().lengths().get(sheet).limited() ? 1 : 0;
        which.add(sheet);
        sheets.add(new Part(kinds.sheets().get(sheet).length(), kinds.sheets().get(sheet).width()));
        return true;
    }

    private boolean holds(int sheet, Shape shape) {
        Shape size = kinds.sheets().get(sheet);
        return shape.fits(size.length(), size.width(), false) || shape.fits(size.length(), size.width(), true);
    }

    /** @param spare what remains along the edge that the piece fills best [um] */
    private record Place(Part part, boolean turned, long spare) {}

    /** A rectangle of a sheet: free, filled by a piece, or divided. */
    private final class Part {
        private final long length;
        private final long width;
        private @Nullable CutTree piece;
        private boolean across;
        private long at;
        private @Nullable Part first;
        private @Nullable Part second;

        Part(long length, long width) {
            this.length = length;
            this.width = width;
        }

        /** Null where there is no room for it. */
        @Nullable Place best(Shape shape) {
            if (first != null && second != null) {
                return better(first.best(shape), second.best(shape));
            }
            return piece != null ? null : better(place(shape, false), place(shape, true));
        }

        private @Nullable Place place(Shape shape, boolean turned) {
            return !shape.fits(length, width, turned) ? null : new Place(this, turned,
                    Math.min(length - (turned ? shape.width() : shape.length()), width - (turned ? shape.length() : shape.width())));
        }

        void fill(int kind, Shape shape, boolean turned) {
            long along = turned ? shape.width() : shape.length();
            long beside = turned ? shape.length() : shape.width();
            boolean cutAcross = manner.wideRest().get(kind) == (length - along >= width - beside);
            Part corner = divided(cutAcross, cutAcross ? along : beside);
            Part inner = corner.divided(!cutAcross, cutAcross ? beside : along);
            inner.piece = CutTree.piece(kind, turned);
        }

        /** The part at the corner; the whole where the cut would lie on its edge. */
        private Part divided(boolean cutAcross, long place) {
            if (place == (cutAcross ? length : width)) {
                return this;
            }
            across = cutAcross;
            at = place;
            first = cutAcross ? new Part(place, width) : new Part(length, place);
            second = cutAcross ? new Part(length - place, width) : new Part(length, width - place);
            return first;
        }

        /** Of its free rectangles [um2]. */
        long largestRest() {
            return first != null && second != null ? Math.max(first.largestRest(), second.largestRest()) : piece == null ? length * width : 0;
        }

        CutTree tree() {
            if (first != null && second != null) {
                return CutTree.divided(across, at, first.tree(), second.tree());
            }
            return piece == null ? CutTree.EMPTY : piece;
        }
    }
}
