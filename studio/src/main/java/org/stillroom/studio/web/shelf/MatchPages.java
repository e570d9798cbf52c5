package org.stillroom.studio.web.shelf;

import java.util.List;
import java.util.stream.Collectors;
import org.stillroom.studio.answer.desk.DeskQuestions;
import org.stillroom.studio.usecase.MatchOils;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.web.tables.AskingPage;

/** Which oils of the shelf come nearest to one that is not there. */
final class MatchPages {
    private final Desk desk;

    MatchPages(Desk desk) {
        this.desk = desk;
    }

    void routes(Doors doors) {
        doors.get("/shelf/match", this::show);
    }

    private void show(Visit visit) {
        List<MatchOils.Bottle> bottles = MatchOils.Bottle.of(desk.lots());
        String names = bottles.stream().map(MatchOils.Bottle::name).distinct().collect(Collectors.joining(", "));
        AskingPage.show(
                visit,
                DeskQuestions.matching(bottles, MakersGrounds.of(desk.store())),
                new AskingPage.Place(
                        ShelfRoom.KEY,
                        "/shelf/match",
                        "/shelf",
                        visit.words().say("shelf.back"),
                        visit.words().say(names.isEmpty() ? "left.matchNone" : "left.matchLead", names)));
    }
}
