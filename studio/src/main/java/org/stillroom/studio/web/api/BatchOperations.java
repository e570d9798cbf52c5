package org.stillroom.studio.web.api;

import static org.stillroom.studio.web.api.Operation.Method.GET;
import static org.stillroom.studio.web.api.Operation.Method.POST;

import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.studio.answer.BatchFields;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.batch.LogBatch;
import org.stillroom.studio.usecase.batch.LogBatch.Act;
import org.stillroom.studio.usecase.batch.PlanBottling;
import org.stillroom.studio.usecase.batch.RecordBatch;
import org.stillroom.studio.usecase.batch.RecordBatch.Outcome;
import org.stillroom.studio.usecase.batch.RecordRest;
import org.stillroom.studio.usecase.batch.ShowBatch;

/** Batches after their make: their log, what waits, and how to bottle them. */
final class BatchOperations {
    private static final String ACT = "act";
    private static final String DAYS = "days";
    private static final String SIZES = "sizes";
    private static final String EACH = "each";
    private static final List<String> BOTTLING = List.of("vessel", SIZES, EACH, "filter", "temperature");
    private static final String BOTTLE_COUNTED = "bottle_counted";
    private static final String EMPTY_TOO = "whether the cost counts the empty bottle and its label too";
    private static final List<String> OF_SIZE = List.of("size", "count", "brim", "lot");

    private final Store store;
    private final ShowBatch show;
    private final LogBatch log;
    private final RecordBatch record;
    private final RecordRest rest;

    BatchOperations(Store store) {
        Clock clock = Clock.system(ZoneId.systemDefault());
        this.store = store;
        this.show = new ShowBatch(store, clock);
        this.log = new LogBatch(store, clock);
        this.record = new RecordBatch(store, clock);
        this.rest = new RecordRest(store, clock);
    }

    List<Operation> all() {
        Map<String, Object> one = Schemas.ref("BatchNow");
        return List.of(
                Operation.of(GET, "/batches", "batches", "All batches with what is in them, latest first.", this::list)
                        .answers(Schemas.group()
                                .with("batches", Schemas.list(Schemas.ref("BatchHead")))
                                .schema()),
                Operation.of(
                                GET,
                                "/batches/{batch}",
                                "batch",
                                "One batch, by its id or its number: what is in its vessels, its log, what waits.",
                                call -> shown(kept(call)))
                        .answers(one),
                Operation.of(
                                POST,
                                "/batches/{batch}/log",
                                "log_batch",
                                "Writes down what was done with a batch; what cannot have happened is refused.",
                                this::log)
                        .takes(entry(), "{\"act\": \"measured\", \"strength\": \"27.4 %\", \"sugar\": \"182 g/L\"}")
                        .answers(one),
                Operation.of(
                                POST,
                                "/batches/{batch}/take-back/{entry}",
                                "take_back",
                                "Takes an entry of the log back by one of its own.",
                                call -> answered(
                                        kept(call), record.undone(kept(call), call.number("entry"), call.request())))
                        .answers(one),
                Operation.of(
                                POST,
                                "/batches/{batch}/bottling",
                                "plan_bottling",
                                "How many of which bottles a vessel fills, how full, and what one has cost.",
                                this::bottling)
                        .takes(
                                bottling(),
                                "{\"sizes\": [{\"size\": \"200 ml\", \"count\": 2}, {\"size\": \"100 ml\"}],"
                                        + " \"temperature\": \"18 C\"}")
                        .answers(Schemas.ref("Bottling")),
                Operation.of(GET, "/rest", "rest", "What waits in all batches, by day.", call -> rests())
                        .answers(Schemas.ref("Rest")),
                Operation.of(
                                POST,
                                "/rest/{wait}/done",
                                "rest_done",
                                "Notes that something that waited was seen to.",
                                call -> {
                                    rest.waited(wait(call), call.request());
                                    return rests();
                                })
                        .answers(Schemas.ref("Rest")),
                Operation.of(
                                POST,
                                "/rest/{wait}/postpone",
                                "rest_postpone",
                                "Lets something wait for longer.",
                                this::postpone)
                        .takes(
                                Schemas.group()
                                        .with(DAYS, Schemas.typed("for how much longer, such as 7 days"))
                                        .schema(),
                                "{\"days\": \"7 days\"}")
                        .answers(Schemas.ref("Rest")));
    }

    private Batch kept(Call call) {
        return show.kept(call.part("batch"));
    }

    private Reply list(Call call) {
        return Reply.of(BatchFields.list(
                "batches", show.all().stream().map(BatchFields::head).toList()));
    }

    private Reply shown(Batch batch) {
        return Reply.of(BatchFields.whole(show.one(batch.id())));
    }

    private Reply rests() {
        return Reply.of(BatchFields.list(
                "rest", show.rests().stream().map(BatchFields::rests).toList()));
    }

    private Reply answered(Batch batch, Outcome outcome) {
        refuse(outcome);
        return shown(batch);
    }

    private static void refuse(Outcome outcome) {
        if (outcome instanceof Outcome.NotKept not) {
            throw new Refused(Refused.IMPOSSIBLE, not.problems());
        }
    }

    private Reply log(Call call) throws Exception {
        Batch batch = kept(call);
        Body body = call.body();
        Act act = act(body);
        List<String> known = new ArrayList<>(act.fields());
        known.add(ACT);
        body.knows(known);
        Map<String, String> typed = texts(body, act.fields());
        body.refuseIfAnyWrong();
        return answered(batch, log.written(batch, act, typed, call.request()));
    }

    private static Act act(Body body) {
        String word = body.text(ACT);
        Act act = Act.of(word == null ? "" : word).orElse(null);
        if (act == null) {
            body.wrong(
                    "wrong-input",
                    ACT,
                    "\"" + word + "\" is nothing that can be written of a batch.",
                    "Write one of: " + acts() + ".");
            body.refuseIfAnyWrong();
            throw new IllegalStateException("a wrong word is refused");
        }
        return act;
    }

    private static String acts() {
        return String.join(", ", Arrays.stream(Act.values()).map(Act::word).toList());
    }

    private static Map<String, String> texts(Body body, List<String> fields) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String field : fields) {
            String text = body.text(field);
            if (text != null) {
                typed.put(field, text);
            }
        }
        return typed;
    }

    private Reply bottling(Call call) throws Exception {
        Body body = call.body().knows(BOTTLING);
        Map<String, String> typed = texts(body, List.of("vessel", "filter", "temperature"));
        typed.put(EACH, String.join(";", body.texts(EACH)));
        List<Body> sizes = body.objects(SIZES);
        if (sizes.size() > PlanBottling.SIZES) {
            body.wrong(
                    "too-many-sizes",
                    SIZES,
                    "That are " + sizes.size() + " sizes.",
                    "Name up to " + PlanBottling.SIZES + " at once.");
        }
        body.refuseIfAnyWrong();
        for (int i = 0; i < sizes.size(); i++) {
            Body size = sizes.get(i).knows(OF_SIZE);
            int row = i + 1;
            texts(size, OF_SIZE).forEach((field, text) -> typed.put(field + row, text));
            size.refuseIfAnyWrong();
        }
        Book book = Book.open(store);
        Batch batch = kept(call);
        typed.computeIfAbsent("vessel", field -> log.onlyVessel(batch).orElse(""));
        PlanBottling.Answer answer = new PlanBottling(store).answer(book, batch, typed);
        PlanBottling.Found found = answer.found();
        if (found == null) {
            throw new Refused(Refused.IMPOSSIBLE, answer.problems());
        }
        return Reply.of(BatchFields.bottles(found));
    }

    /** What the rest of a recipe waits for has a number below zero. */
    private static long wait(Call call) {
        String text = call.part("wait");
        if (!text.matches("-?\\d{1,18}")) {
            throw Refused.notFound("\"" + text + "\" is no number of something that waits.");
        }
        return Long.parseLong(text);
    }

    private Reply postpone(Call call) throws Exception {
        Body body = call.body().knows(List.of(DAYS));
        Map<String, String> typed = texts(body, List.of(DAYS));
        body.refuseIfAnyWrong();
        refuse(rest.postponed(wait(call), typed, call.request()));
        return rests();
    }

    private static Map<String, Object> entry() {
        Schemas.Group group = Schemas.group().with(ACT, Schemas.text("what was done: " + acts()));
        Set<String> fields = new LinkedHashSet<>();
        Arrays.stream(Act.values()).forEach(act -> fields.addAll(act.fields()));
        for (String field : fields) {
            String of = String.join(
                    ", ",
                    Arrays.stream(Act.values())
                            .filter(act -> act.fields().contains(field))
                            .map(Act::word)
                            .toList());
            group.maybe(field, Schemas.typed("of: " + of));
        }
        return group.schema();
    }

    private static Map<String, Object> bottling() {
        return Schemas.group()
                .maybe("vessel", Schemas.text("which, where something is in several"))
                .with(
                        SIZES,
                        Schemas.list(Schemas.group()
                                .maybe("size", Schemas.typed("of a bottle, such as 350 ml; a lot knows it"))
                                .maybe("count", Schemas.typed("how many there are"))
                                .maybe("brim", Schemas.typed("what it holds to the brim"))
                                .maybe("lot", Schemas.text("id of the empty bottles of the shelf that they come from"))
                                .schema()))
                .maybe(EACH, Schemas.list(Schemas.text("id of labels or stoppers of the shelf; each bottle gets one")))
                .maybe("filter", Schemas.typed("what is lost on the way, such as 20 ml"))
                .maybe("temperature", Schemas.typed("at which they are filled, such as 18 C"))
                .schema();
    }

    /** Returns the schemas of what these answer. */
    static Map<String, Object> components() {
        Map<String, Object> components = new LinkedHashMap<>();
        components.put("BatchHead", head(vessel()).schema());
        components.put(
                "BatchNow",
                head(keeps(vessel()))
                        .with("log", Schemas.list(line()))
                        .with("waits", Schemas.list(waiting().schema()))
                        .with(
                                "bottles",
                                Schemas.list(keeps(money(Schemas.group()
                                                .with("first", Schemas.count("number of the first"))
                                                .with("last", Schemas.count("number of the last"))
                                                .with("each_ml", Schemas.number("mL"))
                                                .with("strength_vol_percent", Schemas.number("% vol at 20 °C"))
                                                .with("at", Schemas.text("when, ISO 8601"))
                                                .with("ph", ph())
                                                .with("analysed", analysed())
                                                .with("pasteurised", Schemas.orNull(Schemas.text("when, ISO 8601")))))
                                        .with(BOTTLE_COUNTED, Schemas.flag(EMPTY_TOO))
                                        .schema()))
                        .schema());
        components.put(
                "Rest",
                Schemas.group()
                        .with(
                                "rest",
                                Schemas.list(waiting()
                                        .with("batch", Schemas.orNull(Schemas.text("id; null of what is being made")))
                                        .with("number", Schemas.orNull(Schemas.count("of the batch")))
                                        .with("make", Schemas.orNull(Schemas.text("id of what is being made")))
                                        .with("title", Schemas.text("of what was or is made"))
                                        .with("due", Schemas.flag("whether it is ready"))
                                        .schema()))
                        .schema());
        components.put("Bottling", bottles());
        components.put("WentIn", wentIn());
        return components;
    }

    private static Map<String, Object> ph() {
        return Schemas.orNull(Schemas.number("as measured since anything came to it; null where not known"));
    }

    private static Map<String, Object> analysed() {
        return Schemas.orNull(Schemas.text(
                "what a laboratory found since anything came to it, as it is typed; null where none looked"));
    }

    private static Schemas.Group keeps(Schemas.Group group) {
        return group.with("keeping_known", Schemas.flag("whether what is in it is known"))
                .with("keeping", Schemas.either(Schemas.ref("Keeping"), Schemas.of("null", "where that is not known")))
                .with("findings", Schemas.list(Schemas.ref("Finding")));
    }

    private static Schemas.Group vessel() {
        return money(Schemas.group()
                .with("vessel", Schemas.text("what it is called"))
                .with("mass_g", Schemas.number("g"))
                .with("volume_20c_ml", Schemas.number("mL at 20 °C"))
                .with("strength_vol_percent", Schemas.number("% vol at 20 °C"))
                .with("sugar_g_per_l", Schemas.number("g/L at 20 °C"))
                .with("acidity_as_citric_g_per_l", Schemas.number("g/L at 20 °C, as citric"))
                .with("ph", ph())
                .with("analysed", analysed())
                .with("mean_age_days", Schemas.orNull(Schemas.number("by its alcohol")))
                .with("youngest_days", Schemas.orNull(Schemas.number("of its youngest alcohol")))
                .with("doubt", doubt()));
    }

    private static Schemas.Group head(Schemas.Group vessel) {
        return Schemas.group()
                .with("id", Schemas.text(""))
                .with("number", Schemas.count("1 for the first batch of the studio"))
                .with("title", Schemas.text("of what was made"))
                .with("recipe", Schemas.text("id of the recipe"))
                .with("make", Schemas.text("id of the make"))
                .with("made", Schemas.text("when, ISO 8601"))
                .with("went_in", Schemas.ref("WentIn"))
                .with("vessels", Schemas.list(vessel.schema()));
    }

    private static Map<String, Object> wentIn() {
        Map<String, Object> lots = Schemas.list(Schemas.group()
                .with("lot", Schemas.text("id"))
                .with("label", Schemas.orNull(Schemas.text("what tells it from others of the same name")))
                .with("amount", Schemas.number("in the unit"))
                .with("unit", Schemas.text("ml, g or pieces"))
                .schema());
        return Schemas.group()
                .with("revision", Schemas.count("of the recipe"))
                .with("volume_20c_ml", Schemas.number("mL at 20 °C when it was finished"))
                .with("strength_vol_percent", Schemas.number("% vol at 20 °C"))
                .with("sugar_g_per_l", Schemas.number("g/L at 20 °C"))
                .with("density_kg_m3", Schemas.number("kg/m³ at 20 °C"))
                .with(
                        "lines",
                        Schemas.list(Schemas.group()
                                .with("part", Schemas.text("title of the stage or recipe that it belongs to"))
                                .with("name", Schemas.text("of the ingredient"))
                                .with("mass_g", Schemas.number("g that went in"))
                                .with("planned_g", Schemas.number("g before anything was poured"))
                                .with("lots", lots)
                                .with("not_on_shelf_g", Schemas.number("g more than its lots held"))
                                .schema()))
                .with("notes", Schemas.list(Schemas.text("what the maker noted")))
                .schema();
    }

    private static Map<String, Object> doubt() {
        Schemas.Group group = Schemas.group();
        for (String key :
                List.of("volume_20c_ml", "strength_vol_percent", "sugar_g_per_l", "acidity_as_citric_g_per_l")) {
            group.with(key, Schemas.orNull(Schemas.number("half-width of the central 90 %")));
        }
        return group.schema();
    }

    private static Schemas.Group money(Schemas.Group group) {
        return group.with(
                        "cost",
                        Schemas.list(Schemas.group()
                                .with("amount", Schemas.number(""))
                                .with("currency", Schemas.text(""))
                                .schema()))
                .with("cost_known", Schemas.flag("whether every price was known"));
    }

    private static Map<String, Object> line() {
        return Schemas.group()
                .with("entry", Schemas.count("later ones have higher ones"))
                .with("at", Schemas.text("when it happened, ISO 8601"))
                .with("kind", Schemas.text("what happened"))
                .with("told", Schemas.text("that in a sentence"))
                .with("typed", Schemas.named(Schemas.text(""), "as typed"))
                .with("undone", Schemas.flag("whether it was taken back"))
                .with("undoes", Schemas.orNull(Schemas.count("the entry that it takes back")))
                .schema();
    }

    private static Schemas.Group waiting() {
        return Schemas.group()
                .with("wait", Schemas.count("its number; below zero for the rest that a recipe asks for"))
                .with("what", Schemas.text("macerating, clearing, marrying, ageing or other"))
                .with("from", Schemas.text("day"))
                .with("until", Schemas.text("day"))
                .with("note", Schemas.text("the maker's own words"));
    }

    private static Map<String, Object> bottles() {
        return Schemas.group()
                .with("fills", Schemas.text("as the log takes them for what was bottled"))
                .with("first", Schemas.count("number of the first bottle"))
                .with(
                        "full",
                        Schemas.list(Schemas.group()
                                .with("count", Schemas.count("how many"))
                                .with("each_ml", Schemas.number("mL"))
                                .schema()))
                .with(
                        "last",
                        Schemas.orNull(Schemas.group()
                                .with("size_ml", Schemas.number("mL"))
                                .with("filled_ml", Schemas.number("mL"))
                                .schema()))
                .with("unfilled_ml", Schemas.number("mL that no bottle takes"))
                .with("part_of_batch", Schemas.number("of all that came into the batch, 0 to 1"))
                .with(
                        SIZES,
                        Schemas.list(money(Schemas.group()
                                        .with("size_ml", Schemas.number("mL"))
                                        .with("fill_to_ml", Schemas.number("mL at the temperature of filling"))
                                        .with("at_40c_ml", Schemas.number("mL that it takes at 40 °C"))
                                        .with(
                                                "full_at_c",
                                                Schemas.orNull(Schemas.number("°C at which it is full to the brim"))))
                                .with(BOTTLE_COUNTED, Schemas.flag(EMPTY_TOO))
                                .schema()))
                .with("lots", Schemas.text("what the shelf gives, as the log takes it for what was bottled"))
                .schema();
    }
}
