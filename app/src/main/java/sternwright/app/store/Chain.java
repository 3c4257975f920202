package sternwright.app.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Hashes by which a later alteration of a row shows: SHA-256 (FIPS 180-4) over a row and the hash of the row before it. */
final class Chain {
    private Chain() {}

    /** The hash of a text. */
    static String of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** The hash of a photo or document. */
    static String of(byte[] content) {
        return HexFormat.of().formatHex(sha256().digest(content));
    }

    /** The hash of a row; each part is preceded by its length, so that no two rows are written alike. */
    static String of(String before, ChangeRow row) {
        MessageDigest digest = sha256();
        for (Object part : new Object[] {
            before, row.seq(), row.name(), row.version(), row.kind(), row.textHash(), row.by(), row.at(), row.why()
        }) {
            byte[] bytes = String.valueOf(part).getBytes(StandardCharsets.UTF_8);
            digest.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
            digest.update(bytes);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
