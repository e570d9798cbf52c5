package org.stillroom.studio.usecase;

import org.stillroom.core.extraction.Maceration;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.ModelDoubt;
import org.stillroom.core.liquid.Substance;
import org.stillroom.studio.usecase.Macerate.Asked;
import org.stillroom.studio.usecase.MacerateCourse.Known;

/**
 * How far what comes may be off, by what is known of the plants, of what their marc holds, of the solubility of sugar and of the volume: half-widths of the
 * central 90 %.
 *
 * @param strength % vol
 * @param sugar g/L
 * @param ownSugar g/L of the plants' own
 */
record MacerateDoubt(double strength, double sugar, double ownSugar) {
    static MacerateDoubt of(Asked asked, MacerateCourse course) {
        Essentials comes = Essentials.of(course.comes().toGrams());
        MacerateCourse wetterCourse = MacerateCourse.of(asked, Known.WETTER);
        Maceration wet = wetterCourse.last();
        Essentials wetter = Essentials.of(wetterCourse.comes().toGrams());
        Essentials sweeter =
                Essentials.of(MacerateCourse.of(asked, Known.SWEETER).comes().toGrams());
        Essentials drier = Essentials.of(
                MacerateCourse.of(asked, Known.HOLDING_LESS).comes().toGrams());
        Essentials less = lessDissolved(course);
        double model =
                ModelDoubt.of(wet.liquid().toGrams(), wet.volume() + wet.held()).strengthHalfWidth();
        double own = 1000.0
                * course.part()
                * asked.charges().stream()
                        .mapToDouble(each -> each.grams() * each.plant().sugarDoubt())
                        .sum();
        return new MacerateDoubt(
                length(
                        comes.strength() - wetter.strength(),
                        comes.strength() - sweeter.strength(),
                        comes.strength() - drier.strength(),
                        comes.strength() - less.strength(),
                        model),
                length(
                        comes.sugar() - wetter.sugar(),
                        comes.sugar() - sweeter.sugar(),
                        comes.sugar() - drier.sugar(),
                        comes.sugar() - less.sugar()),
                own / comes.millilitres());
    }

    /** What comes when so much less sugar dissolves as the solubility is in doubt. */
    private static Essentials lessDissolved(MacerateCourse course) {
        double sugar = course.comes().grams(Substance.SUCROSE);
        double doubt = course.last().partThatComes()
                * course.last().undissolvedInDoubt().doubt();
        return Essentials.of(course.comes()
                .with(Substance.SUCROSE, Math.max(0.0, sugar - doubt))
                .toGrams());
    }

    /** Returns the length of what has these parts. */
    static double length(double... parts) {
        double squares = 0.0;
        for (double part : parts) {
            squares += part * part;
        }
        return Math.sqrt(squares);
    }
}
