package org.stillroom.core.drops;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.CommonNames;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.aroma.OilDensity;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * A liquid that is taken by the drop: what a drop of it weighs by the official dropper, and its density.
 *
 * @param name the name that we show
 * @param gramsPerDrop by the official dropper
 * @param density g/mL near 20 °C, or null where it is not known
 * @param oil where the density comes from when it is that of an oil which nobody measured, else null
 */
public record DropLiquid(
        String name,
        double gramsPerDrop,
        Material.@Nullable Range density,
        @Nullable OilDensity oil) {
    private static final Map<String, Table.Row> TENSIONS = tensions();

    private static final Set<String> NO_OIL = Set.of(
            "tincture", "macerate", "infusion", "extract", "essence", "distillate", "hydrosol", "juice", "liqueur");

    /**
     * Returns the liquid that a name means: an oil or constituent that a table knows, glycerol or syrup; null when it is none of them.
     */
    public static @Nullable DropLiquid named(String name) {
        if (isMadeOfPlants(name)) {
            return null;
        }
        @Nullable OilDensity density = OilDensity.known(name);
        @Nullable Material material = Materials.find(name);
        if (density != null || (material != null && material.kind() == Material.Kind.OIL)) {
            return oil(name);
        }
        Table.@Nullable Row row = other(name);
        if (row == null) {
            return null;
        }
        double stated = row.number("density_g_per_ml");
        return new DropLiquid(
                row.text("name"),
                OfficialDropper.gramsPerDrop(row.number("millinewtons_per_metre")),
                new Material.Range(stated, stated),
                null);
    }

    /** Returns whether a name says that it is something else that is made of a plant, such as lemon tincture: it drops as its spirit does. */
    public static boolean isMadeOfPlants(String name) {
        return CommonNames.readings(name).stream()
                .flatMap(reading -> Stream.of(reading.toLowerCase(Locale.ROOT).split("\\W+")))
                .anyMatch(NO_OIL::contains);
    }

    /** Returns an oil: where no table knows its name, with the usual tension of oils and the range in which their densities lie. */
    public static DropLiquid oil(String name) {
        @Nullable Material material = Materials.find(name);
        Table.@Nullable Row row = material == null ? null : TENSIONS.get(material.name());
        double tension = row == null ? OfficialDropper.OIL_TENSION : row.number("millinewtons_per_metre");
        OilDensity density = OilDensity.of(name);
        return new DropLiquid(
                material == null ? name.strip() : material.name() + " oil",
                OfficialDropper.gramsPerDrop(tension),
                density.range(),
                density);
    }

    /** Returns a liquid of which only the name is known: it drops as oils do, and its density is not known. */
    public static DropLiquid unknown(String name) {
        return new DropLiquid(name, OfficialDropper.gramsPerDrop(OfficialDropper.OIL_TENSION), null, null);
    }

    /** Returns what a drop of an ingredient weighs from the official dropper, g: of an oil by its name, else by what is in it. */
    public static double gramsPerDrop(String name, Contents perGram) {
        if (perGram.grams(Substance.OIL) > 0.5 * perGram.total()) {
            return oil(name).gramsPerDrop();
        }
        Table.@Nullable Row row = other(name);
        return row == null
                ? OfficialDropper.gramsPerDrop(perGram)
                : OfficialDropper.gramsPerDrop(row.number("millinewtons_per_metre"));
    }

    /** Returns the row of a liquid that is no oil: those say their density. */
    private static Table.@Nullable Row other(String name) {
        Table.@Nullable Row row = TENSIONS.get(name.strip());
        return row == null || row.textOrEmpty("density_g_per_ml").isEmpty() ? null : row;
    }

    /** Returns plain spirit of a strength; of 0 % vol it is water. */
    public static DropLiquid spirit(Strength strength, String name) {
        return of(name, MadeUp.spirit(strength));
    }

    /** Returns any liquid that is not an oil. */
    public static DropLiquid of(String name, Contents contents) {
        double density = contents.total() / VolumeModel.atTwenty().millilitres(contents.toGrams());
        return new DropLiquid(name, OfficialDropper.gramsPerDrop(contents), new Material.Range(density, density), null);
    }

    /** Returns the lightest drop of it that any dropper gives, g; own estimate. */
    public double lightestDrop() {
        return OfficialDropper.LIGHTEST * gramsPerDrop;
    }

    /** Returns the heaviest drop of it that any dropper gives, g; own estimate. */
    public double heaviestDrop() {
        return OfficialDropper.HEAVIEST * gramsPerDrop;
    }

    /** Returns the liquid with a density that its maker knows, g/mL. */
    public DropLiquid withDensity(double gramsPerMillilitre) {
        Material.Range own = new Material.Range(gramsPerMillilitre, gramsPerMillilitre);
        return new DropLiquid(name, gramsPerDrop, own, null);
    }

    private static Map<String, Table.Row> tensions() {
        Map<String, Table.Row> rows = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        for (Table.Row row : Tables.open("drops/surface_tensions.csv").rows()) {
            rows.put(row.text("name"), row);
        }
        return rows;
    }
}
