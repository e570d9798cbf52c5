package org.stillroom.core.clarity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * Whether cream stays together with spirit, by fat, strength and acid. It is a rule of thumb; a jar on the shelf decides.
 *
 * @param keeping by all of them together
 * @param signs what each says
 */
public record Cream(Keeping keeping, List<Sign> signs) {
    private static final List<Limit> LIMITS = limits();

    public Cream {
        signs = List.copyOf(signs);
    }

    /** How a cream does. */
    public enum Keeping {
        KEEPS("keeps"),
        DOUBTFUL("doubtful"),
        BREAKS("breaks");

        private final String label;

        Keeping(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** What decides. */
    public enum Cause {
        FAT("% of the mass"),
        STRENGTH("% vol"),
        ACID("g/L as citric");

        private final String unit;

        Cause(String unit) {
            this.unit = unit;
        }

        public String unit() {
            return unit;
        }

        public String label() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Figures of a liquid with cream.
     *
     * @param fat % of the mass
     * @param strength % vol at 20 °C
     * @param acid beside that of the milk itself, g/L as citric
     */
    public record Figures(double fat, double strength, double acid) {
        public Figures {
            if (!(fat >= 0.0 && fat <= 100.0 && strength >= 0.0 && strength <= 100.0 && acid >= 0.0)) {
                throw new IllegalArgumentException("fat and strength run from 0 to 100 %, acid from 0 g/L, not " + fat
                        + ", " + strength + ", " + acid);
            }
        }

        double of(Cause cause) {
            return switch (cause) {
                case FAT -> fat;
                case STRENGTH -> strength;
                case ACID -> acid;
            };
        }
    }

    /**
     * From where a cause is doubtful and from where it breaks a cream.
     *
     * @param why what happens beyond
     * @param remedy what to do
     */
    public record Limit(
            Cause cause, double keepsBelow, double breaksFrom, String why, String remedy, Standing standing) {}

    /** What one cause says. */
    public record Sign(Limit limit, double value, Keeping keeping) {}

    /** Returns how a cream does; two doubtful causes together break it. */
    public static Cream of(Figures figures) {
        List<Sign> signs = new ArrayList<>();
        int doubtful = 0;
        Keeping worst = Keeping.KEEPS;
        for (Limit limit : LIMITS) {
            double value = figures.of(limit.cause());
            Keeping keeping = value < limit.keepsBelow()
                    ? Keeping.KEEPS
                    : value < limit.breaksFrom() ? Keeping.DOUBTFUL : Keeping.BREAKS;
            signs.add(new Sign(limit, value, keeping));
            doubtful += keeping == Keeping.DOUBTFUL ? 1 : 0;
            worst = keeping.compareTo(worst) > 0 ? keeping : worst;
        }
        return new Cream(doubtful > 1 ? Keeping.BREAKS : worst, signs);
    }

    private static List<Limit> limits() {
        List<Limit> limits = new ArrayList<>();
        for (Table.Row row : Tables.open("clarity/cream_limits.csv").rows()) {
            limits.add(new Limit(
                    Cause.valueOf(row.text("cause").toUpperCase(Locale.ROOT)),
                    row.number("keeps_below"),
                    row.number("breaks_from"),
                    row.text("why"),
                    row.text("remedy"),
                    row.standing("status")));
        }
        return List.copyOf(limits);
    }
}
