package benchful.core.lesson.advice;

import java.util.Optional;
import org.joda.money.Money;

/** What a change costs the tutor in money, where it is known. */
@FunctionalInterface
public interface Costs {

    Costs UNKNOWN = change -> Optional.empty();

    Optional<Money> of(Change change);
}
