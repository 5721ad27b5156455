package benchful.web.sending;

import io.agroal.api.AgroalDataSource;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Signs the keys of forms. The secret is drawn once for a database and kept in it: a form opened before a restart, or shown by
 * another instance, still fits.
 */
@ApplicationScoped
class FormSecret {
    private static final String MAC = "HmacSHA256";
    private static final int BYTES = 32;

    private final AgroalDataSource database;
    private volatile SecretKeySpec secret;

    FormSecret(AgroalDataSource database) {
        this.database = database;
    }

    void load(@Observes StartupEvent start) throws SQLException {
        try (Connection connection = database.getConnection();
                PreparedStatement draw = connection.prepareStatement("insert into form_secret (secret) values (?) on conflict do nothing");
                PreparedStatement read = connection.prepareStatement("select secret from form_secret")) {
            draw.setString(1, random());
            draw.executeUpdate();
            try (ResultSet row = read.executeQuery()) {
                row.next();
                secret = new SecretKeySpec(row.getString(1).getBytes(StandardCharsets.UTF_8), MAC);
            }
        }
    }

    private static String random() {
        byte[] bytes = new byte[BYTES];
        new SecureRandom().nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    String sign(String text) {
        try {
            Mac mac = Mac.getInstance(MAC);
            mac.init(secret);
            return Base64.getUrlEncoder().withoutPadding().encodeToString(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Every Java runtime has HMAC with SHA-256.", e);
        }
    }
}
