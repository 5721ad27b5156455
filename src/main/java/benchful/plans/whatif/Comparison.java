package benchful.plans.whatif;

import benchful.classes.CraftClass;
import benchful.classes.Promise;
import benchful.core.SkillLevel;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.risk.Risk;
import benchful.plans.ClassPlan;
import benchful.web.Formats;
import benchful.web.forms.Difference;
import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.function.Function;

/**
 * A class beside what-ifs of it.
 *
 * @param columns the class as it is, then the what-ifs
 * @param form    for one more what-if
 */
@TemplateData
public record Comparison(CraftClass craftClass, List<Column> columns, SpecForm form) {
    public Comparison {
        columns = List.copyOf(columns);
    }

    /**
     * One plan to compare.
     *
     * @param name    "As it is", "What if 1"
     * @param whatIf  null for the class as it is
     * @param changes in which places of the setup it differs; empty for the class as it is
     */
    @TemplateData
    public record Column(String name, WhatIf whatIf, List<Difference> changes, ClassPlan plan, String picture) {
        public LessonPlan lesson() {
            return plan.lesson();
        }
    }

    /**
     * One thing that is compared.
     *
     * @param values one for each column
     */
    @TemplateData
    public record Row(String title, List<String> values) {}

    /** A dash where a plan can't be made. */
    public List<Row> rows() {
        return List.of(
                row("Will it fit?", p -> p.verdict() == null ? "–" : p.verdict().answer().word().replace(".", "")),
                risk("Ends by the booked end", r -> Formats.chance(r.onTime())),
                lesson("End to promise", l -> time(l.finish())),
                lesson("Against the booked end", l -> l.fits() ? Formats.words(l.spare()) + " to spare" : Formats.words(l.over()) + " over"),
                risk("Half end by", r -> time(r.likely())),
                lesson("You are busy, at the busiest", l -> Formats.percent(l.tutor().peak())),
                lesson("You are busy, on average", l -> Formats.percent(l.tutor().mean())),
                lesson("Class without work", l -> Formats.words(l.idle())),
                risk("Quick students to spare, at most", r -> Formats.words(
                        r.extensions().stream().map(Risk.SpareTime::spare).max(Duration::compareTo).orElse(Duration.ZERO))),
                lesson("You prepare before", l -> Formats.words(l.preparation().total())),
                row("Still to buy", p -> p.materials().total() == null ? "–" : Formats.words(p.materials().total())),
                lesson("Order of steps", l -> l.proof().sentence()));
    }

    public List<String> promises() {
        return Promise.names();
    }

    public List<String> levels() {
        return SkillLevel.names();
    }

    public List<String> sizeNames() {
        return craftClass.project().toSpec().sizes().stream().map(s -> s.name()).toList();
    }

    /** The what-ifs that stand beside the class already. */
    public List<WhatIf> compared() {
        return columns.stream().skip(1).map(Column::whatIf).toList();
    }

    /** With its day only where the class has more than one. */
    private String time(LocalDateTime at) {
        return at.toLocalDate().equals(craftClass.startsAt().toLocalDate()) ? Formats.clock(at) : Formats.words(at);
    }

    private Row lesson(String title, Function<LessonPlan, String> value) {
        return row(title, p -> p.lesson() == null ? "–" : value.apply(p.lesson()));
    }

    private Row risk(String title, Function<Risk, String> value) {
        return row(title, p -> p.risk() == null ? "–" : value.apply(p.risk()));
    }

    private Row row(String title, Function<ClassPlan, String> value) {
        return new Row(title, columns.stream().map(c -> value.apply(c.plan())).toList());
    }
}
