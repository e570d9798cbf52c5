package org.stillroom.studio.web.api;

import static org.stillroom.studio.web.api.Operation.Method.GET;
import static org.stillroom.studio.web.api.Operation.Method.POST;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.safety.RuleChanges;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.RulesFields;
import org.stillroom.studio.store.RuleBook;
import org.stillroom.studio.usecase.rules.TakeRules;
import org.stillroom.studio.usecase.rules.TakenRules;

/** Tables of rules from signed-off files. */
final class RulesOperations {
    private static final String FILE = "file";
    private static final String VERSION = "version";
    private static final String EXAMPLE = """
            {"file": "# Table: duty\\n# Signed off by: T. Ester\\n# As of: 2026-10-31\\n# Source: made up\\n\
            country,above_pct_vol,up_to_pct_vol,per_litre_of_pure_alcohol,currency,as_of,note,status\\n\
            EU minimum,1.2,100,5.50,EUR,1992,member states charge more,read\\n"}
            """;

    private final RuleBook book;

    RulesOperations(RuleBook book) {
        this.book = book;
    }

    List<Operation> all() {
        return List.of(
                Operation.of(
                                GET,
                                "/rules",
                                "rules",
                                "Tables of rules that stand in place of shipped ones.",
                                call -> rules())
                        .answers(Schemas.group()
                                .with("taken", Schemas.list(Schemas.ref("RulesTaken")))
                                .with(VERSION, Schemas.count("grows with each that is taken or taken back"))
                                .schema()),
                Operation.of(
                                POST,
                                "/rules/preview",
                                "preview_rules",
                                "What a signed-off file would change, row by row; what is wrong with it is told by line.",
                                call -> preview(call.body().knows(List.of(FILE))))
                        .takes(
                                Schemas.question(Schemas.group()
                                        .with(FILE, Schemas.text("as in docs/rules-file.md"))
                                        .schema()),
                                EXAMPLE)
                        .answers(Schemas.ref("RulesChanges")),
                Operation.of(
                                POST,
                                "/rules",
                                "take_rules",
                                "Takes a signed-off file. A hard stop that it leaves out stays in force.",
                                this::take)
                        .takes(
                                Schemas.group()
                                        .with(FILE, Schemas.text("as in docs/rules-file.md"))
                                        .maybe(
                                                VERSION,
                                                Schemas.count(
                                                        "that its preview was of; refused where they changed since"))
                                        .schema(),
                                EXAMPLE)
                        .answers(Schemas.ref("RulesChanges")),
                Operation.of(
                                POST,
                                "/rules/take-back/{entry}",
                                "take_back_rules",
                                "Takes back a file that was taken; what was in force before it counts again.",
                                call -> RecipeOperations.done(book.takeBack(call.number("entry"), call.request())))
                        .answers(Schemas.ref("Done")));
    }

    private Reply rules() {
        return Reply.of(new Fields()
                .put(
                        "taken",
                        TakenRules.all(book).stream().map(RulesFields::taken).toList())
                .putCount(VERSION, book.tables().version()));
    }

    private Reply preview(Body body) {
        return shown(understood(text(body)));
    }

    private static String text(Body body) {
        @Nullable String text = body.text(FILE);
        if (text == null) {
            body.wrong("file-missing", FILE, "There is no file.", "Give its text.");
        }
        body.refuseIfAnyWrong();
        return String.valueOf(text);
    }

    private TakeRules.Preview understood(String text) {
        TakeRules.Preview preview = TakeRules.preview(book, text);
        if (!preview.problems().isEmpty()) {
            throw new Refused(Refused.IMPOSSIBLE, preview.problems());
        }
        return preview;
    }

    private static Reply shown(TakeRules.Preview preview) {
        @Nullable RuleChanges changes = preview.changes();
        Fields fields = changes == null ? new Fields() : RulesFields.changes(changes);
        return Reply.of(fields.putCount(VERSION, preview.version()));
    }

    private Reply take(Call call) throws Exception {
        Body body = call.body().knows(List.of(FILE, VERSION));
        @Nullable Long version = body.number(VERSION);
        String text = text(body);
        TakeRules.Preview preview = understood(text);
        int based = version == null ? preview.version() : version.intValue();
        if (!TakeRules.accept(book, text, based, call.request())) {
            throw new Refused(
                    Refused.OVERTAKEN,
                    "overtaken",
                    VERSION,
                    "The tables are not those of the preview any more; their version is " + preview.version() + ".",
                    "Look at a new preview, and send its version.");
        }
        return shown(preview);
    }

    /** Returns the schemas of what these answer. */
    static Map<String, Object> components() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put(
                "RulesEdition",
                Schemas.group()
                        .with("table", Schemas.text(""))
                        .with("as_of", Schemas.text("day of its figures"))
                        .with("signed_off_by", Schemas.text("who stands for it"))
                        .with("source", Schemas.text("where its figures are from"))
                        .schema());
        all.put(
                "RulesTaken",
                Schemas.group()
                        .with("entry", Schemas.count("id of the entry in the history; taking it back names it"))
                        .with("taken", Schemas.text("when, ISO 8601"))
                        .with("edition", Schemas.either(Schemas.ref("RulesEdition"), Map.of("type", "null")))
                        .schema());
        Map<String, Object> difference = Schemas.group()
                .with("column", Schemas.text(""))
                .with("before", Schemas.text(""))
                .with("after", Schemas.text(""))
                .schema();
        Map<String, Object> row = Schemas.group()
                .with(
                        "fate",
                        Schemas.text("added, changed, removed or kept: a hard stop that the file would take away"))
                .with("about", Schemas.text(""))
                .with("line", Schemas.count("of the file; 0 where it does not have it"))
                .with("less_cautious", Schemas.flag("whether less would be forbidden or warned of than now"))
                .with("differences", Schemas.list(difference))
                .schema();
        all.put(
                "RulesChanges",
                Schemas.group()
                        .with("edition", Schemas.ref("RulesEdition"))
                        .with("asked", Schemas.list(Schemas.text("what to ask about its day")))
                        .with("rows", Schemas.list(row))
                        .with("same", Schemas.count("rows that stay as they are"))
                        .with("loud", Schemas.count("rows that are less cautious, or stops that are kept"))
                        .with(VERSION, Schemas.count("of the tables that it would change"))
                        .schema());
        return all;
    }
}
