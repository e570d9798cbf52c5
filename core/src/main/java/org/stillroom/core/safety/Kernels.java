package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** Stones, kernels, seeds and leaves that set hydrogen cyanide free. */
final class Kernels {
    /** Name of the rule. */
    static final String NAME = "stones-and-kernels";

    private static final String CYANIDE = "hydrogen cyanide";

    /** The row of plants for fruit that has its stones in until its maker says that they are out. */
    private static final String STONE_FRUIT = "stone fruit";

    /** Kinds that are pressed or cooked from the flesh of fruit. */
    private static final Set<Kind> OF_FLESH = Set.of(Kind.JUICE, Kind.SYRUP, Kind.DAIRY, Kind.SUGAR, Kind.HONEY);

    private Kernels() {}

    /**
     * Returns the plants of a line without stone fruit where it says that no stone is in it, and without the kernels that are only named
     * as taken out; where it says nothing, they stay.
     */
    static NamedPlants withoutStones(NamedPlants named, PlannedLine line, Knowledge knowledge) {
        boolean said = WordList.STONES_OUT.isIn(line.words());
        boolean out = said
                || OF_FLESH.contains(line.ingredient().kind())
                || WordList.FLESH_OF_FRUIT.isIn(line.words())
                || WordList.STONES_OUT.isIn(Passages.notes(line));
        NamedPlants left = said ? named.only(besideWhatIsOut(line, knowledge)::contains) : named;
        return out ? left.only(plant -> !plant.name().equals(STONE_FRUIT)) : left;
    }

    /** Returns the plants that a line still names when the words that say that stones are out are taken away. */
    private static List<Plant> besideWhatIsOut(PlannedLine line, Knowledge knowledge) {
        String rest = TextWords.of(line.words()).without(WordList.STONES_OUT.phrases());
        return NamedPlants.of(rest, knowledge.plants()).plants();
    }

    private static boolean isDriedFlesh(String words) {
        return WordList.DRIED_WITHOUT_STONES.isIn(words) && !WordList.STONES_MAY_BE_IN_IT.isIn(words);
    }

    /** Returns whether a line is of kernels, stones and seeds alone; they are not sulphured as dried fruit is. */
    static boolean areAll(PlannedLine line, Knowledge knowledge) {
        List<Plant> plants = NamedPlants.of(line.words(), knowledge.plants()).plants();
        return !plants.isEmpty()
                && plants.stream()
                        .allMatch(plant ->
                                plant.holds().contains(CYANIDE) && !plant.name().equals(STONE_FRUIT));
    }

    /** Returns whether it is a spirit as it is sold that has nothing but stone fruit in its name: nobody can take its stones out any more. */
    private static boolean isSpirit(Portion portion) {
        return portion.kind() == Kind.SPIRIT
                && !portion.plants().isEmpty()
                && portion.plants().stream().allMatch(plant -> plant.name().equals(STONE_FRUIT));
    }

    /** Returns whether it is fruit that mostly is dried without its stones; whether any are in it nobody says. */
    private static boolean isDriedFlesh(Portion portion) {
        return portion.plants().stream().anyMatch(plant -> plant.name().equals(STONE_FRUIT))
                && isDriedFlesh(portion.words());
    }

    /** Returns the places of spirits of stone fruit and of its dried flesh; what they bring is not known, and that is said once of all of them. */
    static List<String> toldOnce(Drink drink) {
        return places(drink, portion -> isSpirit(portion) || isDriedFlesh(portion));
    }

    private static List<String> places(Drink drink, Predicate<Portion> which) {
        return drink.portions().stream()
                .filter(portion -> which.test(portion) && !isAnalysed(drink, portion))
                .map(Portion::where)
                .distinct()
                .toList();
    }

    /** Returns whether an analysis tells how much came over: of the drink, or of what has stood on stones; one of fresh fruit does not. */
    private static boolean isAnalysed(Drink drink, Portion portion) {
        boolean plant = portion.kind() == Kind.FRESH_PLANT || portion.kind() == Kind.DRIED_PLANT;
        return AnalysedDrink.tells(drink, CYANIDE) || (portion.isSettled(CYANIDE) && !plant);
    }

    static boolean isAbout(Amount amount) {
        return amount.watched().name().equals(CYANIDE);
    }

    /** Returns whether nothing is told of a substance but that such spirits or dried fruit bring nobody knows how much, which is said elsewhere. */
    static boolean isToldOnce(Drink drink, Amount amount) {
        return isAbout(amount) && amount.from().isEmpty() && toldOnce(drink).containsAll(amount.notKnownFrom());
    }

    private static List<Finding> once(Drink drink) {
        List<Finding> findings = new ArrayList<>();
        notKnown(
                places(drink, Kernels::isSpirit),
                "Spirits of stone fruit bring hydrogen cyanide from the stones. How much is not known, so that no"
                        + " limit and no guidance is shown to be kept.",
                "Ask its maker for the figure, or have the drink analysed.",
                findings);
        notKnown(
                places(drink, Kernels::isDriedFlesh),
                "Dried apricots and peaches are mostly sold without their stones, wild ones are dried whole. Whether any stones"
                        + " are in these is not known, so that no limit of hydrogen cyanide is shown to be kept.",
                "Look at them, and say in the name what is so: pitted, or with stones.",
                findings);
        return findings;
    }

    private static void notKnown(List<String> places, String message, String remedy, List<Finding> findings) {
        if (!places.isEmpty()) {
            findings.add(new Finding(
                    NotKnown.NAME,
                    Severity.NOTE,
                    String.join("; ", places),
                    "",
                    "not known",
                    message,
                    "general knowledge, from memory",
                    remedy,
                    null,
                    Source.HANDLING_CAUTIONS));
        }
    }

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = once(drink);
        for (Portion portion : drink.portions()) {
            List<Plant> plants = portion.plants().stream()
                    .filter(plant -> plant.holds().contains(CYANIDE))
                    .toList();
            boolean once = isSpirit(portion) || isDriedFlesh(portion);
            if (!plants.isEmpty() && portion.form() != Portion.Form.OIL && !once && !isAnalysed(drink, portion)) {
                boolean fruit = plants.stream().allMatch(plant -> plant.name().equals(STONE_FRUIT));
                boolean part = fruit && WordList.PARTS_THAT_ARE_NOT_THE_FRUIT.isIn(portion.words());
                boolean counted = plants.stream()
                        .anyMatch(plant -> !plant.plantMaterials().isEmpty());
                findings.add(
                        part
                                ? otherPart(portion)
                                : fruit ? stones(portion) : counted ? kernels(portion) : seeds(portion));
            }
        }
        return findings;
    }

    private static Finding stones(Portion portion) {
        return finding(
                portion,
                "stones",
                "Unless its stones are taken out they set hydrogen cyanide free, the most where they are cracked or stand long;"
                        + " how much comes into the drink is not known.",
                "Take the stones out and say so in its name, such as pitted; else leave them whole, strain early, and have"
                        + " the drink analysed.");
    }

    private static Finding otherPart(Portion portion) {
        return finding(
                portion,
                "part of the tree",
                "Leaves, bark, wood and blossoms of these trees can set hydrogen cyanide free; how much comes into the drink is"
                        + " not known.",
                "Ask the supplier whether it is sold for drinks, or have the drink analysed.");
    }

    /** Berries, leaves and small seeds of which no table tells how much they set free. */
    private static Finding seeds(Portion portion) {
        return finding(
                portion,
                "raw berries, seeds or leaves",
                "Raw berries, seeds and leaves like these set hydrogen cyanide free, unripe and crushed ones the most; how much"
                        + " comes into the drink is not known.",
                "Heat berries before use, and never crush seeds into the drink; nothing but an analysis of it tells how much is"
                        + " in it.");
    }

    private static Finding kernels(Portion portion) {
        return finding(
                portion,
                "kernels",
                "Kernels, stones, seeds and leaves like these set hydrogen cyanide free, bitter and crushed ones the most."
                        + " A count tells nothing without the weight of one, and what is counted by weight is the worst of a"
                        + " wide band from memory.",
                "Weigh them and write grams, or a count with the weight of one, such as 20 x 0.6 g. Never crush them into the"
                        + " drink; nothing but an analysis of it tells how much is in it.");
    }

    private static Finding finding(Portion portion, String verdict, String message, String remedy) {
        return new Finding(
                NAME,
                Severity.CAUTION,
                portion.where(),
                "",
                verdict,
                message,
                "general knowledge, from memory",
                remedy,
                null,
                Source.HANDLING_CAUTIONS);
    }
}
