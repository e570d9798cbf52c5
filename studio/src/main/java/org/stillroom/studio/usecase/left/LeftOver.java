package org.stillroom.studio.usecase.left;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.stillroom.core.ingredient.Ageing;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.ByName;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.usecase.shelf.LotOnShelf;

/**
 * Something that flavours, of which something is left: all lots of its name together.
 *
 * @param stocked what there is
 * @param ageing how it keeps
 * @param monthsOpen since the oldest lot was made, or opened where it was bought; empty where no lot says when
 */
public record LeftOver(Stocked stocked, Ageing ageing, OptionalDouble monthsOpen) {
    private static final double DAYS_PER_MONTH = 30.44;

    /** Returns what is left of everything that flavours, by name; what does not say how much there is is not among it. */
    public static List<LeftOver> of(List<LotOnShelf> shelf, LocalDate today) {
        List<LeftOver> all = new ArrayList<>();
        for (LotOnShelf lot : shelf) {
            Ingredient ingredient = lot.ingredient();
            Ageing ageing = ingredient == null ? null : Ageing.of(ingredient);
            boolean told = all.stream().anyMatch(each -> Generics.same(each.name(), lot.name()));
            Stocked stocked = ageing == null || told ? null : Stocked.named(lot.name(), shelf);
            if (stocked != null && ageing != null && stocked.grams().orElse(0.0) > 0.0) {
                all.add(new LeftOver(stocked, ageing, monthsOpen(stocked.lots(), today)));
            }
        }
        return all;
    }

    /**
     * Returns what is to be known of what is left: what of it nobody is to drink; what of a shelf is not among it though it flavours; and
     * why nothing is, where that is so.
     *
     * @param grounds what the bottles are judged on
     */
    public static List<Finding> told(List<LotOnShelf> shelf, List<LeftOver> left, Grounds grounds) {
        List<Finding> told = new ArrayList<>();
        left.forEach(each -> told.addAll(ByName.stops(each.ingredient(), grounds)));
        told.addAll(notCounted(shelf, left));
        return List.copyOf(told);
    }

    private static List<Finding> notCounted(List<LotOnShelf> shelf, List<LeftOver> left) {
        Set<String> unsaid = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        for (LotOnShelf lot : shelf) {
            Ingredient ingredient = lot.ingredient();
            Stocked stocked =
                    ingredient == null || Ageing.of(ingredient) == null ? null : Stocked.named(lot.name(), shelf);
            if (stocked != null && stocked.grams().isEmpty()) {
                unsaid.add(stocked.name());
            }
        }
        if (!unsaid.isEmpty()) {
            return List.of(Finding.of(
                    "left-not-said",
                    Severity.NOTE,
                    String.join(", ", unsaid),
                    "not counted",
                    "How much is left of it is not said, or nothing is.",
                    "Weigh the bottle, or write down what is left: on its page, or in the column left of a table."));
        }
        return left.isEmpty()
                ? List.of(Finding.of(
                        "nothing-left",
                        Severity.NOTE,
                        "",
                        "",
                        shelf.isEmpty()
                                ? "Nothing stands on the shelf."
                                : "Nothing that flavours and is not empty stands on the shelf, of " + shelf.size()
                                        + (shelf.size() == 1 ? " lot there." : " lots there."),
                        "What counts here are essential oils, essences, tinctures, macerates, distillates, hydrosols,"
                                + " syrups and juices, each with how much is left."))
                : List.of();
    }

    private static OptionalDouble monthsOpen(List<LotOnShelf> lots, LocalDate today) {
        double months = -1.0;
        for (LotOnShelf lot : lots) {
            LotSheet.Origin origin = lot.lot().sheet().origin();
            LocalDate since = origin == null ? lot.lot().sheet().opened() : origin.made();
            if (since != null && !since.isAfter(today)) {
                months = Math.max(months, ChronoUnit.DAYS.between(since, today) / DAYS_PER_MONTH);
            }
        }
        return months < 0.0 ? OptionalDouble.empty() : OptionalDouble.of(months);
    }

    public String name() {
        return stocked.name();
    }

    /** Returns what the lot to use first is. */
    public Ingredient ingredient() {
        return stocked.resolved().ingredient();
    }

    /** Returns how much is left, g. */
    public double grams() {
        return stocked.grams().orElseThrow();
    }

    /** Returns how much is left, mL at 20 °C; empty where its density is not known. */
    public OptionalDouble millilitres() {
        return millilitres(grams());
    }

    /** Returns so much of it by volume, mL at 20 °C; empty where its density is not known. */
    public OptionalDouble millilitres(double ofGrams) {
        OptionalDouble density = stocked.resolved().gramsPerMillilitre();
        return density.isPresent() ? OptionalDouble.of(ofGrams / density.getAsDouble()) : density;
    }

    public List<LotOnShelf> lots() {
        return stocked.lots();
    }

    /** Returns whether it has been open for longer than it usually keeps. */
    public boolean isPast() {
        return monthsOpen.isPresent()
                && ageing.months().isPresent()
                && monthsOpen.getAsDouble() > ageing.months().getAsDouble();
    }
}
