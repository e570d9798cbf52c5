package org.stillroom.studio.answer.desk;

import static org.stillroom.core.liquid.Figure.DENSITY;
import static org.stillroom.core.liquid.Figure.SPECIFIC_GRAVITY_20_20;
import static org.stillroom.core.liquid.Figure.SPECIFIC_GRAVITY_60F_60F;

import java.util.List;
import java.util.Optional;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.TellDensity;

/** Tells the density of a spirit or liqueur of known strength and sugar. */
final class DensityQuestion extends DeskQuestion {
    @Override
    public String name() {
        return "density";
    }

    @Override
    public String summary() {
        return "Density of a spirit or liqueur of known strength and sugar.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.required("strength", "such as 40%, 80proof or \"33.3 % mass\""),
                Part.usual("sugar", "0g/L", "sucrose per litre"),
                Part.usual("temperature", "20C", "of the density, −20 to 40 °C"));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(new Manner.Given("strength", "28%"), new Manner.Given("sugar", "180g/L"));
    }

    @Override
    public List<String> figures() {
        return List.of(DENSITY.key(), SPECIFIC_GRAVITY_20_20.key(), SPECIFIC_GRAVITY_60F_60F.key());
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Optional<Strength> of = asked.strength("strength", VolumeBasis.AT_20C);
        Optional<MassConcentration> sweetened = asked.sugar();
        Optional<Temperature> at = asked.temperature();
        asked.refuseIfAnyWrong();
        Figures figures = TellDensity.answer(
                new TellDensity.Asked(of.orElseThrow(), sweetened.orElseThrow(), at.orElseThrow()), workings);
        String sweet = sweetened.orElseThrow().gramsPerLitre() == 0.0 ? "" : " with sugar " + asked.text("sugar");
        return new Told("Density of " + asked.text("strength") + sweet)
                .put(DENSITY, figures)
                .put(SPECIFIC_GRAVITY_20_20, figures)
                .put(SPECIFIC_GRAVITY_60F_60F, figures)
                .findings(figures.findings());
    }
}
