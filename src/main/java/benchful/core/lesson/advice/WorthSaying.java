package benchful.core.lesson.advice;

import java.time.Duration;
import java.util.List;
import java.util.function.Predicate;

/**
 * Leaves out what a good colleague would not say: more of a thing than is enough, or less of it where enough is at hand; two things
 * where one that asks no more suffices; to turn somebody away or have everybody come again where something lesser does; and what
 * gains no chance, unless nothing suffices and it closes some of the gap.
 */
final class WorthSaying {

    /** Other hours by more than this ask as much as another meeting. */
    private static final int MOST_MINUTES = 60;
    /** Nobody is turned away where the tutor can see to it, and nobody comes again where it can be agreed. */
    private static final int TOO_MUCH = 2;
    /** What gains less than this share of what is lacking, and no chance, is left out. */
    private static final int SHARE = 4;
    private static final double NO_CHANCE = 0.01;

    private final List<Suggestion> all;
    private final Duration lacking;
    private final List<Suggestion> good;

    /** @param lacking how long after the booked end it ends as it is; negative if before */
    WorthSaying(List<Suggestion> all, Duration lacking) {
        this.all = all;
        this.lacking = lacking;
        this.good = all.stream().filter(Ranking::isGood).toList();
    }

    List<Suggestion> suggestions() {
        return all.stream().filter(Predicate.not(this::isNotTheRightAmount)).filter(Predicate.not(this::asksTooMuch)).filter(Predicate.not(this::isMoreThanOneThing))
                .filter(this::closesSome).toList();
    }

    private boolean isNotTheRightAmount(Suggestion one) {
        return one.changes().size() == 1 && (isMoreOfTheSame(one) || good.stream().filter(enough -> isOfAKind(enough, one)).mapToInt(Suggestion::extent).min().stream()
                .anyMatch(enough -> enough != one.extent()));
    }

    private boolean isMoreOfTheSame(Suggestion one) {
        return good.stream().anyMatch(enough -> enough.changes().size() == 1 && one.changes().get(0).includes(enough.changes().get(0)));
    }

    private static boolean isOfAKind(Suggestion one, Suggestion other) {
        return one.changes().size() == 1 && one.changes().get(0).kind().equals(other.changes().get(0).kind());
    }

    private boolean asksTooMuch(Suggestion one) {
        return good.stream().anyMatch(other -> asks(other) + TOO_MUCH <= asks(one));
    }

    private boolean isMoreThanOneThing(Suggestion pair) {
        return pair.changes().size() > 1 && good.stream().anyMatch(one -> one.changes().size() == 1 && asks(one) <= asks(pair));
    }

    private static int asks(Suggestion one) {
        return one.changes().stream().mapToInt(WorthSaying::asks).max().orElseThrow();
    }

    /** In rising order: what the tutor sees to herself or asks of a helper; what is to be agreed; a seat less; another day. */
    private static int asks(Change change) {
        return switch (change.trouble()) {
            case TEACH, PREPARE, ASK -> 0;
            case AGREE -> change.extent() > MOST_MINUTES ? 3 : 1;
            case CHANGE_THE_CLASS -> change.extent() >= Change.EVERYBODY ? 3 : 2;
        };
    }

    private boolean closesSome(Suggestion one) {
        return Ranking.isGood(one) || one.chanceGained() >= NO_CHANCE || good.isEmpty() && one.gained().multipliedBy(SHARE).compareTo(lacking) >= 0;
    }
}
