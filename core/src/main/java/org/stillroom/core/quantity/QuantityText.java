package org.stillroom.core.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads quantities as people type them: "330 ml", "3/4 oz", "15 drops", "28 %", "56 proof", "180 g/L", "1:5", "24 °Bx".
 *
 * <p>Never throws for a text, whatever it holds: what has one meaning is understood, with what was taken for granted
 * beside it; what has several is asked; anything else is refused with what to write instead. The point is the decimal
 * sign ("1.500 kg" is 1.5 kg), the comma is one too where it cannot group thousands ("1,5", "SG 1,050"), and "1,500 g"
 * is asked.
 * Immutable.
 */
public final class QuantityText {
    /** Longer than any quantity; what is longer is a slip, such as a whole paragraph in the wrong field. */
    private static final int LONGEST = 200;

    private final Units units;

    /** Reads one quantity from a phrase. */
    private interface Words<Q> {
        Q read(Phrase phrase) throws NotUnderstood;
    }

    public QuantityText(OunceMeaning ounce) {
        this.units = Units.of(ounce);
    }

    public Understanding<Mass> mass(String text) {
        return understand(text, AmountWords::mass);
    }

    public Understanding<Volume> volume(String text) {
        return understand(text, AmountWords::volume);
    }

    /** Reads a mass, a volume or drops; "oz" is a fluid ounce. */
    public Understanding<Amount> amount(String text) {
        return understand(text, AmountWords::amount);
    }

    /** Reads an amount per volume of finished liquid, such as "24 drops/L" or "0.1 ml per 100 ml". */
    public Understanding<Dose> dose(String text) {
        return understand(text, AmountWords::dose);
    }

    public Understanding<Bottles> bottles(String text) {
        return understand(text, AmountWords::bottles);
    }

    /** Reads a strength; "%" alone is by volume at 20 °C. */
    public Understanding<Strength> strength(String text) {
        return understand(text, StrengthWords::strength);
    }

    /** Reads the content of an acid, a salt or a sugar; "%" alone is by mass, the same as °Bx. */
    public Understanding<Share> share(String text) {
        return understand(text, ShareWords::share);
    }

    /** Reads degrees Brix, where a bare number means them too. */
    public Understanding<Brix> brix(String text) {
        return understand(text, ShareWords::brix);
    }

    public Understanding<Temperature> temperature(String text) {
        return understand(text, TemperatureWords::temperature);
    }

    /** Reads a density or a specific gravity; the latter is 20/20 °C in vacuum unless 60/60 is said. */
    public Understanding<Density> density(String text) {
        return understand(text, DensityWords::density);
    }

    /** Reads a price per amount ("22 EUR/L") or for one pack ("18.50 EUR"). */
    public Understanding<Price> price(String text) {
        return understand(text, PriceWords::price);
    }

    public Understanding<Wait> wait(String text) {
        return understand(text, OtherWords::wait);
    }

    /** Reads a percentage or a tolerance, 0 to 100, as per cent; its sign may be left out. */
    public Understanding<Double> percent(String text) {
        return understand(text, OtherWords::percent);
    }

    /** Reads a bare number, as an instrument shows it whose scale is known. */
    public Understanding<Double> number(String text) {
        return understand(text, OtherWords::number);
    }

    /** Reads a pH of a drink, 1.5 to 9, as a meter shows it: "3.4", "pH 3.4". */
    public Understanding<Double> ph(String text) {
        return understand(text, OtherWords::ph);
    }

    public Understanding<Ratio> ratio(String text) {
        return understand(text, OtherWords::ratio);
    }

    /** Reads a wanted volume, in mL. */
    public Understanding<Span> volumeSpan(String text) {
        return span(text, phrase -> AmountWords.volume(phrase).millilitres());
    }

    /** Reads a wanted strength, in % vol at 20 °C. */
    public Understanding<Span> strengthSpan(String text) {
        return span(text, StrengthWords::target);
    }

    /** Reads a wanted sugar content, in g/L; take words such as "as invert" off first with {@link SugarWords}. */
    public Understanding<Span> sugarSpan(String text) {
        return span(text, ShareWords::target);
    }

    /** Reads a wanted acidity, in g/L. */
    public Understanding<Span> aciditySpan(String text) {
        return span(text, ShareWords::target);
    }

    private Understanding<Span> span(String text, SpanWords.Value value) {
        return understand(text, phrase -> SpanWords.span(phrase, value));
    }

    private <Q> Understanding<Q> understand(String text, Words<Q> words) {
        if (text.length() > LONGEST) {
            return new Understanding.Refused<>(
                    text, "this is " + text.length() + " characters long; write one quantity, for instance 330 ml");
        }
        List<String> readings = CommaQuestion.readings(Spelling.alike(text));
        List<Understanding<Q>> answers = new ArrayList<>();
        for (String reading : readings) {
            answers.add(withoutIdleChoices(understand(text, reading, words), words));
        }
        return answers.size() == 1 ? answers.get(0) : settle(text, readings, answers);
    }

    private <Q> Understanding<Q> understand(String text, String reading, Words<Q> words) {
        Phrase phrase = new Phrase(reading, units);
        try {
            Q value = words.read(phrase);
            return new Understanding.Understood<>(new Typed<>(text, value), phrase.assumed());
        } catch (NotUnderstood reason) {
            return reason.about(text);
        }
    }

    /** Drops choices that would be refused, such as "180 %" for a content; where none is left, says why. */
    private <Q> Understanding<Q> withoutIdleChoices(Understanding<Q> answer, Words<Q> words) {
        if (!(answer instanceof Understanding.Ambiguous<Q> asked)) {
            return answer;
        }
        List<String> possible = asked.choices().stream()
                .filter(choice -> understand(choice, Spelling.alike(choice), words) instanceof Understanding.Understood)
                .toList();
        return possible.isEmpty()
                ? understand(asked.text(), Spelling.alike(asked.choices().get(0)), words)
                : new Understanding.Ambiguous<>(asked.text(), asked.question(), possible);
    }

    /** Takes the only reading of a comma that is possible, or asks which is meant, or refuses where none is. */
    private static <Q> Understanding<Q> settle(String text, List<String> readings, List<Understanding<Q>> answers) {
        List<String> choices = new ArrayList<>();
        List<Understanding<Q>> possible = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Understanding<Q> answer = answers.get(i);
            if (answer instanceof Understanding.Ambiguous<Q> asked) {
                choices.addAll(asked.choices());
                possible.add(answer);
            } else if (answer instanceof Understanding.Understood) {
                choices.add(readings.get(i));
                possible.add(answer);
            }
        }
        if (possible.isEmpty()) {
            return answers.get(0);
        }
        return possible.size() == 1
                ? possible.get(0)
                : new Understanding.Ambiguous<>(
                        text, "the comma may be the decimal sign or may group thousands; which is meant?", choices);
    }
}
