package org.stillroom.studio.web.shelf;

import io.javalin.http.HttpStatus;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.shelffile.LotKeys;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Lots.NewLot;
import org.stillroom.studio.usecase.shelf.ReadLot;
import org.stillroom.studio.usecase.shelf.ShelfBoard;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.usecase.shelf.StarterBottles;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;

/** Puts a bottle or jar on the shelf: by kind, or one that needs no description. */
public final class PutPages {
    private final Desk desk;

    PutPages(Desk desk) {
        this.desk = desk;
    }

    void routes(Doors doors) {
        doors.get("/shelf/put", this::choose)
                .get("/shelf/put/{kind}", this::form)
                .post("/shelf/put", this::put)
                .post("/shelf/put-generic", this::putGeneric);
    }

    /** A kind to choose, on its board. */
    public record KindChoice(String board, List<Choice> kinds) {}

    /** A kind and what it is called. */
    public record Choice(String key, String name) {}

    private void choose(Visit visit) {
        Shown shown = new Shown(visit.words());
        List<KindChoice> choices = Arrays.stream(ShelfBoard.values())
                .map(board -> new KindChoice(
                        visit.words().say("shelf.board." + board.key()),
                        board.kinds().stream()
                                .map(kind -> new Choice(kind.replace(' ', '-'), shown.kind(kind)))
                                .toList()))
                .toList();
        visit.page(visit.words().say("shelf.put"), ShelfRoom.KEY)
                .style("shelf.css")
                .show(
                        "shelf/choose.jte",
                        Map.of(
                                "choices",
                                choices,
                                "spirits",
                                StarterBottles.spirits(),
                                "others",
                                StarterBottles.others()));
    }

    private void form(Visit visit) {
        String label = visit.part("kind").replace('-', ' ');
        if (!ShelfLots.kinds().contains(label)) {
            visit.notFound();
            return;
        }
        show(visit, Map.of(LotKeys.KIND, label), List.of());
    }

    private void show(Visit visit, Map<String, String> typed, List<SheetProblem> problems) {
        LotForm form = LotForm.of(typed, problems, visit.words());
        visit.page(visit.words().say("shelf.putKind", form.kindName()), ShelfRoom.KEY)
                .style("shelf.css")
                .script("shelf.js")
                .show("shelf/put.jte", Map.of("form", form));
    }

    private void put(Visit visit) {
        Map<String, String> typed = LotForm.sent(visit);
        SheetReading<NewLot> reading = ReadLot.answer(typed, desk.ounce());
        if (reading instanceof SheetReading.Refused<NewLot> refused) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, typed, refused.problems());
            return;
        }
        add(visit, ((SheetReading.Understood<NewLot>) reading).value());
    }

    private void add(Visit visit, NewLot lot) {
        Lot added = desk.store().lots().add(List.of(lot), visit.request()).get(0);
        boolean toCompose = visit.field("then").equals("compose");
        visit.goOn(toCompose ? "/compose/new?bottle=" + added.id() : "/shelf/lots/" + added.id() + "?put=yes");
    }

    /** Puts an ingredient that its name describes on the shelf; how much there is may be said or not. */
    private void putGeneric(Visit visit) {
        Generic generic = Generics.find(visit.field("generic"));
        if (generic == null) {
            visit.notFound();
            return;
        }
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put(LotKeys.NAME, generic.ingredient().name());
        typed.put(LotKeys.KIND, generic.ingredient().kind().label());
        typed.put(LotKeys.LEFT, visit.field(LotKeys.LEFT));
        if (generic.ingredient().strength() != null) {
            typed.put("strength", generic.ingredient().strength().text());
        }
        generic.ingredient().contains().forEach((part, share) -> typed.put(part.label(), share.text()));
        SheetReading<NewLot> reading = ReadLot.answer(typed, desk.ounce());
        if (reading instanceof SheetReading.Refused<NewLot> refused) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, typed, refused.problems());
            return;
        }
        add(visit, ((SheetReading.Understood<NewLot>) reading).value());
    }
}
