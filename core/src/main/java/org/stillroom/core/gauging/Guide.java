package org.stillroom.core.gauging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.Temperature;

/**
 * Which methods serve best for a liquid before anything is measured: the doubt that each choice would leave, by the estimator's own
 * covariance at readings that fit exactly.
 */
public final class Guide {
    /** How a doubt of sugar weighs against one of strength: 10 g/L are worth 1 % vol. */
    private static final double SUGAR_PER_STRENGTH = 10.0;

    private Guide() {}

    /**
     * A choice of methods.
     *
     * @param methods which
     * @param strength half-width of the central 90 % that it would leave, % vol
     * @param sugar the same, g/L
     * @param sampleMillilitres the most that must be out of the vessel at once, mL; one sample serves all methods that give it back
     * @param lostMillilitres what does not go back, mL
     */
    public record Choice(
            List<Method> methods, double strength, double sugar, double sampleMillilitres, double lostMillilitres) {
        public Choice {
            methods = List.copyOf(methods);
        }

        /** Returns whether it takes so much of a batch that it costs it dearly; never where its volume is not known. */
        public boolean isDear(@Nullable Double millilitres) {
            return millilitres != null && sampleMillilitres > Method.DEAR * millilitres;
        }

        private double worth() {
            return Math.hypot(strength, sugar / SUGAR_PER_STRENGTH);
        }
    }

    /**
     * Returns the choices of one or two methods that tell strength and sugar, best first; those that take more than a tenth of a small
     * batch come after all others.
     *
     * @param liquid what is likely in the vessel
     * @param poured what went in, where that is known
     * @param thermometer that the temperature is read by
     * @param millilitres how much there is, or null when it does not matter
     */
    public static List<Choice> choices(
            List<Method> have,
            Contents liquid,
            @Nullable Poured poured,
            Thermometer thermometer,
            @Nullable Double millilitres) {
        List<Choice> choices = new ArrayList<>();
        for (int i = 0; i < have.size(); i++) {
            choice(List.of(have.get(i)), liquid, poured, thermometer).ifPresent(choices::add);
            for (int j = i + 1; j < have.size(); j++) {
                choice(List.of(have.get(i), have.get(j)), liquid, poured, thermometer)
                        .ifPresent(choices::add);
            }
        }
        Comparator<Choice> cheapFirst = Comparator.comparing(choice -> choice.isDear(millilitres));
        choices.sort(cheapFirst.thenComparingDouble(Choice::worth));
        return List.copyOf(choices);
    }

    /** Returns what some methods together would tell, or empty where they leave strength or sugar open. */
    public static Optional<Choice> choice(
            List<Method> methods, Contents liquid, @Nullable Poured poured, Thermometer thermometer) {
        List<Reading> readings = new ArrayList<>();
        double sample = 0.0;
        double lost = 0.0;
        for (Method method : methods) {
            for (Method.Instrument instrument : method.instruments()) {
                readings.add(Reading.foreseen(
                        instrument.shown(), liquid, Temperature.TWENTY_CELSIUS, instrument.halfWidth()));
            }
            sample = Math.max(sample, method.sampleMillilitres());
            lost += method.cost();
        }
        double most = sample;
        double gone = lost;
        return Gauging.of(readings, poured, thermometer)
                .map(gauged -> new Choice(
                        methods, gauged.strength().halfWidth(), gauged.sugar().halfWidth(), most, gone));
    }
}
