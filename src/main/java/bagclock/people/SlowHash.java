package bagclock.people;

import bagclock.platform.Secret;
import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;

/**
 * Argon2id hashes of what a person thinks up. The costs (19 MiB, two passes, one lane) are the first choice of the OWASP
 * Password Storage Cheat Sheet as of 2024, from memory; the hash names its own costs, so they may rise later.
 */
final class SlowHash {
    private static final Argon2Function ARGON = Argon2Function.getInstance(19_456, 2, 1, 32, Argon2.ID);
    private static final int SALT_BYTES = 16;

    /** Of a secret that nobody knows: checking against it takes as long as against a real one. */
    private static final String NOBODYS = of(Secret.token());

    private SlowHash() {}

    static String of(String secret) {
        return Password.hash(secret).addRandomSalt(SALT_BYTES).with(ARGON).getResult();
    }

    static boolean fits(String secret, String hash) {
        return Password.check(secret, hash).with(Argon2Function.getInstanceFromHash(hash));
    }

    /** Takes the time of a check, so that an unknown name answers no faster than a wrong password. */
    static void waste(String secret) {
        if (fits(secret, NOBODYS)) {
            throw new IllegalStateException("a random secret was guessed");
        }
    }
}
