package org.stillroom.e2e;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Lots;
import org.stillroom.studio.store.Store;

/** A studio with recipes to make and lots to take from, put there before it opens. */
final class MakingStudio {
    static final String BAY = """
            stillroom: 1
            title: Bay leaf and juniper
            target: {volume: 1 L, strength: 28 %, sugar: 180 g/L}
            measures:
              - {name: kitchen scale, kind: scale, marks: 0.1 g, holds: 3 kg}
              - {name: dropper, kind: dropper}
            ingredients:
              - {name: neutral spirit, kind: spirit, strength: 96 %}
              - {name: juniper essence, kind: essence, strength: 90 %, drop: 0.02 g}
            lines:
              - {use: neutral spirit, amount: free}
              - {use: juniper essence, dose: 24 drops/L, with: dropper}
              - {use: white sugar, amount: free}
              - {use: water, amount: free}
            steps:
              - Steep with a peel for 20 minutes, then take it out.
            """;

    private static final String TINCTURE = """
            stillroom: 1
            title: Bay tincture
            ingredients:
              - {name: neutral spirit, kind: spirit, strength: 96 %}
              - {name: bay leaf, kind: dried plant}
            lines:
              - {use: bay leaf, amount: 20 g}
              - {use: neutral spirit, amount: 200 ml}
              - {use: water, amount: 100 ml}
            rest: 7 days
            loss: 1.5 ml/g
            """;

    private static final String LIQUEUR = """
            stillroom: 1
            title: Bay liqueur
            target: {strength: 30 %, sugar: 150 g/L}
            ingredients:
              - {name: bay tincture, kind: tincture, from: bay-tincture.yaml}
            lines:
              - {use: bay tincture, amount: all}
              - {use: white sugar, amount: free}
              - {use: water, amount: free}
            """;

    private MakingStudio() {}

    /** Puts recipes and lots into a folder in which no studio is open. */
    static void stock(Path data) {
        try (Store store = Store.open(new DataFolder(data))) {
            save(store, "Bay leaf and juniper", BAY);
            save(store, "Bay tincture", TINCTURE);
            save(store, "Bay liqueur", LIQUEUR);
            Lots.NewLot spirit = lot("neutral spirit", "spirit", Map.of("strength", "96 %"), "lot 7", "ml");
            Lots.NewLot sugar = lot("white sugar", "sugar", Map.of(), "tin", "g");
            store.lots().add(List.of(spirit, sugar), request());
        }
    }

    private static void save(Store store, String title, String text) {
        String id = store.recipes().create(title, request());
        store.recipes().save(id, 0, title, text, null, request());
    }

    private static Lots.NewLot lot(String name, String kind, Map<String, String> fields, String label, String unit) {
        LotSheet sheet = new LotSheet(
                name, kind, fields, label, null, 1000, unit, null, null, null, null, null, null, false, null);
        return new Lots.NewLot(sheet, 1000);
    }

    private static String request() {
        return UUID.randomUUID().toString();
    }
}
