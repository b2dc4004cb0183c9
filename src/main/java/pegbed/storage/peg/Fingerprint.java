package pegbed.storage.peg;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a file's content was at one moment; two files with the same fingerprint hold the same bytes.
 *
 * @param sha256 SHA-256 (FIPS 180-4) of the bytes, as 64 hexadecimal digits
 */
public record Fingerprint(String sha256) {
    /** The fingerprint of some bytes. */
    public static Fingerprint of(byte[] bytes) {
        try {
            return new Fingerprint(HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
