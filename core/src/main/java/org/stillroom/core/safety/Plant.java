package org.stillroom.core.safety;

import java.util.List;

/**
 * A plant as makers name it, with what is expected in it; from memory.
 *
 * @param name what we call it
 * @param botanical botanical names, synonyms among them
 * @param names words by which it is found in the name of an ingredient, in the plain form of {@link Words}
 * @param holds watched substances that are expected in it
 * @param oilMaterials ids under which the composition of its essential oil stands
 * @param plantMaterials ids under which what the plant itself holds stands
 * @param oilLeast least essential oil in the dried plant, per cent; 0 when not known
 * @param oilMost most of it, per cent; 0 when not known
 */
public record Plant(
        String name,
        List<String> botanical,
        List<String> names,
        List<String> holds,
        List<String> oilMaterials,
        List<String> plantMaterials,
        double oilLeast,
        double oilMost) {
    public Plant {
        botanical = List.copyOf(botanical);
        names = List.copyOf(names);
        holds = List.copyOf(holds);
        oilMaterials = List.copyOf(oilMaterials);
        plantMaterials = List.copyOf(plantMaterials);
    }

    boolean isOfGenus(String genus) {
        return botanical.stream().anyMatch(each -> each.equals(genus) || each.startsWith(genus + " "));
    }
}
