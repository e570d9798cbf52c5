package org.stillroom.studio.web.settings;

import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.stillroom.studio.store.Backup;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.LabelLink;
import org.stillroom.studio.usecase.batch.LabelBottles;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Language;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/** Language, units and what an ounce means; the rules of the house; the backup; everything that happened. */
public final class SettingsRoom implements Room {
    private static final int PAGE = 60;

    private final Store store;
    private final DataFolder folder;

    public SettingsRoom(Store store, DataFolder folder) {
        this.store = store;
        this.folder = folder;
    }

    @Override
    public String key() {
        return "settings";
    }

    @Override
    public String path() {
        return "/settings";
    }

    @Override
    public String state(Words words) {
        return "";
    }

    @Override
    public void routes(Doors doors) {
        doors.get("/settings", this::show)
                .post("/settings", this::keep)
                .get("/settings/backup", this::backup)
                .get("/history", this::history);
        new HouseRulesPages(store.rules()).routes(doors);
        new RulesPages(store.rules()).routes(doors);
    }

    private void show(Visit visit) {
        show(visit, store.settings().value(LabelBottles.ADDRESS).orElse(""), "");
    }

    private void show(Visit visit, String address, String problem) {
        Map<String, String> settled = store.settings().all();
        visit.page(visit.words().say("settings.title"), key())
                .show(
                        "settings/settings.jte",
                        Map.of(
                                "language", settled.getOrDefault("language", ""),
                                "units", settled.getOrDefault("units", UnitSystem.METRIC.label()),
                                "ounce", settled.getOrDefault("ounce", "us"),
                                "address", address,
                                "problem", problem,
                                "folder", folder.path().toString(),
                                "kept", visit.field("kept").equals("yes")));
    }

    private void keep(Visit visit) {
        String address = visit.field("address").strip();
        try {
            keepAddress(address);
        } catch (Impossible none) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, address, none.reason() + " " + none.remedy());
            return;
        }
        String language = visit.field("language");
        if (Language.of(language).isPresent()) {
            store.settings().put("language", language);
        } else {
            store.settings().remove("language");
        }
        store.settings().put("units", UnitSystem.named(visit.field("units")).label());
        store.settings().put("ounce", visit.field("ounce").equals("bar") ? "bar" : "us");
        visit.goOn("/settings?kept=yes");
    }

    private void keepAddress(String typed) {
        if (typed.isEmpty()) {
            store.settings().remove(LabelBottles.ADDRESS);
        } else {
            String address = LabelLink.of(typed);
            store.settings().put(LabelBottles.ADDRESS, address.replaceAll("/+$", ""));
        }
    }

    private void backup(Visit visit) throws IOException {
        Path file = Files.createTempFile("stillroom-", ".backup");
        try {
            store.backup().write(file);
            visit.context()
                    .contentType("application/zip")
                    .header(
                            "Content-Disposition",
                            "attachment; filename=\"" + Backup.fileName(LocalDate.now(ZoneId.systemDefault())) + "\"")
                    .result(Files.readAllBytes(file));
        } finally {
            Files.deleteIfExists(file);
        }
    }

    private void history(Visit visit) {
        String before = visit.field("before");
        long from = before.matches("\\d{1,18}") ? Long.parseLong(before) : Long.MAX_VALUE;
        List<HistoryEntry> entries = store.history().latest(from, PAGE);
        visit.page(visit.words().say("settings.historyTitle"), key())
                .show(
                        "settings/history.jte",
                        Map.of(
                                "entries",
                                entries.stream()
                                        .map(entry -> Happened.of(entry, store, visit.words()))
                                        .toList(),
                                "older",
                                entries.size() == PAGE ? entries.get(PAGE - 1).id() : 0L));
    }
}
