package benchful.start;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Where libraries unpack what they need only while the program runs, such as the solver's natives: one folder a process in the
 * machine's temporary folder. It goes at a clean stop; a program that is killed can't clean up, so the next one that starts does.
 */
final class PassingFolder {
    private static final String TEMPORARY = "java.io.tmpdir";
    private static final Pattern NAME = Pattern.compile("benchful-(\\d{1,18})");

    private PassingFolder() {}

    /** To be called before anything asks for a temporary file. Where no folder can be made, the machine's own serves. */
    static void take() {
        Path all = Path.of(System.getProperty(TEMPORARY));
        long mine = ProcessHandle.current().pid();
        left(all).stream().filter(folder -> process(folder) == mine || ProcessHandle.of(process(folder)).isEmpty()).forEach(PassingFolder::remove);
        try {
            File own = Files.createDirectory(all.resolve("benchful-" + mine)).toFile();
            own.deleteOnExit();
            System.setProperty(TEMPORARY, own.getPath());
        } catch (IOException e) {
            // Then what a killed program leaves stays until the machine clears it away.
        }
    }

    private static List<Path> left(Path all) {
        try (Stream<Path> files = Files.list(all)) {
            return files.filter(f -> NAME.matcher(f.getFileName().toString()).matches() && Files.isDirectory(f)).toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static long process(Path folder) {
        Matcher name = NAME.matcher(folder.getFileName().toString());
        return name.matches() ? Long.parseLong(name.group(1)) : -1;
    }

    /** As far as it may: another account's folder stays. */
    private static void remove(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
        } catch (IOException e) {
            // tried again at the next start
        }
    }
}
