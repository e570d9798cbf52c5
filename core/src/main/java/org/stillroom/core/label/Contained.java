package org.stillroom.core.label;

import java.util.List;
import java.util.Map;
import org.stillroom.core.quantity.Rounded;

/**
 * What a drink holds of things that categories name beside strength and sugar; what is not among the parts is not known.
 *
 * @param parts by what they are of: "anethole", "glycyrrhizic acid", "egg yolk", "sloe"
 * @param goneIn everything that went in
 */
public record Contained(Map<String, Part> parts, List<GoneIn> goneIn) {
    /** Nothing is known of any of them. */
    public static final Contained NOT_KNOWN = new Contained(Map.of(), List.of(GoneIn.ANYTHING));

    private static final Part ANYTHING = new Part(0.0, Double.POSITIVE_INFINITY);

    public Contained {
        parts = Map.copyOf(parts);
        goneIn = List.copyOf(goneIn);
    }

    /**
     * Least and most of it: of what is named g/L at 20 °C, of what went in parts of the whole.
     *
     * @param most infinite where nobody knows
     */
    public record Part(double least, double most) {
        public Part {
            least = Rounded.toNinth(least);
            most = Rounded.toNinth(most);
            if (!(least >= 0.0 && most >= least)) {
                throw new IllegalArgumentException("a part runs upwards from zero, not from " + least + " to " + most);
            }
        }
    }

    Part of(String what) {
        return parts.getOrDefault(what, ANYTHING);
    }
}
