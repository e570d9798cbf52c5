package org.stillroom.studio.usecase.make;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.store.InstrumentSheet;

/**
 * What is settled when a make begins; the log and this make the whole state of it.
 *
 * @param millilitres to make at 20 °C, or null for the size of the recipe
 * @param instruments of the shelf to measure with; empty for those of the recipe
 * @param lots ids of the lots that each ingredient is taken from, in the order in which they are used up, by the line's name
 * @param stages the revisions that the stages are made by, by the text of "from"
 * @param bar whether an ounce without a name is 30 mL
 * @param droppers of the shelf, by the name of the line in drops that is dosed with it; absent in makes that are older than that
 */
public record MakeStart(
        @Nullable Double millilitres,
        List<InstrumentSheet> instruments,
        Map<String, List<String>> lots,
        Map<String, Pinned> stages,
        boolean bar,
        @Nullable Map<String, InstrumentSheet> droppers) {
    public MakeStart {
        instruments = List.copyOf(instruments);
        lots = Collections.unmodifiableMap(new LinkedHashMap<>(lots));
        stages = Collections.unmodifiableMap(new LinkedHashMap<>(stages));
        droppers = droppers == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(droppers));
    }

    @Override
    public Map<String, InstrumentSheet> droppers() {
        return droppers == null ? Map.of() : droppers;
    }

    /**
     * A revision that later saves do not touch.
     *
     * @param recipe id of the recipe
     * @param revision its number
     */
    public record Pinned(String recipe, int revision) {}
}
