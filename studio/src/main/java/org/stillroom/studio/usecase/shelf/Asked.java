package org.stillroom.studio.usecase.shelf;

/**
 * One thing that is asked about a bottle or jar.
 *
 * @param key of the field, as in a recipe file
 * @param need how much depends on it
 * @param example text that would be understood, with its unit
 */
public record Asked(String key, Need need, String example) {
    /** How much depends on an answer. */
    public enum Need {
        /** It cannot be counted without. */
        NEEDED,
        /** Most know it, and the result is closer with it. */
        USUAL,
        /** For those who measured it. */
        FURTHER
    }

    static Asked needed(String key, String example) {
        return new Asked(key, Need.NEEDED, example);
    }

    static Asked usual(String key, String example) {
        return new Asked(key, Need.USUAL, example);
    }

    static Asked further(String key, String example) {
        return new Asked(key, Need.FURTHER, example);
    }
}
