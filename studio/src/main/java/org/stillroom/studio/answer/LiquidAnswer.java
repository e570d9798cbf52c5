package org.stillroom.studio.answer;

import static org.stillroom.core.liquid.Figure.VOLUME_20C;

import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.studio.usecase.TellLiquid;

/** Every figure of a liquid, as asked for by what is in it. */
public final class LiquidAnswer {
    private LiquidAnswer() {}

    /** Returns every figure of the liquid, how much it shrank and how much it warms. */
    public static Told of(TellLiquid.Found found) {
        Figures figures = found.figures();
        Told told = new Told("The liquid, asked at "
                + QuantityWords.plain(figures.temperature().celsius()) + " °C");
        for (Figure figure : Figure.values()) {
            told.put(figure, figures);
        }
        Estimate volume = new Estimate(figures.value(VOLUME_20C), figures.doubt(VOLUME_20C));
        return told.putDifference(
                        new Told.Name("contraction_ml", "contraction on mixing", "mL at 20 °C", 1),
                        found.contraction(),
                        volume)
                .put(new Told.Name("warming_c", "warms on mixing by", "°C, if no heat is lost", 1), found.warming())
                .findings(found.findings());
    }
}
