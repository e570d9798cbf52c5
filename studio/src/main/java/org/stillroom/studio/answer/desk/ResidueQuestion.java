package org.stillroom.studio.answer.desk;

import static org.stillroom.core.liquid.Figure.STRENGTH;
import static org.stillroom.core.liquid.Figure.SUGAR;
import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.List;
import java.util.Optional;
import org.stillroom.core.gauging.Gauged;
import org.stillroom.core.gauging.Reading;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.GaugeVessel;

/** Finds strength and sugar from the density before and after the alcohol was boiled off. */
final class ResidueQuestion extends DeskQuestion {
    @Override
    public String name() {
        return "residue";
    }

    @Override
    public String summary() {
        return "Sugar and strength from the densities of a liqueur and of its residue made up with water.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.required("density-before", "of the liqueur, such as 1.0423g/ml"),
                Part.required("density-residue", "at 20 °C, of what stayed, made up with water to the same volume"),
                Part.usual("temperature", "20C", "of the liqueur when its density was measured"));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("density-before", "1.0423g/ml"), new Manner.Given("density-residue", "1.0671g/ml"));
    }

    @Override
    public List<String> figures() {
        return List.of(SUGAR.key(), STRENGTH.key());
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Optional<Density> before = asked.read("density-before", TEXT::density);
        Optional<Density> residue = asked.read("density-residue", TEXT::density);
        Optional<Temperature> at = asked.temperature();
        asked.refuseIfAnyWrong();
        Density heavy = residue.orElseThrow();
        List<Reading> readings = List.of(
                Reading.usual(Shown.DENSITY, before.orElseThrow().kilogramsPerCubicMetre(), at.orElseThrow()),
                Reading.usual(Shown.RESIDUE_DENSITY, heavy.kilogramsPerCubicMetre(), Temperature.TWENTY_CELSIUS));
        Gauged gauged = GaugeVessel.answer(new GaugeVessel.Asked(readings, Thermometer.USUAL, null), workings);
        return new Told("Strength and sugar by the residue")
                .doubtingReadings()
                .put(SUGAR, new Estimate(gauged.sugar().value(), gauged.sugar().halfWidth()))
                .put(
                        STRENGTH,
                        new Estimate(
                                gauged.strength().value(), gauged.strength().halfWidth()))
                .findings(gauged.findings());
    }
}
