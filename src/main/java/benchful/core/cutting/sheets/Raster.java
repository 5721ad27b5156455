package benchful.core.cutting.sheets;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Where cuts are of use: at the sums of the pieces' edges, since any cut can be moved towards the corner until a piece stops
 * it. Source: Herz, "Recursive computational procedure for two-dimensional stock cutting", IBM Journal of Research and
 * Development 16 (1972).
 */
final class Raster {
    private final long[] points;

    private Raster(long[] points) {
        this.points = points;
    }

    /**
     * @param edges of the pieces, with the most of each
     * @return empty where there are more points than {@code most}
     */
    static Optional<Raster> of(Map<Long, Integer> edges, long longest, int most) {
        TreeSet<Long> points = new TreeSet<>();
        points.add(0L);
        for (Map.Entry<Long, Integer> edge : edges.entrySet()) {
            for (long from : points.toArray(Long[]::new)) {
                long point = from;
                for (int n = 0; n < edge.getValue() && point + edge.getKey() <= longest; n++) {
                    point += edge.getKey();
                    points.add(point);
                }
            }
            if (points.size() > most) {
                return Optional.empty();
            }
        }
        return Optional.of(new Raster(points.stream().mapToLong(Long::longValue).toArray()));
    }

    int size() {
        return points.length;
    }

    long at(int point) {
        return points[point];
    }

    /** The last point that is not beyond {@code place}. */
    int before(long place) {
        int found = Arrays.binarySearch(points, place);
        return found >= 0 ? found : -found - 2;
    }
}
