package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.List;
import java.util.Optional;
import org.stillroom.core.extraction.PotStill;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.RunStill;
import org.stillroom.studio.usecase.RunStill.Found;

/** Tells what comes of a charge in a pot still, on paper. */
final class StillQuestion extends DeskQuestion {
    @Override
    public String name() {
        return "still";
    }

    @Override
    public String summary() {
        return "A pot still on paper, for the licensed: what comes, how strong, and what stays.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.required("charge", "in the pot, such as 10L"),
                Part.required("strength", "of the charge, such as 30%"),
                Part.text("to", "strength that still runs when collection stops, such as 40%"),
                Part.text("to-average", "strength of all that is collected, in place of that, such as 65%"));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("charge", "10L"), new Manner.Given("strength", "30%"), new Manner.Given("to", "40%"));
    }

    @Override
    public List<String> figures() {
        return List.of(
                "ethanol_charged_ml",
                "ethanol_charged_g",
                "distillate_ml",
                "distillate_strength_vol_percent",
                "running_strength_vol_percent",
                "pot_ml",
                "pot_strength_vol_percent",
                "ethanol_recovered_percent");
    }

    @Override
    public List<String> tables() {
        return List.of("run");
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Optional<Volume> charge = asked.read("charge", TEXT::volume);
        Optional<Strength> strength = asked.strength("strength", VolumeBasis.AT_20C);
        if (asked.has("to") == asked.has("to-average")) {
            asked.object(
                    "to",
                    "when collection stops is said in one way.",
                    "Give " + asked.write("to", "40%") + " or " + asked.write("to-average", "65%") + ".");
        }
        Optional<Strength> running = asked.strength("to", VolumeBasis.AT_20C);
        Optional<Strength> collected = asked.strength("to-average", VolumeBasis.AT_20C);
        asked.refuseIfAnyWrong();
        Found found = RunStill.answer(
                new RunStill.Asked(
                        charge.orElseThrow(), strength.orElseThrow(), running.orElse(null), collected.orElse(null)),
                workings);
        return new Told("A pot still on paper, strengths and volumes at 20 °C")
                .put(new Name("ethanol_charged_ml", "ethanol in the charge", "mL", 0), found.charged())
                .put(new Name("ethanol_charged_g", "ethanol in the charge, by mass", "g", 0), found.chargedGrams())
                .put(new Name("distillate_ml", "distillate", "mL", 0), found.distillate())
                .putStrength(new Name("distillate_strength_vol_percent", "its strength", "% vol", 1), found.strength())
                .putStrength(new Name("running_strength_vol_percent", "still running", "% vol", 1), found.running())
                .put(new Name("pot_ml", "left in the pot", "mL", 0), found.pot())
                .putStrength(
                        new Name("pot_strength_vol_percent", "strength in the pot", "% vol", 1), found.potStrength())
                .put(new Name("ethanol_recovered_percent", "of the ethanol is collected", "%", 1), found.recovered())
                .table(run(found.run()))
                .findings(found.findings());
    }

    private static Told.Series run(List<PotStill.Stand> run) {
        return new Told.Series(
                "run",
                "How it runs",
                List.of(
                        new Name("distillate_ml", "collected", "mL", 0),
                        new Name("running_strength_vol_percent", "running", "% vol", 1),
                        new Name("distillate_strength_vol_percent", "collected", "% vol", 1),
                        new Name("pot_strength_vol_percent", "pot", "% vol", 1),
                        new Name("pot_temperature_c", "boils at", "°C", 1)),
                run.stream()
                        .map(each -> new Told.Series.Line(
                                "",
                                List.of(
                                        each.distillate(),
                                        each.running(),
                                        each.strength(),
                                        each.potStrength(),
                                        each.celsius())))
                        .toList());
    }
}
