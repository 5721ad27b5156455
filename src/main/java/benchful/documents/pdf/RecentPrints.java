package benchful.documents.pdf;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.HexFormat;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What was typeset lately, by all that it was typeset from. A viewer that fetches a file again, and a class that opens the same
 * handout at once, find it here; what is not asked for longest goes first, and all goes after a while.
 */
final class RecentPrints {
    private static final int SHARE_OF_HEAP = 32;
    private static final Duration KEPT = Duration.ofMinutes(10);

    private final Cache<String, byte[]> recent = Caffeine.newBuilder().expireAfterWrite(KEPT)
            .maximumWeight(Runtime.getRuntime().maxMemory() / SHARE_OF_HEAP).weigher((String key, byte[] pdf) -> pdf.length).build();

    /** The same for the same pages and pictures only. */
    static String key(Manuscript manuscript) {
        MessageDigest digest = digest();
        digest.update(manuscript.xhtml().getBytes(StandardCharsets.UTF_8));
        new TreeMap<>(manuscript.pictures()).forEach((name, content) -> {
            digest.update(name.getBytes(StandardCharsets.UTF_8));
            digest.update(digest().digest(content));
        });
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }

    Optional<byte[]> find(String key) {
        return Optional.ofNullable(recent.getIfPresent(key));
    }

    void keep(String key, byte[] pdf) {
        recent.put(key, pdf);
    }
}
