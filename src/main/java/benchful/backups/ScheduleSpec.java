package benchful.backups;

/**
 * When and where backups are taken.
 *
 * @param folder of the tutor's choice; null for the standard one
 * @param elsewhere true where that folder lies on another machine, or on a disk that does not stay with this one
 * @param everyDays days from one backup to the next; 0 for none
 * @param kept how many of those taken on schedule are kept
 * @param remindAfter days without a backup that left the machine, until the first page says so; 0 for never
 */
record ScheduleSpec(String folder, Boolean elsewhere, Integer everyDays, Integer kept, Integer remindAfter) {
    private static final int DAILY = 1;
    private static final int TWO_WEEKS = 14;

    ScheduleSpec {
        elsewhere = elsewhere != null && elsewhere;
        everyDays = everyDays == null ? DAILY : everyDays;
        kept = kept == null ? TWO_WEEKS : kept;
        remindAfter = remindAfter == null ? TWO_WEEKS : remindAfter;
    }

    static ScheduleSpec standard() {
        return new ScheduleSpec(null, null, null, null, null);
    }
}
