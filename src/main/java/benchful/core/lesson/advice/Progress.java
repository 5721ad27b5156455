package benchful.core.lesson.advice;

/** Told after each change that has been tried; asked before each whether to go on. */
public interface Progress {

    /** Goes on to the end and tells nobody. */
    Progress NONE = new Progress() {
        @Override
        public boolean isCancelled() {
            return false;
        }

        @Override
        public void tried(int done, int all) {
        }
    };

    boolean isCancelled();

    /** @param all how many will be tried, as far as is known now */
    void tried(int done, int all);
}
