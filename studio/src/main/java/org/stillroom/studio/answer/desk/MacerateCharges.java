package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.Maceration.Charge;
import org.stillroom.core.extraction.Plant;
import org.stillroom.core.extraction.PlantSort;
import org.stillroom.core.extraction.Plants;
import org.stillroom.core.extraction.Tincture;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.safety.ByName;
import org.stillroom.core.safety.Grounds;

/** Reads the plants of a macerate, with what their maker knows of them. */
final class MacerateCharges {
    private final AskedTexts asked;
    private final List<String> names;
    private final Map<String, Double> water;
    private final Map<String, Double> sugar;
    private final Map<String, PlantSort> sorts;

    private final Grounds grounds;

    private MacerateCharges(AskedTexts asked, List<String> names, Grounds grounds) {
        this.grounds = grounds;
        this.asked = asked;
        this.names = names;
        this.water = own("water", "80%", text -> asked.read("water", text, TEXT::percent));
        this.sugar = own("own-sugar", "9%", text -> asked.read("own-sugar", text, TEXT::percent));
        this.sorts = own("sort", "fresh-fruit", this::sort);
    }

    /** Returns what goes in; what is wrong with it is noted. */
    static List<Charge> read(AskedTexts asked, Optional<Tincture> tincture, Grounds grounds) {
        List<String> typed = asked.texts("plant");
        List<String> ofTincture = tincture.map(Tincture::plants).orElse(List.of());
        List<String> names = typed.isEmpty() && ofTincture.size() == 1 ? ofTincture : typed;
        if (typed.isEmpty() && ofTincture.size() > 1) {
            asked.object(
                    "plant",
                    tincture.orElseThrow().name() + " is made of several plants: " + String.join("; ", ofTincture)
                            + ".",
                    "Give each with its mass, such as " + asked.write("plant", ofTincture.get(0), "mass", "100g")
                            + ".");
            return List.of();
        }
        return new MacerateCharges(asked, names, grounds).charges();
    }

    private List<Charge> charges() {
        List<String> masses = asked.has("yield") && !asked.has("mass")
                ? names.stream().map(each -> "100 g").toList()
                : asked.texts("mass");
        if (names.isEmpty() || names.size() != masses.size()) {
            asked.object(
                    "plant",
                    names.isEmpty() && masses.isEmpty()
                            ? "no plant is named."
                            : "each plant is wanted with its mass; plants: " + names.size() + ", masses: "
                                    + masses.size() + ".",
                    "Write for instance "
                            + asked.write("plant", names.isEmpty() ? "lemon peel" : names.get(0), "mass", "500g")
                            + ".");
            return List.of();
        }
        List<Charge> charges = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            Optional<Plant> plant = plant(names.get(i));
            Optional<Mass> mass = asked.read("mass", masses.get(i), TEXT::mass);
            mass.filter(each -> each.grams() == 0.0)
                    .ifPresent(none -> asked.object("mass", "there is no plant in 0 g.", "Give its mass."));
            mass.filter(each -> each.grams() >= Charge.TOO_MUCH)
                    .ifPresent(much -> asked.object(
                            "mass",
                            "so much plant is in no vat.",
                            "Look at the unit; less than 1000 t are reckoned with."));
            plant.ifPresent(each -> mass.filter(grams -> grams.grams() > 0.0 && grams.grams() < Charge.TOO_MUCH)
                    .ifPresent(grams -> charges.add(new Charge(each, grams.grams()))));
        }
        return charges;
    }

    private Optional<Plant> plant(String name) {
        Double ownWater = water.get(key(name));
        Double ownSugar = sugar.get(key(name));
        PlantSort ownSort = sorts.get(key(name));
        if (ownWater != null && ownSugar != null && ownWater + ownSugar > 100.0) {
            asked.object("own-sugar", "water and sugar together are more than the plant.", "Give less of one.");
            return Optional.empty();
        }
        Plant known = Plants.find(name);
        if (known == null && ownWater == null) {
            if (asked.objectsToDrinking("plant", Ingredient.named(name, Kind.DRIED_PLANT), grounds)) {
                return Optional.empty();
            }
            ByName.ofKernels(Ingredient.named(name, Kind.DRIED_PLANT), grounds)
                    .forEach(said -> asked.object("plant", "\"" + name + "\": " + said.message(), said.remedy()));
            List<String> like = Plants.like(name);
            String near = like.isEmpty() ? "" : "Near it are: " + String.join("; ", like) + ". ";
            asked.object(
                    "plant",
                    "\"" + name + "\" is not in the table of plants.",
                    near + (near.isEmpty() ? "Give its water" : "Or give its water")
                            + ", such as " + asked.write("water", name + "=80%")
                            + ", and its sugar, such as " + asked.write("own-sugar", name + "=9%") + ".");
            return Optional.empty();
        }
        Plant plant = known == null ? unknown(name, ownWater, ownSort) : known;
        Plant wet = known != null && ownWater != null ? plant.withWater(ownWater / 100.0) : plant;
        return Optional.of(ownSugar != null ? wet.withSugar(ownSugar / 100.0) : wet);
    }

    private static Plant unknown(String name, @Nullable Double water, @Nullable PlantSort sort) {
        double part = water == null ? 0.0 : water / 100.0;
        return Plant.own(name, sort == null ? PlantSort.guess(name, part) : sort, part);
    }

    /** Returns what is given of plants: a value alone where there is one plant, else each with its plant. */
    private <V> Map<String, V> own(String part, String example, Function<String, Optional<V>> read) {
        Map<String, V> own = new HashMap<>();
        for (String text : asked.texts(part)) {
            int sign = text.lastIndexOf('=');
            String plant = sign < 0 ? "" : text.substring(0, sign).strip();
            if (sign < 0 && names.size() == 1) {
                read.apply(text).ifPresent(value -> own.put(key(names.get(0)), value));
            } else if (sign < 0) {
                asked.object(
                        part,
                        "\"" + text + "\": there are " + names.size() + " plants, and it is not said of which.",
                        "Write it with its plant, such as "
                                + asked.write(part, (names.isEmpty() ? "plum" : names.get(0)) + "=" + example) + ".");
            } else if (names.stream().noneMatch(name -> key(name).equals(key(plant)))) {
                asked.object(part, "\"" + plant + "\" is none of your plants.", "Write it as you wrote the plant.");
            } else {
                read.apply(text.substring(sign + 1)).ifPresent(value -> own.put(key(plant), value));
            }
        }
        return own;
    }

    private Optional<PlantSort> sort(String text) {
        return asked.read("sort", text, typed -> {
            PlantSort sort = PlantSort.find(
                    typed.strip().toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_'));
            String known = String.join(
                    ", ",
                    PlantSort.list().stream()
                            .map(each -> each.key().replace('_', '-'))
                            .toList());
            return sort == null
                    ? new Understanding.Refused<>(typed, "it is one of " + known)
                    : new Understanding.Understood<>(new org.stillroom.core.quantity.Typed<>(typed, sort));
        });
    }

    private static String key(String name) {
        Plant known = Plants.find(name);
        return known == null ? name.strip().toLowerCase(Locale.ROOT) : known.name();
    }
}
