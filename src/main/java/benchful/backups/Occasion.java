package benchful.backups;

/** Why a backup was taken, or that one was put back. */
enum Occasion {
    SCHEDULED("On schedule"),
    PRESSED("Taken by you"),
    DOWNLOADED("Downloaded"),
    BEFORE_RESTORE("Kept before a restore"),
    RESTORED("Put back");

    private final String words;

    Occasion(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
