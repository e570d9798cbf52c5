package org.stillroom.studio.web.rest;

import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.label.Market;
import org.stillroom.studio.sheet.LabelSheet;
import org.stillroom.studio.sheet.Saying;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellLabel;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.batch.LabelBottles;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Language;
import org.stillroom.studio.wording.Words;

/** The labels of bottles that were filled: how they look, what they say, what a bottle costs its maker. */
final class LabelPages {
    private final Store store;
    private final LabelBottles labels;

    LabelPages(Store store) {
        this.store = store;
        this.labels = new LabelBottles(store);
    }

    void routes(Doors doors) {
        doors.get("/rest/batch/{batch}/labels", this::show)
                .get("/rest/batch/{batch}/labels/{bottles}", this::pdf)
                .get("/rest/batch/{batch}/label/{bottles}", this::svg);
    }

    /** Returns what labels of bottles are called in addresses. */
    static String address(Bottling bottling) {
        return bottling.entry() + "-" + bottling.first();
    }

    private static Bottling bottling(Book book, Visit visit, String address) {
        List<Bottling> all = book.cellar().bottlings(visit.part("batch"));
        return all.stream()
                .filter(each -> address.isEmpty() || address(each).equals(address))
                .findFirst()
                .orElseThrow(() -> new MissingException(visit.words().say("rest.noBottles")));
    }

    private void show(Visit visit) {
        Book book = Book.open(store);
        Batch batch = book.batch(visit.part("batch"));
        Words words = visit.words();
        Bottling bottling = bottling(book, visit, visit.field("bottles"));
        LabelBottles.Found found = labels.answer(book, bottling, market(visit));
        TellLabel.Found label = found.label();
        @Nullable Impossible problem = null;
        try {
            label = dutiable(found, visit);
            LabelSheet.svg(label, look(visit), found.markings().get(0));
        } catch (Impossible impossible) {
            problem = impossible;
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        LabelView view = new LabelView(
                batch,
                words,
                book.cellar().bottlings(batch.id()),
                bottling,
                found.markings().get(0).lot(),
                label,
                new LabelView.Typed(
                        language(visit),
                        sizeTyped(visit),
                        market(visit),
                        visit.field("duty"),
                        isPrinted(visit),
                        query(visit)),
                problem);
        visit.page(words.say("rest.labelsTitle", RestView.title(words, batch)), RestRoom.KEY)
                .style("make.css")
                .style("rest.css")
                .show("rest/labels.jte", Map.of("view", view));
    }

    private static String query(Visit visit) {
        String query = visit.context().queryString();
        return query == null ? "" : "?" + query;
    }

    private static TellLabel.Found dutiable(LabelBottles.Found found, Visit visit) {
        String duty = visit.field("duty");
        return duty.isBlank() ? found.label() : found.label().bearing(duty);
    }

    private static LabelSheet.Look look(Visit visit) {
        Words words = new Words(language(visit), visit.words().units());
        return new LabelSheet.Look(
                LabelSheet.Size.of(sizeTyped(visit)),
                new Saying(words.language().tag(), words::toldOrMarked),
                isPrinted(visit) ? LabelSheet.Cost.PRINTED : LabelSheet.Cost.LEFT_OUT);
    }

    private static Market market(Visit visit) {
        return visit.field("place").equals(Market.US.name()) ? Market.US : Market.EU;
    }

    private static Language language(Visit visit) {
        return Language.of(visit.field("language")).orElse(visit.words().language());
    }

    private static String sizeTyped(Visit visit) {
        return visit.field("size").isBlank() ? LabelSheet.USUAL.text() : visit.field("size");
    }

    private static boolean isPrinted(Visit visit) {
        return visit.field("cost").equals("yes");
    }

    private void pdf(Visit visit) {
        Book book = Book.open(store);
        LabelBottles.Found found = labels.answer(book, bottling(book, visit, named(visit)), market(visit));
        try {
            byte[] pdf = LabelSheet.pdf(dutiable(found, visit), look(visit), found.markings());
            visit.context()
                    .contentType("application/pdf")
                    .header("Content-Disposition", "inline; filename=\"labels.pdf\"")
                    .result(pdf);
        } catch (Impossible impossible) {
            refuse(visit, impossible);
        }
    }

    private void svg(Visit visit) {
        Book book = Book.open(store);
        LabelBottles.Found found = labels.answer(book, bottling(book, visit, named(visit)), market(visit));
        try {
            String svg = LabelSheet.svg(
                    dutiable(found, visit), look(visit), found.markings().get(0));
            visit.context()
                    .contentType("image/svg+xml; charset=utf-8")
                    .header("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; sandbox")
                    .result(svg);
        } catch (Impossible impossible) {
            refuse(visit, impossible);
        }
    }

    private static String named(Visit visit) {
        return visit.part("bottles").replaceAll("\\.(pdf|svg)$", "");
    }

    private static void refuse(Visit visit, Impossible impossible) {
        Words words = visit.words();
        visit.refuse(
                HttpStatus.UNPROCESSABLE_CONTENT,
                words.told(LabelView.RULE, impossible.reason()).text(),
                words.told(LabelView.RULE, impossible.remedy()).text());
    }
}
