package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Correction.Addition;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.studio.usecase.CorrectBatch;

/** What may be added to a batch, as it was typed: "96%", "65Bx=300ml", "white sugar". */
final class AdditionText {
    private static final Map<String, Addition> KITCHEN = Map.of(
            "sugar", Addition.WHITE_SUGAR,
            "white sugar", Addition.WHITE_SUGAR,
            "water", Addition.WATER,
            "acid", CorrectBatch.CITRIC,
            "citric acid", CorrectBatch.CITRIC);

    private final AskedTexts asked;
    private final String text;
    private final String what;
    private final Optional<String> atHand;

    AdditionText(AskedTexts asked, String text) {
        this.asked = asked;
        this.text = text;
        int sign = text.indexOf('=');
        this.what = (sign < 0 ? text : text.substring(0, sign)).strip();
        this.atHand = sign < 0
                ? Optional.empty()
                : Optional.of(text.substring(sign + 1).strip());
    }

    /** Returns what it is, or empty after noting why it is not understood. */
    Optional<Addition> read() {
        return addition().flatMap(this::limited);
    }

    private Optional<Addition> addition() {
        String key = what.toLowerCase(Locale.ROOT);
        Addition known = KITCHEN.get(key);
        if (known != null) {
            return Optional.of(known);
        }
        Generic generic = Generics.find(what);
        if (generic != null) {
            return Optional.ofNullable(Resolution.of(generic.ingredient()).resolved())
                    .map(resolved -> new Addition(what, resolved.perGram(), Double.POSITIVE_INFINITY));
        }
        if (key.endsWith("bx") || key.endsWith("brix")) {
            return asked.read("with", what, TEXT::brix).map(this::syrup);
        }
        if (key.contains("%") || key.contains("proof")) {
            return asked.strength("with", what, VolumeBasis.AT_20C)
                    .map(strength -> new Addition(
                            "spirit of " + what, MadeUp.spirit(strength).perGram(), Double.POSITIVE_INFINITY));
        }
        asked.object(
                "with",
                "\"" + text + "\" is not known here, or not what it holds.",
                "Write a spirit by its strength (96%, \"vodka 40%\"), a syrup by its sugar (65Bx, \"simple syrup\"), sugar, honey, water or"
                        + " citric acid.");
        return Optional.empty();
    }

    private Addition syrup(Brix brix) {
        double sugar = brix.degrees() / 100.0;
        Contents perGram = Contents.of(Substance.SUCROSE, sugar).with(Substance.WATER, 1.0 - sugar);
        return new Addition("syrup of " + what, perGram, Double.POSITIVE_INFINITY);
    }

    private Optional<Addition> limited(Addition addition) {
        if (atHand.isEmpty()) {
            return Optional.of(addition);
        }
        Optional<Amount> amount = asked.read("with", atHand.get(), TEXT::amount);
        return amount.map(there -> new Addition(addition.name(), addition.perGram(), grams(there, addition)));
    }

    private static double grams(Amount amount, Addition of) {
        return amount instanceof Mass mass ? mass.grams() : ((Volume) amount).millilitres() / of.millilitresPerGram();
    }
}
