package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.recipe.Recipe;

/** What a maker wrote in sentences about a recipe and its stages. */
final class Passages {
    /** What a passage is. */
    enum Of {
        /** Something that is done. */
        STEP,
        /** Something said of the recipe, of an ingredient or of the vessel. */
        NOTE
    }

    /**
     * One of them.
     *
     * @param where as findings name the place
     */
    record Passage(Of of, String where, String text) {
        /** Returns whether what it names goes into the drink: of a step unless it tells of serving, of a note where it says so. */
        boolean goesIn() {
            return of == Of.STEP ? !WordList.SERVED.isIn(text) : WordList.GOES_IN.isIn(text);
        }

        /**
         * Returns the sentences in which it can name what goes into the drink, without those that tell of serving; of a note, where it
         * says that something goes in or stands with it, without those that only speak of a thing.
         */
        String goingIn() {
            boolean note = of == Of.NOTE;
            if (note && !WordList.GOES_IN.isIn(text) && !WordList.STANDS_WITH.isIn(text)) {
                return "";
            }
            return sentences(text).stream()
                    .filter(sentence -> !WordList.SERVED.isIn(sentence))
                    .filter(sentence -> !note || !WordList.ONLY_SPEAKS.isIn(sentence))
                    .collect(Collectors.joining(". "));
        }
    }

    /** A stop within a number ends no sentence, nor that of a saint. */
    private static final Pattern SENTENCES = Pattern.compile("[!?;\\n]+|(?<![Ss]t)\\.(?!\\d)");

    private final List<Passage> passages = new ArrayList<>();

    private Passages() {}

    static List<Passage> of(Plan plan) {
        Passages all = new Passages();
        all.plan(plan, "");
        return all.passages;
    }

    /** Returns the steps of the maker's own of a recipe, those of its stages excepted. */
    static List<Passage> ownSteps(Plan plan) {
        Passages own = new Passages();
        own.steps(plan.recipe(), "");
        return own.passages;
    }

    static List<String> sentences(String text) {
        return List.of(SENTENCES.split(text, -1));
    }

    /** Returns what is noted of a line and of its ingredient, one after the other; empty where nothing is. */
    static String notes(PlannedLine line) {
        List<String> notes = new ArrayList<>();
        for (String note :
                Arrays.asList(line.ingredient().ingredient().note(), line.line().note())) {
            if (note != null) {
                notes.add(note);
            }
        }
        return String.join(". ", notes);
    }

    /** @param stage name under which the result of a stage is used, with a colon behind; empty for the recipe itself */
    private void plan(Plan plan, String stage) {
        Recipe recipe = plan.recipe();
        for (PlannedLine line : plan.lines()) {
            if (line.grams() > 0.0) {
                note(line.ingredient().ingredient().note(), line.name());
                note(line.line().note(), line.name());
            }
        }
        steps(recipe, stage);
        note(recipe.notes(), stage + "notes");
        note(recipe.vessel() == null ? null : recipe.vessel().text(), stage + "vessel");
        plan.stages().forEach(each -> plan(each.plan(), each.ingredient() + ": "));
    }

    private void steps(Recipe recipe, String stage) {
        for (int i = 0; i < recipe.steps().size(); i++) {
            passages.add(new Passage(
                    Of.STEP,
                    stage + "step " + (i + 1) + " of your own",
                    recipe.steps().get(i)));
        }
    }

    private void note(@Nullable String text, String where) {
        if (text != null) {
            passages.add(new Passage(Of.NOTE, where, text));
        }
    }
}
