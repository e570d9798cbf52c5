package org.stillroom.studio.usecase.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Calibrated;
import org.stillroom.studio.store.Calibration;
import org.stillroom.studio.store.Changing;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.Instruments;
import org.stillroom.studio.usecase.CalibrateInstrument;

/** Keeps a calibration with its instrument on the shelf. */
public final class KeepCalibration {
    /** The part of the question that tells what it stood in, and what that is where nothing is said. */
    private static final String IN = "in";

    private static final String WATER = "water";

    private final Instruments instruments;

    public KeepCalibration(Instruments instruments) {
        this.instruments = instruments;
    }

    /** Returns the calibration that an instrument has, or null. */
    public static CalibrateInstrument.@Nullable Former former(Instrument instrument) {
        Calibration kept = instrument.sheet().calibration();
        return kept == null
                ? null
                : new CalibrateInstrument.Former(
                        kept.day(),
                        kept.typed().getOrDefault(IN, List.of(WATER)).get(0),
                        new Calibrated(kept.value(), kept.halfWidth()));
    }

    /**
     * Keeps it.
     *
     * @param instrument as it was when it was calibrated
     * @param typed what was read, by the parts of the question
     */
    public Changing<Instrument> answer(
            Instrument instrument, Calibrated found, Map<String, List<String>> typed, LocalDate day, String request) {
        Calibration kept = new Calibration(day.toString(), found.value(), found.halfWidth(), typed);
        return instruments.calibrate(instrument.id(), instrument.version(), kept, request);
    }

    /** Forgets the calibration there is. */
    public Changing<Instrument> forget(Instrument instrument, String request) {
        return instruments.calibrate(instrument.id(), instrument.version(), null, request);
    }
}
