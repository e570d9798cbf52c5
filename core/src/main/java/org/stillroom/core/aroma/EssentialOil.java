package org.stillroom.core.aroma;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Standing;

/**
 * An essential oil by what it is made of.
 *
 * @param name the name that we show, without the word oil
 * @param aliases other names that mean the same oil
 * @param gramsPerMillilitre density near 20 °C where {@link Materials} does not state it, else null; {@link OilDensity} asks both
 * @param shares typical part of the mass, by CAS number or by the label of a {@link ConstituentGroup}; what is missing to 1 is not
 *     known
 * @param standing how the composition came to us
 * @param source where from, or empty where it is recalled
 * @param ranges least and greatest part of the mass by CAS number, of one group of figures; of what is not among them no range is known
 * @param rangesFrom the group of figures that states them and how it came to us, or empty where there are none
 */
public record EssentialOil(
        String name,
        List<String> aliases,
        @Nullable Double gramsPerMillilitre,
        Map<String, Double> shares,
        Standing standing,
        String source,
        Map<String, Material.Range> ranges,
        String rangesFrom) {
    public EssentialOil {
        aliases = List.copyOf(aliases);
        shares = Collections.unmodifiableMap(new TreeMap<>(shares));
        ranges = Collections.unmodifiableMap(new TreeMap<>(ranges));
    }
}
