package org.stillroom.studio.answer;

import org.stillroom.studio.usecase.make.BatchSheet;

/** What went into a batch and what came of it when its make was finished, by their keys. */
public final class WentIn {
    private WentIn() {}

    /** Returns the sheet of a finished make. */
    public static Fields fields(BatchSheet sheet) {
        return new Fields()
                .putCount("revision", sheet.revision())
                .put("volume_20c_ml", sheet.millilitres())
                .put("strength_vol_percent", sheet.strength())
                .put("sugar_g_per_l", sheet.sugar())
                .put("density_kg_m3", sheet.density())
                .put("lines", sheet.lines().stream().map(WentIn::line).toList())
                .putTexts("notes", sheet.notes());
    }

    private static Fields line(BatchSheet.LineSheet line) {
        return new Fields()
                .put("part", line.part())
                .put("name", line.name())
                .put("mass_g", line.grams())
                .put("planned_g", line.asked())
                .put("lots", line.taken().stream().map(WentIn::taken).toList())
                .put("not_on_shelf_g", line.wanting());
    }

    private static Fields taken(BatchSheet.Taken taken) {
        return new Fields()
                .put("lot", taken.lot())
                .put("label", taken.label())
                .put("amount", taken.amount())
                .put("unit", taken.unit());
    }
}
