package org.stillroom.studio.web.shelf;

import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.usecase.left.Candidate;
import org.stillroom.studio.usecase.left.CouldMake;
import org.stillroom.studio.usecase.left.LeftOver;
import org.stillroom.studio.usecase.left.PlanUseUp;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;

/** What is left of everything that flavours, what could be made of it, and what uses several up together. */
final class LeftPages {
    private static final String MOST = "2 L";
    private static final String STRENGTH = "28 %";
    private static final String SUGAR = "200 g/L";

    private final Desk desk;

    LeftPages(Desk desk) {
        this.desk = desk;
    }

    void routes(Doors doors) {
        doors.get("/shelf/left", this::show).get("/shelf/left/use-up", this::useUp);
    }

    private void show(Visit visit) {
        List<LotOnShelf> shelf = desk.lots();
        List<LeftOver> left = left(shelf);
        String typed = orElse(visit.field("most"), MOST);
        Double most = millilitres(typed);
        if (most == null) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Grounds grounds = MakersGrounds.of(desk.store());
        CouldMake.Ranking ranking = most == null
                ? new CouldMake.Ranking(List.of(), List.of())
                : CouldMake.ranked(candidates(), left, shelf, most, grounds);
        visit.page(visit.words().say("left.title"), ShelfRoom.KEY)
                .style("shelf.css")
                .show(
                        "shelf/left.jte",
                        Map.of(
                                "view",
                                new LeftView(visit.words(), left, ranking, LeftOver.told(shelf, left, grounds)),
                                "most",
                                typed,
                                "wrong",
                                most == null));
    }

    private void useUp(Visit visit) {
        List<LeftOver> left = left(desk.lots());
        List<String> extracts = new ArrayList<>();
        for (String name : visit.context().queryParams("extract")) {
            String bound = visit.field(
                            "most-" + left.stream().map(LeftOver::name).toList().indexOf(name))
                    .strip();
            extracts.add(bound.isEmpty() ? name : name + "=" + bound);
        }
        PlanUseUp.Wish wish = new PlanUseUp.Wish(
                extracts,
                orElse(visit.field("strength"), STRENGTH),
                orElse(visit.field("sugar"), SUGAR),
                orElse(visit.field("most"), MOST));
        PlanUseUp.Outcome outcome =
                PlanUseUp.answer(wish, left, candidates(), desk.ounce(), MakersGrounds.of(desk.store()));
        List<Finding> problems = outcome instanceof PlanUseUp.Outcome.Refused refused ? refused.problems() : List.of();
        if (!problems.isEmpty()) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        visit.page(visit.words().say("left.useUpTitle"), ShelfRoom.KEY)
                .style("shelf.css")
                .show(
                        "shelf/useup.jte",
                        Map.of(
                                "view",
                                new UseUpView(
                                        visit.words(),
                                        outcome instanceof PlanUseUp.Outcome.Found found ? found : null,
                                        problems)));
    }

    private List<LeftOver> left(List<LotOnShelf> shelf) {
        return LeftOver.of(shelf, LocalDate.now(ZoneId.systemDefault()));
    }

    private List<Candidate> candidates() {
        return Candidate.all(desk.store().recipes(), desk.ounce());
    }

    private static String orElse(String typed, String usual) {
        return typed.isBlank() ? usual : typed.strip();
    }

    /** Returns the volume of a text in mL, or null when it is none above zero. */
    private @Nullable Double millilitres(String text) {
        Understanding<Volume> volume = new QuantityText(desk.ounce()).volume(text);
        return volume instanceof Understanding.Understood<Volume> understood
                        && understood.typed().value().millilitres() > 0.0
                ? understood.typed().value().millilitres()
                : null;
    }
}
