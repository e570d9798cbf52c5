package org.stillroom.studio.answer;

import java.util.List;
import org.stillroom.studio.usecase.shelf.ExportShelf;
import org.stillroom.studio.usecase.shelf.LotFacts;
import org.stillroom.studio.usecase.shelf.Stock;

/** The shelf as fields: each lot as it was typed, what is left of it, and what it is taken for. */
public final class ShelfFields {
    private ShelfFields() {}

    /** Returns the whole shelf. */
    public static Fields of(List<ExportShelf.Entry> entries) {
        return new Fields().put("lots", entries.stream().map(ShelfFields::of).toList());
    }

    /** Returns one lot. */
    public static Fields of(ExportShelf.Entry entry) {
        Fields fields = new Fields().put("id", entry.id()).put("typed", typed(entry));
        Stock left = entry.left();
        if (left == null) {
            fields.putNone("left");
        } else {
            fields.put("left_" + left.unit(), left.amount());
        }
        entry.facts()
                .forEach(fact -> fields.put(key(fact.what()), fact.estimate().value()));
        return fields.put("doubt", doubt(entry.facts()));
    }

    private static Fields typed(ExportShelf.Entry entry) {
        Fields typed = new Fields();
        entry.typed().forEach((key, text) -> {
            if (!text.isEmpty()) {
                typed.put(key.replace(' ', '_'), text);
            }
        });
        return typed;
    }

    private static Fields doubt(List<LotFacts.Fact> facts) {
        Fields doubt = new Fields();
        facts.forEach(fact -> doubt.put(key(fact.what()), fact.estimate().doubt()));
        return doubt;
    }

    private static String key(LotFacts.What what) {
        return switch (what) {
            case STRENGTH -> "strength_vol_percent";
            case SUGAR -> "sugar_g_per_l";
            case SUGAR_BY_MASS -> "sugar_mass_percent";
            case ACIDITY -> "acidity_as_citric_g_per_l";
            case OIL -> "oil_g_per_l";
            case DENSITY -> "density_g_per_ml";
        };
    }
}
