package org.stillroom.studio.cli;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.acid.Acid;
import org.stillroom.core.acid.AcidSolution;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.MakeAcid;
import org.stillroom.studio.usecase.MakeAcid.Found;
import picocli.CommandLine.Option;

/** Tells what to weigh for an acid solution. */
final class AcidCommand extends DeskCommand {
    @Option(
            names = "--acid",
            defaultValue = "citric",
            description = "citric, malic, tartaric, lactic, acetic, phosphoric or ascorbic (default: ${DEFAULT-VALUE})")
    private String acid = "";

    @Option(names = "--percent", description = "anhydrous acid by mass of the solution, such as 5%%")
    private @Nullable String percent;

    @Option(names = "--concentration", description = "anhydrous acid per litre at 20 °C, such as 50g/L")
    private @Nullable String concentration;

    @Option(names = "--make", description = "how much solution: 250g with --percent, 1L with --concentration")
    private @Nullable String make;

    @Option(names = "--have", description = "acid on hand, such as 12.5g, all of it to be used")
    private @Nullable String have;

    @Option(
            names = "--form",
            defaultValue = "anhydrous",
            description = "in which the acid is weighed: anhydrous or monohydrate (default: ${DEFAULT-VALUE})")
    private String form = "";

    @Override
    protected Told tell(Workings workings) {
        Optional<Acid> which = choice("--acid", acid, List.of(Acid.values()), Acid::label);
        Optional<AcidSolution.Form> weighed =
                choice("--form", form, List.of(AcidSolution.Form.values()), AcidCommand::word);
        Optional<Share> strength = strength();
        Optional<MakeAcid.HowMuch> howMuch = howMuch();
        refuseIfAnyWrong();
        Found found = MakeAcid.answer(
                new MakeAcid.Asked(
                        which.orElseThrow(), weighed.orElseThrow(), strength.orElseThrow(), howMuch.orElseThrow()),
                workings);
        String name = which.orElseThrow().label() + " acid";
        return new Told("Solution of " + name + " at 20 °C")
                .put(new Name("weigh_g", name + ", " + word(weighed.orElseThrow()), "g to weigh", 2), found.weigh())
                .put(new Name("water_g", "water", "g to add", 1), found.water())
                .put(new Name("acid_g", "acid in it, anhydrous", "g", 2), found.acid())
                .put(new Name("solution_g", "solution", "g", 1), found.solution())
                .put(new Name("volume_ml", "volume", "mL at 20 °C", 1), found.volume())
                .put(new Name("acid_mass_percent", "acid by mass", "%", 2), found.byMass())
                .put(new Name("acid_g_per_l", "acid per litre", "g/L at 20 °C", 1), found.perLitre())
                .put(new Name("density_kg_m3", "density", "kg/m³ at 20 °C", 1), found.density())
                .findings(found.findings());
    }

    private static String word(AcidSolution.Form form) {
        return switch (form) {
            case ANHYDROUS -> "anhydrous";
            case CITRIC_MONOHYDRATE -> "monohydrate";
        };
    }

    private Optional<Share> strength() {
        if ((percent == null) == (concentration == null)) {
            object(
                    percent == null ? "" : "--concentration",
                    percent == null ? "the strength is missing." : "the strength is given twice.",
                    "Give one of: --percent 5%; --concentration 50g/L.");
        }
        Optional<Share> byMass = read("--percent", percent, TEXT::share);
        if (byMass.isPresent() && !(byMass.orElseThrow() instanceof MassFraction)) {
            object("--percent", "\"" + percent + "\" is per litre.", "Give it as --concentration.");
        }
        Optional<Share> perLitre = read("--concentration", concentration, TEXT::share);
        if (perLitre.isPresent() && !(perLitre.orElseThrow() instanceof MassConcentration)) {
            object("--concentration", "\"" + concentration + "\" is by mass.", "Give it as --percent.");
        }
        return byMass.or(() -> perLitre);
    }

    private Optional<MakeAcid.HowMuch> howMuch() {
        if ((make == null) == (have == null)) {
            object(
                    make == null ? "" : "--have",
                    make == null ? "how much is missing." : "how much is said twice.",
                    "Give one of: --make 250g; --have 12.5g.");
        }
        Optional<MakeAcid.HowMuch> solution = read("--make", make, TEXT::amount).map(MakeAcid.Whole::new);
        Optional<MakeAcid.HowMuch> onHand = read("--have", have, TEXT::mass).map(MakeAcid.OnHand::new);
        return solution.or(() -> onHand);
    }
}
