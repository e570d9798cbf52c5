package org.stillroom.core.plan;

import java.util.List;

/**
 * One way to go on with a making.
 *
 * @param kind what it holds
 * @param plan what the whole comes to; a line that is in and gets more stands in it twice, once for what is in
 * @param parts what each line of {@code plan} stands for
 * @param figures the asked and the plain figures against the plan's
 * @param shares lines whose part in the finished liquid differs from the plan's
 */
public record Way(Kind kind, Plan plan, List<Part> parts, List<Figure> figures, List<Share> shares) {
    public Way {
        parts = List.copyOf(parts);
        figures = List.copyOf(figures);
        shares = List.copyOf(shares);
    }

    /** What a way holds. */
    public enum Kind {
        /** The volume, and of the rest what it can. */
        KEEP_VOLUME,
        /** Strength, sugar, acidity and doses, with more of everything. */
        MORE_OF_EVERYTHING,
        /** Strength, sugar and acidity, with less of everything. */
        LESS_OF_EVERYTHING
    }

    /**
     * What a line of the plan stands for.
     *
     * @param line index of the recipe's line
     * @param isIn whether it is in the vessel; else it is still to be poured
     */
    public record Part(int line, boolean isIn) {}

    /**
     * A figure of the finished liquid.
     *
     * @param asked which
     * @param planned what was planned, in the unit of {@link Asked}
     * @param now what it comes to
     * @param wanted whether the recipe asks for it, or the maker has chosen it since
     * @param missed whether it is asked for and lies beside it by more than a measure shows
     */
    public record Figure(Asked asked, double planned, double now, boolean wanted, boolean missed) {}

    /**
     * What a line brings to a litre of the finished liquid.
     *
     * @param line index of the recipe's line
     * @param planned grams per litre as planned
     * @param now grams per litre as it comes
     */
    public record Share(int line, double planned, double now) {
        /** Returns by which part it is more than planned; negative when it is less. */
        public double excess() {
            return now / planned - 1.0;
        }
    }

    /** Returns whether everything that is asked for is met as nearly as a measure shows. */
    public boolean reached() {
        return figures.stream().noneMatch(Figure::missed);
    }

    /** Returns whether everything that is asked for is met and every dose is as planned. */
    public boolean isOnTarget() {
        return reached() && shares.isEmpty();
    }
}
