package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Rounded;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.recipe.Condition;

/** A finished drink as the rules see it. */
public final class Drink {
    /** From here on a drink is an alcoholic one, % vol. Source: Regulation (EU) 1169/2011, article 16(4). */
    private static final double ALCOHOLIC = 1.2;

    /** % vol. */
    private static final double SPIRIT_DRINK = 15.0;

    /** g/L as invert. */
    private static final double LIQUEUR = 80.0;

    /** From this much essential oil on it is an essence, g/L; strong aniseed drinks hold 2. Own judgement. */
    private static final double CONCENTRATE = 5.0;

    private final Plan planned;
    private final Plan plan;
    private final Grounds grounds;
    private final Figures figures;
    private final List<Portion> portions;
    private final List<Amount> amounts = new ArrayList<>();
    private final List<Amount> asMixed = new ArrayList<>();

    private Drink(Plan plan, Grounds grounds) {
        this.planned = plan;
        this.plan = grounds.drawn().of(plan);
        this.grounds = grounds;
        this.figures = Liquid.figures(plan.liquid(), Temperature.TWENTY_CELSIUS);
        Portions taken = Portions.of(plan, grounds);
        this.portions = taken.list();
        for (Watched watched : grounds.knowledge().watched()) {
            @Nullable Amount mixed = Amounts.of(watched, taken, kilograms(), litres(), grounds);
            if (mixed != null) {
                asMixed.add(mixed);
            }
            @Nullable Amount amount = AnalysedDrink.amount(this, watched, mixed);
            if (amount != null) {
                amounts.add(amount);
            }
        }
    }

    /**
     * Returns what a plan makes.
     *
     * @throws IllegalArgumentException when it makes nothing
     */
    public static Drink of(Plan plan, Grounds grounds) {
        if (plan.liquid().total() == 0.0) {
            throw new IllegalArgumentException("nothing is made, so nothing can be in it");
        }
        return new Drink(plan, grounds);
    }

    /** Returns what was planned, each bottle that a line is poured from as a line of its own. */
    public Plan plan() {
        return plan;
    }

    public Knowledge knowledge() {
        return grounds.knowledge();
    }

    Condition condition() {
        @Nullable Condition known = grounds.condition();
        return known == null ? plan.recipe().condition() : known;
    }

    LotAnalyses analyses() {
        return grounds.analyses();
    }

    HouseRules houseRules() {
        return grounds.house();
    }

    public Figures figures() {
        return figures;
    }

    /** Returns everything that can carry watched substances. */
    public List<Portion> portions() {
        return portions;
    }

    /** Returns the watched substances that are in it or expected in it. */
    public List<Amount> amounts() {
        return List.copyOf(amounts);
    }

    @Nullable
    Amount amount(String watched) {
        return of(watched, amounts);
    }

    /** Returns how much there is by what goes in, whatever an analysis of the drink says; null where nothing brings any. */
    @Nullable
    Amount asMixed(String watched) {
        return of(watched, asMixed);
    }

    private static @Nullable Amount of(String watched, List<Amount> amounts) {
        return amounts.stream()
                .filter(amount -> amount.watched().name().equals(watched))
                .findFirst()
                .orElse(null);
    }

    double kilograms() {
        return figures.value(Figure.MASS) / 1000.0;
    }

    /** Returns litres at 20 °C. */
    double litres() {
        return figures.value(Figure.VOLUME_20C) / 1000.0;
    }

    /** Returns % vol at 20 °C. */
    double strength() {
        return figures.has(Figure.STRENGTH) ? figures.value(Figure.STRENGTH) : 0.0;
    }

    /** Returns whether its recipe says that it is an essence; no strength of oil makes it one, so that no slip loses a limit. */
    boolean isEssence() {
        return plan.recipe().isEssence();
    }

    /** Returns whether it holds as much oil as an essence does. */
    boolean isStrongInOil() {
        return gramsPerLitre(Substance.OIL) >= CONCENTRATE;
    }

    boolean isAlcoholic() {
        return strength() > ALCOHOLIC;
    }

    /** Returns grams of a substance per litre of the drink at 20 °C. */
    double gramsPerLitre(Substance substance) {
        Contents liquid = plan.liquid();
        return 1000.0 * liquid.grams(substance) / figures.value(Figure.VOLUME_20C);
    }

    boolean hasMint() {
        return hasPlant(plant -> plant.isOfGenus("Mentha"));
    }

    /** Returns whether an Artemisia is in it; tarragon does not count, for it holds no thujone and must not raise the maximum. */
    boolean hasArtemisia() {
        return hasPlant(plant -> plant.isOfGenus("Artemisia") && !plant.isOfGenus("Artemisia dracunculus"));
    }

    /** Returns whether it is strong enough for a spirit drink. Source: Regulation (EU) 2019/787, article 2(c): 15 % vol. */
    boolean isSpiritDrink() {
        return Rounded.toNinth(strength()) >= SPIRIT_DRINK;
    }

    /** Returns whether it is also as sweet as a liqueur has to be, those of gentian among them. Source: the same, Annex I 33: 80 g/L as invert. */
    boolean isLiqueur() {
        return isSpiritDrink() && Rounded.toNinth(figures.value(Figure.SUGAR_AS_INVERT)) >= LIQUEUR;
    }

    boolean isBitter() {
        return hasPlant(plant -> WordList.BITTER_PLANTS.words().contains(plant.name()));
    }

    private boolean hasPlant(java.util.function.Predicate<Plant> test) {
        return portions.stream().flatMap(portion -> portion.plants().stream()).anyMatch(test);
    }

    /** Returns the lines of the recipe and of its stages that take anything, one for each bottle that they are poured from. */
    List<PlannedLine> lines() {
        List<PlannedLine> lines = new ArrayList<>();
        collect(plan, lines);
        return lines;
    }

    /** Returns what was planned with each line once, for what is added up. */
    Plan planned() {
        return planned;
    }

    /** Returns a line of it as each bottle is that it can be poured from. */
    List<PlannedLine> bottles(PlannedLine line) {
        return grounds.drawn().of(line);
    }

    private static void collect(Plan plan, List<PlannedLine> lines) {
        plan.lines().stream().filter(line -> line.grams() > 0.0).forEach(lines::add);
        plan.stages().forEach(stage -> collect(stage.plan(), lines));
    }
}
