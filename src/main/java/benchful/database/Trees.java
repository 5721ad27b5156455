package benchful.database;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.stream.Stream;

/** Whole folders, worked on without following links. */
final class Trees {
    private Trees() {}

    /** Deletes the folder with all below it; nothing happens if there is none. */
    static void delete(Path root) throws IOException {
        if (Files.exists(root)) {
            Files.walkFileTree(root, new Deletion());
        }
    }

    /** Makes the account with this number the owner of the folder and all below it. */
    static void giveTo(Path root, int owner) throws IOException {
        try (Stream<Path> paths = Files.walk(root)) {
            for (Path path : (Iterable<Path>) paths::iterator) {
                Files.setAttribute(path, "unix:uid", owner, LinkOption.NOFOLLOW_LINKS);
            }
        }
    }

    private static final class Deletion extends SimpleFileVisitor<Path> {
        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path folder, IOException problem) throws IOException {
            if (problem != null) {
                throw problem;
            }
            Files.delete(folder);
            return FileVisitResult.CONTINUE;
        }
    }
}
