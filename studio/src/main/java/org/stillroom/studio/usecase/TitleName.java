package org.stillroom.studio.usecase;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.stillroom.core.label.LegalClass;
import org.stillroom.core.label.Market;
import org.stillroom.core.label.Miss;
import org.stillroom.core.label.Shown;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.PlainLetters;
import org.stillroom.core.reference.Severity;

/** A title that ends in a lawful name, or begins with "crème de", calls the drink so, whatever stands below it. */
final class TitleName {
    /** Name of the finding. */
    static final String NAME = "title-misses";

    private static final String CREME = PlainLetters.of("crème de");
    private static final String LIQUEUR = PlainLetters.of("liqueur");
    private static final String LIQUEUR_IN_GERMAN = PlainLetters.of("Likör");

    private TitleName() {}

    /** Returns that a title bears a lawful name of a market which the drink misses, by the longest such name. */
    static List<Finding> missed(String title, Market market, List<LegalClass> classes) {
        String plain = PlainLetters.of(title);
        return classes.stream()
                .filter(each -> each.market() == market)
                .filter(each -> length(plain, each) > 0)
                .max(Comparator.comparingInt(each -> length(plain, each)))
                .filter(LegalClass::isMissed)
                .map(TitleName::finding)
                .map(List::of)
                .orElse(List.of());
    }

    /** Returns how many letters of a title are the name, 0 where they are not. */
    private static int length(String title, LegalClass name) {
        return Stream.of(name.name().split(" / | or ", -1))
                .map(each -> PlainLetters.of(each.replaceAll(" \\(.*", "")))
                .flatMap(each -> each.equals(LIQUEUR) ? Stream.of(each, LIQUEUR_IN_GERMAN) : Stream.of(each))
                .filter(each -> isIn(title, each))
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }

    private static boolean isIn(String title, String name) {
        boolean compound = name.equals(LIQUEUR_IN_GERMAN) && title.endsWith(name);
        return title.equals(name)
                || title.endsWith(" " + name)
                || compound
                || (name.equals(CREME) && title.startsWith(name + " "));
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
        return miss.what() + " " + QuantityWords.figures(miss.found()) + " " + miss.unit() + " where " + miss.way()
                + " " + QuantityWords.figures(miss.wanted()) + " is asked";
    }
}
