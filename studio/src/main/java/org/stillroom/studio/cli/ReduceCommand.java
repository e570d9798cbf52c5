package org.stillroom.studio.cli;

import java.util.Optional;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.BringDown;
import org.stillroom.studio.usecase.BringDown.Found;
import picocli.CommandLine.Option;

/** Tells the water that brings a spirit down to strength. */
final class ReduceCommand extends DeskCommand {
    @Option(names = "--from", required = true, description = "strength of the spirit, such as 95%% or 190proof")
    private String from = "";

    @Option(names = "--to", required = true, description = "strength wanted, lower than that")
    private String to = "";

    @Option(names = "--volume", required = true, description = "of the spirit, such as 1000ml")
    private String volume = "";

    @Option(
            names = "--reference",
            defaultValue = "20C",
            description = "temperature of strengths and volumes: 20C, 15C or 60F (default: ${DEFAULT-VALUE})")
    private String reference = "";

    @Override
    protected Told tell(Workings workings) {
        Optional<VolumeBasis> given = basis("--reference", reference);
        VolumeBasis basis = given.orElse(VolumeBasis.AT_20C);
        Optional<Strength> strong = strength("--from", from, basis);
        Optional<Strength> weak = strength("--to", to, basis);
        Optional<Volume> spirit = read("--volume", volume, TEXT::volume);
        spirit.filter(poured -> poured.millilitres() == 0.0)
                .ifPresent(none -> object("--volume", "there is no spirit to bring down.", "Give its volume."));
        refuseIfAnyWrong();
        Found found = BringDown.answer(
                new BringDown.Asked(strong.orElseThrow(), weak.orElseThrow(), spirit.orElseThrow(), basis), workings);
        String millilitres = "mL at " + basis.label();
        return new Told("Bringing " + volume + " from " + from + " to " + to + ", at " + basis.label())
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
