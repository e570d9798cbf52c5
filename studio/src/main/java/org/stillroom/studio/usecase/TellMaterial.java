package org.stillroom.studio.usecase;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.aroma.EssentialOils;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.OilLimits;
import org.stillroom.studio.recipefile.Nearest;

/** Tells what the table of materials states of one of them, and what is said of its name before anybody drinks it. */
public final class TellMaterial {
    /** So many materials are named to somebody who may have meant one of them. */
    private static final int MOST_LIKE = 8;

    private TellMaterial() {}

    /**
     * A material, and what amounts are worked out with.
     *
     * @param counted its composition as amounts, notes and haze are worked out with it, or null where they are not
     * @param findings what speaks against it at any dose; their absence clears nothing
     */
    public record Found(Material material, @Nullable EssentialOil counted, List<Finding> findings) {
        public Found {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Returns what is known of the material that a name means.
     *
     * @param grounds what it is judged on
     * @throws Impossible when the table holds none of that name; it names those that are alike
     */
    public static Found answer(String name, Grounds grounds) {
        Material material = Materials.find(name);
        if (material == null) {
            throw new Impossible("name", "\"" + name.strip() + "\" is in no row of the table.", like(name));
        }
        boolean oil = material.kind() == Material.Kind.OIL;
        String named = oil ? material.name() + " oil" : material.name();
        return new Found(
                material,
                oil ? EssentialOils.find(material.name()) : null,
                OilLimits.told(List.of(named), grounds).stream()
                        .filter(finding -> !isOfAnAmount(finding, named))
                        .toList());
    }

    /** Whether it says that the amount of a substance is not known, which is no matter here: nothing is poured. */
    private static boolean isOfAnAmount(Finding finding, String named) {
        return finding.rule().equals("not-known") && finding.where().startsWith(named + " (");
    }

    private static String like(String name) {
        Map<String, Material> byName = new LinkedHashMap<>();
        Materials.list().forEach(material -> {
            byName.put(material.name(), material);
            material.aliases().forEach(alias -> byName.put(alias, material));
        });
        Set<String> like = new LinkedHashSet<>();
        String slip = Nearest.of(name, byName.keySet());
        if (slip != null) {
            like.add(slip);
        }
        Materials.like(name).stream().limit(MOST_LIKE).map(Material::name).forEach(like::add);
        return like.isEmpty()
                ? "Leave the name out for all that are there; your own oil goes by the analysis of its supplier."
                : "Near it are: " + String.join(", ", like) + ".";
    }
}
