package org.stillroom.studio.web.settings;

import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.RuleBook;
import org.stillroom.studio.usecase.rules.TakeRules;
import org.stillroom.studio.usecase.rules.TakenRules;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;

/** Tables of rules from signed-off files: what one would change, what is in force, and taking it back. */
final class RulesPages {
    private final RuleBook book;

    RulesPages(RuleBook book) {
        this.book = book;
    }

    void routes(Doors doors) {
        doors.get("/settings/rules", visit -> show(visit, "", null, ""))
                .post("/settings/rules", this::preview)
                .post("/settings/rules/take", this::take)
                .post("/settings/rules/take-back", this::takeBack);
    }

    private void show(Visit visit, String file, TakeRules.@Nullable Preview preview, String said) {
        Map<String, Object> model = new HashMap<>();
        model.put("file", file);
        model.put("preview", preview);
        model.put("said", said);
        model.put("rows", TakenRules.all(book));
        visit.page(visit.words().say("settings.rules"), "settings")
                .style("shelf.css")
                .show("settings/rules.jte", model);
    }

    private void preview(Visit visit) {
        String file = visit.field("file").replace("\r\n", "\n");
        TakeRules.Preview preview = TakeRules.preview(book, file);
        if (!preview.problems().isEmpty()) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        show(visit, file, preview, "");
    }

    private void take(Visit visit) {
        String file = visit.field("file").replace("\r\n", "\n");
        String based = visit.field("version");
        boolean taken =
                based.matches("\\d{1,9}") && TakeRules.accept(book, file, Integer.parseInt(based), visit.request());
        if (taken) {
            visit.goOn("/settings/rules");
            return;
        }
        visit.context().status(HttpStatus.CONFLICT);
        show(visit, file, TakeRules.preview(book, file), visit.words().say("settings.rulesOvertaken"));
    }

    private void takeBack(Visit visit) {
        String entry = visit.field("entry");
        if (!entry.matches("\\d{1,18}")) {
            throw new MissingException("there is no such entry");
        }
        book.takeBack(Long.parseLong(entry), visit.request());
        visit.goOn("/settings/rules");
    }
}
