package org.stillroom.studio.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Syrup;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Ratio;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.MakeSyrup;
import org.stillroom.studio.usecase.MakeSyrup.Found;
import picocli.CommandLine.Option;

/** Tells what syrup comes of sugar and water, or what a wanted syrup takes. */
final class SyrupCommand extends DeskCommand {
    @Option(names = "--sugar", description = "sugar by mass, such as 500g; with --water or --make-up-to")
    private @Nullable String sugar;

    @Option(names = "--water", description = "water by mass, such as 500g")
    private @Nullable String water;

    @Option(names = "--make-up-to", description = "volume at 20 °C to fill up to with water, such as 1L")
    private @Nullable String makeUpTo;

    @Option(names = "--brix", description = "per cent of sugar by mass, such as 66; for 1 kg of syrup")
    private @Nullable String brix;

    @Option(names = "--parts", description = "sugar to water, such as 2:1; for 1 kg of syrup")
    private @Nullable String parts;

    @Option(names = "--by", description = "how the parts are measured: mass or volume (default: mass)")
    private @Nullable String by;

    @Option(
            names = "--kind",
            defaultValue = "sucrose",
            description = "of sugar: sucrose, invert or glucose (default: ${DEFAULT-VALUE})")
    private String kind = "";

    private enum By {
        MASS,
        VOLUME
    }

    @Override
    protected Told tell(Workings workings) {
        Optional<Syrup.Of> of = choice("--kind", kind, List.of(Syrup.Of.values()), SyrupCommand::word);
        Optional<MakeSyrup.Way> way = way();
        refuseIfAnyWrong();
        Found found = MakeSyrup.answer(new MakeSyrup.Asked(of.orElseThrow(), way.orElseThrow()), workings);
        return new Told("Syrup of " + word(of.orElseThrow()) + " at 20 °C")
                .put(new Name("sugar_g", "sugar", "g", 1), found.sugar())
                .put(new Name("water_g", "water", "g", 1), found.water())
                .put(new Name("brix", "sugar by mass", "% (°Bx)", 2), found.brix())
                .put(new Name("density_kg_m3", "density", "kg/m³ at 20 °C", 1), found.density())
                .put(new Name("sugar_g_per_l", "sugar per litre", "g/L at 20 °C", 1), found.sugarPerLitre())
                .put(new Name("volume_ml", "volume", "mL at 20 °C", 1), found.volume())
                .findings(found.findings());
    }

    private static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT);
    }

    private Optional<MakeSyrup.Way> way() {
        boolean weighed = sugar != null && water != null && makeUpTo == null && brix == null && parts == null;
        boolean madeUp = sugar != null && makeUpTo != null && water == null && brix == null && parts == null;
        boolean byBrix = brix != null && sugar == null && water == null && makeUpTo == null && parts == null;
        boolean byParts = parts != null && sugar == null && water == null && makeUpTo == null && brix == null;
        if (!(weighed || madeUp || byBrix || byParts)) {
            object(
                    "",
                    "the syrup is to be said in one way.",
                    "Give one of: --sugar 500g --water 500g; --sugar 850g --make-up-to 1L; --brix 66; --parts 2:1.");
        }
        if (by != null && parts == null) {
            object("--by", "only parts are measured by mass or by volume.", "Leave --by out, or give --parts 2:1.");
        }
        Optional<Mass> grams = read("--sugar", sugar, TEXT::mass);
        Optional<Mass> wet = read("--water", water, TEXT::mass);
        Optional<Volume> mark = read("--make-up-to", makeUpTo, TEXT::volume);
        Optional<Brix> degrees = read("--brix", brix, TEXT::brix);
        return degrees.<MakeSyrup.Way>map(MakeSyrup.ByBrix::new)
                .or(this::byParts)
                .or(() -> grams.flatMap(g -> wet.map(w -> new MakeSyrup.ByWeight(g, w))))
                .or(() -> grams.flatMap(g -> mark.map(m -> new MakeSyrup.ByMakingUp(g, m))));
    }

    private Optional<MakeSyrup.Way> byParts() {
        Optional<Ratio> ratio = read("--parts", parts, TEXT::ratio);
        Optional<By> measured = choice("--by", by == null ? "mass" : by, List.of(By.values()), SyrupCommand::word);
        return ratio.flatMap(r -> measured.map(m -> switch (m) {
            case MASS -> new MakeSyrup.ByPartsOfMass(r);
            case VOLUME -> new MakeSyrup.ByPartsOfVolume(r);
        }));
    }
}
