package org.stillroom.studio.answer.desk;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.extraction.Maceration.Charge;
import org.stillroom.core.extraction.Tincture;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.usecase.Macerate;

/** Says where a tincture's recipe comes from, whether the strength lies where its book finds it, and what was asked otherwise. */
final class TinctureFinding {
    /** What lies nearer to the book than this part of it is as the book says. */
    private static final double NEAR = 0.01;

    private TinctureFinding() {}

    static List<Finding> of(Tincture tincture, Macerate.Asked asked, double strength) {
        List<Finding> findings = new ArrayList<>();
        findings.add(book(tincture, strength));
        asked.charges().stream()
                .map(Charge::plant)
                .filter(plant -> !tincture.isOf(plant))
                .map(plant -> otherwise(
                        tincture,
                        "It is made of " + String.join(" and ", tincture.plants()) + " there, not of " + plant.name()
                                + "."))
                .forEach(findings::add);
        double solvent =
                Essentials.of(MadeUp.spirit(asked.strength()).toGrams()).strength();
        if (Math.abs(solvent - tincture.solvent()) > 0.5) {
            findings.add(otherwise(
                    tincture,
                    "Its solvent is of " + QuantityWords.plain(tincture.solvent()) + " % vol there, yours of "
                            + QuantityWords.fixed(solvent, 1) + " % vol."));
        }
        double plants = asked.charges().stream().mapToDouble(Charge::grams).sum();
        double wanted = plants / tincture.plantPerMillilitre();
        if (Math.abs(asked.solvent() - wanted) > NEAR * wanted) {
            findings.add(otherwise(
                    tincture,
                    "On so much plant go " + QuantityWords.fixed(wanted, 0) + " mL of solvent there, with you "
                            + QuantityWords.fixed(asked.solvent(), 0) + " mL."));
        }
        if (tincture.madeUpPerGram().isPresent() && asked.end() instanceof Macerate.UpTo upTo) {
            double mark = plants * tincture.madeUpPerGram().getAsDouble();
            if (Math.abs(upTo.volume() - mark) > NEAR * mark) {
                findings.add(otherwise(
                        tincture,
                        "So much plant is made up to " + QuantityWords.fixed(mark, 0) + " mL there, with you to "
                                + QuantityWords.fixed(upTo.volume(), 0) + " mL."));
            }
        }
        return findings;
    }

    private static Finding otherwise(Tincture tincture, String message) {
        return Finding.of(
                "tincture-otherwise",
                Severity.CAUTION,
                tincture.name(),
                "not as the book says",
                message,
                "What comes is a tincture of your own. Leave out what you gave beside the tincture to make it as the book does.");
    }

    private static Finding book(Tincture tincture, double strength) {
        boolean stated = !tincture.found().isEmpty();
        boolean off = stated
                && !(strength >= tincture.found().get(0)
                        && strength <= tincture.found().get(1));
        String limit = stated
                ? QuantityWords.fixed(tincture.found().get(0), 0) + " to "
                        + QuantityWords.fixed(tincture.found().get(1), 0) + " % vol"
                : "";
        return Finding.of(
                "tincture",
                off ? Severity.CAUTION : Severity.NOTE,
                tincture.name(),
                off ? "outside its limits" : "",
                "Ratio and solvent as in " + tincture.source() + " ("
                        + tincture.standing().label() + ")"
                        + (tincture.note().isEmpty() ? "" : ": " + tincture.note())
                        + (stated ? "; the strength found there is " + limit : "") + ".",
                off ? "Measure the strength. Where it is so, the plant held more or less water than the book's." : "");
    }
}
