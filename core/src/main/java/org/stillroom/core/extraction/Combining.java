package org.stillroom.core.extraction;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;

/**
 * Several macerates brought to one strength of extract and one of alcohol: weaker and stronger ones together, strong spirit and water.
 *
 * <p>As much is made as the extract of all of them is enough for. Where the weaker ones would leave no room, only a part of them goes in,
 * of each the same part.
 *
 * @param taken part of each macerate that goes in, 0 to 1, in their order
 * @param volume mL that it makes, at 20 °C
 * @param finishing what is added
 */
public record Combining(List<Double> taken, double volume, Finishing finishing) {
    private static final int HALVINGS = 50;

    public Combining {
        taken = List.copyOf(taken);
    }

    /**
     * A macerate.
     *
     * @param contents all of it
     * @param extract how much extract it holds altogether, in the unit of the content times mL
     */
    public record Macerate(Contents contents, double extract) {
        double millilitres() {
            return Essentials.of(contents.toGrams()).millilitres();
        }

        double content() {
            return extract / millilitres();
        }
    }

    /**
     * Returns what is taken and added.
     *
     * @param macerates one at least
     * @param content of extract that is wanted, per mL
     * @param strength that is wanted, % vol
     * @param litreOfSpirit a litre of the spirit to fortify with
     * @throws IllegalArgumentException when it cannot be, with a text for people
     */
    public static Combining of(List<Macerate> macerates, double content, double strength, Contents litreOfSpirit) {
        double strongest =
                macerates.stream().mapToDouble(Macerate::content).max().orElse(0.0);
        if (!(strongest > content)) {
            throw new IllegalArgumentException("none of the macerates holds more extract than is wanted");
        }
        if (fits(macerates, content, strength, litreOfSpirit, 1.0)) {
            return made(macerates, content, strength, litreOfSpirit, 1.0);
        }
        if (!fits(macerates, content, strength, litreOfSpirit, 0.0)) {
            return made(macerates, content, strength, litreOfSpirit, 0.0); // says why not
        }
        double low = 0.0;
        double high = 1.0;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            boolean fits = fits(macerates, content, strength, litreOfSpirit, middle);
            low = fits ? middle : low;
            high = fits ? high : middle;
        }
        return made(macerates, content, strength, litreOfSpirit, low);
    }

    private static boolean fits(
            List<Macerate> macerates, double content, double strength, Contents litreOfSpirit, double ofWeaker) {
        try {
            return made(macerates, content, strength, litreOfSpirit, ofWeaker).volume() > 0.0;
        } catch (IllegalArgumentException noRoom) {
            return false;
        }
    }

    private static Combining made(
            List<Macerate> macerates, double content, double strength, Contents litreOfSpirit, double ofWeaker) {
        List<Double> taken = new ArrayList<>();
        Contents together = Contents.NONE;
        double extract = 0.0;
        for (Macerate macerate : macerates) {
            double part = macerate.content() < content ? ofWeaker : 1.0;
            taken.add(part);
            together = together.plus(macerate.contents().times(part));
            extract += part * macerate.extract();
        }
        double volume = extract / content;
        Finishing.Wanted wanted = new Finishing.Wanted(volume, strength, OptionalDouble.empty());
        return new Combining(taken, volume, Finishing.of(together, wanted, litreOfSpirit));
    }
}
