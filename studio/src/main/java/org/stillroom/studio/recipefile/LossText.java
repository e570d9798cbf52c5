package org.stillroom.studio.recipefile;

import java.util.List;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Loss;

/** A loss as it stands in a file: a part "5 %", an amount "30 ml", or what the marc holds "1.5 ml/g". */
final class LossText {
    private static final double MOST_HELD_MILLILITRES_PER_GRAM = 20;

    private LossText() {}

    static Understanding<Loss> read(String text, QuantityText quantities) {
        String plain = text.strip();
        if (plain.endsWith("%")) {
            return part(text, quantities.percent(plain));
        }
        if (plain.endsWith("/g")) {
            String perGram = plain.substring(0, plain.length() - 2);
            return held(text, quantities.volume(perGram));
        }
        return amount(text, quantities.amount(plain));
    }

    private static Understanding<Loss> part(String text, Understanding<Double> percent) {
        if (percent instanceof Understanding.Understood<Double> understood) {
            double value = understood.typed().value();
            return value >= 0 && value < 100
                    ? understood(text, new Loss.Part(value / 100), understood.assumed())
                    : new Understanding.Refused<>(
                            text, "A loss of " + text + " is not possible; it lies from 0 to below 100 %.");
        }
        return otherwise(text, percent);
    }

    private static Understanding<Loss> held(String text, Understanding<Volume> perGram) {
        if (perGram instanceof Understanding.Understood<Volume> understood) {
            double millilitres = understood.typed().value().millilitres();
            return millilitres <= MOST_HELD_MILLILITRES_PER_GRAM
                    ? understood(text, new Loss.HeldByMarc(millilitres), understood.assumed())
                    : new Understanding.Refused<>(
                            text,
                            "No plant holds " + text
                                    + "; dried plants hold about 1 to 3 ml/g, at most 20 ml/g is read.");
        }
        return otherwise(text, perGram);
    }

    private static Understanding<Loss> amount(String text, Understanding<Amount> amount) {
        return amount instanceof Understanding.Understood<Amount> understood
                ? understood(text, new Loss.Fixed(understood.typed().value()), understood.assumed())
                : otherwise(text, amount);
    }

    private static Understanding<Loss> understood(String text, Loss loss, List<String> assumed) {
        return new Understanding.Understood<>(new Typed<>(text, loss), assumed);
    }

    private static <Q> Understanding<Loss> otherwise(String text, Understanding<Q> notUnderstood) {
        if (notUnderstood instanceof Understanding.Ambiguous<Q> ambiguous) {
            return new Understanding.Ambiguous<>(text, ambiguous.question(), ambiguous.choices());
        }
        return new Understanding.Refused<>(
                text, notUnderstood instanceof Understanding.Refused<Q> refused ? refused.reason() : "");
    }
}
