package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.OpenRecipe;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.TellClarity;
import picocli.CommandLine.Option;

/** Tells whether oils stay dissolved in a liquid, or in what a recipe makes. */
final class ClarityCommand extends Subcommand {
    private static final QuantityText TEXT = new QuantityText(OunceMeaning.US_FLUID);

    @Option(names = "--strength", description = "of the liquid, % vol at 20 °C")
    private @Nullable String strength;

    @Option(names = "--sugar", defaultValue = "0g/L", description = "of the liquid (default: ${DEFAULT-VALUE})")
    private String sugar = "";

    @Option(names = "--temperature", defaultValue = "20C", description = "of the liquid (default: ${DEFAULT-VALUE})")
    private String temperature = "";

    @Option(names = "--oil", description = "an essential oil, such as lemon=1.2g/L; may be repeated")
    private List<String> oils = new ArrayList<>();

    @Option(names = "--constituent", description = "a single constituent, such as limonene=1g/L; may be repeated")
    private List<String> constituents = new ArrayList<>();

    @Option(names = "--recipe", description = "a recipe file in place of strength, sugar and oils")
    private @Nullable Path recipe;

    @Option(names = "--map", description = "the map of strength and dose as SVG, in place of the words")
    private boolean map;

    private final Objections objections = new Objections();

    @Override
    protected Answer answer(Workings workings) {
        Optional<Temperature> at = objections.take("--temperature", TEXT.temperature(temperature));
        try {
            TellClarity.Found found = recipe == null ? typed(at, workings) : planned(recipe, at, workings);
            return new ClarityAnswer(found, map);
        } catch (Impossible impossible) {
            throw Refusal.wrongInput("--" + impossible.part(), impossible.reason(), impossible.remedy());
        }
    }

    private TellClarity.Found typed(Optional<Temperature> at, Workings workings) {
        Optional<AlcoholByVolume> percent = strength();
        Optional<MassConcentration> sweet = concentration("--sugar", sugar);
        Map<String, Double> named = doses("--oil", oils);
        Map<String, Double> single = doses("--constituent", constituents);
        objections.refuseIfAny();
        return TellClarity.answer(
                new TellClarity.Asked(
                        percent.orElseThrow(), sweet.orElseThrow(), at.orElseThrow(), named, single),
                workings);
    }

    private TellClarity.Found planned(Path file, Optional<Temperature> at, Workings workings) {
        if (strength != null || !oils.isEmpty() || !constituents.isEmpty()) {
            object("--recipe", "A recipe has its own strength and oils.", "Leave --strength, --oil and --constituent out.");
        }
        objections.refuseIfAny();
        OpenRecipe.Outcome outcome = OpenRecipe.at(file);
        if (outcome instanceof OpenRecipe.Outcome.NotFound none) {
            throw new Refusal(Exit.NOT_FOUND, none.problems());
        }
        if (outcome instanceof OpenRecipe.Outcome.Refused refused) {
            throw new Refusal(Exit.WRONG_INPUT, refused.problems());
        }
        OpenRecipe.Outcome.Opened opened = (OpenRecipe.Outcome.Opened) outcome;
        PlanRecipe.Outcome plan = PlanRecipe.answer(PlanRecipe.making(opened.recipe()), null, Workings.NONE);
        if (plan instanceof PlanRecipe.Outcome.Refused refused) {
            throw new Refusal(Exit.WRONG_INPUT, refused.problems());
        }
        return TellClarity.answer(((PlanRecipe.Outcome.Worked) plan).plan(), at.orElseThrow(), workings);
    }

    private Optional<AlcoholByVolume> strength() {
        if (strength == null) {
            object("--strength", "It is not said how strong the liquid is.", "Write --strength 40%, or --recipe FILE.");
            return Optional.empty();
        }
        Optional<Strength> typed = objections.take("--strength", TEXT.strength(strength));
        if (typed.isPresent() && !(typed.get() instanceof AlcoholByVolume)) {
            object("--strength", strength + " is not by volume.", "Write % vol, such as 40%.");
        }
        return typed.filter(AlcoholByVolume.class::isInstance).map(AlcoholByVolume.class::cast);
    }

    private Optional<MassConcentration> concentration(String option, String text) {
        Optional<Share> share = objections.take(option, TEXT.share(text));
        if (share.isPresent() && !(share.get() instanceof MassConcentration)) {
            object(option, text + " is not per litre.", "Write g/L, such as 1.2g/L.");
        }
        return share.filter(MassConcentration.class::isInstance).map(MassConcentration.class::cast);
    }

    private Map<String, Double> doses(String option, List<String> typed) {
        Map<String, Double> doses = new LinkedHashMap<>();
        for (String text : typed) {
            int sign = text.indexOf('=');
            String name = sign < 0 ? "" : text.substring(0, sign).strip();
            if (name.isEmpty()) {
                object(option, "\"" + text + "\" does not say what it is.", "Write it as lemon=1.2g/L.");
            } else if (doses.containsKey(name)) {
                object(option, name + " is given twice.", "Give it once, with the whole amount.");
            } else {
                concentration(option, text.substring(sign + 1).strip())
                        .ifPresent(dose -> doses.put(name, dose.gramsPerLitre()));
            }
        }
        return doses;
    }

    private void object(String option, String message, String remedy) {
        objections.raise(Finding.of("wrong-input", Severity.STOP, option, "not understood", message, remedy));
    }
}
