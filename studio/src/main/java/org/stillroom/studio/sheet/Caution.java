package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;

/** Usual cautions of the craft that a sheet repeats where they apply. Common practice, no source. */
enum Caution {
    STRONG_SPIRIT(
            "Strong spirit burns, and so does its vapour: no flame, no spark, open a window; wipe up what is spilt."),
    ESSENTIAL_OIL(
            "Essential oils: food grade only; never neat in the mouth; off skin and eyes; out of reach of children."),
    ESSENCE(
            "Essences hold essential oils: dilute as written, never neat; off skin and eyes; out of reach of children.");

    /** Stands at the foot of every sheet. */
    static final String STANDING =
            "Strength at 20 °C. Information, not legal or medical advice; local law and licensed practice" + " decide.";

    private static final double STRONG = 50.0;

    private final String text;

    Caution(String text) {
        this.text = text;
    }

    String text() {
        return text;
    }

    static List<Caution> of(Plan plan) {
        List<Caution> cautions = new ArrayList<>();
        List<PlannedLine> taken =
                plan.lines().stream().filter(line -> line.grams() > 0.0).toList();
        if (taken.stream().anyMatch(line -> Described.strength(line.ingredient()) >= STRONG)) {
            cautions.add(STRONG_SPIRIT);
        }
        if (taken.stream().anyMatch(line -> line.ingredient().kind() == Kind.ESSENTIAL_OIL)) {
            cautions.add(ESSENTIAL_OIL);
        } else if (taken.stream().anyMatch(line -> line.ingredient().kind() == Kind.ESSENCE)) {
            cautions.add(ESSENCE);
        }
        return cautions;
    }
}
