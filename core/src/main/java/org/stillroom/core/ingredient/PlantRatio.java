package org.stillroom.core.ingredient;

import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Ratio;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;

/**
 * How much plant an extract carries: grams of plant, as it went in, to each millilitre of the finished extract at 20 °C.
 *
 * @param gramsPerMillilitre above 0, to 20: beyond that a dry extract would be meant
 */
public record PlantRatio(double gramsPerMillilitre) {
    private static final double MOST = 20.0;

    public PlantRatio {
        if (!(gramsPerMillilitre > 0.0 && gramsPerMillilitre <= MOST)) {
            throw new IllegalArgumentException("a millilitre of extract carries above 0 to " + QuantityWords.plain(MOST)
                    + " g of plant, not " + QuantityWords.plain(gramsPerMillilitre) + " g");
        }
    }

    /** Reads a text such as "1:5", grams of plant to millilitres of extract, or "200 g/L". */
    public static Understanding<PlantRatio> read(String text, QuantityText quantities) {
        if (text.indexOf(':') >= 0) {
            Understanding<Ratio> ratio = quantities.ratio(text);
            return ratio instanceof Understanding.Understood<Ratio> understood
                    ? of(text, understood.typed().value().leftPerRight())
                    : refused(text);
        }
        return quantities.share(text) instanceof Understanding.Understood<Share> understood
                        && understood.typed().value() instanceof MassConcentration perLitre
                ? of(text, perLitre.gramsPerLitre() / 1000.0)
                : refused(text);
    }

    private static Understanding<PlantRatio> of(String text, double gramsPerMillilitre) {
        try {
            return new Understanding.Understood<>(new Typed<>(text, new PlantRatio(gramsPerMillilitre)));
        } catch (IllegalArgumentException cannotBe) {
            return new Understanding.Refused<>(text, String.valueOf(cannotBe.getMessage()));
        }
    }

    private static Understanding<PlantRatio> refused(String text) {
        return new Understanding.Refused<>(
                text,
                "grams of plant to millilitres of extract are wanted, such as 1:5, or grams per litre, such as 200 g/L");
    }

    public double gramsPerLitre() {
        return 1000.0 * gramsPerMillilitre;
    }
}
