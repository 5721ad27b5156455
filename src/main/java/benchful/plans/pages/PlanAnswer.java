package benchful.plans.pages;

import benchful.plans.ClassPlan;
import benchful.plans.whatif.SuggestionList;
import com.fasterxml.jackson.annotation.JsonUnwrapped;

/**
 * The plan as programs are answered: one object with everything that is computed.
 *
 * @param suggestions what would help the class to end on time; null where it was not asked for or there is no plan
 */
record PlanAnswer(@JsonUnwrapped ClassPlan plan, SuggestionList suggestions) {}
