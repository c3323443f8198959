package bagclock.platform;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;

/** Random secrets that a machine keeps, and what may be stored or shown of them. */
public final class Secret {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final Base64.Encoder TEXT = Base64.getUrlEncoder().withoutPadding();

    /** Without letters and digits that look alike. */
    private static final String TYPABLE = "ABCDEFGHJKMNPQRSTVWXYZ23456789";

    private Secret() {}

    /** A token of 256 random bits in 43 characters that need no escaping. */
    public static String token() {
        byte[] bytes = new byte[32];
        RANDOM.nextBytes(bytes);
        return TEXT.encodeToString(bytes);
    }

    /** A code to type, in groups of five characters, such as {@code HK7QM-2RTVX}; about 24 random bits for each group. */
    public static String typable(int groups) {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < groups * 5; i++) {
            if (i > 0 && i % 5 == 0) {
                code.append('-');
            }
            code.append(TYPABLE.charAt(RANDOM.nextInt(TYPABLE.length())));
        }
        return code.toString();
    }

    /** SHA-256 in 43 characters. Only for long random secrets; what a person thinks up needs a slow hash. */
    public static String fingerprint(String secret) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
            return TEXT.encodeToString(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Compares without telling by its time how much is right. */
    public static boolean isSame(String given, String wanted) {
        return MessageDigest.isEqual(given.getBytes(StandardCharsets.UTF_8), wanted.getBytes(StandardCharsets.UTF_8));
    }
}
