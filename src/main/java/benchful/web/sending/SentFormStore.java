package benchful.web.sending;

import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;

/** The forms that were sent, in the database, so that several instances on it take each once between them. */
@ApplicationScoped
class SentFormStore {
    /** Waits for another who is taking the same form; nothing is written where it was taken with the same content. */
    private static final String TAKE = """
            insert into sent_form (key, digest) values (?, ?)
            on conflict (key) do update set digest = excluded.digest, answer = null, sent_at = now()
            where sent_form.digest <> excluded.digest""";
    private static final String ANSWER = "update sent_form set answer = ? where key = ? and digest = ?";
    private static final String FREE = "delete from sent_form where key = ? and digest = ?";
    private static final String FIND = "select answer from sent_form where key = ? and digest = ?";
    private static final String SAVED = "select 1 from sent_form where key = ? and answer is not null";
    /** A tab may stay open for weeks. A few at a time, and never waiting for another who sweeps. */
    private static final String SWEEP = """
            delete from sent_form where key in (select key from sent_form where sent_at < now() - interval '60 days'
            order by sent_at limit 50 for update skip locked)""";

    private final AgroalDataSource database;

    SentFormStore(AgroalDataSource database) {
        this.database = database;
    }

    /** Joins the transaction of the caller: the form is taken if and only if that is committed. False where it was taken before. */
    boolean take(String key, String digest) throws SQLException {
        return change(TAKE, key, digest) > 0;
    }

    void answered(String key, String digest, String address) throws SQLException {
        change(ANSWER, address, key, digest);
        change(SWEEP);
    }

    /** It came to nothing, so it may be sent again. */
    void free(String key, String digest) throws SQLException {
        change(FREE, key, digest);
    }

    /** What became of a form that was taken. */
    Fate fate(String key, String digest) throws SQLException {
        try (Connection connection = database.getConnection(); PreparedStatement find = prepared(connection, FIND, key, digest);
                ResultSet row = find.executeQuery()) {
            return row.next() ? new Fate(true, Optional.ofNullable(row.getString(1))) : new Fate(false, Optional.empty());
        }
    }

    /**
     * What became of a form.
     *
     * @param taken false where it came to nothing and may be sent again
     * @param answer where its browser was led to; none while it is under way, or for ever if the program ended just then
     */
    record Fate(boolean taken, Optional<String> answer) {
        boolean isOpen() {
            return taken && answer.isEmpty();
        }
    }

    boolean isSaved(String key) throws SQLException {
        try (Connection connection = database.getConnection(); PreparedStatement find = prepared(connection, SAVED, key);
                ResultSet row = find.executeQuery()) {
            return row.next();
        }
    }

    private int change(String sql, String... values) throws SQLException {
        try (Connection connection = database.getConnection(); PreparedStatement statement = prepared(connection, sql, values)) {
            return statement.executeUpdate();
        }
    }

    private static PreparedStatement prepared(Connection connection, String sql, String... values) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(sql);
        for (int i = 0; i < values.length; i++) {
            statement.setString(i + 1, values[i]);
        }
        return statement;
    }
}
