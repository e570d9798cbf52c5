package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.plan.Correction.Added;
import org.stillroom.core.plan.Correction.Addition;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.studio.usecase.left.ShelfAdditions;

/** An extract with how much of it went into a batch, as it was typed: "bay tincture=40ml@60%". */
final class FlavourText {
    private static final String PART = "restore";

    private final AskedTexts asked;
    private final @Nullable ShelfAdditions shelf;
    private final String text;

    /** @param shelf where an extract is found by its name, or null */
    FlavourText(AskedTexts asked, @Nullable ShelfAdditions shelf, String text) {
        this.asked = asked;
        this.shelf = shelf;
        this.text = text;
    }

    /** Returns what it is, or empty after noting why it is not understood. */
    Optional<Added> read() {
        int sign = text.indexOf('=');
        int at = text.indexOf('@');
        String name = (sign < 0 ? text : text.substring(0, sign)).strip();
        if (sign < 0) {
            asked.object(PART, "how much of \"" + name + "\" went in is not said.", example(name));
            return Optional.empty();
        }
        String amount = text.substring(sign + 1, at < sign ? text.length() : at).strip();
        Optional<Addition> extract = at < sign
                ? ofShelf(name)
                : ofStrength(name, text.substring(at + 1).strip());
        Optional<Amount> went = asked.read(PART, amount, TEXT::amount);
        if (went.isPresent() && went.get() instanceof Drops) {
            asked.object(PART, "what a drop of it weighs is not known here.", "Give it in mL or g.");
            return Optional.empty();
        }
        return extract.flatMap(each -> went.map(much -> new Added(each, grams(much, each))));
    }

    private Optional<Addition> ofStrength(String name, String strength) {
        return asked.strength(PART, strength, VolumeBasis.AT_20C)
                .map(each -> new Addition(name, MadeUp.spirit(each).perGram(), Double.POSITIVE_INFINITY));
    }

    private Optional<Addition> ofShelf(String name) {
        Optional<Addition> found = shelf == null ? Optional.empty() : shelf.named(name);
        if (found.isEmpty()) {
            asked.object(
                    PART,
                    "it is not known what \"" + name + "\" is" + (shelf == null ? "." : "; it is not on the shelf."),
                    example(name));
        }
        return found;
    }

    private static String example(String name) {
        return "Write the extract, how much went in and its strength, such as " + name + "=40ml@60%.";
    }

    private static double grams(Amount amount, Addition of) {
        return amount instanceof Mass mass ? mass.grams() : ((Volume) amount).millilitres() / of.millilitresPerGram();
    }
}
