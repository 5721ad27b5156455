package benchful.plans.pages;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.plans.stored.PlanService;
import benchful.plans.whatif.WhatIf;
import benchful.projects.Step;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The order and the times of steps that the tutor asks for, and what they cost.
 *
 * @param file of a class that can be planned
 * @param left when the class would end if all were left to the plan
 */
@TemplateData
public record OwnWishes(ClassFile file, LessonPlan lesson, LocalDateTime left) {

    static OwnWishes of(ClassFile file, LessonPlan lesson, PlanService plans) {
        ClassFile free = file.with(file.setup().withOwnOrder(List.of()).withOwnTimes(List.of()));
        return new OwnWishes(file, lesson, free.setup().equals(file.setup()) ? lesson.finish() : plans.finish(free).orElse(lesson.finish()));
    }

    public boolean given() {
        return ordered() || !file.setup().ownTimes().isEmpty();
    }

    public boolean ordered() {
        return !file.setup().ownOrder().isEmpty();
    }

    public List<String> titles() {
        return file.setup().ownOrder().stream().map(file.project()::step).flatMap(Optional::stream).map(Step::title).toList();
    }

    /** "Knot the strand at 14:00", with when it begins where it can't begin so soon. */
    public List<String> times() {
        return file.setup().ownTimes().stream().flatMap(wish -> file.project().step(wish.step()).map(step -> sentence(step, wish)).stream()).toList();
    }

    private String sentence(Step step, ClassSetup.OwnTime wish) {
        Optional<LocalDateTime> begins = lesson.blocksOf(step.id()).stream().map(Block::start).min(Comparator.naturalOrder());
        Optional<LocalDateTime> asked = file.setup().meetingOf(wish).map(m -> m.date().atTime(wish.at()));
        String day = file.setup().meetings().size() == 1 ? "" : asked.map(time -> " on " + Formats.words(time.toLocalDate())).orElse("");
        String late = begins.filter(time -> asked.filter(time::isAfter).isPresent()).map(time -> ", planned for %s, as soon as what comes before is done".formatted(Formats.clock(time))).orElse("");
        return "%s at %s%s%s".formatted(step.title(), Formats.words(wish.at()), day, begins.isEmpty() ? ", which the class does not do" : late);
    }

    /** By how much the class ends later than it could. */
    public Duration costs() {
        Duration later = Duration.between(left, lesson.finish());
        return later.isNegative() ? Duration.ZERO : later;
    }

    /** Groups that take turns have no order in common. */
    public boolean canBeKept() {
        List<String> planned = planned();
        return file.setup().groups() == 1 && planned.size() > 1 && !ordered();
    }

    private List<String> planned() {
        return lesson.blocks().stream().filter(b -> b.kind().needsClass()).sorted(Comparator.comparing(Block::start)).map(Block::step).distinct().toList();
    }

    /** What the class does that has no time of the tutor's own, in the order of the plan. */
    public List<Step> timeable() {
        return planned().stream().filter(id -> file.setup().ownTimes().stream().noneMatch(wish -> wish.step().equals(id))).map(file.project()::step).flatMap(Optional::stream).toList();
    }

    public String nextStep() {
        return next("step");
    }

    public String nextAt() {
        return next("at");
    }

    public String nextMeeting() {
        return next("meeting");
    }

    /** The place of one more time. */
    private String next(String field) {
        return "/own_times/%d/%s".formatted(file.setup().ownTimes().size(), field);
    }

    /** What keeps the order of the plan as it is. */
    public WhatIf kept() {
        return new WhatIf(order(planned()));
    }

    /** What leaves order and times to the plan. */
    public WhatIf leftToThePlan() {
        Map<String, String> fields = order(List.of());
        for (int i = 0; i < file.setup().ownTimes().size(); i++) {
            for (String field : List.of("step", "meeting", "at")) {
                fields.put("/own_times/%d/%s".formatted(i, field), "");
            }
        }
        return new WhatIf(fields);
    }

    private Map<String, String> order(List<String> order) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (int i = 0; i < Math.max(order.size(), file.setup().ownOrder().size()); i++) {
            fields.put("/own_order/" + i, i < order.size() ? order.get(i) : "");
        }
        return fields;
    }
}
