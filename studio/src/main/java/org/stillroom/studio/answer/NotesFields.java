package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.tasting.Note;
import org.stillroom.core.tasting.OdourThreshold;
import org.stillroom.studio.usecase.TellNotes;

/** The notes of a recipe as fields. */
public final class NotesFields {
    private NotesFields() {}

    public static Fields of(TellNotes.Found found) {
        List<Fields> constituents = new ArrayList<>();
        found.notes()
                .forEach(note -> constituents.add(note(note, !found.analysed().isEmpty())));
        return new Fields()
                .put("strength_vol_percent", found.strength())
                .put("constituents", constituents)
                .putTexts("analysed", found.analysed())
                .put("findings", FindingFields.of(found.findings()));
    }

    private static Fields note(Note note, boolean analysed) {
        Fields fields = new Fields()
                .put("cas", note.cas())
                .put("name", note.name())
                .put("smells_of", OdourThreshold.smell(note.cas()))
                .put(
                        "mg_per_l",
                        new Fields()
                                .put("min", note.content().min())
                                .put("typical", note.content().typical())
                                .put("max", note.content().max())
                                .put(
                                        "typical_basis",
                                        analysed
                                                ? "analysis of the lot where one was given"
                                                : "typical of the trade or mid-range"));
        OdourThreshold threshold = note.threshold();
        if (threshold == null) {
            return fields.putNone("odour_activity")
                    .putNone("spread")
                    .putTexts("weak", List.of())
                    .putNone("threshold");
        }
        return fields.put("odour_activity", note.activity())
                .put(
                        "spread",
                        new Fields()
                                .put(
                                        "odour_activity",
                                        new Fields().put("low", note.least()).put("high", note.most())))
                .putTexts(
                        "weak",
                        note.weaknesses().stream().map(Note.Weakness::key).toList())
                .put(
                        "threshold",
                        new Fields()
                                .put("low_ug_per_l", threshold.low())
                                .put("high_ug_per_l", threshold.high())
                                .put("medium", threshold.medium().label())
                                .put("status", threshold.standing().label())
                                .putTexts("sources", threshold.sources()));
    }
}
