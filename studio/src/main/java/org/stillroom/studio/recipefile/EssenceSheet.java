package org.stillroom.studio.recipefile;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;

/**
 * What an essence file asks for.
 *
 * @param title what the maker calls it
 * @param oils in the order of the file
 * @param by what the parts of the oils are parts of
 * @param together all oils together in a litre of the finished liqueur
 * @param carrier strength of the spirit that they are dissolved in
 * @param measure what the essence is dosed with
 * @param mark the least step that it shows
 * @param dose of the essence for a litre of the finished liqueur
 * @param batch how much liqueur is made at a time
 * @param tolerance of the proportions, %
 * @param batches how many batches the essence may serve at most
 */
public record EssenceSheet(
        String title,
        List<Oil> oils,
        By by,
        Mass together,
        Typed<Strength> carrier,
        String measure,
        Volume mark,
        Volume dose,
        Volume batch,
        double tolerance,
        int batches) {
    public EssenceSheet {
        oils = List.copyOf(oils);
    }

    /** What the parts of the oils are parts of. */
    public enum By {
        MASS("mass"),
        VOLUME("volume"),
        DROPS("drops");

        private final String label;

        By(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /**
     * One oil.
     *
     * @param name such as "lemon"
     * @param parts against the parts of the others
     * @param drop what one drop weighs, or null where it was not weighed
     * @param density or null where the maker does not know it
     */
    public record Oil(
            String name,
            double parts,
            @Nullable Mass drop,
            @Nullable Density density) {}
}
