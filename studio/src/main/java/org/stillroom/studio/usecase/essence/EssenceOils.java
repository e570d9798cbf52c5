package org.stillroom.studio.usecase.essence;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.drops.DropLiquid;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Mass;
import org.stillroom.planner.drops.OilDrop;
import org.stillroom.studio.recipefile.EssenceSheet;
import org.stillroom.studio.usecase.Impossible;

/**
 * The oils of an essence by mass and by drop.
 *
 * @param drops parts and drops, in the order asked
 * @param byRule names of the oils whose drops nobody weighed
 */
record EssenceOils(List<OilDrop> drops, List<String> byRule) {
    EssenceOils {
        drops = List.copyOf(drops);
        byRule = List.copyOf(byRule);
    }

    /**
     * Returns the oils that are asked.
     *
     * @throws Impossible when parts by volume are asked of an oil whose density is not known
     */
    static EssenceOils of(EssenceSheet sheet) {
        List<Double> grams = new ArrayList<>();
        List<Double> drops = new ArrayList<>();
        List<String> byRule = new ArrayList<>();
        for (EssenceSheet.Oil oil : sheet.oils()) {
            Mass weighed = oil.drop();
            if (weighed == null) {
                byRule.add(oil.name());
            }
            double drop = weighed == null ? liquid(oil).gramsPerDrop() : weighed.grams();
            drops.add(drop);
            grams.add(oil.parts()
                    * switch (sheet.by()) {
                        case MASS -> 1.0;
                        case VOLUME -> density(oil);
                        case DROPS -> drop;
                    });
        }
        double sum = grams.stream().mapToDouble(each -> each).sum();
        List<OilDrop> oils = new ArrayList<>();
        for (int i = 0; i < grams.size(); i++) {
            oils.add(new OilDrop(sheet.oils().get(i).name(), grams.get(i) / sum, drops.get(i)));
        }
        return new EssenceOils(oils, byRule);
    }

    private static DropLiquid liquid(EssenceSheet.Oil oil) {
        DropLiquid known = DropLiquid.named(oil.name());
        return known == null ? DropLiquid.oil(oil.name()) : known;
    }

    private static double density(EssenceSheet.Oil oil) {
        Density own = oil.density();
        if (own != null) {
            return own.kilogramsPerCubicMetre() / 1000.0;
        }
        Material.Range range = liquid(oil).density();
        if (range == null) {
            throw new Impossible(
                    oil.name(),
                    "its density is not known, and the parts are by volume.",
                    "Give its density, such as 0.9 g/ml.");
        }
        return range.middle();
    }
}
