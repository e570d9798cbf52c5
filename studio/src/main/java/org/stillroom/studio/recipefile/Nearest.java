package org.stillroom.studio.recipefile;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.LetterSlips;

/** Finds the names that a person most likely meant. */
public final class Nearest {
    private static final int LONGEST = 60;

    private Nearest() {}

    /** Returns the known name that a person most likely meant, or null when none is near. */
    public static @Nullable String of(String written, Collection<String> known) {
        List<String> near = of(written, known, 1);
        return near.isEmpty() ? null : near.get(0);
    }

    /** Returns up to so many known names, nearest first, that differ from what was written by a slip or an omission. */
    public static List<String> of(String written, Collection<String> known, int most) {
        String slip = written.strip().toLowerCase(Locale.ROOT);
        if (slip.isEmpty() || slip.length() > LONGEST) {
            return List.of();
        }
        record Near(String name, int distance) {}
        List<Near> near = new ArrayList<>();
        for (String name : known) {
            String candidate = name.toLowerCase(Locale.ROOT);
            int distance = candidate.length() > LONGEST ? LONGEST : LetterSlips.between(slip, candidate);
            boolean part = slip.length() >= 3 && (candidate.contains(slip) || slip.contains(candidate));
            if (distance <= Math.max(1, Math.min(slip.length(), candidate.length()) / 3)) {
                near.add(new Near(name, distance));
            } else if (part) {
                near.add(new Near(name, distance + 2));
            }
        }
        return near.stream()
                .sorted(Comparator.comparingInt(Near::distance))
                .limit(most)
                .map(Near::name)
                .toList();
    }
}
