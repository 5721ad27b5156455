package benchful.web.sending;

import jakarta.transaction.Status;
import jakarta.transaction.Synchronization;

/** One form on its way into the database. */
final class Take implements Synchronization {
    private final String key;
    private final String digest;
    // Told by the end of a transaction, which comes from another thread when it has taken too long.
    private volatile boolean held;

    Take(String key, String digest) {
        this.key = key;
        this.digest = digest;
    }

    /** The random part of the form's key. */
    String key() {
        return key;
    }

    String digest() {
        return digest;
    }

    /** True from the start of the transaction that took the form; false again if that was rolled back. */
    boolean isHeld() {
        return held;
    }

    void hold() {
        held = true;
    }

    @Override
    public void beforeCompletion() {
        // Nothing is left to do: the key is written first of all.
    }

    @Override
    public void afterCompletion(int status) {
        held = status == Status.STATUS_COMMITTED;
    }
}
