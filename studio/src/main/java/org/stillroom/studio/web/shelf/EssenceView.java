package org.stillroom.studio.web.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.planner.drops.Choice;
import org.stillroom.planner.drops.PreDilution;
import org.stillroom.studio.answer.EssenceFields;
import org.stillroom.studio.recipefile.EssenceForm;
import org.stillroom.studio.recipefile.EssenceSheet;
import org.stillroom.studio.usecase.essence.EssenceRecipe;
import org.stillroom.studio.usecase.essence.PlanEssence;
import org.stillroom.studio.usecase.essence.ShelfOils;
import org.stillroom.studio.wording.Words;

/**
 * An essence as its page shows it.
 *
 * @param sheet what was asked, or null where it was not understood
 * @param found null where there is none
 * @param problems why not
 */
public record EssenceView(
        Words words,
        EssenceForm form,
        ShelfOils shelf,
        @Nullable EssenceSheet sheet,
        PlanEssence.@Nullable Found found,
        List<Finding> problems) {
    /** Rows that are offered beyond those that are filled. */
    private static final int FREE_ROWS = 2;

    private static final int FEWEST_ROWS = 4;

    private static final Pattern OF_OIL = Pattern.compile("oils\\.(\\d|1[01])\\.(oil|parts|drop|density)");
    private static final Set<String> KEYS =
            Set.of("title", "by", "together", "carrier", "dose", "measure", "marks", "batch", "tolerance", "batches");

    public EssenceView {
        problems = List.copyOf(problems);
    }

    /** Returns whether the form has such a field. */
    static boolean isField(String name) {
        return KEYS.contains(name) || OF_OIL.matcher(name).matches();
    }

    static String drops(Choice choice) {
        return choice.drops().stream().map(String::valueOf).collect(Collectors.joining(":"));
    }

    /** Returns how many rows of oils the form shows. */
    public int rows() {
        int last = form.rows().max().orElse(-1);
        return Math.min(EssenceForm.MOST_OILS, Math.max(FEWEST_ROWS, last + 1 + FREE_ROWS));
    }

    public String text(String key) {
        return form.typed(key);
    }

    public String oil(int row, String key) {
        return form.typed(EssenceForm.ofOil(row, key));
    }

    public List<EssenceSheet.By> ways() {
        return List.of(EssenceSheet.By.values());
    }

    public String way(EssenceSheet.By by) {
        return words.say("essence.by." + by.label());
    }

    /** Returns the oils whose drop comes from their sheets on the shelf, in words; empty where there is none. */
    public String fromShelf() {
        return shelf.weighed(form).mapToObj(row -> oil(row, "oil")).collect(Collectors.joining(", "));
    }

    /** Returns the fields that ask the same again. */
    public Map<String, String> asked() {
        return form.fields();
    }

    /** Returns the numbers of drops with the oils' names, such as "26 drops lemon, 7 drops laurel". */
    public String spelled(Choice choice) {
        List<String> spelled = new ArrayList<>();
        for (int i = 0; i < choice.drops().size(); i++) {
            spelled.add(words.say(
                    choice.drops().get(i) == 1 ? "essence.dropOf" : "essence.dropsOf",
                    "" + choice.drops().get(i),
                    there().asked().oils().get(i).name()));
        }
        return String.join(", ", spelled);
    }

    public PlanEssence.Found there() {
        if (found == null) {
            throw new IllegalStateException("there is no essence to show");
        }
        return found;
    }

    public String lead() {
        return words.say(
                "essence.forBatch",
                words.amount(new Volume(there().batch())),
                words.amount(new Volume(there().asked().dose())));
    }

    /** Returns why the first size is the first. */
    public String order() {
        return words.say(
                there().choices().get(0).choice().toleranceKept() ? "essence.order" : "essence.orderNearest",
                words.number(100.0 * there().asked().tolerance(), 1));
    }

    public String error(double part) {
        return words.say("essence.error", words.number(100.0 * part, 1));
    }

    public String millilitres(double volume) {
        return words.number(volume, 2);
    }

    /** Returns what the essence is like: volume, carrier, strength. */
    public String what(PlanEssence.Made made) {
        return words.counted(
                "essence.what",
                made.choice().batches(),
                millilitres(made.essence()),
                millilitres(made.carrier()),
                words.number(made.strength(), 1));
    }

    /**
     * A line of what is in it.
     *
     * @param perLitre g/L
     */
    public record Part(String name, String perLitre, String error) {}

    public List<Part> oils(PlanEssence.Made made) {
        List<Part> oils = new ArrayList<>();
        for (int i = 0; i < made.oils().size(); i++) {
            oils.add(new Part(
                    there().asked().oils().get(i).name(),
                    words.number(made.oils().get(i), 2),
                    error(made.choice().errors().get(i))));
        }
        return oils;
    }

    /** Returns the constituents by their content, the largest first. */
    public List<Part> constituents(PlanEssence.Made made) {
        return EssenceFields.listed(made).entrySet().stream()
                .map(each -> new Part(each.getKey(), words.number(each.getValue(), 2), ""))
                .toList();
    }

    /** Returns the recipe that makes it, as the text of a recipe file. */
    public String recipe(PlanEssence.Made made) {
        if (sheet == null) {
            throw new IllegalStateException("there is no essence to make");
        }
        return EssenceRecipe.text(sheet, there(), made);
    }

    public String choice(PlanEssence.Made made) {
        return drops(made.choice());
    }

    /** Returns the essence for the fewest batches in words; empty where one batch does. */
    public String manifold() {
        Choice choice = there().manifold();
        return choice == null
                ? ""
                : words.say(
                        "essence.manifold",
                        spelled(choice),
                        "" + choice.batches(),
                        words.amount(new Volume(there().asked().dose())),
                        words.number(100.0 * choice.worstError(), 1));
    }

    /** Returns each dilution in words, then how to dose with them; empty where nothing need be diluted. */
    public List<String> dilutions() {
        PlanEssence.Dilutions diluted = there().preDilution();
        List<String> said = new ArrayList<>();
        if (diluted != null) {
            for (PreDilution.Dilution each : diluted.how().dilutions()) {
                said.add(words.say(
                        "essence.dilute",
                        there().asked().oils().get(each.oil()).name(),
                        String.format(Locale.ROOT, "%d", 100 / each.oneIn()),
                        "" + each.drops(),
                        words.number(each.spirit(), 2),
                        words.number(each.spirit() / diluted.density(), 2),
                        words.number(each.total(), 2),
                        diluted.isCarrier()
                                ? words.say("essence.theCarrier")
                                : words.say("essence.strongSpirit", words.number(diluted.strength(), 0))));
            }
            said.add(words.say(
                    "essence.diluted",
                    spelled(diluted.how().choice()),
                    words.number(100.0 * diluted.how().choice().worstError(), 1)));
        }
        return said;
    }
}
