package org.stillroom.studio.web.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Volume;
import org.stillroom.studio.shelffile.LotKeys;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.usecase.shelf.LotFacts;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.LotState;
import org.stillroom.studio.usecase.shelf.Stock;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/** Puts what is known of a lot into the words and figures of its reader. */
public record Shown(Words words) {
    /** Most figures of a row; the rest stands on the lot's page. */
    private static final int MOST_FIGURES = 2;

    /**
     * An amount as a number and its unit.
     *
     * @param pad class that makes it stand on the decimal point of its column
     */
    public record Figure(String number, String unit, String pad) {
        public String text() {
            return number + "\u00a0" + unit;
        }
    }

    /** A state at a glance: the class that sets its colour, its mark, its word and a sentence. */
    public record State(String accent, String mark, String word, String sentence) {}

    String kind(String kind) {
        return words.say("shelf.kind." + kind.replace(' ', '_'));
    }

    Figure stock(Stock stock) {
        if (stock.unit().equals(Stock.PIECES)) {
            return new Figure(words.marked(stock.number()), words.say("shelf.pieces"), "d0");
        }
        if (words.units() == UnitSystem.US) {
            return us(stock);
        }
        String unit = stock.unit().equals(Stock.GRAMS) ? "g" : "mL";
        boolean fine = Math.abs(stock.amount()) < 99.95;
        return new Figure(words.number(stock.amount(), fine ? 1 : 0), unit, fine ? "d1" : "d0");
    }

    private Figure us(Stock stock) {
        double amount = Math.max(0, stock.amount());
        Amount measured = stock.unit().equals(Stock.GRAMS) ? new Mass(amount) : new Volume(amount);
        String text = words.amount(measured);
        String ounces = text.indexOf('(') < 0 ? text : text.substring(0, text.indexOf('(') - 1);
        int blank = ounces.indexOf('\u00a0');
        return new Figure(ounces.substring(0, blank), ounces.substring(blank + 1), "d0");
    }

    /** Returns what it is, which lot, and when it was opened. */
    String what(LotOnShelf lot) {
        LotSheet sheet = lot.lot().sheet();
        List<String> parts = new ArrayList<>();
        LotFacts.of(lot)
                .ifPresent(known -> known.facts().stream()
                        .filter(fact -> fact.what() != LotFacts.What.DENSITY || lot.kind() == Kind.ESSENTIAL_OIL)
                        .filter(fact -> fact.what() != LotFacts.What.SUGAR_BY_MASS || lot.kind() != Kind.SUGAR)
                        .limit(MOST_FIGURES)
                        .forEach(fact -> parts.add(brief(fact, sheet))));
        String ratio = sheet.fields().get("ratio");
        if (ratio != null) {
            parts.add(ratio);
        }
        if (parts.isEmpty() || lot.kind() == Kind.ESSENTIAL_OIL) {
            String kind = lot.packing() == null ? lot.kind().label() : sheet.kind();
            parts.add(0, kind(kind));
        }
        if (sheet.fields().containsKey(LotKeys.HOLDS)) {
            parts.add(sheet.fields().get(LotKeys.HOLDS));
        }
        if (sheet.label() != null) {
            parts.add(sheet.label());
        }
        if (sheet.opened() != null) {
            parts.add(words.say("shelf.openedOn", words.day(sheet.opened())));
        }
        return String.join(", ", parts);
    }

    /** A syrup goes by what its sugar was typed as; figures in a row have no idle zeros. */
    private String brief(LotFacts.Fact fact, LotSheet sheet) {
        String sugar = sheet.fields().get("sugar");
        if (fact.what() == LotFacts.What.SUGAR && sugar != null && sheet.kind().equals(Kind.SYRUP.label())) {
            return sugar;
        }
        double value = fact.estimate().value();
        String figure = fact.what() == LotFacts.What.DENSITY
                ? figure(fact.what(), value)
                : words.plain(Math.rint(10 * value) / 10);
        return words.say(key(fact.what()) + ".brief", figure);
    }

    static String key(LotFacts.What what) {
        return "shelf.fact." + what.name().toLowerCase(Locale.ROOT);
    }

    String figure(LotFacts.What what, double value) {
        return switch (what) {
            case DENSITY -> words.number(value, 3);
            case ACIDITY -> words.number(value, 2);
            case STRENGTH, SUGAR, SUGAR_BY_MASS, OIL -> words.number(value, value >= 100 ? 0 : 1);
        };
    }

    /** Returns the doubt of a figure, or nothing where it is finer than what is shown. */
    String doubt(LotFacts.Fact fact) {
        double doubt = fact.estimate().doubt();
        return switch (fact.what()) {
            case DENSITY -> doubt < 0.0005 ? "" : words.number(doubt, 3);
            case ACIDITY -> doubt < 0.005 ? "" : words.number(doubt, 2);
            case STRENGTH, SUGAR, SUGAR_BY_MASS, OIL -> doubt < 0.05 ? "" : words.number(doubt, 1);
        };
    }

    Optional<State> state(Optional<LotState> state) {
        return state.map(this::state);
    }

    private State state(LotState state) {
        if (state instanceof LotState.SetAside) {
            return new State("is-over", "m-over", words.say("shelf.state.aside"), words.say("shelf.state.asideSays"));
        }
        if (state instanceof LotState.NotKnown unknown) {
            return new State("is-near", "m-near", words.say("shelf.state.unknown"), unknown.what());
        }
        if (state instanceof LotState.Empty empty) {
            return new State(
                    "is-plain",
                    "m-plain",
                    words.say("shelf.state.empty"),
                    empty.recipes() == 0
                            ? ""
                            : words.say(
                                    empty.recipes() == 1 ? "shelf.state.emptyOne" : "shelf.state.emptyMany",
                                    String.valueOf(empty.recipes())));
        }
        if (state instanceof LotState.ShortFor shortage) {
            String volume = stock(new Stock(shortage.enoughForMillilitres(), Stock.MILLILITRES))
                    .text();
            return new State(
                    "is-near",
                    "m-near",
                    words.say("shelf.state.low"),
                    words.say("shelf.state.short", volume, shortage.title()));
        }
        LotState.Little little = (LotState.Little) state;
        return new State(
                "is-near",
                "m-near",
                words.say("shelf.state.low"),
                words.say("shelf.state.little", words.number(100 * little.part(), 0)));
    }

    /** Returns a field as it was typed, blank where nothing was. */
    static String typed(Map<String, String> typed, String key) {
        return Objects.requireNonNullElse(typed.get(key), "");
    }

    static String blank(@Nullable String text) {
        return Objects.requireNonNullElse(text, "");
    }
}
