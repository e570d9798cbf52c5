package org.stillroom.studio.web.api;

import static org.stillroom.studio.web.api.Operation.Method.DELETE;
import static org.stillroom.studio.web.api.Operation.Method.GET;
import static org.stillroom.studio.web.api.Operation.Method.POST;
import static org.stillroom.studio.web.api.Operation.Method.PUT;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.ByName;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.FindingFields;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.shelffile.LineProblem;
import org.stillroom.studio.shelffile.LotKeys;
import org.stillroom.studio.shelffile.OilAnalysis;
import org.stillroom.studio.store.Changing;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Lots;
import org.stillroom.studio.store.Lots.NewLot;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.Mistakable;
import org.stillroom.studio.usecase.shelf.ReadAnalysis;
import org.stillroom.studio.usecase.shelf.ReadLot;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.usecase.shelf.Stock;
import org.stillroom.studio.usecase.shelf.WeighLot;

/** The bottles and jars of the shelf. */
final class LotOperations {
    private static final String VERSION = "version";
    private static final String LOTS = "lots";
    private static final String LOT = "{\"name\": \"neutral spirit\", \"kind\": \"spirit\", \"strength\": \"96 %\","
            + " \"left\": \"650 ml\", \"full\": \"700 ml\"}";

    private final Lots lots;
    private final RecipeTexts texts;

    LotOperations(Lots lots, RecipeTexts texts) {
        this.lots = lots;
        this.texts = texts;
    }

    List<Operation> all() {
        Map<String, Object> one = Schemas.ref("Lot");
        Map<String, Object> many = Schemas.group().with(LOTS, Schemas.list(one)).schema();
        Map<String, Object> done = Schemas.ref("Done");
        return List.of(
                Operation.of(GET, "/lots", "lots", "Every lot on the shelf, by name.", this::list)
                        .answers(many),
                Operation.of(POST, "/lots", "add_lots", "Puts lots on the shelf, all of them or none.", this::add)
                        .takes(
                                Schemas.group()
                                        .with(LOTS, Schemas.list(Schemas.ref("LotSheet")))
                                        .schema(),
                                "{\"lots\": [" + LOT + "]}")
                        .answers(many),
                Operation.of(GET, "/lots/{lot}", "lot", "One lot; its ETag is its version.", this::one)
                        .answers(one),
                Operation.of(
                                PUT,
                                "/lots/{lot}",
                                "change_lot",
                                "Writes the sheet of a lot anew; how much is in it changes by weighing or by measuring.",
                                this::change)
                        .takes(
                                sheet().maybe(
                                                VERSION,
                                                Schemas.count(
                                                        "that the change is based on, where If-Match is not sent"))
                                        .schema(),
                                LOT)
                        .basedOn(VERSION)
                        .answers(one),
                Operation.of(
                                DELETE,
                                "/lots/{lot}",
                                "remove_lot",
                                "Takes a lot off the shelf; an undo puts it back.",
                                call -> RecipeOperations.done(lots.remove(call.part("lot"), call.request())))
                        .answers(done),
                Operation.of(
                                POST,
                                "/lots/{lot}/weigh",
                                "weigh_lot",
                                "Notes what is left by what the vessel weighs with what is in it, and empty.",
                                this::weigh)
                        .takes(
                                Schemas.group()
                                        .with("reading", Schemas.typed("weight of the vessel with what is in it"))
                                        .maybe(
                                                "tare",
                                                Schemas.typed("weight of the empty vessel, if its sheet does not say"))
                                        .schema(),
                                "{\"reading\": \"780 g\", \"tare\": \"312 g\"}")
                        .answers(one),
                Operation.of(
                                POST,
                                "/lots/undo/{entry}",
                                "undo_lot",
                                "Undoes a removal, a move or a weighing, by an entry that does the opposite.",
                                call -> RecipeOperations.done(lots.undo(call.number("entry"), call.request())))
                        .answers(done));
    }

    private Reply list(Call call) {
        return many(lots.all());
    }

    private Reply many(List<Lot> some) {
        Shelf shelf = shelf();
        return Reply.of(new Fields()
                .put(LOTS, some.stream().map(lot -> fields(lot, shelf)).toList()));
    }

    /** All lots, and what they are judged on. */
    private record Shelf(List<LotOnShelf> lots, Grounds grounds) {}

    private Shelf shelf() {
        return new Shelf(new ShelfLots(texts.ounce()).of(lots.all()), texts.grounds());
    }

    private Lot lot(Call call) {
        String id = call.part("lot");
        return lots.lot(id).orElseThrow(() -> Refused.notFound("There is no lot \"" + id + "\"."));
    }

    private Reply one(Call call) {
        return shown(lot(call));
    }

    private Reply shown(Lot lot) {
        return Reply.of(fields(lot, shelf())).version(lot.version());
    }

    private Reply add(Call call) throws Exception {
        Body body = call.body().knows(List.of(LOTS));
        List<Body> sheets = body.objects(LOTS);
        if (sheets.isEmpty()) {
            body.wrong(
                    "lots-missing", LOTS, "There is no lot to add.", "Give at least one: {\"lots\": [" + LOT + "]}.");
        }
        body.refuseIfAnyWrong();
        List<NewLot> read = new ArrayList<>();
        for (Body sheet : sheets) {
            read.add(read(sheet, List.of()));
        }
        return many(lots.add(read, call.request()));
    }

    private Reply change(Call call) throws Exception {
        Lot before = lot(call);
        Body body = call.body();
        int basedOn = call.basedOn(body, VERSION);
        NewLot wanted = read(body, List.of(VERSION));
        Changing<Lot> changing =
                lots.change(before.id(), basedOn, wanted.sheet().keeping(before.sheet()), call.request());
        if (changing instanceof Changing.Overtaken<Lot> overtaken) {
            throw Refused.overtaken(
                    "Somebody has changed this lot since; version "
                            + overtaken.current().version() + " is the latest.",
                    fields(new Lot(before.id(), basedOn, wanted.sheet(), wanted.left()), shelf()),
                    fields(overtaken.current(), shelf()));
        }
        return shown(((Changing.Changed<Lot>) changing).now());
    }

    private NewLot read(Body body, List<String> besides) {
        Map<String, String> typed = new LinkedHashMap<>();
        List<String> known = new ArrayList<>(besides);
        for (String key : LotKeys.ALL) {
            String name = Keys.SNAKE_CASE.name(key);
            known.add(name);
            @Nullable String text = body.text(name);
            if (text != null) {
                typed.put(key, text);
            }
        }
        known.remove(LotKeys.ID);
        body.knows(known).refuseIfAnyWrong();
        return understood(ReadLot.answer(typed, texts.ounce()));
    }

    /** Returns what was read; refuses what is wrong with it. */
    static <T> T understood(SheetReading<T> reading) {
        if (reading instanceof SheetReading.Refused<T> refused) {
            List<Finding> findings =
                    refused.problems().stream().map(SheetProblem::finding).toList();
            throw new Refused(Refused.IMPOSSIBLE, findings);
        }
        return ((SheetReading.Understood<T>) reading).value();
    }

    private Reply weigh(Call call) throws Exception {
        Lot lot = lot(call);
        Body body = call.body().knows(List.of("reading", "tare"));
        @Nullable
        String tare = body.has("tare") ? body.text("tare") : lot.sheet().tare();
        @Nullable String reading = body.text("reading");
        body.refuseIfAnyWrong();
        WeighLot.Weighed weighed = understood(WeighLot.answer(
                new ShelfLots(texts.ounce()).of(lot),
                tare == null ? "" : tare,
                reading == null ? "" : reading,
                texts.ounce()));
        lots.measured(lot.id(), weighed.left().amount(), "weighed", call.request());
        return shown(lot(call));
    }

    private Fields fields(Lot lot, Shelf shelf) {
        LotSheet sheet = lot.sheet();
        LotOnShelf it = new ShelfLots(texts.ounce()).of(lot);
        Ingredient ingredient = it.ingredient();
        List<Finding> stops = ingredient == null ? List.of() : ByName.stops(ingredient, shelf.grounds());
        Fields known = new Fields();
        sheet.fields().forEach((key, text) -> known.put(Keys.SNAKE_CASE.name(key), text));
        Fields fields = new Fields()
                .put("id", lot.id())
                .putCount(VERSION, lot.version())
                .put("name", sheet.name())
                .put("kind", sheet.kind())
                .put("fields", known)
                .put("label", sheet.label())
                .put("opened", sheet.opened() == null ? null : sheet.opened().toString());
        amount(fields, "left", Stock.isKnown(lot), lot.left());
        amount(fields, "full", sheet.full() > 0, sheet.full());
        fields.put("unit", sheet.unit());
        LotSheet.Origin origin = sheet.origin();
        if (origin == null) {
            fields.putNone("made_by");
        } else {
            fields.put(
                    "made_by",
                    new Fields()
                            .put("recipe", origin.recipe())
                            .putCount("revision", origin.revision())
                            .put("title", origin.title())
                            .put("on", origin.made().toString()));
        }
        return fields.put("tare", sheet.tare())
                .put("paid", sheet.paid())
                .put("supplier", sheet.supplier())
                .put("analysis", sheet.analysis())
                .put("analysis_findings", FindingFields.of(look(sheet)))
                .put("note", sheet.note())
                .put("photo", sheet.photo())
                .put("set_aside", sheet.setAside())
                .putTexts("easily_mistaken_for", Mistakable.with(it, shelf.lots()))
                .put("stops", FindingFields.of(stops));
    }

    private static List<Finding> look(LotSheet sheet) {
        return sheet.analysis() == null
                ? List.of()
                : ReadAnalysis.look(sheet.name(), OilAnalysis.read(sheet.analysis())).stream()
                        .map(LineProblem::finding)
                        .toList();
    }

    private static void amount(Fields fields, String key, boolean known, double amount) {
        if (known) {
            fields.put(key, amount);
        } else {
            fields.putNone(key);
        }
    }

    private static Schemas.Group sheet() {
        Schemas.Group group = Schemas.group();
        for (String key : LotKeys.ALL) {
            String name = Keys.SNAKE_CASE.name(key);
            if (key.equals(LotKeys.NAME) || key.equals(LotKeys.KIND)) {
                group.with(name, Schemas.text(""));
            } else if (!key.equals(LotKeys.ID)) {
                group.maybe(name, Schemas.typed(""));
            }
        }
        return group;
    }

    /** Returns the schemas of what these take and answer. */
    static Map<String, Object> components() {
        return Map.of(
                "LotSheet",
                sheet().schema(),
                "Lot",
                Schemas.group()
                        .with("id", Schemas.text(""))
                        .with(VERSION, Schemas.count("grows with each change of its sheet"))
                        .with("name", Schemas.text("recipes find it by this name"))
                        .with("kind", Schemas.text("of ingredient, as in a recipe file"))
                        .with("fields", Schemas.named(Schemas.text(""), "what it is known by, as typed"))
                        .with("label", Schemas.orNull(Schemas.text("what tells it from others of the same name")))
                        .with("opened", Schemas.orNull(Schemas.text("day, ISO 8601")))
                        .with(
                                "left",
                                Schemas.orNull(Schemas.number("how much is in it, in its unit; null when not known")))
                        .with("full", Schemas.orNull(Schemas.number("how much it held when full")))
                        .with("unit", Schemas.text("ml, g or pieces"))
                        .with(
                                "made_by",
                                Schemas.orNull(Schemas.group()
                                        .with("recipe", Schemas.text("id of the recipe that it was made by"))
                                        .with("revision", Schemas.count("of that recipe"))
                                        .with("title", Schemas.text("of that recipe"))
                                        .with("on", Schemas.text("day, ISO 8601"))
                                        .schema()))
                        .with("tare", Schemas.orNull(Schemas.text("weight of the empty vessel, as typed")))
                        .with("paid", Schemas.orNull(Schemas.text("price paid, as typed")))
                        .with("supplier", Schemas.orNull(Schemas.text("")))
                        .with("analysis", Schemas.orNull(Schemas.text("supplier's analysis, CSV as given")))
                        .with("analysis_findings", Schemas.list(Schemas.ref("Finding")))
                        .with("note", Schemas.orNull(Schemas.text("")))
                        .with("photo", Schemas.orNull(Schemas.text("id of its photo")))
                        .with("set_aside", Schemas.flag("whether it is not to be used"))
                        .with(
                                "easily_mistaken_for",
                                Schemas.list(Schemas.text("another dropper bottle whose name is alike")))
                        .with("stops", Schemas.list(Schemas.ref("Finding")))
                        .schema());
    }
}
