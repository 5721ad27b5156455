package benchful.backups.tables;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import javax.sql.DataSource;

/**
 * Keeps this and every other instance on the same database from doing the same thing twice at once. It goes when its holder ends,
 * however it ends.
 */
public final class AdvisoryLock implements AutoCloseable {
    /** One for each thing that only one instance may do. */
    public enum Purpose {
        BACKUP,
        RESTORE;

        private int number() {
            return ordinal() + 1;
        }
    }

    // "benc": apart from the locks of whatever else uses the server.
    private static final int PROGRAM = 0x62656e63;

    private final Connection connection;
    private final Purpose purpose;

    private AdvisoryLock(Connection connection, Purpose purpose) {
        this.connection = connection;
        this.purpose = purpose;
    }

    /** None where another holds it. */
    public static Optional<AdvisoryLock> take(DataSource database, Purpose purpose) throws SQLException {
        Connection connection = database.getConnection();
        try {
            if (ask(connection, "select pg_try_advisory_lock(?, ?)", purpose)) {
                return Optional.of(new AdvisoryLock(connection, purpose));
            }
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
        connection.close();
        return Optional.empty();
    }

    /** True while any instance holds it. */
    public static boolean held(DataSource database, Purpose purpose) throws SQLException {
        try (Connection connection = database.getConnection()) {
            return ask(connection, """
                    select exists (select 1 from pg_locks where locktype = 'advisory' and classid = ? and objid = ? and objsubid = 2
                        and database = (select oid from pg_database where datname = current_database()))""", purpose);
        }
    }

    private static boolean ask(Connection connection, String sql, Purpose purpose) throws SQLException {
        try (PreparedStatement query = connection.prepareStatement(sql)) {
            query.setInt(1, PROGRAM);
            query.setInt(2, purpose.number());
            try (ResultSet row = query.executeQuery()) {
                row.next();
                return row.getBoolean(1);
            }
        }
    }

    @Override
    public void close() throws SQLException {
        try (connection) {
            ask(connection, "select pg_advisory_unlock(?, ?)", purpose);
        }
    }
}
