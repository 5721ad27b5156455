package benchful.web.tasks;

/** Told by long work how far it is, and asked by it whether anybody still waits. */
public interface Headway {
    /** For work that is done in a moment. */
    Headway NONE = new Headway() {
        @Override
        public void tell(int partsDone, int partsInAll) {
            // nobody looks
        }

        @Override
        public boolean isGivenUp() {
            return false;
        }
    };

    /** Told after each part. */
    void tell(int partsDone, int partsInAll);

    /** Asked before each part. */
    boolean isGivenUp();
}
