package org.stillroom.core.extraction;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * A tincture as a pharmacopoeia or a handbook makes it.
 *
 * @param name the name that we show
 * @param plants names of what it is made of; empty where any plant is
 * @param plantPerMillilitre g of plant per mL of solvent
 * @param madeUpPerGram mL that a gram of plant is made up to with the same solvent; empty where it is left as it comes
 * @param solvent strength of the solvent, % vol
 * @param found strength that the finished tincture must have, % vol, from and to; empty where none is stated
 * @param note how it is made, or empty
 * @param standing how it came to us
 * @param source which book
 */
public record Tincture(
        String name,
        List<String> plants,
        double plantPerMillilitre,
        OptionalDouble madeUpPerGram,
        double solvent,
        List<Double> found,
        String note,
        Standing standing,
        String source) {
    private static final List<Tincture> ALL = read(Tables.open("extraction/tinctures.csv"));

    public Tincture {
        plants = List.copyOf(plants);
        found = List.copyOf(found);
    }

    public static List<Tincture> list() {
        return ALL;
    }

    /** Returns the tincture of a name, with or without the word tincture, or null when there is none. */
    public static @Nullable Tincture find(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT);
        return ALL.stream()
                .filter(tincture ->
                        tincture.name().equals(plain) || tincture.name().equals(plain + " tincture"))
                .findFirst()
                .orElse(null);
    }

    /** Returns the tinctures that are made of a plant. */
    public static List<Tincture> of(Plant plant) {
        return ALL.stream()
                .filter(tincture -> tincture.plants().contains(plant.name()))
                .toList();
    }

    /** Returns whether it is made of a plant, or of whatever it is named after. */
    public boolean isOf(Plant plant) {
        return plants.isEmpty() || plants.contains(plant.name());
    }

    private static List<Tincture> read(Table table) {
        List<Tincture> all = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            boolean stated = !row.textOrEmpty("found_low").isEmpty();
            String plants = row.textOrEmpty("plants");
            all.add(new Tincture(
                    row.text("name"),
                    plants.isEmpty() ? List.of() : List.of(plants.split(";", -1)),
                    row.number("plant_g") / row.number("solvent_ml"),
                    row.textOrEmpty("made_up_to_ml").isEmpty()
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(row.number("made_up_to_ml") / row.number("plant_g")),
                    row.number("solvent_percent"),
                    stated ? List.of(row.number("found_low"), row.number("found_high")) : List.of(),
                    row.textOrEmpty("note"),
                    row.standing("status"),
                    row.text("source")));
        }
        return List.copyOf(all);
    }
}
