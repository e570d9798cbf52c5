package org.stillroom.core.drops;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
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
 */
public record DropLiquid(String name, double gramsPerDrop, Material.@Nullable Range density) {
    private static final Map<String, Table.Row> TENSIONS = tensions();

    /**
     * Returns the liquid that a name means: an oil of {@link Materials}, water, glycerol or syrup; null when it is none of them.
     */
    public static @Nullable DropLiquid named(String name) {
        Material material = Materials.find(name);
        if (material != null) {
            Table.Row row = TENSIONS.get(material.name());
            double tension = row == null ? OfficialDropper.OIL_TENSION : row.number("millinewtons_per_metre");
            return new DropLiquid(material.name() + " oil", OfficialDropper.gramsPerDrop(tension), material.density());
        }
        Table.Row row = TENSIONS.get(name.strip());
        if (row == null) {
            return null;
        }
        double density = row.number("density_g_per_ml");
        return new DropLiquid(
                row.text("name"),
                OfficialDropper.gramsPerDrop(row.number("millinewtons_per_metre")),
                new Material.Range(density, density));
    }

    /** Returns an oil of which only the name is known: the usual tension of oils, and no density. */
    public static DropLiquid oil(String name) {
        return new DropLiquid(name, OfficialDropper.gramsPerDrop(OfficialDropper.OIL_TENSION), null);
    }

    /** Returns plain spirit of a strength; of 0 % vol it is water. */
    public static DropLiquid spirit(Strength strength, String name) {
        return of(name, MadeUp.spirit(strength));
    }

    /** Returns any liquid that is not an oil. */
    public static DropLiquid of(String name, Contents contents) {
        double density = contents.total() / VolumeModel.atTwenty().millilitres(contents.toGrams());
        return new DropLiquid(name, OfficialDropper.gramsPerDrop(contents), new Material.Range(density, density));
    }

    /** Returns the liquid with a density that its maker knows, g/mL. */
    public DropLiquid withDensity(double gramsPerMillilitre) {
        return new DropLiquid(name, gramsPerDrop, new Material.Range(gramsPerMillilitre, gramsPerMillilitre));
    }

    private static Map<String, Table.Row> tensions() {
        Map<String, Table.Row> rows = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        for (Table.Row row : Tables.open("drops/surface_tensions.csv").rows()) {
            rows.put(row.text("name"), row);
        }
        return rows;
    }
}
