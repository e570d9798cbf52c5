package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.drops.DropLiquid;
import org.stillroom.core.drops.DropWeighings;
import org.stillroom.core.drops.OwnDropper;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.WeighDrops;
import org.stillroom.studio.usecase.WeighDrops.Found;

/** Tells what a drop weighs and how many make a millilitre. */
final class DropsQuestion extends DeskQuestion {
    private static final int MOST_DECIMALS = 9;

    private static final Pattern NUMBER = Pattern.compile("(\\d+)(?:[.,](\\d+))?");

    /** What droppers are known by. */
    static final DropLiquid WATER = DropLiquid.spirit(AlcoholByVolume.at20(0.0), "water");

    private final Grounds grounds;

    /** Makes the question of oils that are judged on these grounds. */
    DropsQuestion(Grounds grounds) {
        this.grounds = grounds;
    }

    @Override
    public String name() {
        return "drops";
    }

    @Override
    public String summary() {
        return "What a drop weighs, by your own weighings or by the official dropper.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.required("liquid", "what drops: an oil such as \"lemon oil\", water, or a spirit such as 40%"),
                Part.text("count", "drops of each weighing, such as 50"),
                new Part(
                        "mass",
                        "what they weighed together, such as 1.02g; once per weighing",
                        null,
                        Part.Form.TEXTS_AS_TYPED),
                Part.text(
                        "water-drop",
                        "what a drop of water weighs from your dropper, as calibrate tells it, such as 46mg"),
                Part.text("density", "of the liquid where you know it, such as 0.852g/ml"),
                Part.text(
                        "dose",
                        "to restate, such as \"12 drops\", 250ul, 0.2g, or per litre of liqueur: 180mg/L, 8drops/L"),
                Part.text("batch", "finished liqueur that the dose goes into, such as 2L; 1 L for a dose per litre"));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(
                new Manner.Given("liquid", "lemon"),
                new Manner.Given("count", "50"),
                new Manner.Given("mass", "1.02g"),
                new Manner.Given("mass", "1.05g"),
                new Manner.Given("mass", "1.03g"));
    }

    @Override
    public List<String> figures() {
        return List.of(
                "drop_mass_mg",
                "drop_mass_without_odd_mg",
                "drops_per_ml",
                "spread_percent",
                "dose_drops",
                "dose_g",
                "dose_ml",
                "dose_ul",
                "dose_mg_per_l");
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        Optional<DropLiquid> liquid = liquid(asked);
        Optional<DropWeighings> weighings = weighings(asked);
        Optional<Mass> waterDrop = asked.read("water-drop", TEXT::mass);
        waterDrop.ifPresent(drop -> objectToNoDrop(asked, "water-drop", drop.grams(), WATER));
        if (liquid.isPresent() && weighings.isPresent()) {
            objectToNoDrop(asked, "mass", weighings.get(), liquid.get());
        }
        boolean perLitre = asked.isPerLitre("dose");
        Optional<Volume> typed = asked.read("batch", TEXT::volume);
        Optional<Volume> batch = perLitre && !asked.has("batch") ? Optional.of(Volume.litres(1.0)) : typed;
        Optional<Amount> dose = perLitre
                ? asked.read("dose", TEXT::dose).flatMap(each -> batch.map(each::in))
                : asked.read("dose", TEXT::amount);
        dose.filter(amount -> LadderQuestion.amount(amount) == 0.0)
                .ifPresent(none ->
                        asked.object("dose", "a dose of nothing is none.", "Give one above 0, or leave it out."));
        batch.filter(volume -> volume.millilitres() == 0.0)
                .ifPresent(none -> asked.object("batch", "there is no liqueur in 0 mL.", "Give its volume."));
        asked.refuseIfAnyWrong();
        Found found = WeighDrops.answer(
                new WeighDrops.Asked(
                        liquid.orElseThrow(),
                        oil(asked),
                        weighings.orElse(null),
                        waterDrop
                                .map(drop -> new OwnDropper("dropper", drop, 0.0))
                                .orElse(null),
                        dose.orElse(null),
                        batch.orElse(null),
                        grounds),
                workings);
        Told told = new Told("Drops of " + liquid.orElseThrow().name())
                .put(new Name("drop_mass_mg", "a drop weighs", "mg", 1), found.dropMass());
        if (found.withoutOdd() != null) {
            told.put(new Name("drop_mass_without_odd_mg", "without the odd weighings", "mg", 1), found.withoutOdd());
        }
        if (found.unlikely() != null) {
            told.before(found.unlikely());
        }
        told.putOrNone(new Name("drops_per_ml", "drops per millilitre", "at 20 °C", 1), found.dropsPerMillilitre())
                .put(new Name("spread_percent", "drops differ by", "% of the mean", 1), found.spread());
        putDose(told, found.dose());
        return told.findings(found.findings());
    }

    /** Objects to runs of drops of which one would weigh what no dropper gives. */
    static void objectToNoDrop(AskedTexts asked, String part, DropWeighings weighings, DropLiquid liquid) {
        weighings.grams().forEach(run -> objectToNoDrop(asked, part, run / weighings.count(), liquid));
    }

    private static void objectToNoDrop(AskedTexts asked, String part, double grams, DropLiquid liquid) {
        if (!(grams >= liquid.lightestDrop() && grams <= liquid.heaviestDrop())) {
            asked.object(
                    part,
                    "a drop of " + liquid.name() + " would weigh " + milligrams(grams) + "; no dropper gives less than "
                            + milligrams(liquid.lightestDrop()) + " or more than " + milligrams(liquid.heaviestDrop())
                            + " (own estimate by Tate's law).",
                    "Look whether the count is right, the scale was tared, and grams were meant.");
        }
    }

    private static String milligrams(double grams) {
        return QuantityWords.figures(1000.0 * grams) + " mg";
    }

    private static void putDose(Told told, WeighDrops.@Nullable Restated dose) {
        if (dose != null) {
            told.put(name("dose_drops", "drops", 1, dose.drops()), dose.drops())
                    .put(name("dose_g", "g", 3, dose.grams()), dose.grams())
                    .putOrNone(name("dose_ml", "mL", 3, dose.millilitres()), dose.millilitres())
                    .putOrNone(name("dose_ul", "µL", 0, dose.microlitres()), dose.microlitres());
            if (dose.milligramsPerLitre() != null) {
                Estimate content = dose.milligramsPerLitre();
                told.put(new Name("dose_mg_per_l", "in the liqueur", "mg/L", decimals(0, content)), content);
            }
        }
    }

    /** Returns how a dose is told: with two figures at least, however small it is. */
    private static Name name(String key, String unit, int decimals, @Nullable Estimate dose) {
        return new Name(key, "the dose", unit, decimals(decimals, dose));
    }

    private static int decimals(int least, @Nullable Estimate dose) {
        double value = dose == null ? 0.0 : dose.value();
        int wanted = value > 0.0 ? (int) Math.ceil(1.0 - Math.log10(value)) : 0;
        return Math.max(least, Math.min(MOST_DECIMALS, wanted));
    }

    private Optional<DropLiquid> liquid(AskedTexts asked) {
        String text = asked.text("liquid");
        if (text == null) {
            return Optional.empty();
        }
        Optional<DropLiquid> liquid = known(text).or(() -> ofStrength(text));
        boolean weighed = asked.has("mass");
        if (liquid.isEmpty() && !weighed) {
            asked.object(
                    "liquid",
                    "\"" + text + "\" is not known here, and nothing was weighed.",
                    "Name an oil of the table, water or a strength such as 40% (of a tincture or an essence: its own); or weigh drops: "
                            + asked.write("count", "50", "mass", "1.02g") + ".");
            asked.objectsToDrinking("liquid", Ingredient.named(text.strip(), Kind.ESSENTIAL_OIL), grounds);
        }
        String bare = text.strip();
        Optional<DropLiquid> named =
                liquid.or(() -> Optional.of(saysOil(bare) ? DropLiquid.oil(bare) : DropLiquid.unknown(bare)));
        return asked.read("density", TEXT::density)
                .map(density -> named.map(each -> each.withDensity(density.kilogramsPerCubicMetre() / 1000.0)))
                .orElse(named);
    }

    /** Returns what was typed where it is an oil or nothing says that it is none. */
    private static @Nullable String oil(AskedTexts asked) {
        String text = String.valueOf(asked.text("liquid")).strip();
        Optional<DropLiquid> known = known(text).or(() -> ofStrength(text));
        boolean other = known.map(liquid -> liquid.oil() == null).orElse(DropLiquid.isMadeOfPlants(text));
        return other ? null : text;
    }

    private static boolean saysOil(String name) {
        return name.toLowerCase(Locale.ROOT).matches("(.*\\W)?oil(\\W.*)?");
    }

    private static Optional<DropLiquid> known(String text) {
        if (text.strip().equalsIgnoreCase("water")) {
            return Optional.of(WATER);
        }
        return Optional.ofNullable(DropLiquid.named(text));
    }

    private static Optional<DropLiquid> ofStrength(String text) {
        String bare = text.replaceAll("(?i)\\b(neutral|spirit|vodka|alcohol|ethanol)\\b", " ")
                .strip();
        return TEXT.strength(bare) instanceof Understanding.Understood<Strength> understood
                ? Optional.of(DropLiquid.spirit(understood.typed().value(), text.strip()))
                : Optional.empty();
    }

    private static Optional<DropWeighings> weighings(AskedTexts asked) {
        if (!asked.has("mass")) {
            if (asked.has("count")) {
                asked.object("mass", "the drops were counted but not weighed.", "Give what they weighed.");
            }
            return Optional.empty();
        }
        Runs runs = Runs.of(asked, "mass");
        boolean nothing = runs.grams().contains(0.0);
        if (nothing) {
            asked.object("mass", "a run of drops weighs more than 0 g.", "Weigh it again.");
        }
        Optional<Integer> count = count(asked);
        return count.isPresent() && !runs.grams().isEmpty() && !nothing
                ? Optional.of(runs.of(count.get()))
                : Optional.empty();
    }

    /**
     * What runs of drops weighed, as typed.
     *
     * @param grams each of those that were understood
     * @param readTo the step to which the scale was read, by the last digits typed, g
     */
    record Runs(List<Double> grams, double readTo) {
        static Runs of(AskedTexts asked, String part) {
            List<Double> grams = new ArrayList<>();
            double readTo = 0.0;
            for (String text : asked.texts(part)) {
                Optional<Mass> mass = asked.read(part, text, TEXT::mass);
                if (mass.isPresent()) {
                    grams.add(mass.get().grams());
                    readTo = Math.max(readTo, lastDigit(text, mass.get()));
                }
            }
            return new Runs(grams, readTo);
        }

        /** Returns them as runs of so many drops. */
        DropWeighings of(int count) {
            return new DropWeighings(count, grams, readTo);
        }
    }

    /** Returns what one more in the last digit that was typed of a mass would be, g; nothing of a fraction, whose scale is not known. */
    private static double lastDigit(String typed, Mass mass) {
        Matcher number = NUMBER.matcher(typed);
        if (typed.contains("/") || !number.find()) {
            return 0.0;
        }
        String decimals = number.group(2) == null ? "" : number.group(2);
        double value = Double.parseDouble(number.group(1) + "." + decimals + "0");
        return value > 0.0 ? mass.grams() / value * Math.pow(10.0, -decimals.length()) : 0.0;
    }

    private static Optional<Integer> count(AskedTexts asked) {
        String text = asked.text("count");
        if (text == null || !text.strip().matches("[1-9]\\d{0,3}")) {
            asked.object(
                    "count",
                    text == null
                            ? "the drops of a weighing are not counted."
                            : "\"" + text + "\" is no count of drops.",
                    "Write a whole number, such as 50.");
            return Optional.empty();
        }
        return Optional.of(Integer.parseInt(text.strip()));
    }
}
