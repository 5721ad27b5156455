package benchful.backups.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.SecureRandom;
import org.bouncycastle.bcpg.HashAlgorithmTags;
import org.bouncycastle.bcpg.SymmetricKeyAlgorithmTags;
import org.bouncycastle.openpgp.PGPCompressedData;
import org.bouncycastle.openpgp.PGPEncryptedDataGenerator;
import org.bouncycastle.openpgp.PGPEncryptedDataList;
import org.bouncycastle.openpgp.PGPException;
import org.bouncycastle.openpgp.PGPLiteralData;
import org.bouncycastle.openpgp.PGPLiteralDataGenerator;
import org.bouncycastle.openpgp.PGPPBEEncryptedData;
import org.bouncycastle.openpgp.PGPUtil;
import org.bouncycastle.openpgp.bc.BcPGPObjectFactory;
import org.bouncycastle.openpgp.operator.bc.BcPBEDataDecryptorFactory;
import org.bouncycastle.openpgp.operator.bc.BcPBEKeyEncryptionMethodGenerator;
import org.bouncycastle.openpgp.operator.bc.BcPGPDataEncryptorBuilder;
import org.bouncycastle.openpgp.operator.bc.BcPGPDigestCalculatorProvider;

/**
 * Locks a file with a passphrase after RFC 4880 (OpenPGP): AES-256 with an integrity check, the key by SHA-256 iterated and salted
 * as often as the format allows. So {@code gpg --decrypt} opens it without this program.
 */
public final class Seal {
    /** How often the passphrase is hashed: 65,011,712 bytes, RFC 4880 section 3.7.1.3. */
    private static final int MOST_ITERATIONS = 0xff;

    private static final int PIECE = 1 << 16;

    private Seal() {}

    /** What writes into the sealed stream. */
    public interface Content {
        void write(OutputStream out);
    }

    /** @param out stays open */
    public static void lock(String passphrase, String name, OutputStream out, Content content) throws IOException {
        BcPGPDataEncryptorBuilder cipher = new BcPGPDataEncryptorBuilder(SymmetricKeyAlgorithmTags.AES_256)
                .setWithIntegrityPacket(true).setSecureRandom(new SecureRandom());
        PGPEncryptedDataGenerator encryption = new PGPEncryptedDataGenerator(cipher);
        try {
            encryption.addMethod(new BcPBEKeyEncryptionMethodGenerator(
                    passphrase.toCharArray(), new BcPGPDigestCalculatorProvider().get(HashAlgorithmTags.SHA256), MOST_ITERATIONS));
            try (OutputStream sealed = encryption.open(out, new byte[PIECE]);
                    OutputStream literal = new PGPLiteralDataGenerator()
                            .open(sealed, PGPLiteralData.BINARY, name, PGPLiteralData.NOW, new byte[PIECE])) {
                content.write(literal);
            }
        } catch (PGPException e) {
            throw new IllegalStateException("AES-256 and SHA-256 are always there", e);
        }
    }

    /** @throws BackupFault.WrongPassphrase where the file is locked with another one; another fault where it is damaged */
    public static void unlock(String passphrase, InputStream in, OutputStream out) throws IOException {
        try {
            PGPPBEEncryptedData encrypted = encrypted(in);
            copy(literal(opened(encrypted, passphrase)), out);
            // Some of it was written already; the caller drops it.
            if (!encrypted.isIntegrityProtected() || !encrypted.verify()) {
                throw BackupFault.damaged(null);
            }
        } catch (PGPException e) {
            throw BackupFault.damaged(e);
        }
    }

    /** A wrong passphrase gives a key of no known kind, or one that does not repeat two bytes at the beginning: RFC 4880, 5.3 and 5.13. */
    private static InputStream opened(PGPPBEEncryptedData encrypted, String passphrase) {
        try {
            return encrypted.getDataStream(new BcPBEDataDecryptorFactory(passphrase.toCharArray(), new BcPGPDigestCalculatorProvider()));
        } catch (PGPException e) {
            throw new BackupFault.WrongPassphrase(e);
        }
    }

    private static PGPPBEEncryptedData encrypted(InputStream in) throws PGPException {
        try {
            for (Object part : new BcPGPObjectFactory(PGPUtil.getDecoderStream(in))) {
                if (part instanceof PGPEncryptedDataList list && list.get(0) instanceof PGPPBEEncryptedData data) {
                    return data;
                }
            }
        } catch (IOException | RuntimeException e) {
            throw BackupFault.damaged(e);
        }
        throw new BackupFault("This file is not locked with a passphrase as backups are, although it ends in .gpg.");
    }

    private static InputStream literal(InputStream opened) throws PGPException {
        try {
            Object part = new BcPGPObjectFactory(opened).nextObject();
            if (part instanceof PGPCompressedData compressed) {
                part = new BcPGPObjectFactory(compressed.getDataStream()).nextObject();
            }
            if (part instanceof PGPLiteralData literal) {
                return literal.getInputStream();
            }
            throw BackupFault.damaged(null);
        } catch (IOException e) {
            throw BackupFault.damaged(e);
        }
    }

    /** Only the reading tells of a damaged file; where writing fails, the disk is at fault. */
    private static void copy(InputStream in, OutputStream out) throws IOException {
        byte[] piece = new byte[PIECE];
        for (int read = read(in, piece); read >= 0; read = read(in, piece)) {
            out.write(piece, 0, read);
        }
    }

    private static int read(InputStream in, byte[] piece) {
        try {
            return in.read(piece);
        } catch (IOException | RuntimeException e) {
            throw BackupFault.damaged(e);
        }
    }
}
