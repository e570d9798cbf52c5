package org.stillroom.studio.cli;

import java.util.Arrays;
import org.stillroom.studio.sheet.Saying;
import org.stillroom.studio.wording.Language;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/** The language that something is printed in. */
final class Sayings {
    private Sayings() {}

    /**
     * Returns how things are said in a language.
     *
     * @param option what it is called where it is wrong
     * @param tag such as "de"
     */
    static Saying of(String option, String tag) {
        Language language = Language.of(tag.strip())
                .orElseThrow(() -> Refusal.wrongInput(
                        option,
                        "\"" + tag + "\" is not known here.",
                        "Write "
                                + String.join(
                                        " or ",
                                        Arrays.stream(Language.values())
                                                .map(Language::tag)
                                                .toList())
                                + "."));
        return language == Language.ENGLISH
                ? Saying.ENGLISH
                : new Saying(language.tag(), new Words(language, UnitSystem.METRIC)::toldOrMarked);
    }
}
