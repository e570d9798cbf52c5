package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;

/**
 * A substance, or a sum of substances, that is watched for.
 *
 * @param name what we call it
 * @param members constituents that count into it
 * @param otherNames further names of it
 * @param euName how Annex III of Regulation 1334/2008 calls it, or empty
 * @param asSuch whether that annex forbids adding it as such
 */
public record Watched(
        String name, List<String> members, List<String> otherNames, String euName, boolean asSuch) {
    public Watched {
        members = List.copyOf(members);
        otherNames = List.copyOf(otherNames);
    }

    /** Returns every name by which an ingredient can be this very substance. */
    List<String> names() {
        List<String> names = new ArrayList<>(otherNames);
        names.add(name);
        return names;
    }

    /** Returns whether the name, as plants list what they hold, is this substance or a member of it. */
    boolean covers(String held) {
        return name.equals(held) || members.contains(held);
    }
}
