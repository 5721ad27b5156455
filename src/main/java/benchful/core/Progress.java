package benchful.core;

/** Told by long work how far it is, and asked by it whether anybody still waits. */
public interface Progress {
    /** For work that is done in a moment: nobody looks, and it goes on to its end. */
    Progress NONE = new Progress() {
        @Override
        public void tell(int done, int all) {
            // nobody looks
        }

        @Override
        public boolean isGivenUp() {
            return false;
        }
    };

    /**
     * Told after each part.
     *
     * @param all how many there are, as far as is known now
     */
    void tell(int done, int all);

    /** Asked before each part. */
    boolean isGivenUp();
}
