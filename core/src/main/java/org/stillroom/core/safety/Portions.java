package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.extraction.Plants;
import org.stillroom.core.ingredient.Aroma;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.OilPart;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Typed;

/** Takes a plan apart, stages and all, into what can carry watched substances. */
final class Portions {
    /** Words by which people say the form of a pure substance. */
    private static final Pattern FORM = Pattern.compile(" (pure|crystals?|natural|food grade|synthetic|powder)\\b");

    private static final List<String> FRESH = List.of(" fresh");

    /** Words that say that something is juice. */
    private static final Pattern FOOD_WORDS =
            Pattern.compile(" (juice|fresh|pressed|saft|must|puree|concentrate)(?= )");

    /** What chemists number a substance by, in brackets or with what it is behind it or not. */
    private static final Pattern CAS = Pattern.compile(
            "\\(?(?:\\bCAS\\b[\\s.:-]*(?:(?:no|nr|number|nummer)\\b[\\s.:]*)?)?\\b(\\d{2,7}-\\d\\d-\\d)\\b\\)?",
            Pattern.CASE_INSENSITIVE);

    private static final NamedPlants NONE = new NamedPlants(List.of(), List.of());

    private final Knowledge knowledge;
    private final LotAnalyses analyses;
    private final Drawn drawn;
    private final List<Portion> portions = new ArrayList<>();
    private final List<Found> found = new ArrayList<>();
    private final Map<String, Set<Watched>> byStage = new HashMap<>();

    /** What analyses tell of the line that is taken apart. */
    private Set<Watched> settled = Set.of();

    private Drawn.@Nullable Bottle bottle;

    private Portions(Grounds grounds) {
        this.knowledge = grounds.knowledge();
        this.analyses = grounds.analyses();
        this.drawn = grounds.drawn();
    }

    static Portions of(Plan plan, Grounds grounds) {
        Portions all = new Portions(grounds);
        Leaf.of(plan).forEach(all::add);
        return all;
    }

    /** Returns everything that can carry watched substances. */
    List<Portion> list() {
        return List.copyOf(portions);
    }

    /** Returns what analyses of whole ingredients say. */
    List<Found> found() {
        return List.copyOf(found);
    }

    private void add(Leaf leaf) {
        Set<Watched> before = Set.of();
        for (Leaf stage : leaf.within()) {
            before = ofStage(stage, before);
        }
        bottles(leaf.line(), leaf.where(), leaf.grams(), before);
    }

    /** Returns substances of which an analysis of what a stage makes tells, with those that were settled before; each stage counts once. */
    private Set<Watched> ofStage(Leaf stage, Set<Watched> before) {
        @Nullable Set<Watched> known = byStage.get(stage.where());
        if (known == null) {
            known = take(stage.line().ingredient(), stage.where(), stage.grams(), Assay.NONE, before);
            byStage.put(stage.where(), known);
        }
        return known;
    }

    private void bottles(PlannedLine line, String where, Range grams, Set<Watched> settled) {
        List<PlannedLine> each = drawn.of(line);
        for (int i = 0; i < each.size(); i++) {
            bottle = Drawn.Bottle.of(where, i, each.size());
            portion(each.get(i), where, grams, settled);
        }
        bottle = null;
    }

    /**
     * Takes what is stated of an ingredient as a whole, else what the analyses of its bottles tell.
     *
     * @return substances that are settled by it, and those that were before
     */
    private Set<Watched> take(Resolved ingredient, String where, Range grams, Assay stated, Set<Watched> before) {
        Map<Watched, Range> brought = new LinkedHashMap<>();
        for (Watched watched : knowledge.watched()) {
            @Nullable Range own = stated.fractions(watched, ingredient.gramsPerMillilitre());
            @Nullable
            Range fractions = own == null
                    ? Assay.together(analyses.wholes(ingredient.name()), watched, ingredient.gramsPerMillilitre())
                    : own;
            if (fractions != null && !before.contains(watched) && !isBelowTables(ingredient, watched, fractions)) {
                Range most = grams.times(fractions);
                brought.put(watched, isPlant(ingredient.kind()) ? new Range(0.0, most.most()) : most);
            }
        }
        if (brought.isEmpty()) {
            return before;
        }
        found.add(new Found(where, bottle, brought));
        Set<Watched> settled = new LinkedHashSet<>(before);
        settled.addAll(brought.keySet());
        return settled;
    }

    /** Of an essential oil the tables know the parts of a sum; less of the whole sum than they have at most lifts no limit. */
    private static boolean isBelowTables(Resolved ingredient, Watched watched, Range fractions) {
        if (ingredient.kind() != Kind.ESSENTIAL_OIL) {
            return false;
        }
        Map<String, Range> tabled = FarAnalysis.tabled(ingredient.name());
        double most = watched.members().stream()
                .mapToDouble(member -> tabled.getOrDefault(String.valueOf(Materials.keyOf(member)), Range.NOTHING)
                        .most())
                .sum();
        return fractions.most() < most;
    }

    /** Returns what a recipe states of a plant, or of what one by name brings, where no table of constituents has it: it is not added as such. */
    private static Assay stated(Resolved ingredient, NamedPlants plants) {
        @Nullable Typed<Aroma> aroma = ingredient.ingredient().aroma();
        if (aroma == null) {
            return Assay.NONE;
        }
        Assay all = Assay.stated(aroma.value().parts());
        return isPlant(ingredient.kind())
                ? all
                : new Assay(all.parts().stream()
                        .filter(part -> Constituents.find(part.name()) == null && isOf(part, plants.plants()))
                        .toList());
    }

    private static boolean isOf(Assay.Part part, List<Plant> plants) {
        return plants.stream().flatMap(plant -> plant.holds().stream()).anyMatch(held -> part.isOf(held));
    }

    private void portion(PlannedLine line, String where, Range grams, Set<Watched> before) {
        Resolved ingredient = line.ingredient();
        String name = ingredient.name();
        settled = before;
        @Nullable Pure pure = pure(name, isWeighedAsSalt(ingredient.kind()));
        double oil = ingredient.perGram().grams(Substance.OIL);
        if (pure != null && !isPlant(ingredient.kind())) {
            Range all = oil > 0.0 ? grams.times(oil) : grams;
            add(where, ingredient, Portion.Form.SUBSTANCE, all.times(pure.part()), NONE, pure.watched());
            return;
        }
        NamedPlants plants =
                Kernels.withoutStones(plants(ingredient.ingredient().plants()), line, knowledge);
        settled = take(ingredient, where, grams, stated(ingredient, plants), before);
        @Nullable Watched dissolved = plants.plants().isEmpty() && !isPlant(ingredient.kind()) ? named(name) : null;
        if (dissolved != null) {
            dissolved(ingredient, where, grams, dissolved);
        } else if (isPlant(ingredient.kind())) {
            boolean fresh = ingredient.kind() == Kind.FRESH_PLANT;
            double dry = fresh ? 1.0 - ingredient.perGram().grams(Substance.WATER) : 1.0;
            add(where, ingredient, Portion.Form.PLANT, grams.times(Math.max(0.0, dry)), plants, null);
        } else if (oil > 0.0) {
            oils(ingredient, where, grams.times(oil), plants);
        } else if (ingredient.gramsOfPlant() > 0.0) {
            double dry =
                    ingredient.gramsOfPlant() * dryPart(ingredient.ingredient().plants());
            add(where, ingredient, Portion.Form.PLANT, grams.times(dry), plants, null);
        } else if (carries(ingredient.kind()) || bringsSome(ingredient, plants.plants()) || isNoTableSalt(ingredient)) {
            add(where, ingredient, Portion.Form.AMOUNT_NOT_KNOWN, Range.NOTHING, plants, null);
        }
    }

    /** "Coumarin in alcohol" is coumarin as such; where nobody says how much of it is dissolved, that is not known. */
    private void dissolved(Resolved ingredient, String where, Range grams, Watched substance) {
        double part = ingredient.oilParts().stream()
                .filter(each -> substance.counts(each.constituent()))
                .mapToDouble(OilPart::part)
                .sum();
        double oil = ingredient.perGram().grams(Substance.OIL);
        add(
                where,
                ingredient,
                oil > 0.0 ? Portion.Form.SUBSTANCE : Portion.Form.AMOUNT_NOT_KNOWN,
                grams.times(oil * (part > 0.0 ? part : 1.0)),
                NONE,
                substance);
    }

    /** Returns the watched substance that is all a name says but for forms and qualities. */
    private @Nullable Watched named(String name) {
        for (String reading : Words.readings(name)) {
            Words.Named<Watched> named = Words.read(reading, knowledge.watched(), Watched::names);
            boolean alone = NameWords.of(named.rest()).stream()
                    .allMatch(word -> NameWords.saysNothing(word) && !NameWords.isPart(word));
            if (named.things().size() == 1 && alone) {
                return named.things().get(0);
            }
        }
        return null;
    }

    /** A fresh plant counts without its water, where its maker says that it was fresh; else it is taken for a dried one. */
    private static double dryPart(String plants) {
        org.stillroom.core.extraction.Plant known = Plants.find(plants);
        return known != null && Words.any(plants, FRESH) ? 1.0 - known.water() : 1.0;
    }

    /** Takes the oils that are named in it one by one, then what is left of the oil with the constituents that are named. */
    private void oils(Resolved ingredient, String where, Range oil, NamedPlants plants) {
        List<Plant> left = new ArrayList<>(plants.plants());
        Map<String, Double> stated = new LinkedHashMap<>();
        double own = 0.0;
        for (OilPart each : notSettled(ingredient, plants)) {
            Constituent constituent = each.constituent();
            @Nullable Pure pure = constituent == null ? pure(each.name(), true) : null;
            if (pure != null && isOwnOf(ingredient, pure.watched(), plants)) {
                own += each.part();
            } else if (pure != null) {
                portions.add(new Portion(
                        where + ": " + each.name(),
                        each.name(),
                        each.name(),
                        ingredient.kind(),
                        Portion.Form.SUBSTANCE,
                        oil.times(each.part()).times(pure.part()),
                        List.of(),
                        List.of(),
                        pure.watched(),
                        Map.of(),
                        bottle,
                        settled));
            } else if (constituent != null) {
                stated.merge(constituent.cas(), each.part(), Double::sum);
                own += each.part();
            } else if (each.name().equals(ingredient.name())) {
                own += each.part();
            } else {
                NamedPlants of = plants(each.name());
                left.removeAll(of.plants());
                Range grams = oil.times(each.part());
                portions.add(new Portion(
                        where + ": " + each.name(),
                        each.name(),
                        each.name(),
                        ingredient.kind(),
                        Portion.Form.OIL,
                        grams,
                        of.plants(),
                        of.unread(),
                        null,
                        Map.of(),
                        bottle,
                        settled));
            }
        }
        if (own > 0.0 || left.stream().anyMatch(plant -> !plant.holds().isEmpty())) {
            double part = own;
            stated.replaceAll((cas, share) -> share / part);
            Portion.Form form =
                    own > 0.0 && isWhole(ingredient.ingredient()) ? Portion.Form.OIL : Portion.Form.AMOUNT_NOT_KNOWN;
            add(where, ingredient, form, oil.times(own), new NamedPlants(left, plants.unread()), null, stated);
        }
    }

    /** Returns the parts of an oil but for the substances of which its analysis tells. */
    private List<OilPart> notSettled(Resolved ingredient, NamedPlants plants) {
        return ingredient.oilParts().stream()
                .filter(each -> {
                    @Nullable Pure pure = each.constituent() == null ? pure(each.name(), true) : null;
                    return pure == null
                            || !settled.contains(pure.watched())
                            || isOwnOf(ingredient, pure.watched(), plants);
                })
                .toList();
    }

    /** Returns whether an essential oil holds a substance by itself, so that stating it adds none of it as such. */
    private static boolean isOwnOf(Resolved ingredient, Watched watched, NamedPlants plants) {
        return ingredient.kind() == Kind.ESSENTIAL_OIL
                && plants.plants().stream()
                        .anyMatch(plant -> plant.holds().stream().anyMatch(watched::covers));
    }

    /** Returns whether the oil as a whole is known; else there may be more than the constituents that are named. */
    private static boolean isWhole(Ingredient ingredient) {
        return ingredient.aroma() == null
                || ingredient.kind() == Kind.ESSENTIAL_OIL
                || ingredient.contains().containsKey(Substance.OIL);
    }

    private void add(
            String where,
            Resolved ingredient,
            Portion.Form form,
            Range grams,
            NamedPlants plants,
            @Nullable Watched substance) {
        add(where, ingredient, form, grams, plants, substance, Map.of());
    }

    private void add(
            String where,
            Resolved ingredient,
            Portion.Form form,
            Range grams,
            NamedPlants plants,
            @Nullable Watched substance,
            Map<String, Double> stated) {
        String words = ingredient.ingredient().words();
        portions.add(new Portion(
                where,
                ingredient.name(),
                words,
                ingredient.kind(),
                form,
                grams,
                plants.plants(),
                plants.unread(),
                substance,
                stated,
                bottle,
                settled));
    }

    /** An almond oil that was freed from prussic acid brings none, though its name holds that of the almond. */
    private NamedPlants plants(String name) {
        NamedPlants named = NamedPlants.of(name, knowledge.plants());
        return isFreed(name) ? named.only(plant -> !plant.holds().contains("hydrogen cyanide")) : named;
    }

    /** Returns whether a name says that it was freed from prussic acid, and not that it was not. */
    static boolean isFreed(String name) {
        return WordList.FREED_OF_PRUSSIC_ACID.isIn(name);
    }

    /** A watched substance by itself, with how much of it is in a gram of what is weighed. */
    private record Pure(Watched watched, Range part) {}

    /** @param salts whether a salt of it by that name is weighed too; a tincture of one holds nobody knows how much */
    private @Nullable Pure pure(String name, boolean salts) {
        Matcher cas = CAS.matcher(name);
        String number = cas.find() ? cas.group(1) : "";
        String rest = cas.replaceAll("");
        String bare = bare(rest);
        @Nullable Salt salt = salts ? Salt.find(rest) : null;
        for (Watched watched : knowledge.watched()) {
            boolean numbered = bare.isEmpty() && !number.isEmpty() && watched.isNumbered(number);
            if (numbered || watched.names().contains(bare)) {
                return new Pure(watched, new Range(1.0, 1.0));
            }
            if (salt != null && watched.name().equals(salt.watched())) {
                return new Pure(watched, salt.base());
            }
        }
        return null;
    }

    private static String bare(String name) {
        return FORM.matcher(Words.plain(name)).replaceAll("");
    }

    private static boolean isWeighedAsSalt(Kind kind) {
        return kind == Kind.SALT || kind == Kind.OTHER || kind == Kind.ACID;
    }

    private static boolean isPlant(Kind kind) {
        return kind == Kind.FRESH_PLANT || kind == Kind.DRIED_PLANT;
    }

    /** Kinds that are made of plants, so that not knowing of which is worth a word. */
    private static boolean carries(Kind kind) {
        return switch (kind) {
            case ESSENTIAL_OIL, ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL, LIQUEUR, OTHER -> true;
            case FRESH_PLANT, DRIED_PLANT -> true;
            case SPIRIT, WINE, SUGAR, SYRUP, HONEY, JUICE, ACID, SALT, GLYCEROL, DAIRY, EGG, WATER -> false;
        };
    }

    /** Anything that is named after a plant with watched substances brings some of them; of juice only what is no common fruit. */
    private static boolean bringsSome(Resolved ingredient, List<Plant> plants) {
        boolean fruit = ingredient.kind() == Kind.JUICE
                && isFruit(ingredient.ingredient().plants());
        return !fruit && plants.stream().anyMatch(plant -> !plant.holds().isEmpty());
    }

    private static boolean isFruit(String plants) {
        return Words.readings(plants).stream()
                .map(reading ->
                        FOOD_WORDS.matcher(reading + " ").replaceAll(" ").strip())
                .anyMatch(Portions::isCommonFruit);
    }

    private static boolean isCommonFruit(String plant) {
        org.stillroom.core.extraction.Plant known = Plants.find(plant);
        return WordList.CITRUS_FRUIT.words().contains(plant)
                || (known != null && known.sort().isFruit());
    }

    /** A salt that is called otherwise than what is eaten may be anything. */
    private static boolean isNoTableSalt(Resolved ingredient) {
        return ingredient.kind() == Kind.SALT
                && !WordList.TABLE_SALT
                        .words()
                        .containsAll(
                                List.of(Words.plain(ingredient.name()).strip().split(" +", -1)));
    }
}
