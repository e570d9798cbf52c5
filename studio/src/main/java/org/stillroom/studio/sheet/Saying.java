package org.stillroom.studio.sheet;

/**
 * The language that a sheet is written in: its tag, and how what the program says in English is said in it.
 *
 * @param tag such as "en"
 */
public record Saying(String tag, Speaker speaker) {
    /** As the program says it. */
    public static final Saying ENGLISH = new Saying("en", (rule, english) -> english);

    /** What a sheet says of itself goes by this name in the phrasebook. */
    public static final String SHEET = "sheet";

    private static final char NO_BREAK_SPACE = '\u00a0';

    /** Says something in another language. */
    @FunctionalInterface
    public interface Speaker {
        /**
         * Returns the text in the language, or as it is where it is not known in it.
         *
         * @param rule of the finding that says it, or the part of the program
         */
        String say(String rule, String english);
    }

    /** Returns a text as it is said; blanks at its ends stay, and what may not break still does not. */
    String said(String rule, String english) {
        String bare = english.replace(NO_BREAK_SPACE, ' ').strip();
        if (bare.isEmpty()) {
            return english;
        }
        String said = speaker.say(rule, bare);
        if (said.equals(bare)) {
            return english;
        }
        String plain = english.replace(NO_BREAK_SPACE, ' ');
        int start = plain.length() - plain.stripLeading().length();
        int end = plain.stripTrailing().length();
        boolean whole = english.indexOf(' ') < 0;
        return english.substring(0, start)
                + (whole ? said.replace(' ', NO_BREAK_SPACE) : said)
                + english.substring(end);
    }
}
