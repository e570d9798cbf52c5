package org.stillroom.studio.cli;

import java.util.List;
import java.util.Optional;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.BlendSpirits;
import org.stillroom.studio.usecase.BlendSpirits.Poured;
import org.stillroom.studio.usecase.BlendSpirits.Reach;
import picocli.CommandLine.Option;

/** Tells how much of a second spirit brings a first one to a strength. */
final class FortifyCommand extends DeskCommand {
    @Option(names = "--volume", required = true, description = "what there is, such as 1L; or by mass")
    private String volume = "";

    @Option(names = "--from", required = true, description = "its strength, such as 30%%")
    private String from = "";

    @Option(names = "--to", required = true, description = "strength wanted, such as 40%%")
    private String to = "";

    @Option(names = "--with", required = true, description = "strength of the second spirit, such as 96%%")
    private String with = "";

    @Option(
            names = "--reference",
            defaultValue = "20C",
            description = "temperature of strengths and volumes: 20C, 15C or 60F (default: ${DEFAULT-VALUE})")
    private String reference = "";

    @Override
    protected Told tell(Workings workings) {
        VolumeBasis basis = basis("--reference", reference).orElse(VolumeBasis.AT_20C);
        Optional<Amount> there = read("--volume", volume, TEXT::amount);
        Optional<Strength> strong = strength("--from", from, basis);
        Optional<Strength> target = strength("--to", to, basis);
        Optional<Strength> second = strength("--with", with, basis);
        refuseIfAnyWrong();
        Poured poured = new Poured(there.orElseThrow(), strong.orElseThrow());
        Reach reach = new Reach(target.orElseThrow(), second.orElseThrow());
        return Blended.told(
                "Bringing " + volume + " from " + from + " to " + to + " with " + with + ", at " + basis.label(),
                basis,
                BlendSpirits.answer(new BlendSpirits.Asked(List.of(poured), Optional.of(reach), basis), workings));
    }
}
