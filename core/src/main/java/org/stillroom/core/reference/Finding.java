package org.stillroom.core.reference;

import org.jspecify.annotations.Nullable;

/**
 * Something that the maker should know about a recipe, a plan or a figure; the one form everywhere.
 *
 * @param rule short name of the rule that found it, such as "strength-out-of-reach"
 * @param severity how much it asks
 * @param where the place: "line 3, orange tincture" or "target, strength"; empty when it concerns the whole
 * @param jurisdiction whose law, or empty when it is not a matter of law
 * @param verdict one or two words, such as "cannot be reached"
 * @param message what is, with value and unit
 * @param howSure how sure, in words; empty when it is arithmetic
 * @param remedy what to do; empty when nothing is asked
 * @param limit the bound concerned, with unit, or null
 * @param source where the rule or number comes from, or null when it is arithmetic
 */
public record Finding(
        String rule,
        Severity severity,
        String where,
        String jurisdiction,
        String verdict,
        String message,
        String howSure,
        String remedy,
        @Nullable String limit,
        @Nullable Source source) {

    /** Returns a finding that is arithmetic or plain reading: no law, no limit, no source. */
    public static Finding of(
            String rule, Severity severity, String where, String verdict, String message, String remedy) {
        return new Finding(rule, severity, where, "", verdict, message, "", remedy, null, null);
    }

    /** Returns the same, found in another place. */
    public Finding at(String place) {
        return new Finding(rule, severity, place, jurisdiction, verdict, message, howSure, remedy, limit, source);
    }

    /** Returns the same, as a caution where it stops: for what is named and need not go in. */
    public Finding withoutStop() {
        return severity == Severity.STOP
                ? new Finding(
                        rule, Severity.CAUTION, where, jurisdiction, verdict, message, howSure, remedy, limit, source)
                : this;
    }

    /** Returns the same with more on how sure it is. */
    public Finding knowing(String more) {
        String both = howSure.isEmpty() ? more : howSure + "; " + more;
        return new Finding(rule, severity, where, jurisdiction, verdict, message, both, remedy, limit, source);
    }

    /** Returns the standing of the source as the answers print it, or "arithmetic" when there is no source. */
    public String status() {
        return source == null ? "arithmetic" : source.standing().label();
    }
}
