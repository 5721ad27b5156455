package benchful.backups;

import benchful.backups.BackupFolder.Kept;
import benchful.backups.archive.Archive;
import benchful.backups.archive.Manifest;
import benchful.backups.archive.Seal;
import benchful.backups.tables.Layout;
import benchful.backups.tables.Restorer;
import benchful.web.Formats;
import benchful.web.Replaced;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.ws.rs.NotFoundException;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Opens the backups of the folder, says what they hold beside what is stored, and puts one back. */
@ApplicationScoped
public class Restores {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss");
    private static final byte[] ZIP = {'P', 'K'};

    private final Backups backups;
    private final Folders folders;
    private final Packing packing;
    private final Restorer restorer;
    private final Passphrase passphrase;
    private final Event<Replaced> replaced;
    private final Clock clock;

    Restores(Backups backups, Folders folders, Packing packing, Restorer restorer, Passphrase passphrase, Event<Replaced> replaced, Clock clock) {
        this.backups = backups;
        this.folders = folders;
        this.packing = packing;
        this.restorer = restorer;
        this.passphrase = passphrase;
        this.replaced = replaced;
        this.clock = clock;
    }

    /** Puts a file that the tutor brings into the folder, so that it is opened like any other. */
    String bring(Path upload) {
        try (InputStream in = Files.newInputStream(upload)) {
            String ending = Arrays.equals(in.readNBytes(ZIP.length), ZIP) ? ".zip" : ".zip.gpg";
            return backups.folder().write("benchful-brought-" + STAMP.format(LocalDateTime.now(clock)), ending, out -> Files.copy(upload, out)).name();
        } catch (IOException e) {
            throw new BackupFolder(upload.getParent()).fault(e);
        }
    }

    Kept file(String name) {
        return backups.folder().file(name).orElseThrow(NotFoundException::new);
    }

    /** The passphrase that a locked file is tried with before the tutor is asked. */
    Optional<String> ownPassphrase() {
        return passphrase.current();
    }

    /** @param secret for a locked file */
    RestoreQuestion question(String name, String secret) {
        Kept kept = file(name);
        try (Opened opened = open(kept, secret)) {
            Manifest manifest = opened.archive.manifest();
            return RestoreQuestion.of(kept, secret, LocalDateTime.ofInstant(manifest.moment(), clock.getZone()), counts(manifest));
        }
    }

    private List<RestoreQuestion.Count> counts(Manifest manifest) {
        Map<String, Long> here = packing.rows();
        Set<String> tables = new LinkedHashSet<>(here.keySet());
        manifest.tables().forEach(p -> tables.add(p.table()));
        return tables.stream()
                .map(t -> new RestoreQuestion.Count(Layout.words(t), here.getOrDefault(t, 0L),
                        manifest.tables().stream().filter(p -> p.table().equals(t)).mapToLong(Manifest.Part::rows).sum()))
                .filter(c -> c.here() + c.inFile() > 0).toList();
    }

    /** @return the number of the line that says so */
    public long restore(String name, String secret) {
        Kept kept = file(name);
        try (Opened opened = open(kept, secret)) {
            restorer.restore(opened.archive, backups::keepBeforeRestore);
            replaced.fire(new Replaced());
            Manifest manifest = opened.archive.manifest();
            String words = "Put back and read out again: %s rows of %d tables are equal to the backup."
                    .formatted(Formats.number(BigDecimal.valueOf(manifest.rows()), 0), manifest.tables().size());
            return backups.remember(Backup.of(Occasion.RESTORED, clock.instant()).written(backups.folder().path(), kept, false).noted(words));
        }
    }

    private Opened open(Kept kept, String secret) {
        Path file = backups.folder().path().resolve(kept.name());
        if (!kept.locked()) {
            return new Opened(Archive.open(file), null);
        }
        Path plain = folders.temporary();
        try {
            unlock(file, secret, plain);
            return new Opened(Archive.open(plain), plain);
        } catch (RuntimeException e) {
            delete(plain);
            throw e;
        }
    }

    private static void unlock(Path file, String secret, Path plain) {
        try (InputStream in = Files.newInputStream(file); OutputStream out = Files.newOutputStream(plain)) {
            Seal.unlock(secret, in, out);
        } catch (IOException e) {
            throw new BackupFolder(plain.getParent()).fault(e);
        }
    }

    /** An archive, with the unlocked copy of it where one had to be made. */
    private record Opened(Archive archive, Path copy) implements Closeable {
        @Override
        public void close() {
            archive.close();
            delete(copy);
        }
    }

    static void delete(Path temporary) {
        try {
            if (temporary != null) {
                Files.deleteIfExists(temporary);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
