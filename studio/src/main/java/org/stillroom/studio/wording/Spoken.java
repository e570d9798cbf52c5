package org.stillroom.studio.wording;

import org.jspecify.annotations.Nullable;

/**
 * A text of the program as a page shows it: in the language of its reader, or in English where nobody has put it into that.
 *
 * @param text never half in one language and half in another
 * @param language the language of the text
 */
public record Spoken(String text, Language language) {
    /** Returns the tag that marks the text on a page of the given language, or null where it is of that language itself. */
    public @Nullable String foreignOn(Language page) {
        return language == page ? null : language.tag();
    }
}
