package benchful.database;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;

/** A second Java process that runs the carried server until somebody kills it. */
final class OtherProgram {
    private static final String READY = "ready";

    private OtherProgram() {}

    /** Starts the process on the data folder and waits until it has written a tool onto the bench. */
    static Process start(Path folder) throws IOException {
        Process process = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElseThrow(),
                        "-cp", System.getProperty("java.class.path"),
                        OtherProgram.class.getName(), folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        BufferedReader output = process.inputReader();
        String line = output.readLine();
        while (line != null && !line.equals(READY)) {
            line = output.readLine();
        }
        if (line == null) {
            throw new IOException("The other program ended before it was ready");
        }
        return process;
    }

    public static void main(String[] arguments) throws SQLException, IOException, InterruptedException {
        CarriedPostgres postgres = CarriedPostgres.start(new DatabaseSettings(Path.of(arguments[0]), true, false));
        try (Connection connection = DriverManager.getConnection(postgres.url(), ProgramDatabase.ROLE, postgres.password());
                Statement statement = connection.createStatement()) {
            statement.execute("insert into bench values ('tool of the other program')");
        }
        new PrintWriter(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8).println(READY);
        Thread.currentThread().join();
    }
}
