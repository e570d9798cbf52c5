package org.stillroom.e2e;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.stillroom.studio.store.Calibration;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.InstrumentSheet;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Lots;
import org.stillroom.studio.store.Store;

/** A studio as a maker has it after some weeks: invented bottles, and the recipes of {@code examples}. */
final class DemoStudio {
    private static final Path EXAMPLES = Path.of(System.getProperty("stillroom.root", ".."), "examples");

    private DemoStudio() {}

    /** Puts bottles and recipes into a folder in which no studio is open, and returns the id of the last recipe. */
    static String stock(Path data) {
        try (Store store = Store.open(new DataFolder(data))) {
            store.lots().add(bottles(), request());
            String last = "";
            for (String example : List.of(
                    "stages/caraway-essence",
                    "stages/bay-leaf-tincture",
                    "caraway-brought-down",
                    "fennel-and-lemon-peel",
                    "quince-and-bay")) {
                last = save(store, example);
            }
            return last;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts a hydrometer on the shelf that was calibrated in water, and returns its id. */
    static String hydrometer(Path data) {
        try (Store store = Store.open(new DataFolder(data))) {
            Map<String, String> fields = Map.of("scale", "SG", "marks", "0.002");
            Instrument added = store.instruments()
                    .add(new InstrumentSheet("hydrometer no. 3", "hydrometer", fields, null), request());
            Calibration water = new Calibration("2026-11-02", 0.002, 0.001, Map.of("hydrometer", List.of("1.002")));
            store.instruments().calibrate(added.id(), added.version(), water, request());
            return added.id();
        }
    }

    private static String save(Store store, String example) throws IOException {
        String text = Files.readString(EXAMPLES.resolve(example + ".yaml"));
        String title = text.lines()
                .filter(line -> line.startsWith("title:"))
                .findFirst()
                .orElseThrow()
                .substring("title:".length())
                .strip();
        String recipe = store.recipes().create(title, request());
        store.recipes()
                .save(recipe, 0, title, text, example.substring(example.lastIndexOf('/') + 1) + ".yaml", request());
        return recipe;
    }

    private static List<Lots.NewLot> bottles() {
        return List.of(
                lot(
                        "neutral spirit",
                        "spirit",
                        Map.of("strength", "96 %", "tolerance", "0.3 %"),
                        1000,
                        640,
                        "ml",
                        "lot 7"),
                lot("grain spirit", "spirit", Map.of("strength", "40 %"), 700, 120, "ml", "2"),
                lot("white sugar", "sugar", Map.of(), 1000, 820, "g", "tin"),
                lot("quince juice", "juice", Map.of("sugar", "110 g/L"), 500, 310, "ml", "October"),
                lot("bay leaf tincture", "tincture", Map.of("strength", "62 %"), 200, 85, "ml", "3"),
                lot("caraway distillate", "distillate", Map.of("strength", "55 %"), 500, 500, "ml", "1"),
                lot("juniper essence", "essence", Map.of("strength", "90 %", "drop", "0.02 g"), 30, 4, "ml", "B"));
    }

    private static Lots.NewLot lot(
            String name, String kind, Map<String, String> fields, double full, double left, String unit, String label) {
        LotSheet sheet = new LotSheet(
                name, kind, fields, label, null, full, unit, null, null, null, null, null, null, false, null);
        return new Lots.NewLot(sheet, left);
    }

    private static String request() {
        return UUID.randomUUID().toString();
    }
}
