package org.stillroom.studio.usecase;

import java.net.URI;
import java.net.URISyntaxException;

/** The address that a label leads to. */
public final class LabelLink {
    /** A longer one makes a code too fine to be read off a bottle. Own judgement. */
    private static final int LONGEST = 150;

    private LabelLink() {}

    /**
     * Returns an address as it goes on a label.
     *
     * @throws Impossible when it is none, or longer than a code holds
     */
    public static String of(String typed) {
        String text = typed.strip();
        if (text.length() > LONGEST) {
            throw new Impossible(
                    "link", "it has more than " + LONGEST + " characters.", "A shorter one is read off a bottle.");
        }
        try {
            URI uri = new URI(text);
            boolean web = "http".equals(uri.getScheme()) || "https".equals(uri.getScheme());
            if (web && uri.getHost() != null && uri.getUserInfo() == null) {
                return text;
            }
        } catch (URISyntaxException noAddress) {
            // refused below, like one of another kind
        }
        throw new Impossible(
                "link",
                "\"" + text + "\" is no address of a page.",
                "Write it from the start, such as https://example.org/quince.");
    }
}
