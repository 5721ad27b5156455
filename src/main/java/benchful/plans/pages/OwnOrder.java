package benchful.plans.pages;

import benchful.classes.ClassFile;
import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.plans.stored.PlanService;
import benchful.plans.whatif.WhatIf;
import benchful.projects.Step;
import io.quarkus.qute.TemplateData;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The order of the steps that the tutor asks for, and what it costs.
 *
 * @param file of a class that can be planned
 * @param left when the class would end if the order were left to the plan
 */
@TemplateData
public record OwnOrder(ClassFile file, LessonPlan lesson, LocalDateTime left) {

    static OwnOrder of(ClassFile file, LessonPlan lesson, PlanService plans) {
        ClassFile free = file.with(file.setup().withOwnOrder(List.of()));
        return new OwnOrder(file, lesson, file.setup().ownOrder().isEmpty() ? lesson.finish() : plans.finish(free).orElse(lesson.finish()));
    }

    public boolean given() {
        return !file.setup().ownOrder().isEmpty();
    }

    public List<String> titles() {
        return file.setup().ownOrder().stream().map(file.project()::step).flatMap(Optional::stream).map(Step::title).toList();
    }

    /** By how much the class ends later than it could. */
    public Duration costs() {
        Duration later = Duration.between(left, lesson.finish());
        return later.isNegative() ? Duration.ZERO : later;
    }

    /** Groups that take turns have no order in common. */
    public boolean canBeKept() {
        List<String> planned = planned();
        return file.setup().groups() == 1 && planned.size() > 1 && !planned.equals(file.setup().ownOrder());
    }

    private List<String> planned() {
        return lesson.blocks().stream().filter(b -> b.kind().needsClass()).sorted(Comparator.comparing(Block::start)).map(Block::step).distinct().toList();
    }

    /** What keeps the order of the plan as it is. */
    public WhatIf kept() {
        return new WhatIf(fields(planned()));
    }

    /** What leaves the order to the plan. */
    public WhatIf leftToThePlan() {
        return new WhatIf(fields(List.of()));
    }

    private Map<String, String> fields(List<String> order) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (int i = 0; i < Math.max(order.size(), file.setup().ownOrder().size()); i++) {
            fields.put("/own_order/" + i, i < order.size() ? order.get(i) : "");
        }
        return fields;
    }
}
