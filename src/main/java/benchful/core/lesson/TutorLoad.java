package benchful.core.lesson;

import java.time.LocalDateTime;
import java.util.List;

/**
 * How busy the tutor is: 1 while showing, and the expected share of time spent helping while the students make.
 *
 * @param spans  stretches of equal load, by start
 * @param peak   the greatest load [1 = all the time]
 * @param mean   the load averaged over the time the class works [1 = all the time]
 */
public record TutorLoad(List<Span> spans, double peak, double mean) {

    /**
     * A stretch of equal load, with the title of what keeps the tutor busy.
     *
     * @param share   of the tutor's time [1 = all the time]
     * @param helping of each helper's time; 0 where there is none
     */
    public record Span(LocalDateTime start, LocalDateTime end, String title, double share, double helping) {
    }

    public TutorLoad {
        spans = List.copyOf(spans);
    }
}
