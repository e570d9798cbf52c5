package org.stillroom.core.aroma;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Constituents that are alike towards octanol and water; stands in for one of which nothing is known but its family.
 *
 * <p>Solubility follows from log P by the general solubility equation for liquids, log S = 0.5 − log P in mol/L (Jain, Yalkowsky: J.
 * Pharm. Sci. 90, 2001, from memory). The log P is the middle of the family's members in the table of constituents; own estimate.
 */
public enum ConstituentGroup {
    MONOTERPENES("other monoterpenes", 4.4, 136.24, 2.8, "ene"),
    SESQUITERPENES("other sesquiterpenes", 6.3, 204.36, 3.5, "caryophyllene cadinene farnesene"),
    ESTERS("other esters", 3.9, 196.29, 2.7, "acetate butyrate formate propionate valerate"),
    ALCOHOLS("other terpene alcohols", 3.2, 154.25, 3.8, "ol"),
    CARBONYLS("other aldehydes and ketones", 3.0, 152.24, 4.4, "al one"),
    PHENOLS("other phenols", 2.6, 160.0, 2.5, "ugenol ymol phenol vacrol"),
    /** Nothing is known of it; taken between a hydrocarbon and an ester. */
    UNKNOWN("rest that is not known", 4.1, 150.0, 4.0, "");

    /** Whose ending decides first: caryophyllene ends like limonene, eugenol like linalool. */
    private static final List<ConstituentGroup> BY_ENDING =
            List.of(SESQUITERPENES, PHENOLS, ESTERS, MONOTERPENES, ALCOHOLS, CARBONYLS);

    private final String label;
    private final double logP;
    private final double gramsPerMole;
    private final double factor;
    private final String endings;

    ConstituentGroup(String label, double logP, double gramsPerMole, double factor, String endings) {
        this.label = label;
        this.logP = logP;
        this.gramsPerMole = gramsPerMole;
        this.factor = factor;
        this.endings = endings;
    }

    /** Returns the group that a name stands for, or null when it is no group's. */
    public static @Nullable ConstituentGroup named(String name) {
        for (ConstituentGroup group : values()) {
            if (group.label.equalsIgnoreCase(name.strip())) {
                return group;
            }
        }
        return null;
    }

    /** Returns the group that a constituent outside the table belongs to, by the ending of its chemical name. */
    public static ConstituentGroup guessed(String name) {
        String lower = name.strip().toLowerCase(Locale.ROOT);
        for (ConstituentGroup group : BY_ENDING) {
            if (group.endsLike(lower)) {
                return group;
            }
        }
        return UNKNOWN;
    }

    private boolean endsLike(String name) {
        for (String ending : endings.split(" ", -1)) {
            if (!ending.isEmpty() && name.endsWith(ending)) {
                return true;
            }
        }
        return false;
    }

    public String label() {
        return label;
    }

    /** Returns the typical decimal logarithm of the octanol–water partition coefficient. */
    public double logP() {
        return logP;
    }

    /** Returns the typical molar mass, g/mol. */
    public double gramsPerMole() {
        return gramsPerMole;
    }

    /** Returns the estimated solubility in water at 25 °C, g/L. */
    public double gramsPerLitreInWater() {
        return gramsPerMole * Math.pow(10.0, 0.5 - logP);
    }

    /**
     * Returns the factor by which that estimate may be off, one standard deviation: what it errs by on constituents whose solubility is
     * published, bias and scatter together; own judgement for phenols and for what is not known.
     */
    public double doubtFactor() {
        return factor;
    }
}
