package org.stillroom.core.label;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.PlainLetters;
import org.stillroom.core.reference.Source;

/**
 * A name that law keeps for drinks of certain figures, held against a drink.
 *
 * @param market whose law
 * @param name the lawful name; several that mean the same have " / " between
 * @param clause where it stands
 * @param misses which figures fall short; empty when the figures allow the name
 * @param asked what it asks of what goes in, with what the lines of the recipe show of it
 * @param notShown what may or may not be met, for the drink holds it in a range, or nobody knows how much
 * @param byRounding which figure lies within by its tenth alone, in whole sentences
 * @param asksBesides what else the name asks that figures cannot show, in whole sentences; empty when nothing
 * @param wayThere what to add so that strength and sugar are met; null where no figure is missed, or adding does not help
 * @param source where it was read, or from memory
 */
public record LegalClass(
        Market market,
        String name,
        String clause,
        List<Miss> misses,
        List<Shown> asked,
        List<String> notShown,
        List<String> byRounding,
        String asksBesides,
        @Nullable WayThere wayThere,
        Source source) {
    /** Part of the least strength from which on a name is near. Own judgement. */
    private static final double NEAR = 0.5;

    public LegalClass {
        misses = List.copyOf(misses);
        asked = List.copyOf(asked);
        notShown = List.copyOf(notShown);
        byRounding = List.copyOf(byRounding);
    }

    /** How far a name is shown to be one that the drink may have. */
    public enum Standing {
        /** Everything that it asks is met. */
        MET("met"),
        /** Its figures are met; what it asks besides is for its maker to know. */
        ASKS_BESIDES("asks besides"),
        /** Of some figure it is not known whether it is met. */
        NOT_SHOWN("not shown"),
        /** A figure rules it out, or what went in does. */
        MISSED("missed");

        private final String label;

        Standing(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** Returns the same as far as another name is shown that makes a drink one of these. */
    LegalClass allowedBy(LegalClass other) {
        return new LegalClass(
                market, name, clause, List.of(), asked, other.notShown, byRounding, asksBesides, null, source);
    }

    /** Returns how far it is shown. What cannot be seen is never met. */
    public Standing standing() {
        if (!misses.isEmpty() || !ruledOut().isEmpty()) {
            return Standing.MISSED;
        }
        if (!notShown.isEmpty()) {
            return Standing.NOT_SHOWN;
        }
        return asksBesides.isEmpty() ? Standing.MET : Standing.ASKS_BESIDES;
    }

    /** Returns what it asks of what goes in and what the lines of the recipe rule out. */
    public List<Shown> ruledOut() {
        return asked.stream().filter(Shown::isRuledOut).toList();
    }

    /** Returns whether a figure rules the name out, or what went in does. */
    public boolean isMissed() {
        return standing() == Standing.MISSED;
    }

    /** Returns whether it is missed by so little that somebody can be after it: nothing that it asks for is wholly absent, and it has half the strength. */
    public boolean isMissedNearly() {
        return isMissed()
                && ruledOut().stream().noneMatch(Shown::isFar)
                && misses.stream().noneMatch(LegalClass::isFar);
    }

    private static boolean isFar(Miss miss) {
        if (miss.isOfContents()) {
            return miss.found() == 0.0;
        }
        boolean weak = miss.what().equals(LegalClasses.STRENGTH) && miss.found() < miss.wanted();
        return weak && (miss.found() < Statements.US_WARNING_FROM || miss.found() < NEAR * miss.wanted());
    }

    /** Returns whether a text means this name: in any letters, with accents or without, in English, in German or as makers say it. */
    public boolean isCalled(String typed) {
        return PlainLetters.of(name).equals(PlainLetters.of(typed)) || CalledNames.isCalled(this, typed);
    }
}
