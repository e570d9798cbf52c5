package org.stillroom.core.clarity;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * What comes to a liqueur in the glass.
 *
 * @param name the name that we show
 * @param strength % vol at 20 °C
 * @param sugar g/L
 * @param isIce whether it melts into the liqueur and cools it
 */
public record GlassAddition(String name, double strength, double sugar, boolean isIce) {
    public static final GlassAddition WATER = new GlassAddition("water", 0.0, 0.0, false);
    public static final GlassAddition ICE = new GlassAddition("ice", 0.0, 0.0, true);

    private static final Map<String, GlassAddition> NAMED = named();

    /** Returns everything that has a name here by it, water and ice first. */
    public static Map<String, GlassAddition> list() {
        return NAMED;
    }

    /** Returns what a name means, or null where it is none of these. */
    public static @Nullable GlassAddition find(String name) {
        return NAMED.get(name.strip().toLowerCase(Locale.ROOT));
    }

    /** Returns a drink of this strength and sugar. */
    public static GlassAddition drink(String name, AlcoholByVolume strength, MassConcentration sugar) {
        return new GlassAddition(name, strength.percent(), sugar.gramsPerLitre(), false);
    }

    /** Returns a litre of it at 20 °C; of ice, of the water that it melts to. */
    public Contents litre() {
        return strength == 0.0 && sugar == 0.0
                ? MadeUp.spirit(AlcoholByVolume.at20(0.0)).with(Substance.ETHANOL, 0.0)
                : MadeUp.sweetened(AlcoholByVolume.at20(strength), new MassConcentration(sugar));
    }

    private static Map<String, GlassAddition> named() {
        Map<String, GlassAddition> named = new LinkedHashMap<>();
        named.put(WATER.name, WATER);
        named.put(ICE.name, ICE);
        for (Table.Row row : Tables.open("clarity/in_the_glass.csv").rows()) {
            String name = row.text("drink");
            named.put(
                    name, new GlassAddition(name, row.number("percent_by_volume"), row.number("sugar_g_per_l"), false));
        }
        return Collections.unmodifiableMap(named);
    }
}
