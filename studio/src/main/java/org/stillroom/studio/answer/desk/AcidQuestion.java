package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.List;
import java.util.Optional;
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

/** Tells what to weigh for an acid solution. */
final class AcidQuestion extends DeskQuestion {
    @Override
    public String name() {
        return "acid";
    }

    @Override
    public String summary() {
        return "What to weigh for an acid solution.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.usual("acid", "citric", "citric, malic, tartaric, lactic, acetic, phosphoric or ascorbic"),
                Part.text("percent", "anhydrous acid by mass of the solution, such as 5%"),
                Part.text("concentration", "anhydrous acid per litre at 20 °C, such as 50g/L"),
                Part.text("make", "how much solution: 250g of one in per cent, 1L of one per litre"),
                Part.text("have", "acid on hand, such as 12.5g, all of it to be used"),
                Part.usual("form", "anhydrous", "in which the acid is weighed: anhydrous or monohydrate"));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("acid", "citric"),
                new Manner.Given("percent", "5%"),
                new Manner.Given("make", "250g"));
    }

    @Override
    public List<String> figures() {
        return List.of(
                "weigh_g",
                "water_g",
                "acid_g",
                "solution_g",
                "volume_ml",
                "acid_mass_percent",
                "acid_g_per_l",
                "density_kg_m3");
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Optional<Acid> which = asked.choice("acid", List.of(Acid.values()), Acid::label);
        Optional<AcidSolution.Form> weighed =
                asked.choice("form", List.of(AcidSolution.Form.values()), AcidQuestion::word);
        Optional<Share> strength = strength(asked);
        Optional<MakeAcid.HowMuch> howMuch = howMuch(asked);
        asked.refuseIfAnyWrong();
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

    private static Optional<Share> strength(AskedTexts asked) {
        if (asked.has("percent") == asked.has("concentration")) {
            boolean none = !asked.has("percent");
            asked.object(
                    none ? "" : "concentration",
                    none ? "the strength is missing." : "the strength is given twice.",
                    "Give one of: " + asked.write("percent", "5%") + "; " + asked.write("concentration", "50g/L")
                            + ".");
        }
        Optional<Share> byMass = asked.read("percent", TEXT::share);
        if (byMass.isPresent() && !(byMass.orElseThrow() instanceof MassFraction)) {
            asked.object(
                    "percent",
                    "\"" + asked.text("percent") + "\" is per litre.",
                    "Give it as " + asked.name("concentration") + ".");
        }
        Optional<Share> perLitre = asked.read("concentration", TEXT::share);
        if (perLitre.isPresent() && !(perLitre.orElseThrow() instanceof MassConcentration)) {
            asked.object(
                    "concentration",
                    "\"" + asked.text("concentration") + "\" is by mass.",
                    "Give it as " + asked.name("percent") + ".");
        }
        return byMass.or(() -> perLitre);
    }

    private static Optional<MakeAcid.HowMuch> howMuch(AskedTexts asked) {
        if (asked.has("make") == asked.has("have")) {
            boolean none = !asked.has("make");
            asked.object(
                    none ? "" : "have",
                    none ? "how much is missing." : "how much is said twice.",
                    "Give one of: " + asked.write("make", "250g") + "; " + asked.write("have", "12.5g") + ".");
        }
        Optional<MakeAcid.HowMuch> solution = asked.read("make", TEXT::amount).map(MakeAcid.Whole::new);
        Optional<MakeAcid.HowMuch> onHand = asked.read("have", TEXT::mass).map(MakeAcid.OnHand::new);
        return solution.or(() -> onHand);
    }
}
