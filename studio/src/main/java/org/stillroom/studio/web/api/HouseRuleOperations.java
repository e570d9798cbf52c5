package org.stillroom.studio.web.api;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.store.RuleBook;
import org.stillroom.studio.usecase.rules.WriteHouseRules;
import org.stillroom.studio.usecase.rules.WriteHouseRules.Outcome;

/** The rules of the house. */
final class HouseRuleOperations {
    private static final String RULES = "rules";
    private static final String VERSION = "version";
    private static final String PATH = "/house-rules";

    private final RuleBook book;

    HouseRuleOperations(RuleBook book) {
        this.book = book;
    }

    List<Operation> all() {
        Map<String, Object> house = Schemas.ref("HouseRules");
        return List.of(
                Operation.of(
                                Operation.Method.GET,
                                PATH,
                                "house_rules",
                                "The rules of the house, to which every drink of this studio is held besides law.",
                                call -> shown(book.house()))
                        .answers(house),
                Operation.of(
                                Operation.Method.PUT,
                                PATH,
                                "write_house_rules",
                                "Writes the rules of the house anew; anything wrong in them is told by line and changes nothing.",
                                this::write)
                        .takes(
                                Schemas.group()
                                        .with(RULES, Schemas.text("one a line, as in docs/house-rules.md"))
                                        .maybe(
                                                VERSION,
                                                Schemas.count(
                                                        "that the change is based on, where If-Match is not sent"))
                                        .schema(),
                                "{\"rules\": \"no tonka\\nat most 20 mg/L thujone\\nat most 0.6 g/L oil\"}")
                        .basedOn(VERSION)
                        .answers(house));
    }

    private Reply write(Call call) throws Exception {
        Body body = call.body().knows(List.of(RULES, VERSION));
        int basedOn = call.basedOn(body, VERSION);
        @Nullable String text = body.text(RULES);
        if (text == null) {
            body.wrong("rules-missing", RULES, "There are no rules.", "Give them as a text; an empty one has none.");
        }
        body.refuseIfAnyWrong();
        String wanted = String.valueOf(text);
        Outcome outcome = WriteHouseRules.answer(book, wanted, basedOn, call.request());
        if (outcome instanceof Outcome.Refused refused) {
            throw new Refused(Refused.IMPOSSIBLE, refused.problems());
        }
        if (outcome instanceof Outcome.Overtaken overtaken) {
            throw Refused.overtaken(
                    "Somebody has written the house rules since; version "
                            + overtaken.current().version() + " is the latest.",
                    fields(new RuleBook.House(wanted, basedOn)),
                    fields(overtaken.current()));
        }
        return shown(((Outcome.Written) outcome).now());
    }

    private static Reply shown(RuleBook.House house) {
        return Reply.of(fields(house)).version(house.version());
    }

    private static Fields fields(RuleBook.House house) {
        return new Fields().put(RULES, house.text()).putCount(VERSION, house.version());
    }

    /** Returns the schemas of what these answer. */
    static Map<String, Object> components() {
        return Map.of(
                "HouseRules",
                Schemas.group()
                        .with(RULES, Schemas.text("one a line"))
                        .with(VERSION, Schemas.count("how often they were written"))
                        .schema());
    }
}
