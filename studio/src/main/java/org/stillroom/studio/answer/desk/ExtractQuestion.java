package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.ExtractStrength;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.AdjustDose;
import org.stillroom.studio.usecase.FollowDose;

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
        List<Part> parts = new ArrayList<>();
        parts.add(Part.required("dose", "of the recipe's extract, such as 12ml/L or 40ml"));
        parts.addAll(ExtractAsked.PARTS);
        parts.add(Part.text("strength", "of the recipe's extract, such as 60%"));
        parts.add(Part.text("my-strength", "of yours, such as 70%"));
        return List.copyOf(parts);
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
        dose.filter(each -> FollowDose.number(each) == 0.0)
                .ifPresent(none -> asked.object("dose", "nothing of it is taken.", "Give the recipe's dose."));
        ExtractStrength strength = strength(asked);
        OptionalDouble ofRecipe = percent(asked, "strength");
        OptionalDouble ofOther = percent(asked, "my-strength");
        if (asked.has("strength") != asked.has("my-strength")) {
            asked.object(
                    asked.has("strength") ? "my-strength" : "strength",
                    "it is missing: one strength alone does not tell what the other dose does to the liqueur.",
                    "Give both, such as " + asked.write("strength", "60%", "my-strength", "70%") + ", or neither.");
        }
        asked.refuseIfAnyWrong();
        Amount amount = dose.orElseThrow();
        boolean millilitresPerLitre = perLitre && amount instanceof Volume;
        AdjustDose.Found found = AdjustDose.answer(
                new AdjustDose.Asked(
                        FollowDose.number(amount),
                        Objects.requireNonNull(strength),
                        ofRecipe,
                        ofOther,
                        millilitresPerLitre ? OptionalDouble.of(FollowDose.number(amount)) : OptionalDouble.empty()),
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
        if (found.alcohol() != null) {
            told.doubtingReadings()
                    .put(
                            new Name("strength_change_vol_percent", "the liqueur becomes stronger by", "% vol", 2),
                            found.alcohol());
        }
        return told.findings(found.findings());
    }

    private static @Nullable ExtractStrength strength(AskedTexts asked) {
        Map<FollowDose.Basis, ExtractStrength> strengths = ExtractAsked.of(asked);
        long ways = Stream.of(
                        List.of(ExtractAsked.RATIO, ExtractAsked.MINE),
                        List.of(ExtractAsked.CONTENT, ExtractAsked.MY_CONTENT),
                        List.of(ExtractAsked.EQUAL))
                .filter(parts -> parts.stream().anyMatch(asked::has))
                .count();
        if (ways != 1) {
            asked.object(
                    ExtractAsked.RATIO,
                    ways == 0
                            ? "how strong yours is beside the recipe's is not said."
                            : "one basis is wanted, not " + ways + ".",
                    "Give both ratios, both contents, or what tasted equally strong, such as "
                            + asked.write(ExtractAsked.RATIO, "1:5", ExtractAsked.MINE, "1:8") + ".");
            return null;
        }
        return strengths.values().stream().findFirst().orElse(null);
    }

    private static OptionalDouble percent(AskedTexts asked, String part) {
        return asked.strength(part, VolumeBasis.AT_20C)
                .map(strength -> OptionalDouble.of(
                        Essentials.of(MadeUp.spirit(strength).toGrams()).strength()))
                .orElse(OptionalDouble.empty());
    }

    private static String key(Amount amount) {
        return amount instanceof Volume ? "ml" : amount instanceof Mass ? "g" : "drops";
    }

    private static String unit(Amount amount) {
        return amount instanceof Volume ? "mL" : key(amount);
    }
}
