package org.stillroom.core.safety;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.recipe.Condition;

/**
 * What a drink is judged on.
 *
 * @param knowledge the tables in force
 * @param analyses what suppliers say of the very lots
 * @param drawn the bottles that lines are poured from, where that is known
 * @param house the rules of the maker's own house
 * @param condition what is known of the drink itself, or null where that is what its recipe says
 * @param serving who drinks how much, and whose law is asked, where a question does not say
 */
public record Grounds(
        Knowledge knowledge,
        LotAnalyses analyses,
        Drawn drawn,
        HouseRules house,
        @Nullable Condition condition,
        Serving serving) {
    /** What ships with the program, and nothing of any lot. */
    public static final Grounds SHIPPED = of(Knowledge.SHIPPED);

    /** Returns grounds that know nothing of any lot or house. */
    public static Grounds of(Knowledge knowledge) {
        return new Grounds(knowledge, LotAnalyses.NONE, Drawn.NONE, HouseRules.NONE, null, Serving.USUAL);
    }

    /** Returns the same with what suppliers say of the lots. */
    public Grounds with(LotAnalyses lots) {
        return new Grounds(knowledge, lots, drawn, house, condition, serving);
    }

    /** Returns the same of a drink that is poured from these bottles. */
    public Grounds with(Drawn bottles) {
        return new Grounds(knowledge, analyses, bottles, house, condition, serving);
    }

    /** Returns the same with the rules of a house in place of these. */
    public Grounds with(HouseRules rules) {
        return new Grounds(knowledge, analyses, drawn, rules, condition, serving);
    }

    /** Returns the same of a drink in this condition, whatever its recipe says. */
    public Grounds with(Condition known) {
        return new Grounds(knowledge, analyses, drawn, house, known, serving);
    }

    /** Returns the same for somebody else. */
    public Grounds with(Serving other) {
        return new Grounds(knowledge, analyses, drawn, house, condition, other);
    }
}
