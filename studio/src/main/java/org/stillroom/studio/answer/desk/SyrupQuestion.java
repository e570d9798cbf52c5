package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

/** Tells what syrup comes of sugar and water, or what a wanted syrup takes. */
final class SyrupQuestion extends DeskQuestion {
    private static final Set<Set<String>> WAYS =
            Set.of(Set.of("sugar", "water"), Set.of("sugar", "make-up-to"), Set.of("brix"), Set.of("parts"));

    private enum By {
        MASS,
        VOLUME
    }

    @Override
    public String name() {
        return "syrup";
    }

    @Override
    public String summary() {
        return "What syrup comes of sugar and water, or what a wanted syrup takes.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.text("sugar", "sugar by mass, such as 500g; with the water, or the volume to make it up to"),
                Part.text("water", "water by mass, such as 500g"),
                Part.text("make-up-to", "volume at 20 °C to fill up to with water, such as 1L"),
                Part.text("brix", "per cent of sugar by mass, such as 66; for 1 kg of syrup"),
                Part.text("parts", "sugar to water, such as 2:1; for 1 kg of syrup"),
                Part.text("by", "how the parts are measured: mass or volume (default: mass)"),
                Part.usual("kind", "sucrose", "of sugar: sucrose, invert or glucose"));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(new Manner.Given("sugar", "500g"), new Manner.Given("water", "500g"));
    }

    @Override
    public List<String> figures() {
        return List.of("sugar_g", "water_g", "brix", "density_kg_m3", "sugar_g_per_l", "volume_ml");
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Optional<Syrup.Of> of = asked.choice("kind", List.of(Syrup.Of.values()), SyrupQuestion::word);
        Optional<MakeSyrup.Way> way = way(asked);
        asked.refuseIfAnyWrong();
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

    private static Optional<MakeSyrup.Way> way(AskedTexts asked) {
        Set<String> said = Stream.of("sugar", "water", "make-up-to", "brix", "parts")
                .filter(asked::has)
                .collect(Collectors.toSet());
        if (!WAYS.contains(said)) {
            asked.object(
                    "",
                    "the syrup is to be said in one way.",
                    "Give one of: " + asked.write("sugar", "500g", "water", "500g") + "; "
                            + asked.write("sugar", "850g", "make-up-to", "1L") + "; " + asked.write("brix", "66")
                            + "; " + asked.write("parts", "2:1") + ".");
        }
        if (asked.has("by") && !asked.has("parts")) {
            asked.object(
                    "by",
                    "only parts are measured by mass or by volume.",
                    "Leave " + asked.name("by") + " out, or give " + asked.write("parts", "2:1") + ".");
        }
        Optional<Mass> grams = asked.read("sugar", TEXT::mass);
        Optional<Mass> wet = asked.read("water", TEXT::mass);
        Optional<Volume> mark = asked.read("make-up-to", TEXT::volume);
        Optional<Brix> degrees = asked.read("brix", TEXT::brix);
        return degrees.<MakeSyrup.Way>map(MakeSyrup.ByBrix::new)
                .or(() -> byParts(asked))
                .or(() -> grams.flatMap(g -> wet.map(w -> new MakeSyrup.ByWeight(g, w))))
                .or(() -> grams.flatMap(g -> mark.map(m -> new MakeSyrup.ByMakingUp(g, m))));
    }

    private static Optional<MakeSyrup.Way> byParts(AskedTexts asked) {
        Optional<Ratio> ratio = asked.read("parts", TEXT::ratio);
        Optional<By> measured =
                asked.has("by") ? asked.choice("by", List.of(By.values()), SyrupQuestion::word) : Optional.of(By.MASS);
        return ratio.flatMap(r -> measured.map(m -> switch (m) {
            case MASS -> new MakeSyrup.ByPartsOfMass(r);
            case VOLUME -> new MakeSyrup.ByPartsOfVolume(r);
        }));
    }
}
