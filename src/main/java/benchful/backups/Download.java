package benchful.backups;

import benchful.backups.BackupFolder.Kept;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.nio.file.Files;
import java.nio.file.Path;

/** Sends a file to the browser piece by piece. */
final class Download {
    private Download() {}

    /**
     * @param whole once all of it was sent
     * @param last in any case
     */
    static Response of(Path file, Kept kept, Runnable whole, Runnable last) {
        StreamingOutput body = out -> {
            try {
                Files.copy(file, out);
                out.flush();
                whole.run();
            } finally {
                last.run();
            }
        };
        return Response.ok(body, kept.locked() ? "application/pgp-encrypted" : "application/zip")
                .header(HttpHeaders.CONTENT_LENGTH, kept.bytes())
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + kept.name() + "\"")
                .build();
    }
}
