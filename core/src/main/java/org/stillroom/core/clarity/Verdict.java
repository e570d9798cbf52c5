package org.stillroom.core.clarity;

/** How a liquid looks by its oils. */
public enum Verdict {
    CLEAR("clear"),
    HAZY("hazy"),
    CLOUDY("cloudy");

    /**
     * Oil load below which a liquid is called clear, and from which it is called cloudy when the oil below also separates. Set with
     * observations of common practice in view, so agreement with those proves nothing.
     */
    public static final double CLEAR_BELOW = 0.7;

    public static final double CLOUDY_FROM = 1.5;

    static final double LOG_CLEAR_BELOW = Math.log(CLEAR_BELOW);

    /** Separated oil from which a liquid is called cloudy, g/L. */
    public static final double CLOUDY_GRAMS_PER_LITRE = 0.10;

    /** Total oil below which nobody sees anything, g/L. */
    static final double UNSEEN_GRAMS_PER_LITRE = 0.002;

    private final String label;

    Verdict(String label) {
        this.label = label;
    }

    /** Returns the word for people and scripts. */
    public String label() {
        return label;
    }

    /** Returns how a liquid with these oils looks by the typical figures. */
    public static Verdict of(Oils oils, Medium medium) {
        double load = oils.load(medium);
        return of(load, load > 1.0 ? oils.separated(medium) : 0.0, oils.gramsPerLitre());
    }

    static Verdict of(double load, double separated, double oil) {
        if (load < CLEAR_BELOW || oil < UNSEEN_GRAMS_PER_LITRE) {
            return CLEAR;
        }
        return load >= CLOUDY_FROM && separated >= CLOUDY_GRAMS_PER_LITRE ? CLOUDY : HAZY;
    }
}
