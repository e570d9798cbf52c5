package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.ExtractStrength;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.PlantRatio;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.ShelfLots;

/** Tells the dose of a lot in place of another that is stronger or weaker: by taste, by a constituent, by plant to extract, or by the oil in it. */
public final class FollowDose {
    /** Nearer than this to the recipe's the dose is left as it is; no dropper shows the difference. Own judgement. */
    private static final double SAME = 0.02;

    private final QuantityText quantities;

    public FollowDose(QuantityText quantities) {
        this.quantities = quantities;
    }

    /** What says how strong the other is, what counts first at the front. */
    public enum Basis {
        /** What the maker found equally strong. */
        TASTE,
        /** What the maker knows of a constituent in both. */
        CONSTITUENT,
        /** Plant to extract. */
        RATIO,
        /** The oil in both. */
        OIL
    }

    /**
     * An extract.
     *
     * @param ratio how much plant it carries, or null
     * @param oil g/L at 20 °C; 0 where none is known
     * @param strength % vol
     */
    public record Extract(String name, @Nullable PlantRatio ratio, double oil, double strength) {
        /** Returns a lot. */
        public static @Nullable Extract of(LotOnShelf lot) {
            Ingredient ingredient = lot.ingredient();
            return ingredient == null ? null : of(ingredient, ratio(ingredient));
        }

        /**
         * Returns what a recipe lists, where it says no ratio with that of the first lot of its name that says one.
         *
         * @param besides id of a lot that does not count
         */
        public static @Nullable Extract of(Ingredient listed, List<LotOnShelf> shelf, String besides) {
            PlantRatio own = ratio(listed);
            return of(
                    listed,
                    own != null
                            ? own
                            : ShelfLots.named(listed.name(), shelf).stream()
                                    .filter(lot -> !lot.lot().id().equals(besides))
                                    .flatMap(lot -> Stream.ofNullable(ratio(lot.ingredient())))
                                    .findFirst()
                                    .orElse(null));
        }

        private static @Nullable PlantRatio ratio(@Nullable Ingredient ingredient) {
            Typed<PlantRatio> ratio = ingredient == null ? null : ingredient.ratio();
            return ratio == null ? null : ratio.value();
        }

        private static @Nullable Extract of(Ingredient ingredient, @Nullable PlantRatio ratio) {
            Resolved resolved = Resolution.of(ingredient).resolved();
            if (resolved == null || resolved.solid() || resolved.perGram().total() == 0.0) {
                return null;
            }
            Essentials essentials = Essentials.of(resolved.perGram().toGrams());
            double oil = 1000.0 * resolved.perGram().grams(Substance.OIL) / essentials.millilitres();
            return new Extract(ingredient.name(), ratio, oil, essentials.strength());
        }
    }

    /**
     * The dose that follows.
     *
     * @param before as it is typed
     * @param after as it would be typed; the same where the other is as strong
     */
    public record Offer(Basis basis, AdjustDose.Found found, String before, String after) {
        /** Returns whether the dose stays. */
        public boolean isSame() {
            return before.equals(after);
        }
    }

    /**
     * Returns the doses that follow, by each basis that there is, the one that counts first at the front; none where the line has no dose.
     *
     * @param ofRecipe null where what is in it is not known
     * @param other null where what is in it is not known
     * @param amount of the line, as typed
     * @param said what the maker says of both, which goes before what their sheets say
     */
    public List<Offer> answer(
            @Nullable Extract ofRecipe, @Nullable Extract other, String amount, Map<Basis, ExtractStrength> said) {
        Dose dose = dose(amount);
        if (dose == null) {
            return List.of();
        }
        Map<Basis, ExtractStrength> strengths = new EnumMap<>(Basis.class);
        if (ofRecipe != null && other != null) {
            byRatio(ofRecipe.ratio(), other.ratio()).ifPresent(strength -> strengths.put(Basis.RATIO, strength));
            if (ofRecipe.oil() > 0.0 && other.oil() > 0.0 && !isSame(other.oil() / ofRecipe.oil())) {
                strengths.put(Basis.OIL, ExtractStrength.byContent(ofRecipe.oil(), other.oil()));
            }
        }
        strengths.putAll(said);
        List<Offer> offers = new ArrayList<>();
        strengths.forEach(
                (basis, strength) -> offers.add(offer(basis, strength, dose, amount.strip(), ofRecipe, other)));
        return offers;
    }

    private Offer offer(
            Basis basis,
            ExtractStrength strength,
            Dose dose,
            String amount,
            @Nullable Extract ofRecipe,
            @Nullable Extract other) {
        boolean perLitre = isPerLitre(amount);
        AdjustDose.Found found = AdjustDose.answer(
                new AdjustDose.Asked(
                        number(dose.perLitre()),
                        strength,
                        ofRecipe == null ? OptionalDouble.empty() : OptionalDouble.of(ofRecipe.strength()),
                        other == null ? OptionalDouble.empty() : OptionalDouble.of(other.strength()),
                        perLitre && dose.perLitre() instanceof Volume volume
                                ? OptionalDouble.of(volume.millilitres())
                                : OptionalDouble.empty()),
                Workings.NONE);
        Amount after = dose.in(Volume.litres(1.0 / strength.times()));
        return new Offer(
                basis, found, amount, isSame(strength.times()) ? amount : text(after) + (perLitre ? "/L" : ""));
    }

    private static boolean isSame(double times) {
        return Math.abs(times - 1.0) < SAME;
    }

    private boolean isPerLitre(String amount) {
        return quantities.dose(amount) instanceof Understanding.Understood<Dose>;
    }

    /** Returns an amount, per litre or as a whole, or null where the line has none. */
    private @Nullable Dose dose(String amount) {
        if (quantities.dose(amount) instanceof Understanding.Understood<Dose> perLitre) {
            return number(perLitre.typed().value().perLitre()) > 0.0
                    ? perLitre.typed().value()
                    : null;
        }
        Amount whole = amount(amount);
        return whole == null ? null : new Dose(whole);
    }

    private @Nullable Amount amount(String text) {
        return quantities.amount(text) instanceof Understanding.Understood<Amount> understood
                        && number(understood.typed().value()) > 0.0
                ? understood.typed().value()
                : null;
    }

    private static Optional<ExtractStrength> byRatio(@Nullable PlantRatio one, @Nullable PlantRatio two) {
        return one == null || two == null
                ? Optional.empty()
                : Optional.of(ExtractStrength.byContent(one.gramsPerMillilitre(), two.gramsPerMillilitre()));
    }

    /** Returns the number of an amount: mL, g or drops. */
    public static double number(Amount amount) {
        if (amount instanceof Volume volume) {
            return volume.millilitres();
        }
        return amount instanceof Mass mass ? mass.grams() : ((Drops) amount).count();
    }

    /** Returns an amount in three figures, small ones in the thousandth of their unit. */
    private static String text(Amount amount) {
        double number = number(amount);
        if (amount instanceof Drops) {
            return QuantityWords.figures(number) + " drops";
        }
        boolean small = number < 0.1;
        String unit = amount instanceof Volume ? small ? " µl" : " ml" : small ? " mg" : " g";
        return QuantityWords.figures(small ? 1000.0 * number : number) + unit;
    }
}
