package org.stillroom.studio.usecase.shelf;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.studio.recipefile.SheetReader;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.store.Calibration;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.InstrumentSheet;

/** The droppers of a shelf, with what a drop of water from each weighs. */
public final class OwnDroppers {
    private static final String DROP = "drop";
    private static final String TOLERANCE = "tolerance";

    private OwnDroppers() {}

    /**
     * A dropper whose drop of water is known.
     *
     * @param id of the instrument on the shelf
     * @param sheet that tells of its drop under the keys of a recipe file
     * @param measure as a recipe has it
     */
    public record Dropper(String id, InstrumentSheet sheet, Measure measure) {}

    /** Returns those of a shelf whose drop of water is known, by calibration or else as typed. */
    public static List<Dropper> of(List<Instrument> shelf, OunceMeaning ounce) {
        return shelf.stream()
                .filter(each -> each.sheet().kind().equals(MeasureKind.DROPPER.label()))
                .map(each -> of(each.id(), telling(each.sheet()), ounce))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Dropper> of(String id, InstrumentSheet sheet, OunceMeaning ounce) {
        return new SheetReader(ounce).measure(sheet.name(), sheet.kind(), sheet.fields())
                                instanceof SheetReading.Understood<Measure> understood
                        && understood.value().ownDropper() != null
                ? Optional.of(new Dropper(id, sheet, understood.value()))
                : Optional.empty();
    }

    /** Returns what is written of a thing, of a dropper that was calibrated with what its drop of water then weighed. */
    public static InstrumentSheet telling(InstrumentSheet sheet) {
        Calibration calibration = sheet.calibration();
        if (calibration == null || !sheet.kind().equals(MeasureKind.DROPPER.label())) {
            return sheet;
        }
        Map<String, String> fields = new LinkedHashMap<>(sheet.fields());
        fields.put(DROP, milligrams(calibration.value()));
        fields.put(TOLERANCE, milligrams(calibration.halfWidth()));
        return new InstrumentSheet(sheet.name(), sheet.kind(), fields, sheet.note(), calibration);
    }

    private static String milligrams(double value) {
        return QuantityWords.fixed(value, 2) + " mg";
    }
}
