package benchful.backups.archive;

/** Why a backup could not be taken, opened or put back. Its message is meant for the tutor: what is wrong, where, and what to do. */
public class BackupFault extends RuntimeException {
    public BackupFault(String message) {
        super(shown(message));
    }

    public BackupFault(String message, Throwable cause) {
        super(shown(message), cause);
    }

    /** A file in an archive may be called anything, also what no page can show. */
    private static String shown(String message) {
        return message.replaceAll("\\p{Cntrl}", "\uFFFD");
    }

    /** The file is whole as far as it can be seen, but is locked with another passphrase. */
    public static final class WrongPassphrase extends BackupFault {
        WrongPassphrase(Throwable cause) {
            super("This passphrase does not open the file. Type the one that was set when the backup was taken; capitals and blanks count."
                    + " If you are sure of it, the beginning of the file is damaged: copy it once more from where it lay.", cause);
        }
    }

    public static BackupFault damaged(Throwable cause) {
        return new BackupFault("The file is damaged or cut short, so nothing was put back from it. Copy it once more from where it lay, or take an older one.", cause);
    }
}
