package org.stillroom.studio.usecase;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.stillroom.core.label.CalledNames;
import org.stillroom.core.label.LegalClass;
import org.stillroom.core.label.Market;
import org.stillroom.core.label.Miss;
import org.stillroom.core.label.Shown;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** A title that bears a lawful name calls the drink so, whatever stands below it. */
final class TitleName {
    /** Name of the finding. */
    static final String NAME = "title-misses";

    private TitleName() {}

    /** Returns the name that a title bears and the drink may have, if it bears one. */
    static Optional<LegalClass> met(String title, Market market, List<LegalClass> classes) {
        return borne(title, market, classes).stream()
                .filter(each -> !each.isMissed())
                .findFirst();
    }

    /** Returns that a title bears a lawful name of a market which the drink misses. */
    static List<Finding> missed(String title, Market market, List<LegalClass> classes) {
        List<LegalClass> borne = borne(title, market, classes);
        return borne.stream().allMatch(LegalClass::isMissed)
                ? borne.stream()
                        .min(Comparator.<LegalClass>comparingInt(
                                        each -> each.ruledOut().size())
                                .thenComparing(each -> each.misses().size()))
                        .map(TitleName::finding)
                        .map(List::of)
                        .orElse(List.of())
                : List.of();
    }

    private static List<LegalClass> borne(String title, Market market, List<LegalClass> classes) {
        return CalledNames.borne(
                title, classes.stream().filter(each -> each.market() == market).toList());
    }

    private static Finding finding(LegalClass missed) {
        String why = Stream.concat(
                        missed.misses().stream().map(TitleName::told),
                        missed.ruledOut().stream().map(TitleName::told))
                .collect(Collectors.joining(", "));
        return new Finding(
                NAME,
                Severity.CAUTION,
                "title",
                missed.market().name(),
                "title misses its name",
                "Its title calls it " + missed.name() + ", which it is not: " + why + ".",
                "",
                "Change the title, or ask for what leads to that name (called).",
                null,
                missed.source());
    }

    private static String told(Shown shown) {
        return shown.by().isEmpty()
                ? "nothing in it is of " + shown.what()
                : String.join(" and ", shown.by()) + " in it rules that out";
    }

    private static String told(Miss miss) {
        return miss.what() + " " + figure(miss, miss.found()) + " " + miss.unit() + " where " + miss.way() + " "
                + figure(miss, miss.wanted()) + " is asked";
    }

    /** Strength and sugar compare at the tenth, and are told so: 349.9 is not 350. */
    private static String figure(Miss miss, double value) {
        return miss.isOfContents() ? QuantityWords.figures(value) : QuantityWords.fixed(value, 1);
    }
}
