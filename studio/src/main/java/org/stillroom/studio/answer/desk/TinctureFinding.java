package org.stillroom.studio.answer.desk;

import org.stillroom.core.extraction.Tincture;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Says where a tincture's recipe comes from, and whether the strength lies where its book finds it. */
final class TinctureFinding {
    private TinctureFinding() {}

    static Finding of(Tincture tincture, double strength) {
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
                off ? "Make it up as the book says, and measure the strength." : "");
    }
}
