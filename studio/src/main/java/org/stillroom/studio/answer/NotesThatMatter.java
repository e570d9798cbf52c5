package org.stillroom.studio.answer;

import java.util.Set;
import org.stillroom.core.reference.Finding;

/** Which notes about a drink are told at once: that something is not known, or what has to be done with the drink or its label. */
public final class NotesThatMatter {
    private static final Set<String> MATTERS = Set.of(
            "not known",
            "as low as can be",
            "not free of alcohol",
            "not shown to be within",
            "no limit known",
            "analysed",
            "not listed",
            "part not said",
            "listed for other drinks",
            "restricted",
            "above low-risk guidance",
            "to be said",
            "to be said unless shown otherwise",
            "not known: ask",
            "not for infants",
            "not for everyone",
            "energy counted high",
            "poisonous",
            "sulphites not known",
            "allergens not known",
            "keep it cold",
            "cold once open",
            "keeps on the shelf");

    /** How verdicts on allergens begin, each with the allergen behind. */
    private static final Set<String> TOLD_OF_ALLERGENS = Set.of("contains ", "not known if it contains ");

    private NotesThatMatter() {}

    /** Returns whether a note is told at once, and not only to whoever asks for all. */
    public static boolean matters(Finding note) {
        return MATTERS.contains(note.verdict()) || TOLD_OF_ALLERGENS.stream().anyMatch(note.verdict()::startsWith);
    }
}
