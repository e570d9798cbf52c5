package org.stillroom.studio.usecase.make;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.Bottles;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Grounds;
import org.stillroom.planner.marks.Measuring;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.InstrumentSheet;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Make;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.FollowDose;
import org.stillroom.studio.usecase.Minding;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.OwnDroppers;
import org.stillroom.studio.usecase.shelf.ReadInstrument;
import org.stillroom.studio.usecase.shelf.ShelfLots;

/** Begins to make a saved revision: in what size, measured with what, taken from which lots. What nobody is to drink is not begun. */
public final class BeginMake {
    private final Store store;

    public BeginMake(Store store) {
        this.store = store;
    }

    /** What comes of it. */
    public sealed interface Outcome {
        /** It is begun. */
        record Begun(Make make) implements Outcome {}

        /** It cannot be begun so; nothing was kept. */
        record Refused(List<Finding> problems) implements Outcome {
            public Refused {
                problems = List.copyOf(problems);
            }
        }
    }

    /**
     * A wish as typed.
     *
     * @param size such as "3 L" or "4 x 350 ml"; blank for the size of the recipe
     * @param ownInstruments whether to measure with the instruments of the shelf
     * @param lots ids of lots by the name of the line; what is absent is not drawn from the shelf
     * @param droppers ids of droppers of the shelf by the name of a line in drops; the others are dosed as the recipe has it, or with
     *     the first dropper of the shelf where its instruments are used
     * @param meant names of the lines, after the names of their stages, whose dose of oil is meant though it is beyond what is plausible;
     *     the answer becomes part of a new revision of the recipe, of which the make then is
     */
    public record Wish(
            String size,
            boolean ownInstruments,
            Map<String, List<String>> lots,
            Map<String, String> droppers,
            Set<String> meant) {
        public Wish {
            meant = Set.copyOf(meant);
        }

        /** Makes a wish that answers nothing. */
        public Wish(String size, boolean ownInstruments, Map<String, List<String>> lots, Map<String, String> droppers) {
            this(size, ownInstruments, lots, droppers, Set.of());
        }
    }

    /** Returns the lots that each line could be taken from, the ones to use first at the front; stages' own results have none. */
    public Map<String, List<LotOnShelf>> lots(Revision revision) {
        Map<String, List<LotOnShelf>> choices = new LinkedHashMap<>();
        OpenRevision.Outcome opened = OpenRevision.answer(store.recipes(), revision, Map.of(), ounce());
        if (opened instanceof OpenRevision.Outcome.Opened found) {
            List<LotOnShelf> shelf = new ShelfLots(ounce()).of(store.lots().all());
            addLots(found.making(), shelf, choices);
        }
        return choices;
    }

    private static void addLots(Making making, List<LotOnShelf> shelf, Map<String, List<LotOnShelf>> choices) {
        making.recipe().ingredients().forEach(ingredient -> {
            Making stage = ingredient.from() == null ? null : making.stages().get(ingredient.from());
            if (stage != null) {
                addLots(stage, shelf, choices);
            }
        });
        for (Line line : making.recipe().lines()) {
            boolean ofStage = making.recipe().ingredients().stream()
                    .anyMatch(ingredient -> ingredient.name().equals(line.use()) && ingredient.from() != null);
            if (!ofStage) {
                choices.putIfAbsent(line.use(), ShelfLots.ofLine(line, making.recipe(), shelf));
            }
        }
    }

    /**
     * A lot that is stronger or weaker than what a line of the recipe counts on: than the oil that it lists, or than the lot to use first.
     *
     * @param line its place in the recipe
     * @param offer the dose that follows
     */
    public record Stronger(int line, FollowDose.Offer offer) {}

    /** Returns the lots whose dose would follow, by id; those of stages are looked at where the stage is composed. */
    public Map<String, Stronger> stronger(Revision revision, Map<String, List<LotOnShelf>> choices) {
        Map<String, Stronger> stronger = new LinkedHashMap<>();
        OpenRevision.Outcome opened = OpenRevision.answer(store.recipes(), revision, Map.of(), ounce());
        if (!(opened instanceof OpenRevision.Outcome.Opened found)) {
            return stronger;
        }
        Recipe recipe = found.making().recipe();
        List<LotOnShelf> shelf = new ShelfLots(ounce()).of(store.lots().all());
        FollowDose follow = new FollowDose(new QuantityText(ounce()));
        for (int i = 0; i < recipe.lines().size(); i++) {
            Line line = recipe.lines().get(i);
            String amount = amount(line.amount());
            for (LotOnShelf lot : choices.getOrDefault(line.use(), List.of())) {
                FollowDose.Extract ofRecipe = recipe.ingredients().stream()
                        .filter(each -> each.name().equals(line.use()))
                        .findFirst()
                        .map(each -> FollowDose.Extract.of(each, shelf, ""))
                        .orElse(null);
                FollowDose.Extract other = FollowDose.Extract.of(lot);
                List<FollowDose.Offer> offers = follow.answer(ofRecipe, other, amount, Map.of());
                if (!offers.isEmpty() && !offers.get(0).isSame()) {
                    stronger.put(lot.lot().id(), new Stronger(i, offers.get(0)));
                }
            }
        }
        return stronger;
    }

    /** Returns the places of the recipe's own lines that take a dose of an extract or an oil, by name: its strength may be told anew. */
    public Map<String, Integer> dosed(Revision revision) {
        Map<String, Integer> dosed = new LinkedHashMap<>();
        OpenRevision.Outcome opened = OpenRevision.answer(store.recipes(), revision, Map.of(), ounce());
        if (opened instanceof OpenRevision.Outcome.Opened found) {
            Recipe recipe = found.making().recipe();
            for (int i = 0; i < recipe.lines().size(); i++) {
                Line line = recipe.lines().get(i);
                boolean isExtract = recipe.ingredients().stream()
                        .anyMatch(each -> each.name().equals(line.use()) && flavours(each.kind()));
                if (isExtract && !amount(line.amount()).isEmpty()) {
                    dosed.putIfAbsent(line.use(), i);
                }
            }
        }
        return dosed;
    }

    private static boolean flavours(Kind kind) {
        return switch (kind) {
            case ESSENTIAL_OIL, ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL, DRIED_PLANT -> true;
            case SPIRIT, WINE, LIQUEUR, SUGAR, SYRUP, HONEY, JUICE, FRESH_PLANT -> false;
            case ACID, SALT, GLYCEROL, DAIRY, EGG, WATER, OTHER -> false;
        };
    }

    /** Returns the ingredients that a recipe lists for its lines, by the name of the line; stages' own results are not among them. */
    public Map<String, Ingredient> ingredients(Revision revision) {
        Map<String, Ingredient> ingredients = new LinkedHashMap<>();
        OpenRevision.Outcome opened = OpenRevision.answer(store.recipes(), revision, Map.of(), ounce());
        if (opened instanceof OpenRevision.Outcome.Opened found) {
            Recipe recipe = found.making().recipe();
            for (Line line : recipe.lines()) {
                recipe.ingredients().stream()
                        .filter(each -> each.name().equals(line.use()) && each.from() == null)
                        .findFirst()
                        .ifPresent(each -> ingredients.put(line.use(), each));
            }
        }
        return ingredients;
    }

    private static String amount(LineAmount amount) {
        if (amount instanceof LineAmount.PerLitre perLitre) {
            return perLitre.dose().text();
        }
        return amount instanceof LineAmount.Fixed fixed ? fixed.amount().text() : "";
    }

    /** Returns the instruments of the shelf that a recipe is measured with. */
    public List<Instrument> instruments() {
        return store.instruments().all().stream()
                .filter(instrument ->
                        ReadInstrument.isMeasure(instrument.sheet().kind()))
                .toList();
    }

    /** Returns the droppers of the shelf whose drop of water is known. */
    public List<OwnDroppers.Dropper> droppers() {
        return OwnDroppers.of(store.instruments().all(), ounce());
    }

    /** Returns the names of the lines in drops, those of stages too. */
    public List<String> linesInDrops(Revision revision) {
        Set<String> names = new LinkedHashSet<>();
        OpenRevision.Outcome opened = OpenRevision.answer(store.recipes(), revision, Map.of(), ounce());
        if (opened instanceof OpenRevision.Outcome.Opened found) {
            addInDrops(found.making(), names);
        }
        return List.copyOf(names);
    }

    private static void addInDrops(Making making, Set<String> names) {
        making.stages().values().forEach(stage -> addInDrops(stage, names));
        making.recipe().lines().stream().filter(Line::isInDrops).map(Line::use).forEach(names::add);
    }

    private Map<String, InstrumentSheet> droppers(Revision revision, Wish wish, List<Finding> problems) {
        List<OwnDroppers.Dropper> own = droppers();
        Map<String, InstrumentSheet> chosen = new LinkedHashMap<>();
        for (String line : linesInDrops(revision)) {
            String id = wish.droppers().getOrDefault(line, "");
            if (!id.isBlank()) {
                own.stream()
                        .filter(each -> each.id().equals(id))
                        .findFirst()
                        .ifPresentOrElse(
                                each -> chosen.put(line, each.sheet()), () -> problems.add(noSuchDropper(line, id)));
            } else if (wish.ownInstruments() && !own.isEmpty()) {
                chosen.put(line, own.get(0).sheet());
            }
        }
        return chosen;
    }

    /** Returns which of the lots that are named cannot be what their line asks for. */
    private List<Finding> otherLots(Revision revision, Wish wish) {
        List<Finding> problems = new ArrayList<>();
        Map<String, List<LotOnShelf>> choices = wish.lots().isEmpty() ? Map.of() : lots(revision);
        wish.lots().forEach((line, ids) -> {
            List<LotOnShelf> fit = choices.getOrDefault(line, List.of());
            for (String id : ids) {
                if (fit.stream().noneMatch(lot -> lot.lot().id().equals(id))) {
                    problems.add(choices.containsKey(line) ? notOfLine(line, id, fit) : noSuchLine(line));
                }
            }
        });
        return problems.stream().distinct().toList();
    }

    private static Finding noSuchLine(String line) {
        return Finding.of(
                "lot-of-no-line",
                Severity.STOP,
                line,
                "not there",
                "No line of the recipe or of its stages takes “" + line + "” from the shelf.",
                "Name lots by a line as the recipe writes it.");
    }

    private Finding notOfLine(String line, String id, List<LotOnShelf> fit) {
        Lot lot = store.lots().lot(id).orElse(null);
        String why = lot == null
                ? "There is no lot “" + id + "” on the shelf."
                : "“" + lot.sheet().name() + "” cannot be drawn for “" + line
                        + "”: it is something else by its name, is set aside, or is empty by what the shelf knows.";
        return Finding.of(
                "lot-of-another-line",
                Severity.STOP,
                line,
                "not that",
                why,
                fit.isEmpty()
                        ? "Put a lot of that name on the shelf, or name none for this line."
                        : "Choose one that it can be: "
                                + String.join(
                                        ", ", fit.stream().map(BeginMake::told).toList())
                                + ".");
    }

    private static String told(LotOnShelf lot) {
        String label = lot.lot().sheet().label();
        return lot.lot().id() + (label == null ? "" : " (" + label + ")");
    }

    private static Finding noSuchDropper(String line, String id) {
        return Finding.of(
                "no-such-dropper",
                Severity.STOP,
                line,
                "not there",
                "There is no dropper “" + id + "” on the shelf whose drop of water is known.",
                "Choose one that is calibrated, or calibrate it first.");
    }

    /** Returns what rules say of the drink of a revision, as the shelf is now; nothing where it cannot be planned, which beginning tells. */
    public Minding minding(Revision revision) {
        MakeStart start = new MakeStart(null, List.of(), Map.of(), Map.of(), isBar(), Map.of());
        ShowMake.Ready ready = ShowMake.ready(store, revision, start);
        return ready.making() != null && Planner.plan(ready.making()) instanceof Planning.Planned planned
                ? minding(planned.plan(), new MakeLots(store).open(lots(revision), planned.plan()))
                : new Minding(List.of());
    }

    private static Minding minding(Plan plan, Grounds grounds) {
        return Minding.of(Measuring.of(plan), grounds);
    }

    /** Returns the doses of oil of a revision that nobody said are meant; nothing where it cannot be planned, which beginning tells. */
    public List<Slips.Asked> asked(Revision revision) {
        MakeStart start = new MakeStart(null, List.of(), Map.of(), Map.of(), isBar(), Map.of());
        ShowMake.Ready ready = ShowMake.ready(store, revision, start);
        return ready.making() != null && Planner.plan(ready.making()) instanceof Planning.Planned planned
                ? Slips.asked(planned.plan())
                : List.of();
    }

    private OunceMeaning ounce() {
        return MakersOunce.of(store.settings());
    }

    private boolean isBar() {
        return ounce() == OunceMeaning.THIRTY_MILLILITRES;
    }

    /**
     * Begins a make.
     *
     * @throws MissingException when there is no such revision
     */
    public Outcome answer(String recipe, int number, Wish wish, String request) {
        Revision revision = store.recipes()
                .revision(recipe, number)
                .orElseThrow(() -> new MissingException("there is no such revision of this recipe"));
        List<Finding> problems = new ArrayList<>();
        Double millilitres = wish.size().isBlank() ? null : size(wish.size().strip(), problems);
        Map<String, InstrumentSheet> droppers = droppers(revision, wish, problems);
        problems.addAll(otherLots(revision, wish));
        if (!problems.isEmpty()) {
            return new Outcome.Refused(problems);
        }
        List<InstrumentSheet> instruments = wish.ownInstruments()
                ? instruments().stream()
                        .map(Instrument::sheet)
                        .map(OwnDroppers::telling)
                        .toList()
                : List.of();
        MakeStart start = new MakeStart(millilitres, instruments, wish.lots(), Map.of(), isBar(), droppers);
        ShowMake.Ready ready = ShowMake.ready(store, revision, start);
        if (ready.making() == null) {
            return new Outcome.Refused(ready.problems());
        }
        Planning planning = Planner.plan(ready.making());
        if (planning instanceof Planning.Refused refused) {
            return new Outcome.Refused(refused.problems());
        }
        Plan plan = ((Planning.Planned) planning).plan();
        Minding minding = minding(plan, new MakeLots(store).named(wish.lots(), plan));
        if (!minding.notForDrinking().isEmpty()) {
            return new Outcome.Refused(minding.notForDrinking());
        }
        List<Slips.Asked> asked = Slips.asked(plan);
        List<Slips.Asked> open = asked.stream()
                .filter(each -> !wish.meant().contains(each.name()))
                .toList();
        if (!open.isEmpty()) {
            return new Outcome.Refused(AnswerDoses.open(open));
        }
        AnswerDoses.Kept kept =
                new AnswerDoses(store.recipes(), ounce()).answer(revision, ready.stages(), asked, request);
        if (!kept.problems().isEmpty()) {
            return new Outcome.Refused(kept.problems());
        }
        ready = ShowMake.ready(store, kept.revision(), start);
        MakeStart pinned = new MakeStart(millilitres, instruments, wish.lots(), ready.stages(), isBar(), droppers);
        return new Outcome.Begun(
                store.makes().begin(recipe, kept.revision().number(), LogBodies.write(pinned), request));
    }

    private @Nullable Double size(String text, List<Finding> problems) {
        QuantityText quantities = new QuantityText(ounce());
        if (quantities.bottles(text) instanceof Understanding.Understood<Bottles> bottles) {
            return bottles.typed().value().together().millilitres();
        }
        Understanding<Volume> volume = quantities.volume(text);
        if (volume instanceof Understanding.Understood<Volume> understood
                && understood.typed().value().millilitres() > 0.0) {
            return understood.typed().value().millilitres();
        }
        problems.add(Finding.of(
                "size-not-understood",
                Severity.STOP,
                "size",
                "not understood",
                "“" + text + "” is no size that can be made"
                        + (volume instanceof Understanding.Refused<Volume> refused ? ": " + refused.reason() : "")
                        + ".",
                "Write a volume such as 3 L, or bottles such as 4 x 350 ml."));
        return null;
    }
}
