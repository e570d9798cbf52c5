package org.stillroom.studio.web.shelf;

import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.answer.Json;
import org.stillroom.studio.answer.ShelfFields;
import org.stillroom.studio.usecase.shelf.ExportShelf;
import org.stillroom.studio.usecase.shelf.ImportShelf;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Language;

/** Tables in, with a look at what they would change before anything is changed; and out. */
final class TablePages {
    /** Spreadsheets of German readers part by semicolon, since the comma is their decimal sign. */
    private static final char GERMAN_SEPARATOR = ';';

    /** Without it, common spreadsheets take UTF-8 for something else. */
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private static final int MOST_BYTES = 2_000_000;

    private final Desk desk;

    TablePages(Desk desk) {
        this.desk = desk;
    }

    void routes(Doors doors) {
        doors.get("/shelf/table", visit -> show(visit, "", null, ""))
                .post("/shelf/table", this::preview)
                .post("/shelf/table/accept", this::accept)
                .get("/shelf/export.csv", this::csv)
                .get("/shelf/export.json", this::json);
    }

    private void show(Visit visit, String table, ImportShelf.@Nullable Preview preview, String said) {
        visit.page(visit.words().say("shelf.table"), ShelfRoom.KEY)
                .style("shelf.css")
                .show("shelf/table.jte", model(table, preview, said));
    }

    private static Map<String, Object> model(String table, ImportShelf.@Nullable Preview preview, String said) {
        Map<String, Object> model = new HashMap<>();
        model.put("table", table);
        model.put("preview", preview);
        model.put("said", said);
        return model;
    }

    private void preview(Visit visit) throws IOException {
        String table = table(visit);
        ImportShelf.Preview preview =
                ImportShelf.preview(table, desk.store().lots().all(), desk.ounce());
        if (!preview.problems().isEmpty()) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        show(visit, table, preview, "");
    }

    /** Returns what was uploaded, else what was pasted. */
    private static String table(Visit visit) throws IOException {
        UploadedFile file = visit.context().uploadedFile("file");
        if (file == null || file.size() == 0) {
            return visit.field("table");
        }
        try (InputStream in = file.content()) {
            String text = new String(in.readNBytes(MOST_BYTES), StandardCharsets.UTF_8);
            return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        }
    }

    private void accept(Visit visit) {
        String table = visit.field("table");
        ImportShelf.Preview preview =
                ImportShelf.preview(table, desk.store().lots().all(), desk.ounce());
        boolean asShown = preview.problems().isEmpty() && preview.mark().equals(visit.field("mark"));
        if (asShown && ImportShelf.accept(preview, desk.store().lots(), visit.request())) {
            visit.goOn("/shelf");
            return;
        }
        visit.context().status(HttpStatus.CONFLICT);
        show(visit, table, preview, visit.words().say("shelf.tableOvertaken"));
    }

    private void csv(Visit visit) {
        char separator = visit.words().language() == Language.GERMAN ? GERMAN_SEPARATOR : ',';
        String table = BYTE_ORDER_MARK + ExportShelf.table(desk.store().lots().all(), separator);
        download(visit, "shelf.csv", "text/csv; charset=utf-8", table);
    }

    private void json(Visit visit) {
        List<ExportShelf.Entry> entries = ExportShelf.entries(desk.everything());
        download(visit, "shelf.json", "application/json", Json.of(ShelfFields.of(entries)) + "\n");
    }

    private static void download(Visit visit, String name, String type, String text) {
        visit.context()
                .contentType(type)
                .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .result(text.getBytes(StandardCharsets.UTF_8));
    }
}
