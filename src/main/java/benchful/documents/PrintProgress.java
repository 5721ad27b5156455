package benchful.documents;

/** Told how far a print-out is, and asked whether anybody still waits for it. */
interface PrintProgress {
    /** For print-outs that are done in a moment. */
    PrintProgress NONE = new PrintProgress() {
        @Override
        public void tell(int done, int all) {
            // nobody looks
        }

        @Override
        public boolean isGivenUp() {
            return false;
        }
    };

    /** @param done and @param all count parts: handouts, or bundles of label sheets */
    void tell(int done, int all);

    boolean isGivenUp();
}
