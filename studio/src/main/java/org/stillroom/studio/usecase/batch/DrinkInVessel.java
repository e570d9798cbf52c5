package org.stillroom.studio.usecase.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Held;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.Target;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.LogBodies;
import org.stillroom.studio.usecase.make.MakeLots;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.PouredPlan;
import org.stillroom.studio.usecase.make.ShowMake;
import org.stillroom.studio.usecase.shelf.DrawnLots;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.MakersOunce;

/**
 * What is in a vessel or a bottle, as a plan that rules can look at: what was poured in its make, what was blended with it and added, each
 * by the part of it that is there; the liquid itself is as the log has it, with what was measured and what evaporated. It is judged by the
 * lots that were drawn, as they were then, whatever became of them since.
 */
final class DrinkInVessel {
    private final Store store;
    private final Book book;
    private final ShowMake show;
    private final MakeLots makeLots;
    private final Grounds grounds;

    DrinkInVessel(Store store, Book book) {
        this.store = store;
        this.book = book;
        this.show = new ShowMake(store);
        this.makeLots = new MakeLots(store);
        this.grounds = MakersGrounds.of(store, List.of());
    }

    /**
     * What is there, and what it is judged on.
     *
     * @param grounds the bottles that it was drawn from among them
     */
    record Drunk(Plan plan, Grounds grounds) {}

    /** Gathers lines; the plan of another batch is a stage. */
    private static final class Gathered {
        private @Nullable Recipe recipe;
        private final List<PlannedLine> lines = new ArrayList<>();
        private final List<Plan.StagePlan> stages = new ArrayList<>();
        private final DrawnLots lots;

        Gathered(DrawnLots lots) {
            this.lots = lots;
        }

        void own(Plan plan, double part) {
            recipe = plan.recipe();
            stages.addAll(plan.stages());
            plan.lines().forEach(line -> add(line.line(), line.ingredient(), part * line.grams()));
        }

        void other(String name, Plan plan, double part) {
            Ingredient from = Ingredient.ofRecipe(name, Kind.LIQUEUR);
            stages.add(new Plan.StagePlan(name, plan, plan.liquid().total(), plan.millilitres()));
            add(line(name), resolved(from, plan.liquid()), part * plan.liquid().total());
        }

        void added(Resolved ingredient, double grams) {
            add(line(ingredient.name()), ingredient, grams);
        }

        private void add(Line line, Resolved ingredient, double grams) {
            lines.add(new PlannedLine(line, ingredient, grams));
        }

        private static Line line(String name) {
            return new Line(name, new LineAmount.Free(), null, null);
        }
    }

    /** Returns an ingredient of which all that is known is what came in with it. */
    private static Resolved resolved(Ingredient ingredient, Contents liquid) {
        Contents perGram = liquid.times(1.0 / liquid.total());
        return new Resolved(ingredient, perGram, 0.0, perGram, OptionalDouble.empty(), 0.0, false, null);
    }

    /**
     * Returns what is in a vessel or a bottle of a batch.
     *
     * @param held not empty
     * @throws MissingException when the recipe of a batch in it cannot be worked out any more, so that what is in it is not known
     */
    Drunk of(Batch batch, Held held) {
        OunceMeaning ounce = MakersOunce.of(store.settings());
        Gathered gathered = new Gathered(new DrawnLots(ounce));
        held.origins().forEach((entry, part) -> {
            if (entry < 0) {
                Batch origin = byNumber(-entry);
                if (origin.id().equals(batch.id())) {
                    gathered.own(poured(origin, gathered.lots), part);
                } else {
                    gathered.other(title(origin), poured(origin, gathered.lots), part);
                }
            } else {
                add(gathered, book.entry(entry), part);
            }
        });
        Recipe recipe = gathered.recipe == null
                ? Recipe.plain(FinishMake.sheet(batch).title(), Target.OPEN, List.of(), List.of())
                : gathered.recipe;
        Plan plan = new Plan(
                recipe,
                gathered.lines,
                held.contents(),
                held.essentials().millilitres(),
                true,
                gathered.stages,
                List.of());
        Grounds drawn = gathered.lots.on(grounds);
        return new Drunk(plan, drawn.with(drawn.analyses().ofDrink(held.analysed())));
    }

    private Batch byNumber(long number) {
        return book.batches().stream()
                .filter(batch -> batch.number() == number)
                .findFirst()
                .orElseThrow(() -> new MissingException("there is no batch " + number));
    }

    private static String title(Batch batch) {
        return "batch " + batch.number() + ", " + FinishMake.sheet(batch).title();
    }

    private Plan poured(Batch batch, DrawnLots lots) {
        MakeState state = show.answer(batch.make());
        if (state.parts().isEmpty() || !state.problems().isEmpty()) {
            throw new MissingException("the recipe of batch " + batch.number() + " cannot be worked out any more");
        }
        makeLots.add(state, lots);
        return PouredPlan.of(state);
    }

    private void add(Gathered gathered, HistoryEntry entry, double part) {
        EventBodies.AddedBody said = LogBodies.read(entry.body(), EventBodies.AddedBody.class);
        Contents liquid = said.liquid().contents();
        if (liquid.total() > 0.0) {
            String what = EventBodies.typed(entry).getOrDefault("what", "");
            Generic generic = RecordBatch.KITCHEN.contains(what) ? Generics.find(what) : null;
            Ingredient known = generic == null ? Ingredient.named(said.name(), Kind.OTHER) : generic.ingredient();
            Resolved asked = resolved(known, liquid);
            Lot lot = store.lots().asOf(what, entry.id()).orElse(null);
            gathered.added(drawn(gathered.lots, said.name(), asked, lot), part * liquid.total());
        }
    }

    /** A lot that nobody knows any more is known by its name alone, so that nothing is ruled out of it. */
    private static Resolved drawn(DrawnLots lots, String name, Resolved asked, @Nullable Lot lot) {
        if (lot != null) {
            return lots.add(name, asked, lot);
        }
        lots.addUnknown(name, asked);
        return asked;
    }
}
