package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.stillroom.core.aroma.CommonNames;

/**
 * The plants that a name means, and what of the name means nothing here.
 *
 * @param plants each once; empty when it means none that is known
 * @param unread words that are no name of a plant, no part, no form and no quality
 */
record NamedPlants(List<Plant> plants, List<String> unread) {
    private static final String NAMED = "|";

    /** Parts that hold what the rest of a fruit does not: where no plant is known by them they are not taken for its flesh. */
    private static final Set<String> KERNELS = Set.of("kernel", "stone", "pit", "pip", "seed");

    NamedPlants {
        plants = List.copyOf(plants);
        unread = List.copyOf(unread);
    }

    /** Returns the plants among those known that a name means. */
    static NamedPlants of(String name, List<Plant> known) {
        Set<Plant> plants = new LinkedHashSet<>();
        Set<String> unread = new LinkedHashSet<>();
        for (String reading : CommonNames.readings(name)) {
            NamedPlants named = ofReading(Words.plain(reading), known);
            plants.addAll(named.plants);
            unread.addAll(named.unread);
        }
        for (String turned : TurnedNames.in(name)) {
            for (String reading : CommonNames.readings(turned)) {
                String plain = Words.plain(reading);
                NamedPlants named = ofReading(plain, known);
                plants.addAll(named.plants);
                unread.removeIf(word -> Words.holds(plain, " " + word) && !named.unread.contains(word));
            }
        }
        return new NamedPlants(List.copyOf(plants), List.copyOf(unread));
    }

    private static NamedPlants ofReading(String plain, List<Plant> known) {
        Words.Named<Plant> named = Words.read(plain, known, Plant::names);
        List<String> rest = unread(named.rest());
        boolean ofKernels = rest.stream().map(NameWords::single).anyMatch(KERNELS::contains);
        return new NamedPlants(
                named.things().stream()
                        .filter(plant -> !ofKernels || !plant.holds().isEmpty())
                        .toList(),
                rest);
    }

    /** A part right before a plant can belong to its name: wood sage is no wood of sage. */
    private static List<String> unread(String rest) {
        List<String> unread = new ArrayList<>();
        String[] words = rest.strip().split(" ", -1);
        for (int i = 0; i < words.length; i++) {
            String single = NameWords.single(words[i]);
            boolean beforeName = i + 1 < words.length && words[i + 1].equals(NAMED);
            boolean nothing = NameWords.saysNothing(single) && !(NameWords.isPart(single) && beforeName);
            boolean kernel = KERNELS.contains(single) && i > 0;
            if (words[i].length() > 1 && (!nothing || kernel)) {
                unread.add(words[i]);
            }
        }
        return unread;
    }

    /** Returns those of the plants that a test lets pass. */
    NamedPlants only(Predicate<Plant> test) {
        return new NamedPlants(plants.stream().filter(test).toList(), unread);
    }
}
