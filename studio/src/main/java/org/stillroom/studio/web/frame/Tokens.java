package org.stillroom.studio.web.frame;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Random tokens, their hashes, and comparing them without telling by the time it takes. */
public final class Tokens {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 32;

    private Tokens() {}

    /** Returns a token that nobody can guess: 256 bits, in letters that an address takes. */
    public static String random() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Returns whether two are the same, in a time that does not tell how far they are. */
    public static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }

    static String hash(String token) {
        return hash(token.getBytes(StandardCharsets.UTF_8));
    }

    static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java knows SHA-256", e);
        }
    }
}
