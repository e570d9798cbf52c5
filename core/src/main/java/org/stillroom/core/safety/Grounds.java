package org.stillroom.core.safety;

/**
 * What a drink is judged on.
 *
 * @param knowledge the tables in force
 * @param analyses what suppliers say of the very lots
 */
public record Grounds(Knowledge knowledge, LotAnalyses analyses) {
    /** What ships with the program, and nothing of any lot. */
    public static final Grounds SHIPPED = of(Knowledge.SHIPPED);

    /** Returns grounds that know nothing of any lot. */
    public static Grounds of(Knowledge knowledge) {
        return new Grounds(knowledge, LotAnalyses.NONE);
    }

    /** Returns the same with what suppliers say of the lots. */
    public Grounds with(LotAnalyses lots) {
        return new Grounds(knowledge, lots);
    }
}
