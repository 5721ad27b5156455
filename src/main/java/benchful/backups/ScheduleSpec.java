package benchful.backups;

import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Spec;

/**
 * When and where backups are taken.
 *
 * @param folder of the tutor's choice; null for the standard one
 * @param elsewhere true where that folder lies on another machine, or on a disk that does not stay with this one
 * @param everyDays days from one backup to the next; 0 for none
 * @param kept how many of those taken on schedule are kept
 * @param remindAfter days without a backup that left the machine, until the first page says so; 0 for never
 */
@Spec(name = "backups-1", title = "When and where backups are taken")
record ScheduleSpec(
        @Length(least = 1, most = 1000) @Mend("Give the folder’s path, to 1,000 letters.") String folder,
        Boolean elsewhere,
        @Range(from = 0, to = 31) @Mend("Give whole days from 1 to 31, or 0 for no backups on schedule.") Integer everyDays,
        @Range(from = 1, to = 1000) @Mend("Give how many to keep, from 1 to 1,000.") Integer kept,
        @Range(from = 0, to = 365) @Mend("Give whole days from 1 to 365, or 0 for no reminder.") Integer remindAfter) {
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
