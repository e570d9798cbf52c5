package org.stillroom.core.gauging;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What of all that is known is relied on.
 *
 * @param leftOut the places of the readings that are left out
 * @param wrong the labels and measures held to be wrong, so that nothing is known of how far they are off
 * @param poured whether what was poured counts at all
 */
record Trust(Set<Integer> leftOut, Set<Poured.Slip> wrong, boolean poured) {
    Trust {
        leftOut = Set.copyOf(leftOut);
        wrong = Set.copyOf(wrong);
    }

    static Trust ofAll(boolean poured) {
        return new Trust(Set.of(), Set.of(), poured);
    }

    Trust withoutReading(int place) {
        Set<Integer> more = new LinkedHashSet<>(leftOut);
        more.add(place);
        return new Trust(more, wrong, poured);
    }

    Trust doubting(Poured.Slip slip) {
        Set<Poured.Slip> more = new LinkedHashSet<>(wrong);
        more.add(slip);
        return new Trust(leftOut, more, poured);
    }

    Trust withoutPoured() {
        return new Trust(leftOut, wrong, false);
    }

    /** Returns this with all that another doubts doubted too. */
    Trust and(Trust other) {
        Set<Integer> readings = new LinkedHashSet<>(leftOut);
        readings.addAll(other.leftOut);
        Set<Poured.Slip> slips = new LinkedHashSet<>(wrong);
        slips.addAll(other.wrong);
        return new Trust(readings, slips, poured && other.poured);
    }

    boolean keeps(int place) {
        return !leftOut.contains(place);
    }

    List<Reading> used(List<Reading> readings) {
        List<Reading> used = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            if (keeps(i)) {
                used.add(readings.get(i));
            }
        }
        return used;
    }
}
