package org.stillroom.core.acid;

/**
 * The acids of the kitchen, each with what one mole weighs and neutralises.
 *
 * <p>Acidity "as citric" goes by equivalent mass (grams that give one mole of titrated protons). Phosphoric acid is
 * titrated to pH 8 to 9, where two of its three protons count. Source: standard atomic weights; number of protons: any
 * text of titrimetric analysis.
 */
public enum Acid {
    CITRIC("citric", 192.124, 3),
    MALIC("malic", 134.087, 2),
    TARTARIC("tartaric", 150.087, 2),
    LACTIC("lactic", 90.078, 1),
    ACETIC("acetic", 60.052, 1),
    PHOSPHORIC("phosphoric", 97.995, 2),
    ASCORBIC("ascorbic", 176.124, 1);

    /** Molar mass of citric acid monohydrate, g/mol; shops sell both forms. */
    public static final double CITRIC_MONOHYDRATE_GRAMS_PER_MOLE = 210.139;

    private final String label;
    private final double gramsPerMole;
    private final int titratedProtons;

    Acid(String label, double gramsPerMole, int titratedProtons) {
        this.label = label;
        this.gramsPerMole = gramsPerMole;
        this.titratedProtons = titratedProtons;
    }

    public String label() {
        return label;
    }

    /** Returns the molar mass of the anhydrous acid, g/mol. */
    public double gramsPerMole() {
        return gramsPerMole;
    }

    /** Returns the grams of this acid that give one mole of titrated protons. */
    public double gramsPerEquivalent() {
        return gramsPerMole / titratedProtons;
    }

    /** Returns the grams of anhydrous citric acid that titrate like one gram of this acid. */
    public double asCitric() {
        return CITRIC.gramsPerEquivalent() / gramsPerEquivalent();
    }
}
