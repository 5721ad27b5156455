package benchful.plans.whatif;

import benchful.core.quantity.Sentence;
import io.quarkus.qute.TemplateData;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.joda.money.Money;

/**
 * What would help a class to end on time, best first.
 *
 * @param chance   of ending on time as planned now [0 to 1]
 * @param order    in which order they come, in words
 * @param comfortable whether the class ends in time so surely that nothing was tried
 * @param complete false where it was given up before all changes were tried
 */
@TemplateData
public record SuggestionList(double chance, String order, List<Suggestion> suggestions, boolean comfortable, boolean complete) {
    public SuggestionList {
        suggestions = List.copyOf(suggestions);
    }

    /**
     * One change, or two together.
     *
     * @param finish       of the changed plan
     * @param fits         whether the changed plan ends by the booked end
     * @param gained       how much more time is left before the booked end; negative if less
     * @param chance       of ending on time with it [0 to 1]
     * @param chanceGained against the class as it is, on the same simulated students [-1 to 1]
     * @param preparation  what it adds to the tutor's work before the class
     * @param cost         money it costs; null where not known
     * @param asks         what more it asks of the tutor in the class, without a full stop; empty where it is nothing
     * @param loses        what the students lose by it, without a full stop; empty where it is nothing
     * @param whatIf       the fields of the setup that make it
     */
    @TemplateData
    public record Suggestion(Sentence title, LocalDateTime finish, boolean fits, Duration gained, double chance, double chanceGained,
            Duration preparation, Money cost, String asks, String loses, WhatIf whatIf) {}
}
