package org.stillroom.studio.store;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a maker writes about a thing to measure with, or an empty jar; every field is the text as typed.
 *
 * @param name what the maker calls it
 * @param kind as under {@code measures} in a recipe file, or "jar"
 * @param fields under the keys of a measure in a recipe file; of a jar "tare" and "holds"
 * @param note or null
 * @param calibration the latest, or null
 */
public record InstrumentSheet(
        String name,
        String kind,
        Map<String, String> fields,
        @Nullable String note,
        @Nullable Calibration calibration) {
    public InstrumentSheet {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }

    /** Makes a sheet of something that is not calibrated. */
    public InstrumentSheet(String name, String kind, Map<String, String> fields, @Nullable String note) {
        this(name, kind, fields, note, null);
    }

    /** Returns the sheet with a calibration, or without any. */
    InstrumentSheet with(@Nullable Calibration now) {
        return new InstrumentSheet(name, kind, fields, note, now);
    }

    /** Returns the sheet with the calibration of the one before, as long as it is about the same thing. */
    InstrumentSheet after(InstrumentSheet before) {
        return with(kind.equals(before.kind) && definition().equals(before.definition()) ? before.calibration : null);
    }

    /** Returns what makes it the thing that it is; how far its maker trusts it does not. */
    private Map<String, String> definition() {
        Map<String, String> definition = new LinkedHashMap<>(fields);
        definition.remove("tolerance");
        return definition;
    }
}
