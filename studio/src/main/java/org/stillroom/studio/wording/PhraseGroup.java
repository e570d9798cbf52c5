package org.stillroom.studio.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The phrases of one rule: those without placeholders by their text, the others with the fullest first. */
final class PhraseGroup {
    private final Set<String> keys = new HashSet<>();
    private final Map<String, String> fixed = new HashMap<>();
    private final List<Phrase> open = new ArrayList<>();

    void add(String english, Phrase phrase, String translation) {
        if (!keys.add(english)) {
            throw new IllegalArgumentException("it stands in its group twice");
        }
        if (phrase.isFixed()) {
            fixed.put(english, translation);
        } else {
            open.add(phrase);
            open.sort(Comparator.comparingInt(Phrase::weight).reversed());
        }
    }

    @Nullable
    String find(String text, Search search) {
        String whole = fixed.get(text);
        if (whole != null) {
            return whole;
        }
        for (Phrase phrase : open) {
            String found = search.goesOn() ? phrase.put(text, search) : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }
}
