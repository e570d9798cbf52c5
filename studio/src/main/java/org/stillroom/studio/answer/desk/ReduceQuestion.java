package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.List;
import java.util.Optional;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.BringDown;
import org.stillroom.studio.usecase.BringDown.Found;

/** Tells the water that brings a spirit down to strength. */
final class ReduceQuestion extends DeskQuestion {
    @Override
    public String name() {
        return "reduce";
    }

    @Override
    public String summary() {
        return "Water that brings a spirit down to strength.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.required("from", "strength of the spirit, such as 95% or 190proof"),
                Part.required("to", "strength wanted, lower than that"),
                Part.required("volume", "of the spirit, such as 1000ml"),
                BlendQuestion.REFERENCE);
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("from", "95%"), new Manner.Given("to", "40%"), new Manner.Given("volume", "1000ml"));
    }

    @Override
    public List<String> figures() {
        return List.of("water_ml", "water_g", "final_volume_ml", "contraction_ml", "warming_c");
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        VolumeBasis basis = asked.basis();
        Optional<Strength> strong = asked.strength("from", basis);
        Optional<Strength> weak = asked.strength("to", basis);
        Optional<Volume> spirit = asked.read("volume", TEXT::volume);
        spirit.filter(poured -> poured.millilitres() == 0.0)
                .ifPresent(none -> asked.object("volume", "there is no spirit to bring down.", "Give its volume."));
        asked.refuseIfAnyWrong();
        Found found = BringDown.answer(
                new BringDown.Asked(strong.orElseThrow(), weak.orElseThrow(), spirit.orElseThrow(), basis), workings);
        String millilitres = "mL at " + basis.label();
        return new Told("Bringing " + asked.text("volume") + " from " + asked.text("from") + " to " + asked.text("to")
                        + ", at " + basis.label())
                .put(new Name("water_ml", "water to add", millilitres, 1), found.water())
                .put(new Name("water_g", "the same by weight", "g", 1), found.waterMass())
                .put(new Name("final_volume_ml", "gives", millilitres, 1), found.finalVolume())
                .putDifference(
                        new Name("contraction_ml", "contraction", millilitres, 1),
                        found.contraction(),
                        found.finalVolume())
                .put(new Name("warming_c", "warms by", "°C, if no heat is lost", 1), found.warming());
    }
}
