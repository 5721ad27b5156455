package benchful.web.sending;

import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;

/**
 * The key in each form of a page, drawn afresh whenever the page is made: a random part by which a sending is known, and a
 * signature for this browser that only a page of this program can bear.
 */
@ApplicationScoped
class Keys {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 16;
    private static final String DRAWN = "[A-Za-z0-9_-]{22}";

    private final FormSecret secret;

    Keys(FormSecret secret) {
        this.secret = secret;
    }

    String fresh(RoutingContext routing) {
        return signed(random(), routing);
    }

    /** @param key the random part of a key that was drawn before */
    String signed(String key, RoutingContext routing) {
        return key + "." + signature(key, BrowserId.of(routing));
    }

    /** The random part, whether the signature fits or not; none where this is no key at all. */
    static Optional<String> drawn(String field) {
        return Optional.ofNullable(field).map(f -> f.split("\\.", 2)[0]).filter(key -> key.matches(DRAWN));
    }

    /** True where a page of this program gave the key to the browser that sends it. */
    boolean fits(String field, RoutingContext routing) {
        return drawn(field).flatMap(key -> BrowserId.sent(routing.request()).map(id -> key + "." + signature(key, id)))
                .filter(expected -> MessageDigest.isEqual(bytes(expected), bytes(field)))
                .isPresent();
    }

    /** 128 bits of randomness. */
    static String random() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private String signature(String key, String browser) {
        return secret.sign(browser + " " + key);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
