package org.stillroom.studio.web.frame;

import org.stillroom.studio.wording.Words;

/** A room of the studio: an entry in the navigation and the pages behind it. */
public interface Room {
    /** Returns the key of its name and the beginning of its texts, such as "shelf". */
    String key();

    /** Returns the path of its first page, such as "/shelf". */
    String path();

    /** Returns what is going on in it, in a few words; empty when there is nothing to say. */
    String state(Words words);

    /** Returns whether the navigation leads to it; what is there for other programs alone is left out. */
    default boolean isInNavigation() {
        return true;
    }

    /** Adds its pages. */
    void routes(Doors doors);
}
