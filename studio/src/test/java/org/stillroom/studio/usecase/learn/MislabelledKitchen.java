package org.stillroom.studio.usecase.learn;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.stillroom.core.gauging.Reading;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.LogBatch;
import org.stillroom.studio.usecase.batch.ReadingsText;
import org.stillroom.studio.usecase.batch.RecordBatch;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.make.BeginMake;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.Kitchen;

/** A kitchen whose spirit is not what its label says. */
public final class MislabelledKitchen implements AutoCloseable {
    public final Kitchen kitchen;
    public final Lot spirit;
    public final Lot essence;

    public MislabelledKitchen(Path folder) {
        kitchen = new Kitchen(folder);
        spirit = kitchen.lot("grain spirit", "spirit", Map.of("strength", "96 %"), 5000.0, "ml");
        essence = kitchen.lot("juniper essence", "essence", Map.of("strength", "90 %"), 200.0, "g");
    }

    public Store store() {
        return kitchen.store;
    }

    private static String recipe(int strength, int sugar) {
        return """
                stillroom: 1
                title: Juniper at %d
                target: {volume: 1 L, strength: %d %%, sugar: %d g/L}
                measures:
                  - {name: scale, kind: scale, marks: 0.1 g, holds: 3 kg}
                  - {name: glass dropper, kind: dropper}
                ingredients:
                  - {name: grain spirit, kind: spirit, strength: 96 %%}
                  - {name: juniper essence, kind: essence, strength: 90 %%}
                lines:
                  - {use: grain spirit, amount: free}
                  - {use: juniper essence, dose: 300 drops/L, with: glass dropper}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """.formatted(strength, strength, sugar);
    }

    /** Makes a litre by a recipe of its own. */
    public Batch made(int strength, int sugar) {
        String recipe = kitchen.saved("Juniper at " + strength, recipe(strength, sugar));
        Map<String, List<String>> lots =
                Map.of("grain spirit", List.of(spirit.id()), "juniper essence", List.of(essence.id()));
        String make = kitchen.begun(recipe, new BeginMake.Wish("", false, lots, Map.of()));
        kitchen.finishAsAsked(make);
        return new FinishMake(kitchen.store).answer(kitchen.state(make), Kitchen.request());
    }

    /** Makes four liqueurs and gauges each. */
    public void fourBatches(double truth) {
        for (int turn = 0; turn < 4; turn++) {
            gauged(made(24 + 4 * turn, 40 + 50 * turn), truth);
        }
    }

    /** Returns what is really in the vessel when the spirit is of a strength. */
    static Contents real(Batch batch, double strength) {
        Contents real = Contents.NONE;
        for (BatchSheet.LineSheet line : FinishMake.sheet(batch).lines()) {
            Contents perGram = switch (line.name()) {
                case "grain spirit" -> spirit(strength);
                case "juniper essence" -> spirit(90.0);
                default -> generic(line.name());
            };
            real = real.plus(perGram.times(line.grams()));
        }
        return real;
    }

    private static Contents spirit(double strength) {
        return MadeUp.spirit(new AlcoholByVolume(strength, VolumeBasis.AT_20C)).perGram();
    }

    private static Contents generic(String name) {
        Generic generic = Objects.requireNonNull(Generics.find(name));
        Resolved resolved = Resolution.of(generic.ingredient()).resolved();
        return Objects.requireNonNull(resolved).perGram();
    }

    /** Logs what exact instruments show, as the page of gauging does. */
    void gauged(Batch batch, double strength) {
        Contents real = real(batch, strength);
        List<Reading> readings = new ArrayList<>();
        for (Shown shown : List.of(Shown.DENSITY, Shown.COMPENSATED_REFRACTOMETER, Shown.VOLUME)) {
            readings.add(Reading.foreseen(shown, real, new Temperature(19.0), Double.NaN));
        }
        measured(
                batch,
                Map.of("vessel", "1", "strength", "27 %", "readings", ReadingsText.write(readings, Thermometer.USUAL)));
    }

    void measured(Batch batch, Map<String, String> typed) {
        assertThat(logged(batch, LogBatch.Act.MEASURED, typed)).isInstanceOf(RecordBatch.Outcome.Kept.class);
    }

    RecordBatch.Outcome logged(Batch batch, LogBatch.Act act, Map<String, String> typed) {
        Clock clock = Clock.fixed(Instant.now(), ZoneOffset.UTC);
        return new LogBatch(kitchen.store, clock).answer(batch, act, typed, Kitchen.request());
    }

    void weighedEssence(double left) {
        kitchen.store.lots().measured(essence.id(), left, "weighed", Kitchen.request());
    }

    public Learnt learnt() {
        return LearnOffsets.of(kitchen.store).answer();
    }

    @Override
    public void close() {
        kitchen.close();
    }
}
