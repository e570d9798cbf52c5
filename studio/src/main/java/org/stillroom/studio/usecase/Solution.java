package org.stillroom.studio.usecase;

import java.util.List;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/** The few figures of something dissolved in water at 20 °C. */
final class Solution {
    private static final String ABOUT_DENSITY = "density-";

    private final Figures figures;

    private Solution(Figures figures) {
        this.figures = figures;
    }

    /** Works the figures out and tells the steps that lead to the volume. */
    static Solution of(Contents contents, Workings workings) {
        VolumeModel.atTwenty().millilitres(contents.toGrams(), workings);
        Figures figures = Liquid.figures(contents, Temperature.TWENTY_CELSIUS);
        workings.step("volume", figures.value(Figure.VOLUME_20C), "mL at 20 °C", Source.VOLUME_MODEL);
        workings.step("density", figures.value(Figure.DENSITY), "kg/m³ at 20 °C", Source.VOLUME_MODEL);
        return new Solution(figures);
    }

    Estimate estimate(Figure figure) {
        return new Estimate(figures.value(figure), figures.doubt(figure));
    }

    /** Returns what to know of its density; what a spirit does to it is none of its business. */
    List<Finding> findings() {
        return figures.findings().stream()
                .filter(finding -> finding.rule().startsWith(ABOUT_DENSITY))
                .toList();
    }
}
