package org.stillroom.studio.web.settings;

import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.store.RuleBook;
import org.stillroom.studio.usecase.rules.WriteHouseRules;
import org.stillroom.studio.usecase.rules.WriteHouseRules.Outcome;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;

/** The rules of the house, one a line. */
final class HouseRulesPages {
    private final RuleBook book;

    HouseRulesPages(RuleBook book) {
        this.book = book;
    }

    void routes(Doors doors) {
        doors.get("/settings/house-rules", this::show).post("/settings/house-rules", this::write);
    }

    private void show(Visit visit) {
        RuleBook.House house = book.house();
        String said = visit.field("kept").equals("yes") ? visit.words().say("settings.houseKept") : "";
        show(visit, house.text(), house.version(), List.of(), "", said);
    }

    private void write(Visit visit) {
        String typed = visit.field("rules").replace("\r\n", "\n");
        String based = visit.field("version");
        int version = based.matches("\\d{1,9}") ? Integer.parseInt(based) : 0;
        Outcome outcome = WriteHouseRules.answer(book, typed, version, visit.request());
        if (outcome instanceof Outcome.Refused refused) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, typed, version, refused.problems(), "", "");
        } else if (outcome instanceof Outcome.Overtaken overtaken) {
            visit.context().status(HttpStatus.CONFLICT);
            show(
                    visit,
                    typed,
                    overtaken.current().version(),
                    List.of(),
                    overtaken.current().text(),
                    "");
        } else {
            visit.goOn("/settings/house-rules?kept=yes");
        }
    }

    /** @param theirs what somebody else wrote meanwhile, or empty */
    private static void show(
            Visit visit, String typed, int version, List<Finding> problems, String theirs, String said) {
        visit.page(visit.words().say("settings.house"), "settings")
                .style("shelf.css")
                .show(
                        "settings/house.jte",
                        Map.of(
                                "typed", typed,
                                "version", version,
                                "problems", problems,
                                "theirs", theirs,
                                "said", said));
    }
}
