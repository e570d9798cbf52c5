package org.stillroom.studio.wording;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The languages that the pages speak. */
public enum Language {
    ENGLISH("en", "English"),
    GERMAN("de", "Deutsch");

    private final String tag;
    private final String ownName;

    Language(String tag, String ownName) {
        this.tag = tag;
        this.ownName = ownName;
    }

    /** Returns the language tag of BCP 47. */
    public String tag() {
        return tag;
    }

    /** Returns what the language calls itself. */
    public String ownName() {
        return ownName;
    }

    public Locale locale() {
        return Locale.forLanguageTag(tag);
    }

    /** Returns the language of a tag, or nothing when the pages do not speak it. */
    public static Optional<Language> of(String tag) {
        return Stream.of(values()).filter(language -> language.tag.equals(tag)).findFirst();
    }

    /**
     * Returns the first language of a browser's list that the pages speak, else English.
     *
     * @param acceptLanguage the header of RFC 9110, 12.5.4, or null
     */
    public static Language wanted(@Nullable String acceptLanguage) {
        if (acceptLanguage == null || acceptLanguage.isBlank()) {
            return ENGLISH;
        }
        try {
            List<Locale.LanguageRange> ranges = Locale.LanguageRange.parse(acceptLanguage);
            String tag = Locale.lookupTag(
                    ranges, Stream.of(values()).map(Language::tag).toList());
            return tag == null ? ENGLISH : of(tag).orElse(ENGLISH);
        } catch (IllegalArgumentException noList) {
            return ENGLISH;
        }
    }
}
