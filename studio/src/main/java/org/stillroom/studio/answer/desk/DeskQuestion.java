package org.stillroom.studio.answer.desk;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Shape;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.usecase.Impossible;

/** A question of desk arithmetic: texts in, one use case, figures out. A new one is listed in {@link DeskQuestions}. */
public abstract class DeskQuestion {
    /** Returns the name under which it is asked, such as "reduce". */
    public abstract String name();

    /** Returns in one sentence what it answers. */
    public abstract String summary();

    /** Returns what it takes. */
    public abstract List<Part> parts();

    /** Returns a question that is answered. */
    public abstract List<Manner.Given> example();

    /** Returns the keys of its figures. */
    public abstract List<String> figures();

    /** Returns the keys of tables of figures that it answers besides; mostly none. */
    public List<String> tables() {
        return List.of();
    }

    /** Returns those of its figures that are told with the ends of where they lie. */
    public List<String> spans() {
        return List.of();
    }

    /** Returns what else stands in its answer, by key. */
    public List<Shape.Key> further() {
        return List.of();
    }

    /** Reads the parts, asks the use case, and returns its figures. */
    abstract Told tell(AskedTexts asked, Workings workings);

    /**
     * Returns the answer, with what was taken for granted among its findings.
     *
     * @param typed texts by the names of their parts
     * @throws WrongInput when it cannot be answered because of what was typed
     */
    public final Told answer(Map<String, List<String>> typed, Manner manner, Workings workings) {
        AskedTexts asked = new AskedTexts(parts(), typed, manner, new Objections());
        Told told = ask(asked, () -> tell(asked, workings));
        asked.assumed().forEach(told::finding);
        return told;
    }

    /** Returns what is answered; what cannot be answered is told as what was typed wrong. */
    static <A> A ask(AskedTexts asked, Supplier<A> question) {
        return ask((UnaryOperator<String>) asked::name, question);
    }

    /** Returns what comes before a question, such as the instruments that are named; what cannot be is told as typed wrong. */
    public static <A> A ask(Manner manner, Supplier<A> before) {
        return ask((UnaryOperator<String>) manner::name, before);
    }

    private static <A> A ask(UnaryOperator<String> names, Supplier<A> question) {
        try {
            return question.get();
        } catch (Impossible impossible) {
            throw new WrongInput(List.of(Finding.of(
                    "wrong-input",
                    Severity.STOP,
                    names.apply(impossible.part()),
                    "not understood",
                    impossible.reason(),
                    impossible.remedy())));
        }
    }
}
