package org.stillroom.core.acid;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The acids of the kitchen, each with what one mole weighs and neutralises.
 *
 * <p>Acidity "as citric" goes by equivalent mass (grams that give one mole of titrated protons). Phosphoric acid is
 * titrated to pH 8 to 9, where two of its three protons count. Source: standard atomic weights; number of protons: any
 * text of titrimetric analysis.
 */
public enum Acid {
    CITRIC("citric", "(z|c)itronensäure", 192.124, 3),
    MALIC("malic", "(ä|a)pfelsäure", 134.087, 2),
    TARTARIC("tartaric", "wein(stein)?säure", 150.087, 2),
    LACTIC("lactic", "milchsäure", 90.078, 1),
    ACETIC("acetic", "essigsäure", 60.052, 1),
    PHOSPHORIC("phosphoric", "phosphorsäure", 97.995, 2),
    ASCORBIC("ascorbic", "ascorbinsäure", 176.124, 1);

    /** Molar mass of citric acid monohydrate, g/mol; shops sell both forms. */
    public static final double CITRIC_MONOHYDRATE_GRAMS_PER_MOLE = 210.139;

    private final String label;
    private final Pattern named;
    private final double gramsPerMole;
    private final int titratedProtons;

    /** @param german its names in German, as they are usual */
    Acid(String label, String german, double gramsPerMole, int titratedProtons) {
        this.label = label;
        this.named = Pattern.compile(label + "|" + german.replace("ä", "(ä|ae)"));
        this.gramsPerMole = gramsPerMole;
        this.titratedProtons = titratedProtons;
    }

    public String label() {
        return label;
    }

    /** Returns whether what something is called says that it is this acid, in English or German. */
    public boolean isNamedIn(String name) {
        return named.matcher(name.toLowerCase(Locale.ROOT)).find();
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
