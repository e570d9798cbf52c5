package org.stillroom.studio.usecase.make;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.LookAlikes;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.plan.Way;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.BareNumber;

/** Logs what was done in a make; every wish has a name of its own, so that one sent twice counts once. */
public final class RecordStep {
    /** So many times what is asked of a dropper bottle is a slip of the unit, of the bottle or of the point. Own judgement. */
    private static final double FAR = 5.0;

    /** Stands behind an amount that was asked about, and is meant. */
    public static final String MEANT = "!";

    private final Store store;

    public RecordStep(Store store) {
        this.store = store;
    }

    /** What comes of it. */
    public sealed interface Outcome {
        /** It is in the log. */
        record Kept(HistoryEntry entry) implements Outcome {}

        /**
         * What was typed is not understood, or may mean several things; nothing was kept.
         *
         * @param message what is the matter, a sentence
         * @param choices texts that would be understood, to choose from; may be empty
         */
        record NotUnderstood(String message, List<String> choices) implements Outcome {
            public NotUnderstood {
                choices = List.copyOf(choices);
            }
        }
    }

    /** How an amount that went in was read. */
    public enum Reading {
        /** It is the amount itself. */
        AMOUNT,
        /** It is what the scale shows now, with everything that is in. */
        SCALE
    }

    /** Logs that a step was done as asked. */
    public Outcome done(MakeState state, MakeStep step, long seen, String request) {
        MakeStep.Pour pour = step.pour();
        double grams = pour == null ? 0.0 : pour.asked().grams();
        return keep(state, Logged.DONE, Logged.ofStep(step.id(), null, grams, grams, seen), request);
    }

    /**
     * Logs what really went in, as typed; a bare number has the unit in which it is asked. Of a dropper bottle so much more than asked that
     * it is a slip is asked about first: whoever means it writes it again with {@link #MEANT} behind.
     */
    public Outcome poured(MakeState state, MakeStep step, String typed, Reading reading, long seen, String request) {
        MakeStep.Pour pour = Objects.requireNonNull(step.pour(), "nothing is poured in this step");
        String unit = reading == Reading.SCALE ? "g" : pour.asked().reading().unit();
        boolean meant = typed.strip().endsWith(MEANT);
        String amount = meant ? typed.strip().substring(0, typed.strip().length() - MEANT.length()) : typed;
        Understanding<Amount> understanding = quantities(state).amount(BareNumber.withUnit(amount, unit));
        if (!(understanding instanceof Understanding.Understood<Amount> understood)) {
            return notUnderstood(understanding);
        }
        Double grams = grams(state, understood.typed().value(), pour.asked().exact());
        if (grams == null) {
            return new Outcome.NotUnderstood(
                    "How much a millilitre of " + pour.name() + " weighs is not known. Give a weight.", List.of());
        }
        double added = reading == Reading.SCALE ? grams - pour.inVessel() : grams;
        if (added < 0.0) {
            return new Outcome.NotUnderstood(
                    "The scale showed " + QuantityWords.fixed(pour.inVessel(), 1)
                            + " g before; it cannot show less with more in it. Check the reading, or give the amount itself.",
                    List.of());
        }
        if (!meant && isFarMore(pour, added)) {
            String went = reading == Reading.SCALE
                    ? QuantityWords.fixed(added, 2) + " g"
                    : BareNumber.withUnit(typed, unit).strip();
            return asked(pour, went, added);
        }
        Logged said = new Logged(step.id(), typed.strip(), added, pour.asked().grams(), seen, reading.name(), 0.0);
        return keep(state, Logged.POURED, said, request);
    }

    private static boolean isFarMore(MakeStep.Pour pour, double added) {
        return LookAlikes.isDropperBottle(pour.asked().exact().ingredient().kind())
                && pour.asked().grams() > 0.0
                && added > FAR * pour.asked().grams();
    }

    private static Outcome asked(MakeStep.Pour pour, String typed, double added) {
        String wanted = pour.asked().reading().words();
        return new Outcome.NotUnderstood(
                "“" + typed + "” of " + pour.name() + " is "
                        + QuantityWords.fixed(added / pour.asked().grams(), 0) + " times what is asked (" + wanted
                        + "). Did that really go in?",
                List.of(wanted, typed + MEANT));
    }

    /** Logs that a step is left out; of a pour nothing goes in. */
    public Outcome skipped(MakeState state, MakeStep step, long seen, String request) {
        MakeStep.Pour pour = step.pour();
        double asked = pour == null ? 0.0 : pour.asked().grams();
        return keep(state, Logged.SKIPPED, Logged.ofStep(step.id(), null, 0.0, asked, seen), request);
    }

    /** Logs what the empty vessel weighs, and whether the scale was set to zero with it. */
    public Outcome weighedVessel(
            MakeState state, MakeStep step, String typed, boolean zeroed, long seen, String request) {
        Understanding<Mass> understanding = quantities(state).mass(BareNumber.withUnit(typed, "g"));
        if (!(understanding instanceof Understanding.Understood<Mass> understood)) {
            return notUnderstood(understanding);
        }
        double grams = understood.typed().value().grams();
        Logged said = new Logged(step.id(), typed.strip(), grams, 0.0, seen, zeroed ? "zeroed" : "kept", 0.0);
        return keep(state, Logged.WEIGHED_VESSEL, said, request);
    }

    /** Logs a density and the temperature at which it was measured; blank is 20 °C. */
    public Outcome measured(
            MakeState state, MakeStep step, String density, String temperature, long seen, String request) {
        QuantityText quantities = quantities(state);
        String withUnit = BareNumber.withUnit(density, "g/ml");
        Understanding<?> understood = quantities.density(withUnit);
        String degrees = temperature.isBlank() ? "20 °C" : BareNumber.withUnit(temperature, "°C");
        Understanding<Temperature> warm = quantities.temperature(degrees);
        if (!(understood instanceof Understanding.Understood)) {
            return notUnderstood(understood);
        }
        if (!(warm instanceof Understanding.Understood)) {
            return notUnderstood(warm);
        }
        return keep(state, Logged.MEASURED, Logged.text(step.id(), withUnit, degrees, 0.0, seen), request);
    }

    /** Logs how much of a stage came, by weight or by volume. */
    public Outcome came(MakeState state, MakeStep step, String typed, long seen, String request) {
        Understanding<Amount> understanding = quantities(state).amount(BareNumber.withUnit(typed, "ml"));
        if (!(understanding instanceof Understanding.Understood<Amount> understood)) {
            return notUnderstood(understanding);
        }
        MakePart part = state.partOf(step);
        double density = part.measured().result().density() / 1000.0;
        Amount amount = understood.typed().value();
        double grams = amount instanceof Mass mass
                ? mass.grams()
                : amount instanceof Volume volume ? volume.millilitres() * density : 0.0;
        if (!(grams > 0.0)) {
            return new Outcome.NotUnderstood("Give what came as a weight or a volume above 0.", List.of());
        }
        return keep(state, Logged.CAME, Logged.ofStep(step.id(), typed.strip(), grams, 0.0, seen), request);
    }

    /** Logs which way the maker chose to go on after a slip. */
    public Outcome chosen(MakeState state, MakePart part, Way way, long seen, String request) {
        String step = part.number() + "/way";
        double millilitres = way.plan().millilitres();
        return keep(state, Logged.WAY, Logged.text(step, "", way.kind().name(), millilitres, seen), request);
    }

    /** Logs that a rest goes on until another day. */
    public Outcome postponed(MakeState state, MakeStep step, LocalDate until, long seen, String request) {
        return keep(state, Logged.POSTPONED, Logged.text(step.id(), until.toString(), null, 0.0, seen), request);
    }

    /** Logs that a timer began. */
    public Outcome timerBegun(MakeState state, MakeStep step, long seconds, long seen, String request) {
        return keep(state, Logged.TIMER, Logged.text(step.id(), "", null, (double) seconds, seen), request);
    }

    /** Logs that a timer was switched off. */
    public Outcome timerOff(MakeState state, MakeStep step, long seen, String request) {
        return keep(state, Logged.TIMER_OFF, Logged.text(step.id(), "", null, 0.0, seen), request);
    }

    /** Logs what the maker noted. */
    public Outcome noted(MakeState state, String text, long seen, String request) {
        return keep(state, Logged.NOTE, Logged.text("", text.strip(), null, 0.0, seen), request);
    }

    /** Takes an entry back by an entry of its own. */
    public Outcome undone(MakeState state, LogEntry entry, long seen, String request) {
        Logged said = Logged.ofStep(entry.said().step(), null, 0.0, 0.0, seen);
        HistoryEntry kept =
                store.makes().append(state.make().id(), Logged.UNDO, LogBodies.write(said), entry.id(), request);
        return new Outcome.Kept(kept);
    }

    private Outcome keep(MakeState state, String kind, Logged said, String request) {
        return new Outcome.Kept(store.makes().append(state.make().id(), kind, LogBodies.write(said), null, request));
    }

    private static QuantityText quantities(MakeState state) {
        return new QuantityText(state.start().bar() ? OunceMeaning.THIRTY_MILLILITRES : OunceMeaning.US_FLUID);
    }

    private static Outcome notUnderstood(Understanding<?> understanding) {
        if (understanding instanceof Understanding.Ambiguous<?> asked) {
            return new Outcome.NotUnderstood(sentence(asked.text() + ": " + asked.question()), asked.choices());
        }
        Understanding.Refused<?> refused = (Understanding.Refused<?>) understanding;
        return new Outcome.NotUnderstood(sentence("“" + refused.text() + "”: " + refused.reason()), List.of());
    }

    private static String sentence(String text) {
        return text.endsWith(".") || text.endsWith("?") ? text : text + ".";
    }

    private static @Nullable Double grams(MakeState state, Amount amount, PlannedLine line) {
        if (amount instanceof Mass mass) {
            return mass.grams();
        }
        if (amount instanceof Drops drops) {
            return drops.count() * line.ingredient().gramsPerDrop();
        }
        Typed<Temperature> room = line.ingredient().solid()
                ? null
                : state.whole().planned().recipe().room();
        PlannedLine gram = new PlannedLine(line.line(), line.ingredient(), 1.0);
        OptionalDouble perGram = room == null ? gram.measurable() : gram.millilitresAt(room.value());
        return perGram.isEmpty() ? null : Double.valueOf(((Volume) amount).millilitres() / perGram.getAsDouble());
    }
}
