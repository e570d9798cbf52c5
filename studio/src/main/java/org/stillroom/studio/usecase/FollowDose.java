package org.stillroom.studio.usecase;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.ExtractStrength;
import org.stillroom.core.ingredient.Ingredient;
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
import org.stillroom.core.quantity.Ratio;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.shelffile.LotKeys;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.ShelfLots;

/** Tells the dose of a lot in place of another that is stronger or weaker: by taste, by plant to extract, or by the oil in it. */
public final class FollowDose {
    /** Nearer than this to the recipe's the dose is left as it is; no dropper shows the difference. Own judgement. */
    private static final double SAME = 0.02;

    private final QuantityText quantities;

    public FollowDose(QuantityText quantities) {
        this.quantities = quantities;
    }

    /** What says how strong the other is. */
    public enum Basis {
        TASTE,
        RATIO,
        CONTENT
    }

    /**
     * What the maker found equally strong; blank where nothing was compared.
     *
     * @param ofRecipe so much of the recipe's, such as "10 ml"
     * @param ofOther so much of the other
     */
    public record Compared(String ofRecipe, String ofOther) {
        public static final Compared NOT = new Compared("", "");

        boolean isBlank() {
            return ofRecipe.isBlank() && ofOther.isBlank();
        }
    }

    /**
     * An extract.
     *
     * @param ratio plant to extract, such as "1:5", or null
     * @param oil g/L at 20 °C; 0 where none is known
     * @param strength % vol
     */
    public record Extract(String name, @Nullable String ratio, double oil, double strength) {
        /** Returns a lot. */
        public static @Nullable Extract of(LotOnShelf lot) {
            Ingredient ingredient = lot.ingredient();
            return ingredient == null
                    ? null
                    : of(ingredient, lot.lot().sheet().fields().get(LotKeys.RATIO));
        }

        /**
         * Returns what a recipe lists, with the ratio of the first lot of its name that says one.
         *
         * @param besides id of a lot that does not count
         */
        public static @Nullable Extract of(Ingredient listed, List<LotOnShelf> shelf, String besides) {
            return of(
                    listed,
                    ShelfLots.named(listed.name(), shelf).stream()
                            .filter(lot -> !lot.lot().id().equals(besides))
                            .map(lot -> lot.lot().sheet().fields().get(LotKeys.RATIO))
                            .filter(ratio -> ratio != null)
                            .findFirst()
                            .orElse(null));
        }

        private static @Nullable Extract of(Ingredient ingredient, @Nullable String ratio) {
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
     * @param after as it would be typed
     */
    public record Offer(Basis basis, AdjustDose.Found found, String before, String after) {}

    /**
     * Returns the dose that follows, or null where none does: nothing says how strong the other is, it is as strong, or the line has no
     * dose.
     *
     * @param amount of the line, as typed
     */
    public @Nullable Offer answer(Extract ofRecipe, Extract other, String amount, Compared compared) {
        Dose dose = dose(amount);
        Basis basis = basis(ofRecipe, other, compared);
        ExtractStrength strength = basis == null ? null : strength(basis, ofRecipe, other, compared);
        if (dose == null || basis == null || strength == null || Math.abs(strength.times() - 1.0) < SAME) {
            return null;
        }
        boolean perLitre = isPerLitre(amount);
        AdjustDose.Found found = AdjustDose.answer(
                new AdjustDose.Asked(
                        number(dose.perLitre()),
                        strength,
                        OptionalDouble.of(ofRecipe.strength()),
                        OptionalDouble.of(other.strength()),
                        perLitre && dose.perLitre() instanceof Volume volume
                                ? OptionalDouble.of(volume.millilitres())
                                : OptionalDouble.empty()),
                Workings.NONE);
        Amount after = dose.in(Volume.litres(1.0 / strength.times()));
        return new Offer(basis, found, amount.strip(), text(after) + (perLitre ? "/L" : ""));
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

    private @Nullable Basis basis(Extract ofRecipe, Extract other, Compared compared) {
        if (!compared.isBlank()) {
            return Basis.TASTE;
        }
        if (ofRecipe.ratio() != null && other.ratio() != null) {
            return Basis.RATIO;
        }
        return ofRecipe.oil() > 0.0 && other.oil() > 0.0 ? Basis.CONTENT : null;
    }

    private @Nullable ExtractStrength strength(Basis basis, Extract ofRecipe, Extract other, Compared compared) {
        return switch (basis) {
            case TASTE -> byTaste(compared);
            case RATIO -> byRatio(ratio(ofRecipe.ratio()), ratio(other.ratio()));
            case CONTENT -> ExtractStrength.byContent(ofRecipe.oil(), other.oil());
        };
    }

    private @Nullable ExtractStrength byTaste(Compared compared) {
        Amount one = amount(compared.ofRecipe());
        Amount two = amount(compared.ofOther());
        return one == null || two == null || one.getClass() != two.getClass()
                ? null
                : ExtractStrength.byComparison(List.of(new ExtractStrength.Comparison(number(one), number(two))));
    }

    private static @Nullable ExtractStrength byRatio(@Nullable Double one, @Nullable Double two) {
        return one == null || two == null ? null : ExtractStrength.byContent(one, two);
    }

    private @Nullable Double ratio(@Nullable String text) {
        return text != null && quantities.ratio(text) instanceof Understanding.Understood<Ratio> understood
                ? Double.valueOf(understood.typed().value().leftPerRight())
                : null;
    }

    private static double number(Amount amount) {
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
