package benchful.database;

/** The server's configuration file, written afresh at each start so that it always matches the program. */
final class ServerConfiguration {
    private ServerConfiguration() {}

    /**
     * @param port    where the server listens, on loopback only
     * @param durable false gives up safety against a power cut for speed; for data that are thrown away
     */
    static String text(int port, boolean durable) {
        String common = """
                # Written by the program at each start. For settings of your own use ALTER SYSTEM.
                listen_addresses = '127.0.0.1'
                port = %d
                unix_socket_directories = ''
                password_encryption = 'scram-sha-256'
                timezone = 'UTC'
                log_timezone = 'UTC'
                log_line_prefix = '%%m [%%p] '
                """.formatted(port);
        return durable ? common : common + """
                fsync = off
                synchronous_commit = off
                full_page_writes = off
                """;
    }
}
