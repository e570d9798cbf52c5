package org.stillroom.studio.web.api;

import static org.stillroom.studio.web.api.Operation.Method.GET;
import static org.stillroom.studio.web.api.Operation.Method.POST;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.LeftoversFields;
import org.stillroom.studio.answer.desk.CorrectQuestion;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.DeskQuestions;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.MatchOils;
import org.stillroom.studio.usecase.left.Candidate;
import org.stillroom.studio.usecase.left.CouldMake;
import org.stillroom.studio.usecase.left.LeftOver;
import org.stillroom.studio.usecase.left.PlanUseUp;
import org.stillroom.studio.usecase.left.ShelfAdditions;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.ReadShelf;
import org.stillroom.studio.usecase.shelf.ShelfLots;

/** What is left on the shelf, what could be made of it, and what uses several bottles up together. */
final class LeftoverOperations {
    private static final String MOST = "most";
    private static final String EXTRACTS = "extracts";
    private static final String STRENGTH = "strength";
    private static final String SUGAR = "sugar";
    private static final String SHELF = "shelf";
    private static final String USUAL_MOST = "2 L";

    private static final String EXAMPLE = """
            {"extracts": ["bay tincture=20 ml/L", "quince macerate"],
             "strength": "28 %", "sugar": "200 g/L", "most": "3 L",
             "shelf": "name;kind;strength;left\\nbay tincture;tincture;70 %;40 ml\\nquince macerate;macerate;45 %;300 ml"}
            """;

    private final Store store;
    private final RecipeTexts texts;

    LeftoverOperations(Store store, RecipeTexts texts) {
        this.store = store;
        this.texts = texts;
    }

    List<Operation> all() {
        Map<String, Object> rows = Schemas.list(Schemas.named(Map.of(), "one row"));
        return List.of(
                match(),
                correct(),
                Operation.of(
                                GET,
                                "/leftovers",
                                "leftovers",
                                "What is left of everything that flavours, how it keeps, and what could be made of it.",
                                this::leftovers)
                        .query(MOST, "of a liqueur at most, such as 2 L")
                        .answers(Schemas.group()
                                .with("left", rows)
                                .with("could_make", rows)
                                .with("not_planned", rows)
                                .with("findings", Schemas.list(Schemas.ref("Finding")))
                                .schema()),
                Operation.of(
                                POST,
                                "/use-up",
                                "use_up",
                                "A liqueur that uses up one to three extracts of the shelf together.",
                                call -> useUp(call.body()))
                        .takes(
                                Schemas.question(Schemas.group()
                                        .with(
                                                EXTRACTS,
                                                Schemas.list(Schemas.text(
                                                        "its name, or NAME=DOSE with the most that a litre may hold")))
                                        .with(STRENGTH, Schemas.typed("of the liqueur, such as 28 %"))
                                        .with(SUGAR, Schemas.typed("of the liqueur, such as 200 g/L"))
                                        .maybe(MOST, Schemas.typed("of it at most (default: " + USUAL_MOST + ")"))
                                        .maybe(
                                                SHELF,
                                                Schemas.text("a table of bottles in place of the studio's own shelf"))
                                        .schema()),
                                EXAMPLE)
                        .answers(Schemas.group()
                                .with("makes_ml", Schemas.number("mL at 20 °C"))
                                .with("all_used", Schemas.flag("whether nothing of the extracts is left"))
                                .with("bottles_emptied", Schemas.number("parts of bottles counted as parts"))
                                .with("used", rows)
                                .with("plan", Schemas.named(Map.of(), "the plan, as the command plan answers it"))
                                .with("recipe", Schemas.text("the recipe file to make it by"))
                                .with("findings", Schemas.list(Schemas.ref("Finding")))
                                .schema()));
    }

    /** The question as at the desk, with the oils of the shelf besides those that are named. */
    private Operation match() {
        return ofShelf(
                "/lots/match",
                "match_lots",
                "Which oils of the shelf come nearest to one that is not there, and in what amounts.",
                DeskQuestions.matching(List.of(), Grounds.SHIPPED),
                () -> DeskQuestions.matching(MatchOils.Bottle.of(shelf(null)), MakersGrounds.of(store)));
    }

    /** The question as at the desk, with only what is on the shelf as one of the ways. */
    private Operation correct() {
        return ofShelf(
                "/lots/correct",
                "correct_from_shelf",
                "What to add to a batch so that it comes to its target, also with only what is on the shelf.",
                new CorrectQuestion(null),
                () -> new CorrectQuestion(new ShelfAdditions(shelf(null))));
    }

    private static Operation ofShelf(
            String path, String name, String summary, DeskQuestion desk, Supplier<DeskQuestion> withShelf) {
        return Operation.of(POST, path, name, summary, call -> DeskOperations.answer(withShelf.get(), call.body()))
                .takes(
                        Schemas.question(Schemas.parts(desk.parts())
                                .maybe(DeskOperations.EXPLAIN, Schemas.flag("answer with each step and its source"))
                                .schema()),
                        DeskOperations.example(desk))
                .answers(DeskOperations.told(desk));
    }

    private Reply leftovers(Call call) {
        String most = call.query(MOST).isBlank() ? USUAL_MOST : call.query(MOST);
        List<LotOnShelf> shelf = shelf(null);
        List<LeftOver> left = LeftOver.of(shelf, today());
        Grounds grounds = texts.grounds();
        return Reply.of(LeftoversFields.of(
                left,
                CouldMake.ranked(candidates(), left, shelf, millilitres(most), grounds),
                LeftOver.told(shelf, left, grounds)));
    }

    private double millilitres(String text) {
        if (new QuantityText(texts.ounce()).volume(text) instanceof Understanding.Understood<Volume> understood
                && understood.typed().value().millilitres() > 0.0) {
            return understood.typed().value().millilitres();
        }
        throw new Refused(Refused.UNREADABLE, "most", MOST, "\"" + text + "\" is no volume.", "Write it such as 2 L.");
    }

    private Reply useUp(Body body) {
        body.knows(List.of(EXTRACTS, STRENGTH, SUGAR, MOST, SHELF));
        PlanUseUp.Wish wish = new PlanUseUp.Wish(
                body.texts(EXTRACTS), text(body, STRENGTH, ""), text(body, SUGAR, ""), text(body, MOST, USUAL_MOST));
        String table = body.text(SHELF);
        body.refuseIfAnyWrong();
        List<LotOnShelf> shelf = shelf(table);
        PlanUseUp.Outcome outcome = PlanUseUp.answer(
                wish,
                LeftOver.of(shelf, today()),
                candidates(),
                texts.ounce(),
                MakersGrounds.of(store, shelf.stream().map(LotOnShelf::lot).toList()));
        if (outcome instanceof PlanUseUp.Outcome.Refused refused) {
            throw new Refused(Refused.IMPOSSIBLE, refused.problems());
        }
        return Reply.of(LeftoversFields.of((PlanUseUp.Outcome.Found) outcome));
    }

    private static String text(Body body, String key, String usual) {
        return Objects.requireNonNullElse(body.text(key), usual);
    }

    private List<LotOnShelf> shelf(@Nullable String table) {
        if (table == null) {
            return new ShelfLots(texts.ounce()).of(store.lots().all());
        }
        ReadShelf.Outcome read = ReadShelf.answer(table, texts.ounce());
        if (!read.problems().isEmpty()) {
            throw new Refused(Refused.IMPOSSIBLE, read.problems());
        }
        return read.lots();
    }

    private List<Candidate> candidates() {
        return Candidate.all(store.recipes(), texts.ounce());
    }

    private static LocalDate today() {
        return LocalDate.now(ZoneId.systemDefault());
    }
}
