package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.stillroom.core.blend.Blend;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Wait;
import org.stillroom.core.recipe.LineAmount;

/**
 * The order in which a plan is mixed, each step with its reason.
 *
 * <p>Oils go into the strongest spirit, where they dissolve; crystals, which do not dissolve in strong spirit, become a syrup of the
 * recipe's own water; the weaker liquid is poured slowly into the stronger, so that no part of it turns weak before the rest;
 * nothing is measured before it is cool. Common practice, no source.
 */
public final class MixingOrder {
    /** Above this part of ethanol a liquid is a spirit in which oils dissolve and crystals hardly do. */
    private static final double STRONG = 0.30;

    private static final double NOTHING = 1e-9;
    private static final double WORTH_SAYING_CELSIUS = 1.0;

    private final Plan plan;
    private final List<MixingStep> steps = new ArrayList<>();
    private final List<Integer> left = new ArrayList<>();

    private MixingOrder(Plan plan) {
        this.plan = plan;
        for (int i = 0; i < plan.lines().size(); i++) {
            if (plan.lines().get(i).grams() > NOTHING * plan.liquid().total()) {
                left.add(i);
            }
        }
    }

    /** Returns the steps, all lines that take anything among them once. */
    public static List<MixingStep> of(Plan plan) {
        MixingOrder order = new MixingOrder(plan);
        order.weighVessel();
        order.plants();
        order.spirits();
        order.sweet();
        order.rest();
        order.finish();
        return List.copyOf(order.steps);
    }

    private PlannedLine line(int index) {
        return plan.lines().get(index);
    }

    private Kind kind(int index) {
        return line(index).ingredient().kind();
    }

    private boolean toTheMark(int index) {
        return line(index).line().amount() instanceof LineAmount.MakeUp;
    }

    private double ethanol(int index) {
        Contents perGram = line(index).ingredient().perGram();
        double wet = perGram.grams(Substance.ETHANOL) + perGram.grams(Substance.WATER);
        return wet > 0.0 ? perGram.grams(Substance.ETHANOL) / wet : 0.0;
    }

    private List<Integer> take(Predicate<Integer> which) {
        List<Integer> taken = new ArrayList<>(left.stream().filter(which).toList());
        left.removeAll(taken);
        return taken;
    }

    private String names(List<Integer> lines) {
        return Shortfall.joined(lines.stream().map(i -> line(i).name()).toList(), "and");
    }

    private void pour(List<Integer> lines, String what, String why) {
        add(MixingStep.Act.POUR, lines, what, why);
    }

    private void add(MixingStep.Act act, List<Integer> lines, String what, String why) {
        steps.add(new MixingStep(what, why, lines, act));
    }

    private void weighVessel() {
        add(
                MixingStep.Act.WEIGH_VESSEL,
                List.of(),
                "Weigh the empty jar and write its weight on it.",
                "Then what is in it can be weighed later, even half full.");
    }

    private void plants() {
        List<Integer> plants = take(i -> kind(i) == Kind.FRESH_PLANT || kind(i) == Kind.DRIED_PLANT);
        if (!plants.isEmpty()) {
            pour(plants, "Put " + names(plants) + " into the jar.", "Plants are covered by the spirit that follows.");
        }
    }

    private void spirits() {
        List<Integer> strong = take(i -> ethanol(i) >= STRONG && !toTheMark(i) && kind(i) != Kind.ESSENCE);
        strong.sort(Comparator.comparingDouble(this::ethanol).reversed());
        List<Integer> oils = take(i -> kind(i) == Kind.ESSENTIAL_OIL || kind(i) == Kind.ESSENCE);
        if (!strong.isEmpty()) {
            pour(strong.subList(0, 1), "Pour " + names(strong.subList(0, 1)) + ". No flame near; lid on.", "");
        }
        if (!oils.isEmpty()) {
            pour(
                    oils,
                    "Add " + names(oils) + " and swirl until it is clear.",
                    "Oils dissolve in strong spirit; in weak spirit they would stay as a haze.");
        }
        if (strong.size() > 1) {
            List<Integer> others = strong.subList(1, strong.size());
            pour(others, "Add " + names(others) + (others.size() > 1 ? ", the strongest first." : "."), "");
        }
    }

    private void sweet() {
        List<Integer> crystals = take(i -> {
            boolean drySugar = kind(i) == Kind.SUGAR;
            return drySugar || kind(i) == Kind.ACID || kind(i) == Kind.SALT;
        });
        List<Integer> thick = take(i -> kind(i) == Kind.HONEY || kind(i) == Kind.SYRUP || kind(i) == Kind.GLYCEROL);
        List<Integer> water = take(i -> kind(i) == Kind.WATER && !toTheMark(i));
        if (!crystals.isEmpty()) {
            dissolve(crystals, water);
        }
        List<Integer> thin = new ArrayList<>(thick);
        if (crystals.isEmpty()) {
            thin.addAll(water);
        }
        if (!thin.isEmpty()) {
            String what = thick.isEmpty() || thin.size() == thick.size()
                    ? "Pour in " + names(thin) + " slowly, stirring."
                    : "Stir " + names(thick) + " with the water in a second jar, then pour it in slowly, stirring.";
            boolean second = !thick.isEmpty() && thin.size() > thick.size();
            add(
                    second ? MixingStep.Act.SECOND_JAR : MixingStep.Act.POUR,
                    thin,
                    what,
                    "Poured slowly, no part of it turns weak before the rest.");
        }
    }

    private void dissolve(List<Integer> crystals, List<Integer> water) {
        boolean waterToTheMark = left.stream().anyMatch(i -> kind(i) == Kind.WATER && toTheMark(i));
        List<Integer> both = new ArrayList<>(crystals);
        both.addAll(water);
        if (!water.isEmpty() || waterToTheMark) {
            add(
                    MixingStep.Act.SECOND_JAR,
                    both,
                    "Dissolve " + names(crystals) + " in " + (water.isEmpty() ? "part of the water" : "the water")
                            + ", warm, in a second jar. Let it cool. Pour it in slowly, stirring.",
                    "Crystals do not dissolve in strong spirit; hot syrup would drive alcohol off.");
            return;
        }
        rest();
        pour(
                both,
                "Add " + names(crystals) + " and shake now and then until nothing is left at the bottom.",
                "There is no water of its own to dissolve it in: it takes days.");
    }

    private void rest() {
        List<Integer> others = take(i -> !toTheMark(i));
        if (!others.isEmpty()) {
            pour(others, "Add " + names(others) + " slowly, stirring.", "");
        }
    }

    private void finish() {
        Blend blend = Blend.of(plan.lines().stream()
                .map(line -> line.ingredient().perGram().times(line.grams()))
                .toList());
        if (blend.warming().value() >= WORTH_SAYING_CELSIUS) {
            add(
                    MixingStep.Act.COOL,
                    List.of(),
                    "Let it cool to the room's temperature before you measure anything.",
                    "Mixing warms it by up to " + Words.number(blend.warming().value(), 0)
                            + " °C, and a warm liquid measures too much and too strong.");
        }
        List<Integer> toTheMark = take(i -> true);
        if (!toTheMark.isEmpty()) {
            add(
                    MixingStep.Act.MAKE_UP,
                    toTheMark,
                    "Fill up to the mark with " + names(toTheMark) + ", mix, and fill up again.",
                    "It shrinks as it mixes.");
        }
        Typed<Wait> wait = plan.recipe().rest();
        if (wait != null) {
            add(MixingStep.Act.REST, List.of(), "Let it rest for " + wait.text() + ".", "");
        }
        for (String own : plan.recipe().steps()) {
            add(MixingStep.Act.OWN, List.of(), own, "");
        }
        if (plan.recipe().condition().isPasteurised()) {
            add(
                    MixingStep.Act.PASTEURISE,
                    List.of(),
                    "Pasteurise it: fill it hot and close it, or heat the closed bottles, with room in them.",
                    "What it keeps by rests on it; closed bottles build pressure, and hot spirit gives off vapour that"
                            + " lights.");
        }
    }
}
