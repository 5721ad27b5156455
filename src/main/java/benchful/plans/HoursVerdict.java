package benchful.plans;

import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.risk.Risk;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a class fits its hours, as every page and print-out says it: the chance decides, so answer, colour, time and percentage
 * can't disagree. A class fits where as many such classes as are promised end by the booked end.
 *
 * @param sentence why, in one sentence with its times
 * @param more     when other shares of such classes have ended
 */
@TemplateData
public record HoursVerdict(Answer answer, String sentence, String more) {
    private static final double HALF = 0.5;
    private static final double NINE_IN_TEN = 0.9;

    /** What a tutor is told first. */
    public enum Answer {
        FITS("Yes."), TIGHT("Tight."), OVER("No.");

        private final String word;

        Answer(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    static HoursVerdict of(LessonPlan lesson, Risk risk) {
        String chance = Formats.chance(risk.onTime());
        if (lesson.fits()) {
            String spare = lesson.spare().isZero() ? "just at the booked end" : Formats.words(lesson.spare()) + " before the booked end";
            return new HoursVerdict(Answer.FITS, "%s of such classes end by %s, %s.".formatted(Formats.capital(share(risk.promise())), time(lesson, lesson.finish()), spare),
                    "%s end by the booked end; %s.".formatted(chance, String.join(", ", others(lesson, risk))));
        }
        List<String> ends = new ArrayList<>(others(lesson, risk));
        ends.add("%s by %s".formatted(share(risk.promise()), time(lesson, lesson.finish())));
        return new HoursVerdict(risk.onTime() >= HALF ? Answer.TIGHT : Answer.OVER,
                "%s of such classes end by the booked end, %s.".formatted(chance, time(lesson, lesson.bookedEnd())),
                "%s.".formatted(Formats.capital(String.join(", ", ends))));
    }

    /** When half and nine in ten have ended, where that is not what is promised. */
    private static List<String> others(LessonPlan lesson, Risk risk) {
        List<String> ends = new ArrayList<>();
        if (risk.promise() != HALF) {
            ends.add("half by " + time(lesson, risk.likely()));
        }
        if (risk.promise() < NINE_IN_TEN) {
            ends.add("nine in ten by " + time(lesson, risk.late()));
        }
        return ends;
    }

    public boolean fits() {
        return answer == Answer.FITS;
    }

    /** In a line: "Yes. Nine in ten of such classes end by 15:20, 12 min before the booked end." */
    public String words() {
        return answer.word() + " " + sentence;
    }

    /** A share of classes as a tutor says it. */
    public static String share(double share) {
        return share == HALF ? "half" : share == 0.75 ? "three in four" : share == NINE_IN_TEN ? "nine in ten" : Formats.chance(share);
    }

    /** With its day where the class does not end on the day it begins. */
    private static String time(LessonPlan lesson, LocalDateTime at) {
        return at.toLocalDate().equals(lesson.start().toLocalDate()) ? Formats.clock(at) : Formats.words(at);
    }
}
