package benchful.database;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * One run of another program, to its end.
 *
 * @param exitCode what the program ended with; 0 is success
 * @param output   what it wrote
 */
record Command(int exitCode, String output) {

    static Command run(List<String> command) throws IOException {
        return run(command, "");
    }

    /** @param input what the program reads */
    static Command run(List<String> command, String input) throws IOException {
        // Through a file: a server started by the command would inherit a pipe and keep it open for ever.
        Path output = Files.createTempFile("benchful", ".out");
        try {
            Process process = builder(command, output).start();
            try (Writer in = process.outputWriter(StandardCharsets.UTF_8)) {
                in.write(input);
            } catch (IOException ended) {
                // It ended without reading; its exit code and its output say why.
            }
            return new Command(process.waitFor(), Files.readString(output));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("Interrupted while running " + command.get(0), e);
        } finally {
            Files.deleteIfExists(output);
        }
    }

    private static ProcessBuilder builder(List<String> command, Path output) {
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(output.toFile());
        // English messages, whatever the desktop speaks: they are searched and shown beside ours.
        builder.environment().put("LC_ALL", "C");
        // Settings of another PostgreSQL on this machine must not lead ours astray.
        builder.environment().keySet().removeIf(name -> name.startsWith("PG"));
        return builder;
    }

    boolean succeeded() {
        return exitCode == 0;
    }
}
