package benchful.core.lesson.order.solver;

import java.time.LocalDateTime;

/** Told by a long search how far it is, and asked by it whether that is enough. Both from whichever thread searches. */
public interface SearchWatch {
    /** For a search that goes on to its own limit while nobody looks. */
    SearchWatch NONE = new SearchWatch() {
        @Override
        public void tell(LocalDateTime finish, LocalDateTime bound) {
            // nobody looks
        }

        @Override
        public boolean isEnough() {
            return false;
        }
    };

    /**
     * Told whenever an order is found that ends sooner.
     *
     * @param finish when the best order found so far ends
     * @param bound  no order ends sooner
     */
    void tell(LocalDateTime finish, LocalDateTime bound);

    /** Asked several times a second; the best found by then is the answer. */
    boolean isEnough();
}
