package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Materials;

/**
 * A substance, or a sum of substances, that is watched for.
 *
 * @param name what we call it
 * @param members constituents that count into it
 * @param otherNames further names of it, in the plain form of {@link Words}
 * @param euName how Annex III of Regulation 1334/2008 calls it, or empty
 * @param asSuch whether that annex forbids adding it as such
 */
public record Watched(String name, List<String> members, List<String> otherNames, String euName, boolean asSuch) {
    private static final Set<String> GRAVE = Set.of("quinine", "glycyrrhizic acid", "pinocamphone", "furocoumarins");

    public Watched {
        members = List.copyOf(members);
        otherNames = List.copyOf(otherNames);
    }

    /** Returns every name by which an ingredient can be this very substance. */
    List<String> names() {
        List<String> names = new ArrayList<>(otherNames);
        names.add(Words.plain(name));
        return names;
    }

    /** Returns whether the name, as plants list what they hold, is this substance or a member of it. */
    boolean covers(String held) {
        return name.equals(held) || members.contains(held);
    }

    /** Returns whether a constituent counts into it. */
    boolean counts(@Nullable Constituent constituent) {
        return constituent != null
                && members.stream().anyMatch(member -> constituent.cas().equals(Materials.keyOf(member)));
    }

    /** Returns whether a CAS number is its own, or that of what counts into it. */
    boolean isNumbered(String cas) {
        return otherNames.contains(Words.plain(cas))
                || members.stream().anyMatch(member -> cas.equals(Materials.keyOf(member)));
    }

    /** Returns whether law or a grave reason asks for it, so that not knowing how much there is counts in every plan. */
    boolean isGrave() {
        return asSuch || !euName.isEmpty() || GRAVE.contains(name);
    }
}
