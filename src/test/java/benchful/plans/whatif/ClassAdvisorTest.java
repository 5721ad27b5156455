package benchful.plans.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import benchful.classes.ClassFile;
import benchful.core.Progress;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.risk.Promised;
import benchful.plans.ClassPlan;
import benchful.plans.ClassPlanner;
import benchful.plans.ComputedPlans;
import benchful.plans.SmallClass;
import java.time.LocalDateTime;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What would help a class, as fields of its form. */
class ClassAdvisorTest {
    /** Eight knots of a quarter of an hour are two hours for most, and more than the evening for the slow. */
    @Test
    void saysEachChangeInTheFieldsOfTheClass() {
        ClassFile file = SmallClass.of(4).size("50", "length", "50 mm").size("80", "length", "80 mm").want("80", 4).repeats("knot", 15, "length / 10 mm").file();

        SuggestionList suggestions = advice(file);
        assertThat(suggestions.suggestions()).filteredOn(SuggestionList.Suggestion::fits)
                .extracting(one -> one.title().toString(), one -> one.whatIf().fields(), SuggestionList.Suggestion::finish).containsExactly(
                        tuple("Make “50” the largest size", Map.of("/sizes/80", "", "/sizes/50", "4"), LocalDateTime.parse("2027-03-06T20:59")));
        assertThat(suggestions.chance()).isLessThan(0.1);
        assertThat(suggestions.complete()).isTrue();
    }

    private static SuggestionList advice(ClassFile file) {
        ClassPlan plan = ComputedPlans.of(file);
        return new ClassAdvisor(new ListPlanner(), file).suggestions(ClassPlanner.request(file), new Promised(plan.lesson(), plan.risk()), Progress.NONE);
    }
}
