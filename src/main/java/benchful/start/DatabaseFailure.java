package benchful.start;

import java.sql.SQLException;
import java.util.Optional;

/**
 * Why a PostgreSQL server that was chosen by a setting can't be used, by PostgreSQL's error codes (appendix A of its manual). The
 * carried one tells its own failures.
 */
final class DatabaseFailure {
    private static final String URL = "QUARKUS_DATASOURCE_JDBC_URL";

    private DatabaseFailure() {}

    static Optional<String> words(SQLException e) {
        return e.getSQLState() == null ? Optional.empty() : ofState(e.getSQLState());
    }

    private static Optional<String> ofState(String state) {
        return Optional.ofNullable(switch (state) {
            case "28P01", "28000" -> "The PostgreSQL server in the setting " + URL + " does not let Benchful in under its name and password."
                    + " Mend the settings QUARKUS_DATASOURCE_USERNAME and QUARKUS_DATASOURCE_PASSWORD.";
            case "3D000" -> "The PostgreSQL server in the setting " + URL + " has no database of the name given there."
                    + " Make it, or mend the end of that address.";
            case "42501" -> "Benchful may not make its tables in the database in the setting " + URL
                    + ". Make the role in QUARKUS_DATASOURCE_USERNAME the owner of the database.";
            case "53100" -> "The disk of the PostgreSQL server is full. Make room on it and start again; what was saved is safe.";
            case "53300" -> "The PostgreSQL server in the setting " + URL + " has no connection free. Let it take more, or end other programs.";
            default -> state.startsWith("08") || state.startsWith("57P") ? unreachable() : null;
        });
    }

    private static String unreachable() {
        return "The PostgreSQL server in the setting " + URL + " can't be reached. See that it runs and that host and port are right,"
                + " or leave the setting out: then Benchful uses the PostgreSQL that it carries.";
    }
}
