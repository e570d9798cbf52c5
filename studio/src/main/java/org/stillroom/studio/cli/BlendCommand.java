package org.stillroom.studio.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.BlendSpirits;
import org.stillroom.studio.usecase.BlendSpirits.Poured;
import org.stillroom.studio.usecase.BlendSpirits.Reach;
import picocli.CommandLine.Option;

/** Tells what comes of several spirits together, or brings them to a strength with water or one more spirit. */
final class BlendCommand extends DeskCommand {
    @Option(
            names = "--add",
            required = true,
            paramLabel = "AMOUNT@STRENGTH",
            description = "a spirit, such as 500ml@40%%, or water, such as 100ml@0%%; may be repeated")
    private List<String> add = List.of();

    @Option(names = "--to", description = "strength to reach, such as 40%%")
    private @Nullable String to;

    @Option(
            names = "--with",
            description = "strength of what is added until it is reached (default: 0%%, which is water)")
    private @Nullable String with;

    @Option(
            names = "--reference",
            defaultValue = "20C",
            description = "temperature of strengths and volumes: 20C, 15C or 60F (default: ${DEFAULT-VALUE})")
    private String reference = "";

    @Override
    protected Told tell(Workings workings) {
        VolumeBasis basis = basis("--reference", reference).orElse(VolumeBasis.AT_20C);
        List<Poured> poured = new ArrayList<>();
        for (String each : add) {
            poured(each, basis).ifPresent(poured::add);
        }
        Optional<Strength> target = strength("--to", to, basis);
        Optional<Strength> more = strength("--with", with == null ? "0%" : with, basis);
        if (with != null && to == null) {
            object("--with", "it is not said how far.", "Give the strength to reach with --to.");
        }
        refuseIfAnyWrong();
        Optional<Reach> reach = target.map(strength -> new Reach(strength, more.orElseThrow()));
        return Blended.told(
                "Blend at " + basis.label(),
                basis,
                BlendSpirits.answer(new BlendSpirits.Asked(poured, reach, basis), workings));
    }

    private Optional<Poured> poured(String text, VolumeBasis basis) {
        int at = text.indexOf('@');
        if (at < 0) {
            object("--add", "\"" + text + "\" does not say how strong it is.", "Write it as 500ml@40%.");
            return Optional.empty();
        }
        Optional<Amount> amount = read("--add", text.substring(0, at), TEXT::amount);
        Optional<Strength> strength = strength("--add", text.substring(at + 1), basis);
        return amount.flatMap(a -> strength.map(s -> new Poured(a, s)));
    }
}
