package org.stillroom.studio.usecase.essence;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.aroma.OilDensity;
import org.stillroom.core.drops.DropLiquid;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.reference.Finding;
import org.stillroom.planner.drops.OilDrop;
import org.stillroom.studio.recipefile.EssenceSheet;
import org.stillroom.studio.usecase.WeighDrops;

/**
 * The oils of an essence by mass and by drop.
 *
 * @param drops parts and drops, in the order asked
 * @param byRule names of the oils whose drops nobody weighed
 * @param told what is to be said of the drops, and of the densities that the parts rest on
 */
record EssenceOils(List<OilDrop> drops, List<String> byRule, List<Finding> told) {
    EssenceOils {
        told = List.copyOf(told);
        drops = List.copyOf(drops);
        byRule = List.copyOf(byRule);
    }

    /** Returns the oils that are asked. */
    static EssenceOils of(EssenceSheet sheet) {
        List<Double> grams = new ArrayList<>();
        List<Double> drops = new ArrayList<>();
        List<String> byRule = new ArrayList<>();
        List<Finding> told = new ArrayList<>();
        for (EssenceSheet.Oil oil : sheet.oils()) {
            Mass weighed = oil.drop();
            if (weighed == null) {
                byRule.add(oil.name());
            }
            double drop = weighed == null ? liquid(oil).gramsPerDrop() : weighed.grams();
            drops.add(drop);
            Finding unlikely = WeighDrops.unlikely(liquid(oil), drop, oil.name());
            if (unlikely != null) {
                told.add(unlikely);
            }
            grams.add(oil.parts()
                    * switch (sheet.by()) {
                        case MASS -> 1.0;
                        case VOLUME -> density(oil, told);
                        case DROPS -> drop;
                    });
        }
        double sum = grams.stream().mapToDouble(each -> each).sum();
        List<OilDrop> oils = new ArrayList<>();
        for (int i = 0; i < grams.size(); i++) {
            oils.add(new OilDrop(sheet.oils().get(i).name(), grams.get(i) / sum, drops.get(i)));
        }
        return new EssenceOils(oils, byRule, told);
    }

    private static DropLiquid liquid(EssenceSheet.Oil oil) {
        DropLiquid known = DropLiquid.named(oil.name());
        return known == null ? DropLiquid.oil(oil.name()) : known;
    }

    private static double density(EssenceSheet.Oil oil, List<Finding> told) {
        Density own = oil.density();
        if (own != null) {
            return own.kilogramsPerCubicMetre() / 1000.0;
        }
        OilDensity density = OilDensity.of(oil.name());
        told.add(density.told(oil.name()));
        return density.gramsPerMillilitre();
    }
}
