package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.Target;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Turns a recipe into the numbers of a {@link Problem}. */
final class Balances {
    /** A batch for who names none. */
    private static final double ONE_LITRE = 1000.0;

    private final Recipe recipe;
    private final Pantry pantry;
    private final List<Finding> findings;
    private final List<Resolved> ingredients = new ArrayList<>();
    private final List<Problem.Line> lines = new ArrayList<>();

    Balances(Recipe recipe, Pantry pantry) {
        this.recipe = recipe;
        this.pantry = pantry;
        this.findings = pantry.findings();
    }

    /** Returns the ingredient of each line. */
    List<Resolved> ingredients() {
        return ingredients;
    }

    /** Returns the recipe in numbers, or null when the pantry has found something that stops it. */
    @Nullable
    Problem problem() {
        for (int i = 0; i < recipe.lines().size(); i++) {
            addLine(i, recipe.lines().get(i));
        }
        if (lines.isEmpty() && !pantry.hasStop()) {
            stop("recipe-empty", "", "The recipe has no lines.", "Write at least one line: what goes in.");
        }
        if (pantry.hasStop()) {
            return null;
        }
        leaveWhatOtherLinesTake();
        Map<Asked, double[]> weights = Problem.weights(recipe.target().sugarBasis());
        Problem problem = new Problem(lines.toArray(new Problem.Line[0]), asked(), weights);
        return new Costs(recipe, ingredients, findings).putOn(problem);
    }

    /** What a line takes in any case is not at hand for another line of the same ingredient. */
    private void leaveWhatOtherLinesTake() {
        for (int i = 0; i < lines.size(); i++) {
            double others = 0.0;
            for (int j = 0; j < lines.size(); j++) {
                boolean same =
                        ingredients.get(i).name().equals(ingredients.get(j).name());
                others += j != i && same ? lines.get(j).fixed() : 0.0;
            }
            lines.set(i, lines.get(i).leaving(others));
        }
    }

    private void stop(String rule, String where, String message, String remedy) {
        findings.add(Finding.of(rule, Severity.STOP, where, "cannot be told", message, remedy));
    }

    private Map<Asked, Span> asked() {
        Map<Asked, Span> asked = new EnumMap<>(Asked.class);
        Target target = recipe.target();
        Span volume = target.millilitres();
        if (volume == null && !isAnchored()) {
            volume = Span.exactly(ONE_LITRE);
            findings.add(Finding.of(
                    "volume-assumed",
                    Severity.NOTE,
                    "target, volume",
                    "assumed",
                    "No volume is asked for and no line has an amount of its own: planned for 1 L.",
                    "Write how much you want under target: volume, or plan with --makes."));
        }
        put(asked, Asked.VOLUME, volume);
        put(asked, Asked.STRENGTH, value(target.strength()));
        put(asked, Asked.SUGAR, value(target.sugar()));
        put(asked, Asked.ACIDITY, value(target.acidity()));
        return asked;
    }

    private boolean isAnchored() {
        return lines.stream().anyMatch(line -> line.fixed() > 0.0);
    }

    private static @Nullable Span value(@Nullable Typed<Span> typed) {
        return typed == null ? null : typed.value();
    }

    private static void put(Map<Asked, Span> asked, Asked what, @Nullable Span span) {
        if (span != null) {
            asked.put(what, span);
        }
    }

    private void addLine(int index, Line line) {
        Resolved ingredient = pantry.find(line);
        if (ingredient == null) {
            return;
        }
        Double atHand = pantry.atHand(ingredient);
        Problem.Line numbers = atHand == null ? null : numbers(index, line, ingredient, atHand);
        if (numbers != null) {
            ingredients.add(ingredient);
            lines.add(numbers);
        }
    }

    private Problem.@Nullable Line numbers(int index, Line line, Resolved ingredient, double atHand) {
        double[] perGram = ingredient.perGram().toGrams();
        String where = "line " + (index + 1) + ", " + line.use();
        LineAmount amount = line.amount();
        if (amount instanceof LineAmount.Fixed fixed) {
            Double grams = pantry.grams(ingredient, fixed.amount(), "amount");
            return grams == null
                    ? null
                    : fixed(perGram, enough(where, grams, atHand, fixed.amount().text()));
        }
        if (amount instanceof LineAmount.PerLitre dosed) {
            return dosed(perGram, ingredient, dosed.dose());
        }
        if (amount instanceof LineAmount.All) {
            return saidHowMuch(where, line, atHand) ? fixed(perGram, atHand) : null;
        }
        boolean possible = amount instanceof LineAmount.Free || saidToWhat(where, line);
        return possible ? new Problem.Line(perGram, 0.0, 0.0, atHand, 0.0, 0.0) : null;
    }

    private Problem.@Nullable Line dosed(double[] perGram, Resolved ingredient, Typed<Dose> dose) {
        Typed<Amount> perLitre = new Typed<>(dose.text(), dose.value().perLitre());
        Double grams = pantry.grams(ingredient, perLitre, "dose");
        return grams == null ? null : new Problem.Line(perGram, 0.0, grams / 1000.0, 0.0, 0.0, 0.0);
    }

    private boolean saidHowMuch(String where, Line line, double atHand) {
        if (atHand < Double.POSITIVE_INFINITY) {
            return true;
        }
        stop(
                "all-of-what",
                where,
                "All of " + line.use() + " is asked for, but not said how much there is.",
                "Write at hand with the ingredient, such as at hand: 1096 ml.");
        return false;
    }

    private boolean saidToWhat(String where, Line line) {
        if (recipe.target().millilitres() != null) {
            return true;
        }
        stop(
                "make-up-to-what",
                where,
                line.use() + " is to make up a volume, but no volume is asked for.",
                "Write the volume of the mark under target: volume.");
        return false;
    }

    private double enough(String where, double grams, double atHand, String text) {
        if (Remarks.exceeds(grams, atHand)) {
            findings.add(Remarks.moreThanAtHand(where, text, grams, atHand));
        }
        return grams;
    }

    private static Problem.Line fixed(double[] perGram, double grams) {
        return new Problem.Line(perGram, grams, 0.0, 0.0, 0.0, 0.0);
    }
}
