package org.stillroom.studio.store;

import java.security.SecureRandom;

/** Names that the store gives: short, lower-case, without letters that are taken for each other, never given twice. */
final class Ids {
    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int LENGTH = 10; // 31^10: no two alike before a million lots are a likely million to one
    private static final SecureRandom RANDOM = new SecureRandom();

    private Ids() {}

    static String next() {
        StringBuilder id = new StringBuilder(LENGTH);
        for (int i = 0; i < LENGTH; i++) {
            id.append(LETTERS.charAt(RANDOM.nextInt(LETTERS.length())));
        }
        return id.toString();
    }
}
