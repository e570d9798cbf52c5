package org.stillroom.studio.usecase.make;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.core.recipe.OtherDropper;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.recipefile.SheetReader;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.store.InstrumentSheet;
import org.stillroom.studio.store.Make;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.Minding;
import org.stillroom.studio.usecase.SizeRecipe;

/** Works out how a make stands, from its revision, its start and its log alone. */
public final class ShowMake {
    private final Store store;

    public ShowMake(Store store) {
        this.store = store;
    }

    /**
     * Returns how a make stands.
     *
     * @throws MissingException when there is no such make
     */
    public MakeState answer(String id) {
        Make make = store.makes().make(id).orElseThrow(() -> new MissingException("there is no make " + id));
        Revision revision = store.recipes()
                .revision(make.recipe(), make.revision())
                .orElseThrow(() -> new MissingException("the revision of the make " + id + " is not there"));
        MakeStart start = LogBodies.read(make.start(), MakeStart.class);
        List<LogEntry> log = LogEntry.of(store.makes().entries(id));
        Ready ready = ready(store, revision, start);
        List<MakePart> parts = new ArrayList<>();
        List<Finding> problems = new ArrayList<>(ready.problems());
        if (ready.making() != null) {
            new Unfolding(log, parts, problems).whole(ready.making());
        }
        return new MakeState(
                make, revision, start, parts, log, timers(log, parts), problems, minding(make, start, parts));
    }

    /** What is made, in its size and with its measures; or why not. */
    record Ready(@Nullable Making making, Map<String, MakeStart.Pinned> stages, List<Finding> problems) {}

    static Ready ready(Store store, Revision revision, MakeStart start) {
        OunceMeaning ounce = start.bar() ? OunceMeaning.THIRTY_MILLILITRES : OunceMeaning.US_FLUID;
        OpenRevision.Outcome opened = OpenRevision.answer(store.recipes(), revision, start.stages(), ounce);
        if (opened instanceof OpenRevision.Outcome.Refused refused) {
            return new Ready(null, Map.of(), refused.problems());
        }
        OpenRevision.Outcome.Opened found = (OpenRevision.Outcome.Opened) opened;
        Volume makes = start.millilitres() == null ? null : new Volume(start.millilitres());
        SizeRecipe.Outcome sized = SizeRecipe.answer(measuredWith(found.making(), start, ounce), makes);
        return sized instanceof SizeRecipe.Outcome.Refused refused
                ? new Ready(null, found.stages(), refused.problems())
                : new Ready(((SizeRecipe.Outcome.Sized) sized).making(), found.stages(), List.of());
    }

    private static Making measuredWith(Making making, MakeStart start, OunceMeaning ounce) {
        List<Measure> measures = start.instruments().stream()
                .flatMap(sheet -> read(sheet, ounce).stream())
                .toList();
        Map<String, Measure> droppers = new LinkedHashMap<>();
        start.droppers().forEach((line, sheet) -> read(sheet, ounce).ifPresent(read -> droppers.put(line, read)));
        return measuredWith(making, measures, droppers);
    }

    private static Optional<Measure> read(InstrumentSheet sheet, OunceMeaning ounce) {
        return new SheetReader(ounce).measure(sheet.name(), sheet.kind(), sheet.fields())
                        instanceof SheetReading.Understood<Measure> understood
                ? Optional.of(understood.value())
                : Optional.empty();
    }

    private static Making measuredWith(Making making, List<Measure> measures, Map<String, Measure> droppers) {
        Map<String, Making> stages = new HashMap<>();
        making.stages().forEach((from, stage) -> stages.put(from, measuredWith(stage, measures, droppers)));
        Recipe recipe = dosedWith(making.recipe(), droppers);
        return new Making(measures.isEmpty() ? recipe : recipe.measuredWith(together(measures, recipe)), stages);
    }

    private static Recipe dosedWith(Recipe recipe, Map<String, Measure> droppers) {
        Recipe dosed = recipe;
        for (int i = 0; i < recipe.lines().size(); i++) {
            Measure dropper = droppers.get(recipe.lines().get(i).use());
            if (dropper != null && recipe.lines().get(i).isInDrops()) {
                dosed = OtherDropper.in(dosed, i, dropper);
            }
        }
        return dosed;
    }

    /** Droppers of the recipe stay beside the instruments of the shelf: its drops were counted with them. */
    private static List<Measure> together(List<Measure> measures, Recipe recipe) {
        List<Measure> together = new ArrayList<>(measures);
        for (Measure each : recipe.measures()) {
            boolean isThere = together.stream().anyMatch(one -> one.name().equals(each.name()));
            if (each.kind() == MeasureKind.DROPPER && !isThere) {
                together.add(each);
            }
        }
        return together;
    }

    /** Returns what rules say of the drink that comes of it now; of a make that cannot be planned, nothing. */
    private Minding minding(Make make, MakeStart start, List<MakePart> parts) {
        MakePart last = parts.isEmpty() ? null : parts.get(parts.size() - 1);
        return last == null || last.ingredient() != null
                ? new Minding(List.of())
                : Minding.of(last.measured(), new MakeLots(store).grounds(make, start, MakeLots.lines(parts)));
    }

    private static List<MakeState.Timer> timers(List<LogEntry> log, List<MakePart> parts) {
        List<MakeState.Timer> timers = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int i = log.size() - 1; i >= 0; i--) {
            LogEntry entry = log.get(i);
            boolean ofTimer = entry.kind().equals(Logged.TIMER) || entry.kind().equals(Logged.TIMER_OFF);
            if (ofTimer
                    && entry.counts()
                    && seen.add(entry.said().step())
                    && entry.kind().equals(Logged.TIMER)) {
                parts.stream()
                        .flatMap(part -> part.steps().stream())
                        .filter(step -> step.id().equals(entry.said().step()) && step.isToCome())
                        .forEach(step -> timers.add(0, new MakeState.Timer(step, entry.at(), (long)
                                entry.said().number())));
            }
        }
        return timers;
    }

    /** Unfolds the parts one after the other: what a stage came to is what the next one works with. */
    private static final class Unfolding {
        private final List<LogEntry> log;
        private final List<MakePart> parts;
        private final List<Finding> problems;

        Unfolding(List<LogEntry> log, List<MakePart> parts, List<Finding> problems) {
            this.log = log;
            this.parts = parts;
            this.problems = problems;
        }

        void whole(Making making) {
            unfold(making, null);
        }

        private @Nullable MakePart unfold(Making making, @Nullable String ingredient) {
            List<Plan.StagePlan> stages = new ArrayList<>();
            for (Ingredient each : making.recipe().ingredients()) {
                Making stage = each.from() == null ? null : making.stages().get(each.from());
                MakePart part = stage == null ? null : unfold(stage, each.name());
                if (part != null) {
                    stages.add(left(each.name(), part));
                } else if (stage != null) {
                    return null;
                }
            }
            Planning planning = Planner.withStages(making.recipe(), stages);
            if (planning instanceof Planning.Refused refused) {
                problems.addAll(refused.problems());
                return null;
            }
            Plan plan = ((Planning.Planned) planning).plan();
            MakePart part = new PartUnfolding(parts.size() + 1, ingredient, plan, log).part();
            parts.add(part);
            return part;
        }

        /** Returns what a stage leaves: as measured where that is in the log, else as its recipe reckons. */
        private Plan.StagePlan left(String ingredient, MakePart part) {
            Plan.StagePlan reckoned =
                    Planner.leaving(ingredient, part.measured().plan());
            for (LogEntry entry : log) {
                if (entry.counts()
                        && entry.kind().equals(Logged.CAME)
                        && entry.said().step().equals(part.number() + "/came")
                        && entry.said().grams() > 0.0) {
                    double perGram = reckoned.plan().millilitres()
                            / reckoned.plan().liquid().total();
                    double grams = entry.said().grams();
                    reckoned = new Plan.StagePlan(ingredient, reckoned.plan(), grams, grams * perGram);
                }
            }
            return reckoned;
        }
    }
}
