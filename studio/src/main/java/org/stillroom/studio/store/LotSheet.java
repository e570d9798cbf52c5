package org.stillroom.studio.store;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a maker writes about one bottle or jar; every field is the text as typed.
 *
 * @param name what the maker calls what is in it; recipes find it by this name
 * @param kind of ingredient, as in a recipe file
 * @param fields what it is known by, under the keys of an ingredient in a recipe file
 * @param label what tells it from others of the same name, such as "lot 7", or null
 * @param opened day on which it was opened, or null
 * @param full how much it held when full, in {@code unit}; 0 when not said
 * @param unit of its amounts: "ml", "g" or "pieces"
 * @param tare weight of the empty vessel, or null
 * @param paid price paid, or null
 * @param supplier or null
 * @param analysis supplier's analysis, CSV as given, or null
 * @param note or null
 * @param photo id of its photo, or null
 * @param setAside whether it is not to be used
 * @param origin what it was made by, or null where it was bought
 */
public record LotSheet(
        String name,
        String kind,
        Map<String, String> fields,
        @Nullable String label,
        @Nullable LocalDate opened,
        double full,
        String unit,
        @Nullable String tare,
        @Nullable String paid,
        @Nullable String supplier,
        @Nullable String analysis,
        @Nullable String note,
        @Nullable String photo,
        boolean setAside,
        @Nullable Origin origin) {
    /**
     * The recipe that a lot was made by.
     *
     * @param recipe id of it
     * @param revision number of it
     * @param title of it at that time
     * @param made day on which the lot was made
     */
    public record Origin(String recipe, int revision, String title, LocalDate made) {}

    public LotSheet {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }

    /** Returns the same sheet with another photo. */
    public LotSheet withPhoto(@Nullable String other) {
        return with(fields, other, origin);
    }

    /** Returns the same sheet with other fields of its ingredient. */
    public LotSheet withFields(Map<String, String> other) {
        return with(other, photo, origin);
    }

    /** Returns the same sheet with what nobody types, taken from what it was before: its photo and where it comes from. */
    public LotSheet keeping(LotSheet before) {
        return with(fields, before.photo, before.origin);
    }

    private LotSheet with(Map<String, String> otherFields, @Nullable String otherPhoto, @Nullable Origin otherOrigin) {
        return new LotSheet(
                name,
                kind,
                otherFields,
                label,
                opened,
                full,
                unit,
                tare,
                paid,
                supplier,
                analysis,
                note,
                otherPhoto,
                setAside,
                otherOrigin);
    }
}
