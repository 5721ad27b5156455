package benchful.findings;

import benchful.projects.Step;
import benchful.web.Formats;
import benchful.web.Times;
import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * What stands in a project or its classes and is learned: all times of a step that grow with its pace (of a make step one student's three, of the
 * others how long it lasts), the percentage of a material that is brought for what spoils, how
 * many times as long a level takes, or the calls for help at a step; and of a class how long a break lasts, or how many of a tool there are. Each is null where there is none.
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Setting(Duration quick, Duration usual, Duration slow, Duration lasts, Duration perStudent, BigDecimal waste, BigDecimal pace, Step.Help help, Integer there) {

    public Setting {
        pace = pace == null ? null : hundredths(pace);
        help = help == null ? null : new Step.Help(hundredths(Objects.requireNonNullElse(help.calls(), BigDecimal.ZERO)), Objects.requireNonNullElse(help.lasts(), Duration.ZERO));
    }

    /** So that what was stored equals what stands in a project. */
    private static BigDecimal hundredths(BigDecimal number) {
        return number.setScale(2, RoundingMode.HALF_UP);
    }

    static Setting of(Step step) {
        Step.StudentTime student = step.student();
        return student != null ? new Setting(student.quick(), student.usual(), student.slow(), null, null, null, null, null, null)
                : new Setting(null, null, null, step.lasts(), step.perStudent(), null, null, null, null);
    }

    static Setting lasts(Duration minutes) {
        return new Setting(null, null, null, minutes, null, null, null, null, null);
    }

    static Setting there(int tools) {
        return new Setting(null, null, null, null, null, null, null, null, tools);
    }

    static Setting waste(BigDecimal percent) {
        return new Setting(null, null, null, null, null, percent, null, null, null);
    }

    static Setting pace(BigDecimal times) {
        return new Setting(null, null, null, null, null, null, times, null, null);
    }

    /** @param help null for none */
    static Setting help(Step.Help help) {
        return new Setting(null, null, null, null, null, null, null, help == null ? new Step.Help(BigDecimal.ZERO, Duration.ZERO) : help, null);
    }

    Step in(Step step) {
        return usual != null ? step.withStudent(new Step.StudentTime(quick, usual, slow)) : step.withLasts(lasts).withPerStudent(perStudent);
    }

    Setting each(UnaryOperator<Duration> change) {
        UnaryOperator<Duration> known = time -> time == null ? null : change.apply(time);
        return new Setting(known.apply(quick), known.apply(usual), known.apply(slow), known.apply(lasts), known.apply(perStudent), waste, pace, help, there);
    }

    /** The one that stands for all; null of a step without times. */
    @JsonIgnore
    Duration middle() {
        return usual != null ? usual : lasts;
    }

    /** How many times as long as the other; 0 where that can't be said. */
    double against(Setting other) {
        Duration mine = middle();
        Duration theirs = other.middle();
        return mine == null || theirs == null || (usual == null) != (other.usual == null) || theirs.isZero() ? 0
                : (double) mine.toSeconds() / theirs.toSeconds();
    }

    /** "4 min, 6 min, 9 min 30 s" of a make step; "15 min" of others; "8 % waste"; "1.5 times as long"; "2 calls an hour of 90 s"; "5 there". */
    public String words() {
        if (waste != null) {
            return Formats.number(waste, 2) + " % waste";
        }
        if (pace != null) {
            return Formats.number(pace, 2) + " times as long";
        }
        if (help != null) {
            return help.calls().signum() == 0 ? "no calls for help" : "%s an hour of %s".formatted(Formats.counted(help.calls(), "call"), Times.words(help.lasts()));
        }
        if (there != null) {
            return there + " there";
        }
        if (usual != null) {
            return "%s, %s, %s".formatted(Times.words(quick), Times.words(usual), Times.words(slow));
        }
        return lasts == null ? "" : Times.words(lasts) + (perStudent == null ? "" : " and %s a student".formatted(Times.words(perStudent)));
    }
}
