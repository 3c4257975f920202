package sternwright.app.account;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Makes what cannot be guessed, and the hash under which it is kept. */
public final class SecretWords {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 24;

    private SecretWords() {}

    /**
     * A new secret.
     *
     * @return 192 random bits, fit for an address
     */
    public static String make() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /**
     * The hash under which a secret is kept.
     *
     * @param secret the secret
     * @return SHA-256 in hexadecimal: enough for what is random itself
     */
    public static String hash(String secret) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(secret.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
