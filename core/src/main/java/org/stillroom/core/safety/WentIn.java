package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.Plants;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.PlannedLine;

/** Something that went into a drink, by itself or in a stage, as its words and its kind tell what it is. */
public final class WentIn {
    private static final double MILLILITRES = 1000.0;

    private final Drink drink;
    private final PlannedLine line;
    private final Range grams;

    private WentIn(Drink drink, Leaf leaf) {
        this.drink = drink;
        this.line = leaf.line();
        this.grams = leaf.grams();
    }

    static List<WentIn> of(Drink drink) {
        return Leaf.of(drink.plan()).stream()
                .map(leaf -> new WentIn(drink, leaf))
                .toList();
    }

    public String name() {
        return line.name();
    }

    public Kind kind() {
        return line.ingredient().kind();
    }

    /** Returns how much of the alcohol of the drink it brings, parts of one. */
    public Range alcohol() {
        double all = drink.plan().liquid().grams(Substance.ETHANOL);
        return all > 0.0 ? ofOne(grams.times(ethanol() / all)) : Range.NOTHING;
    }

    /** Returns how much of the volume of the drink it takes where it is a liquid, parts of one, all at 20 °C. */
    public Range volume() {
        double each = line.millilitres().orElse(0.0) / line.grams();
        return ofOne(grams.times(each / (MILLILITRES * drink.litres())));
    }

    private static Range ofOne(Range parts) {
        return new Range(Math.min(1.0, parts.least()), Math.min(1.0, parts.most()));
    }

    private double ethanol() {
        return line.ingredient().perGram().grams(Substance.ETHANOL);
    }

    /** Returns whether it is named after one of some plants or things, in English, in German or by a botanical name. */
    public boolean isNamed(List<String> words) {
        return Words.any(line.words(), plain(words));
    }

    private static List<String> plain(List<String> words) {
        return words.stream().map(Words::plain).toList();
    }

    /** Returns whether nothing is in it but what its words tell. */
    public boolean tellsPlants() {
        return !Presence.isOpen(drink, line);
    }

    /** Returns whether its words tell which spirit or wine its alcohol is, or it has none. */
    public boolean tellsAlcohol() {
        return switch (kind()) {
            case SPIRIT -> isSpiritThatIsKnown();
            case WINE -> isOf(WordList.NAMED_WINES);
            default -> ethanol() == 0.0;
        };
    }

    private boolean isSpiritThatIsKnown() {
        Set<String> words = NameWords.of(line.words());
        boolean mixed = words.stream()
                .anyMatch(word -> WordList.OF_MANY_PLANTS.words().contains(word)
                        && !WordList.NAMED_SPIRITS.words().contains(word));
        NamedPlants named = NamedPlants.of(line.words(), drink.knowledge().plants());
        boolean read = isWholly(named.unread());
        boolean anything =
                !named.plants().isEmpty() || words.stream().anyMatch(WordList.NAMED_SPIRITS.words()::contains);
        return !mixed && read && anything;
    }

    private static boolean isWholly(List<String> words) {
        return words.stream().map(NameWords::single).allMatch(WordList.NAMED_SPIRITS.words()::contains);
    }

    /** Returns whether it flavours nothing: neutral spirit, plain sugar, water. */
    public boolean isWithoutFlavour() {
        return switch (kind()) {
            case SPIRIT, SUGAR, SYRUP, WATER, GLYCEROL -> isOf(WordList.WITHOUT_FLAVOUR);
            default -> false;
        };
    }

    private boolean isOf(WordList list) {
        return Presence.isOnlyOf(line, list);
    }

    /** Returns the plants that are recognised in it, but for those that some words name. */
    public List<String> plantsBeside(List<String> words) {
        List<String> meant = plain(words);
        Set<String> beside = new LinkedHashSet<>();
        for (Plant plant :
                NamedPlants.of(line.words(), drink.knowledge().plants()).plants()) {
            if (!Words.any(plant.name(), meant) && plant.names().stream().noneMatch(name -> Words.any(name, meant))) {
                beside.add(plant.name());
            }
        }
        org.stillroom.core.extraction.@Nullable Plant known =
                Plants.find(line.ingredient().ingredient().plants());
        if (known != null && beside.isEmpty() && !isOneOf(known, meant)) {
            beside.add(known.name());
        }
        return List.copyOf(beside);
    }

    private static boolean isOneOf(org.stillroom.core.extraction.Plant plant, List<String> meant) {
        List<String> names = new ArrayList<>(plant.aliases());
        names.add(plant.name());
        return names.stream().anyMatch(name -> Words.any(name, meant));
    }
}
