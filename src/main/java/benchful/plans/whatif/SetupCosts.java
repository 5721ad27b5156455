package benchful.plans.whatif;

import benchful.classes.ClassSetup;
import benchful.core.lesson.advice.Change;
import benchful.core.lesson.advice.Costs;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What a change costs a tutor by what she said that hours and hands cost her; a student who stays away costs the fee. */
final class SetupCosts implements Costs {
    private static final BigDecimal MINUTES = BigDecimal.valueOf(60);

    private final ClassSetup setup;
    private final ClassSetup.Costs costs;

    SetupCosts(ClassSetup setup) {
        this.setup = setup;
        this.costs = setup.costs() == null ? new ClassSetup.Costs(null, null, null) : setup.costs();
    }

    @Override
    public Optional<Money> of(Change change) {
        if (change instanceof Change.Helper) {
            return hourly(costs.helper(), booked());
        } else if (change instanceof Change.FewerStudents fewer) {
            return money(times(costs.fee(), fewer.fewer()));
        } else if (change instanceof Change.EarlierStart earlier) {
            return hourly(open(), earlier.by());
        } else if (change instanceof Change.LongerBooking longer) {
            return hourly(open(), longer.by());
        } else if (change instanceof Change.MoreMeetings more) {
            return hourly(open(), length(setup.meetings().get(setup.meetings().size() - 1)).multipliedBy(more.times()));
        } else if (change instanceof Change.MoreTools || change instanceof Change.SplitInTwo || change instanceof Change.Other) {
            return Optional.empty();
        }
        return money(BigDecimal.ZERO);
    }

    /** The room and the helpers who are there anyway, for an hour; null where one of them is not known. */
    private BigDecimal open() {
        if (costs.room() == null || setup.helpers() > 0 && costs.helper() == null) {
            return null;
        }
        return setup.helpers() == 0 ? costs.room() : costs.room().add(times(costs.helper(), setup.helpers()));
    }

    private Duration booked() {
        return setup.meetings().stream().map(SetupCosts::length).reduce(Duration.ZERO, Duration::plus);
    }

    private static Duration length(ClassSetup.Meeting meeting) {
        return Duration.between(meeting.starts(), meeting.ends());
    }

    private static BigDecimal times(BigDecimal amount, int number) {
        return amount == null ? null : amount.multiply(BigDecimal.valueOf(number));
    }

    private Optional<Money> hourly(BigDecimal rate, Duration time) {
        return money(rate == null ? null : rate.multiply(BigDecimal.valueOf(time.toMinutes())).divide(MINUTES, 10, RoundingMode.HALF_UP));
    }

    private Optional<Money> money(BigDecimal amount) {
        return amount == null || setup.currency() == null ? Optional.empty()
                : Optional.of(Money.of(CurrencyUnit.of(setup.currency()), amount, RoundingMode.HALF_UP));
    }
}
