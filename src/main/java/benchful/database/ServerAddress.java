package benchful.database;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Properties;
import org.postgresql.Driver;

/**
 * Where a running server answers and with which password.
 *
 * @param port     on 127.0.0.1
 * @param password of both roles
 */
record ServerAddress(int port, String password) {
    private static final String LOOPBACK = "127.0.0.1";

    /** A port that nobody listens on at this moment. */
    static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getByName(LOOPBACK))) {
            return socket.getLocalPort();
        }
    }

    String url(String database) {
        return "jdbc:postgresql://" + LOOPBACK + ":" + port + "/" + database;
    }

    Connection connect(String database, String role) throws SQLException {
        Properties properties = new Properties();
        properties.setProperty("user", role);
        properties.setProperty("password", password);
        return new Driver().connect(url(database), properties);
    }
}
