package benchful.web.sending;

import io.quarkus.arc.Arc;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.Initialized;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.RollbackException;
import jakarta.transaction.SystemException;
import jakarta.transaction.TransactionManager;
import jakarta.transaction.TransactionScoped;
import java.sql.SQLException;
import java.util.Optional;

/**
 * Takes each form once. The first transaction of a request that brings a form begins by writing down the form's key, so that
 * what the form changes and the key are stored together or not at all: after a crash in between there is neither. Of two that
 * come at the same moment, on one instance or on two, the second waits in the database until the first is through; then it
 * finds the key taken, is rolled back before it has changed anything, and gets the first one's answer.
 *
 * <p>What does not hold: where one request has several transactions that each change something, a crash between them leaves
 * the key with the first, and the person is asked to look. Only a sending that led to another page ("saved, and here it is")
 * keeps its key; one that was refused gives it back, by its rollback or when the refusal is answered ({@link SentAnswers}).
 */
@ApplicationScoped
class OnceOnly {
    private final SentFormStore forms;
    private final Sending sending;
    private final TransactionManager transactions;

    OnceOnly(SentFormStore forms, Sending sending, TransactionManager transactions) {
        this.forms = forms;
        this.sending = sending;
        this.transactions = transactions;
    }

    /** @param transaction the one that has just begun on this thread */
    void begin(@Observes @Initialized(TransactionScoped.class) Object transaction) throws SystemException, SQLException, RollbackException {
        boolean inRequest = Arc.container().requestContext().isActive();
        Optional<Take> form = inRequest ? sending.take().filter(take -> !take.isHeld()) : Optional.empty();
        if (form.isPresent()) {
            take(form.get());
        }
    }

    private void take(Take form) throws SystemException, SQLException, RollbackException {
        boolean taken = false;
        try {
            taken = forms.take(form.key(), form.digest());
        } finally {
            if (!taken) {
                // Whoever began the transaction does not end it where its beginning fails.
                transactions.rollback();
            }
        }
        if (!taken) {
            throw new AlreadySent();
        }
        form.hold();
        transactions.getTransaction().registerSynchronization(form);
    }
}
