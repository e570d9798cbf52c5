package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.ExtractStrength;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Ratio;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.AdjustDose;

/** Tells the dose of an extract that came out stronger or weaker than the recipe's. */
final class ExtractQuestion extends DeskQuestion {
    @Override
    public String name() {
        return "extract";
    }

    @Override
    public String summary() {
        return "The dose of an extract that came out stronger or weaker than the recipe's.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.required("dose", "of the recipe's extract, such as 12ml/L or 40ml"),
                Part.text("ratio", "of the recipe's extract, plant to extract, such as 1:5"),
                Part.text("mine", "the same of yours, such as 1:8"),
                Part.text("content", "a constituent of the recipe's extract, a number in any unit"),
                Part.text("my-content", "the same of yours, in that unit"),
                new Part(
                        "equal",
                        "what tasted equally strong, as RECIPE=MINE in one unit, such as 10ml=8ml",
                        null,
                        Part.Form.NAMED_TEXTS),
                Part.text("strength", "of the recipe's extract, such as 60%"),
                Part.text("my-strength", "of yours, such as 70%"));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("dose", "12ml/L"), new Manner.Given("ratio", "1:5"), new Manner.Given("mine", "1:8"));
    }

    @Override
    public List<String> figures() {
        return List.of(
                "times",
                "dose_ml",
                "dose_g",
                "dose_drops",
                "dose_ml_per_l",
                "dose_g_per_l",
                "dose_drops_per_l",
                "strength_change_vol_percent");
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        boolean perLitre = asked.isPerLitre("dose");
        Optional<Amount> dose =
                perLitre ? asked.read("dose", TEXT::dose).map(Dose::perLitre) : asked.read("dose", TEXT::amount);
        dose.filter(each -> number(each) == 0.0)
                .ifPresent(none -> asked.object("dose", "nothing of it is taken.", "Give the recipe's dose."));
        ExtractStrength strength = strength(asked);
        OptionalDouble ofRecipe = percent(asked, "strength");
        OptionalDouble ofOther = percent(asked, "my-strength");
        asked.refuseIfAnyWrong();
        Amount amount = dose.orElseThrow();
        boolean millilitresPerLitre = perLitre && amount instanceof Volume;
        AdjustDose.Found found = AdjustDose.answer(
                new AdjustDose.Asked(
                        number(amount),
                        Objects.requireNonNull(strength),
                        ofRecipe,
                        ofOther,
                        millilitresPerLitre ? OptionalDouble.of(number(amount)) : OptionalDouble.empty()),
                workings);
        Told told = new Told("Dose of your extract")
                .put(new Name("times", "yours is as strong as the recipe's", "times", 3), found.times())
                .put(
                        new Name(
                                "dose_" + key(amount) + (perLitre ? "_per_l" : ""),
                                "take of yours",
                                unit(amount) + (perLitre ? "/L" : ""),
                                2),
                        found.dose());
        found.alcohol()
                .ifPresent(change -> told.put(
                        new Name("strength_change_vol_percent", "the liqueur becomes stronger by", "% vol", 2),
                        new Estimate(change, 0.0)));
        return told.findings(found.findings());
    }

    private static @Nullable ExtractStrength strength(AskedTexts asked) {
        boolean byRatio = asked.has("ratio") || asked.has("mine");
        boolean byContent = asked.has("content") || asked.has("my-content");
        boolean byTaste = asked.has("equal");
        int ways = (byRatio ? 1 : 0) + (byContent ? 1 : 0) + (byTaste ? 1 : 0);
        if (ways != 1) {
            asked.object(
                    "ratio",
                    ways == 0
                            ? "how strong yours is beside the recipe's is not said."
                            : "one basis is wanted, not " + ways + ".",
                    "Give both ratios, both contents, or what tasted equally strong, such as "
                            + asked.write("ratio", "1:5", "mine", "1:8") + ".");
            return null;
        }
        if (byTaste) {
            return byComparison(asked);
        }
        Optional<Double> one = byRatio
                ? asked.read("ratio", TEXT::ratio).map(Ratio::leftPerRight)
                : asked.read("content", TEXT::number);
        Optional<Double> other = byRatio
                ? asked.read("mine", TEXT::ratio).map(Ratio::leftPerRight)
                : asked.read("my-content", TEXT::number);
        String missing =
                byRatio ? (asked.has("ratio") ? "mine" : "ratio") : asked.has("content") ? "my-content" : "content";
        if (!asked.has(missing)) {
            asked.object(missing, "it is missing.", "Give it of both extracts, on the same basis.");
        }
        if (one.isEmpty() || other.isEmpty()) {
            return null;
        }
        if (!(one.get() > 0.0 && other.get() > 0.0)) {
            asked.object("content", "a content lies above zero.", "Give both in the same unit.");
            return null;
        }
        return ExtractStrength.byContent(one.get(), other.get());
    }

    private static @Nullable ExtractStrength byComparison(AskedTexts asked) {
        List<ExtractStrength.Comparison> comparisons = new ArrayList<>();
        for (String text : asked.texts("equal")) {
            String[] sides = text.split("=", -1);
            Optional<Amount> one = sides.length == 2 ? asked.read("equal", sides[0], TEXT::amount) : Optional.empty();
            Optional<Amount> other = sides.length == 2 ? asked.read("equal", sides[1], TEXT::amount) : Optional.empty();
            if (sides.length != 2) {
                asked.object("equal", "\"" + text + "\" compares nothing.", "Write it such as 10ml=8ml.");
            } else if (one.isPresent() && other.isPresent()) {
                if (one.get().getClass() == other.get().getClass()
                        && number(one.get()) > 0.0
                        && number(other.get()) > 0.0) {
                    comparisons.add(new ExtractStrength.Comparison(number(one.get()), number(other.get())));
                } else {
                    asked.object(
                            "equal",
                            "\"" + text + "\" is not one unit above zero.",
                            "Give both by volume, or both by mass.");
                }
            }
        }
        return comparisons.isEmpty() ? null : ExtractStrength.byComparison(comparisons);
    }

    private static OptionalDouble percent(AskedTexts asked, String part) {
        return asked.strength(part, VolumeBasis.AT_20C)
                .map(strength -> OptionalDouble.of(
                        Essentials.of(MadeUp.spirit(strength).toGrams()).strength()))
                .orElse(OptionalDouble.empty());
    }

    private static double number(Amount amount) {
        if (amount instanceof Volume volume) {
            return volume.millilitres();
        }
        return amount instanceof Mass mass ? mass.grams() : ((Drops) amount).count();
    }

    private static String key(Amount amount) {
        return amount instanceof Volume ? "ml" : amount instanceof Mass ? "g" : "drops";
    }

    private static String unit(Amount amount) {
        return amount instanceof Volume ? "mL" : key(amount);
    }
}
