package org.stillroom.studio.usecase.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.gauging.Calibrated;
import org.stillroom.core.plan.Way;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.InstrumentSheet;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Make;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.usecase.left.LeftOver;
import org.stillroom.studio.usecase.shelf.KeepCalibration;
import org.stillroom.studio.usecase.shelf.ShelfLots;

class MakeTest {
    private static final String SPIRIT = "1/line-1";
    private static final String ESSENCE = "1/line-2";
    private static final String SUGAR = "1/line-3";
    private static final String WATER = "1/line-4";

    @TempDir
    private Path folder;

    private Kitchen kitchen;

    @BeforeEach
    void open() {
        kitchen = new Kitchen(folder);
    }

    @AfterEach
    void close() {
        kitchen.close();
    }

    private static List<String> ids(MakeState state) {
        return state.steps().stream().map(MakeStep::id).toList();
    }

    private static double asked(MakeState state, String step) {
        return Objects.requireNonNull(state.step(step).pour()).asked().grams();
    }

    private static List<String> rules(MakeState state) {
        return state.whole().findings().stream().map(Finding::rule).toList();
    }

    @Test
    void theStepsAreCutToWhatHandsDo() {
        MakeState state = kitchen.state(kitchen.begun(kitchen.saved("Bay", Kitchen.BAY)));
        assertThat(ids(state))
                .containsExactly(
                        "1/vessel",
                        SPIRIT,
                        ESSENCE,
                        SUGAR,
                        WATER,
                        "1/jar-3-stir",
                        "1/jar-3-cool",
                        "1/jar-3-in",
                        "1/cool",
                        "1/measure",
                        "1/own-1",
                        "1/label");
        assertThat(state.step("1/own-1").waitSeconds()).isEqualTo(20 * 60);
        assertThat(Objects.requireNonNull(state.step(ESSENCE).pour()).drops()).isEqualTo(24);
        assertThat(Objects.requireNonNull(state.here()).id()).isEqualTo("1/vessel");
    }

    @Test
    void doneAsAskedChangesNothingAndEndsAsPlanned() {
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        double water = asked(kitchen.state(make), WATER);
        kitchen.finishAsAsked(make);
        MakeState state = kitchen.state(make);
        assertThat(Objects.requireNonNull(state.step(WATER).pour()).grams()).isEqualTo(water);
        assertThat(state.whole().replanned()).isNull();
        assertThat(state.isPoured()).isTrue();
    }

    @Test
    void anOverPourIsPlannedAgainAndLandsOnTheTarget() {
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        double sugar = asked(kitchen.state(make), SUGAR);
        kitchen.tick(make, "1/vessel");
        kitchen.pour(make, SPIRIT, "250,0");
        MakeState slipped = kitchen.state(make);
        assertThat(rules(slipped)).contains("strength-no-longer-reached");
        Way more = slipped.whole().choices().stream()
                .filter(way -> way.kind() == Way.Kind.MORE_OF_EVERYTHING)
                .findFirst()
                .orElseThrow();
        new RecordStep(kitchen.store).chosen(slipped, slipped.whole(), more, slipped.seen(), Kitchen.request());
        MakeState chosen = kitchen.state(make);
        assertThat(chosen.whole().choices()).isEmpty();
        assertThat(asked(chosen, SUGAR)).isGreaterThan(sugar);
        assertThat(ids(chosen)).as("the steps keep their names").isEqualTo(ids(slipped));
        kitchen.finishAsAsked(make);
        Batch batch = new FinishMake(kitchen.store).answer(kitchen.state(make), Kitchen.request());
        BatchSheet sheet = FinishMake.sheet(batch);
        assertThat(sheet.strength()).isCloseTo(28.0, within(0.05));
        assertThat(sheet.sugar()).isCloseTo(180.0, within(0.5));
        assertThat(sheet.millilitres()).isGreaterThan(1050.0);
    }

    @Test
    void theScaleMayBeReadAsItStands() {
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        MakeState state = kitchen.state(make);
        new RecordStep(kitchen.store)
                .weighedVessel(state, state.step("1/vessel"), "812.4", false, 0, Kitchen.request());
        kitchen.pour(make, SPIRIT, "1050.4 g", RecordStep.Reading.SCALE);
        MakeStep spirit = kitchen.state(make).step(SPIRIT);
        assertThat(Objects.requireNonNull(spirit.pour()).grams()).isCloseTo(238.0, within(1e-9));
        assertThat(kitchen.pour(make, ESSENCE, "1000", RecordStep.Reading.SCALE))
                .isInstanceOf(RecordStep.Outcome.NotUnderstood.class);
    }

    @Test
    void amountsAreTypedAsPeopleWriteThem() {
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        kitchen.pour(make, ESSENCE, "25 drops");
        assertThat(Objects.requireNonNull(kitchen.state(make).step(ESSENCE).pour())
                        .grams())
                .isCloseTo(0.5, within(1e-9));
        kitchen.pour(make, WATER, "600 ml");
        assertThat(Objects.requireNonNull(kitchen.state(make).step(WATER).pour())
                        .grams())
                .isCloseTo(598.9, within(0.2));
        RecordStep.Outcome asked = kitchen.pour(make, SUGAR, "1,500");
        assertThat(asked).isInstanceOf(RecordStep.Outcome.NotUnderstood.class);
        assertThat(((RecordStep.Outcome.NotUnderstood) asked).choices()).isNotEmpty();
        assertThat(kitchen.state(make).step(SUGAR).isToCome()).isTrue();
    }

    @Test
    void anUndoIsAnEntryOfItsOwnAndTakesItsConsequencesBack() {
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        double sugar = asked(kitchen.state(make), WATER);
        kitchen.pour(make, SPIRIT, "260");
        assertThat(asked(kitchen.state(make), WATER)).isNotEqualTo(sugar);
        MakeState state = kitchen.state(make);
        LogEntry entry = Objects.requireNonNull(state.step(SPIRIT).last());
        new RecordStep(kitchen.store).undone(state, entry, state.seen(), Kitchen.request());
        MakeState back = kitchen.state(make);
        assertThat(asked(back, WATER)).isEqualTo(sugar);
        assertThat(back.step(SPIRIT).isToCome()).isTrue();
        assertThat(back.log()).hasSize(2);
    }

    @Test
    void ofTwoPeopleEachPourCountsAndTwoTicksAreOne() {
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        MakeState both = kitchen.state(make);
        RecordStep record = new RecordStep(kitchen.store);
        record.poured(both, both.step(SPIRIT), "100", RecordStep.Reading.AMOUNT, 0, Kitchen.request());
        record.poured(both, both.step(SPIRIT), "130.5", RecordStep.Reading.AMOUNT, 0, Kitchen.request());
        record.done(both, both.step(SUGAR), 0, Kitchen.request());
        record.done(both, both.step(SUGAR), 0, Kitchen.request());
        MakeState after = kitchen.state(make);
        assertThat(Objects.requireNonNull(after.step(SPIRIT).pour()).grams()).isCloseTo(230.5, within(1e-9));
        assertThat(Objects.requireNonNull(after.step(SUGAR).pour()).grams()).isEqualTo(asked(both, SUGAR));
    }

    @Test
    void whatIsSentTwiceCountsOnce() {
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        MakeState state = kitchen.state(make);
        RecordStep record = new RecordStep(kitchen.store);
        record.poured(state, state.step(SPIRIT), "100", RecordStep.Reading.AMOUNT, 0, "one-tap");
        record.poured(state, state.step(SPIRIT), "100", RecordStep.Reading.AMOUNT, 0, "one-tap");
        assertThat(Objects.requireNonNull(kitchen.state(make).step(SPIRIT).pour())
                        .grams())
                .isEqualTo(100.0);
    }

    @Test
    void aRestartLosesNothing() {
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        kitchen.tick(make, "1/vessel");
        kitchen.pour(make, SPIRIT, "240");
        MakeState before = kitchen.state(make);
        kitchen.restart();
        MakeState after = kitchen.state(make);
        assertThat(after.here()).isEqualTo(before.here());
        assertThat(after.log()).isEqualTo(before.log());
    }

    @Test
    void aBatchDrawsTheLotsDownOneAfterTheOtherAndSaysWhatIsWanting() {
        Lot little = kitchen.lot("neutral spirit", "spirit", Map.of("strength", "96 %"), 100, "ml");
        Lot more = kitchen.lot("neutral spirit", "spirit", Map.of("strength", "96 %"), 1000, "ml");
        Lot sugar = kitchen.lot("white sugar", "sugar", Map.of(), 150, "g");
        String recipe = kitchen.saved("Bay", Kitchen.BAY);
        String make = kitchen.begun(
                recipe,
                new BeginMake.Wish(
                        "",
                        false,
                        Map.of(
                                "neutral spirit", List.of(little.id(), more.id()),
                                "white sugar", List.of(sugar.id())),
                        Map.of()));
        kitchen.finishAsAsked(make);
        FinishMake finish = new FinishMake(kitchen.store);
        MakeState state = kitchen.state(make);
        Batch batch = finish.answer(state, Kitchen.request());
        assertThat(finish.answer(state, Kitchen.request()).id()).isEqualTo(batch.id());
        assertThat(kitchen.store.lots().lot(little.id()).orElseThrow().left()).isCloseTo(0.0, within(1e-9));
        // 1 L at 28 % vol holds 280 mL of ethanol: 291.7 mL of spirit, less what the essence brings
        assertThat(kitchen.store.lots().lot(more.id()).orElseThrow().left()).isCloseTo(1000 - 191.2, within(0.6));
        assertThat(kitchen.store.lots().lot(sugar.id()).orElseThrow().left()).isCloseTo(0.0, within(1e-9));
        BatchSheet.LineSheet line = FinishMake.sheet(batch).lines().get(2);
        assertThat(line.name()).isEqualTo("white sugar");
        assertThat(line.wanting()).isCloseTo(30.0, within(0.1));
    }

    @Test
    void whatIsNotPouredIsNoBatch() {
        MakeState state = kitchen.state(kitchen.begun(kitchen.saved("Bay", Kitchen.BAY)));
        assertThatThrownBy(() -> new FinishMake(kitchen.store).answer(state, Kitchen.request()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("Something is still to be poured. Do those steps, or leave them out.");
    }

    @Test
    void aStageAndItsLiqueurAreOneMakeAndWhatCameIsPlannedWith() {
        kitchen.saved("Bay tincture", """
                stillroom: 1
                title: Bay tincture
                ingredients:
                  - {name: neutral spirit, kind: spirit, strength: 96 %}
                  - {name: bay leaf, kind: dried plant}
                lines:
                  - {use: bay leaf, amount: 20 g}
                  - {use: neutral spirit, amount: 200 ml}
                  - {use: water, amount: 100 ml}
                rest: 7 days
                loss: 1.5 ml/g
                """);
        String recipe = kitchen.saved("Bay liqueur", """
                stillroom: 1
                title: Bay liqueur
                target: {strength: 30 %, sugar: 150 g/L}
                ingredients:
                  - {name: bay tincture, kind: tincture, from: bay-tincture.yaml}
                lines:
                  - {use: bay tincture, amount: all}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """);
        String make = kitchen.begun(recipe);
        MakeState state = kitchen.state(make);
        assertThat(state.parts()).extracting(MakePart::title).containsExactly("Bay tincture", "Bay liqueur");
        assertThat(ids(state)).contains("1/rest", "1/came", "2/line-1", "2/label");
        double sugar = asked(state, "2/line-2");
        new RecordStep(kitchen.store).came(state, state.step("1/came"), "180 ml", 0, Kitchen.request());
        MakeState came = kitchen.state(make);
        assertThat(asked(came, "2/line-2")).isLessThan(0.9 * sugar);
        assertThat(came.whole().measured().result().strength()).isCloseTo(30.0, within(0.1));
    }

    @Test
    void aMeasuredDensityIsSetAgainstWhatWasPlanned() {
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        kitchen.finishAsAsked(make);
        MakeState state = kitchen.state(make);
        LogEntry tick = Objects.requireNonNull(state.step("1/measure").last());
        RecordStep record = new RecordStep(kitchen.store);
        record.undone(state, tick, 0, Kitchen.request());
        String density = String.valueOf(state.whole().measured().result().density() / 1000.0);
        record.measured(state, state.step("1/measure"), density, "", 0, Kitchen.request());
        Finding found = kitchen.state(make).whole().findings().get(0);
        assertThat(found.verdict()).isEqualTo("as expected");
        assertThat(found.message())
                .isEqualTo("With 180 g/L of sugar the density measured stands for 28.0 % vol; 28.0 % vol is reckoned.");
    }

    @Test
    void bottlesAreASizeAndNonsenseIsNone() {
        String recipe = kitchen.saved("Bay", Kitchen.BAY);
        MakeState state =
                kitchen.state(kitchen.begun(recipe, new BeginMake.Wish("4 x 350 ml", false, Map.of(), Map.of())));
        assertThat(state.whole().planned().millilitres()).isCloseTo(1400.0, within(1.0));
        BeginMake.Outcome refused = new BeginMake(kitchen.store)
                .answer(recipe, 1, new BeginMake.Wish("a lot", false, Map.of(), Map.of()), Kitchen.request());
        assertThat(refused).isInstanceOf(BeginMake.Outcome.Refused.class);
    }

    @Test
    void aTimerRunsUntilItIsSwitchedOffOrItsStepIsDone() {
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        RecordStep record = new RecordStep(kitchen.store);
        MakeState state = kitchen.state(make);
        record.timerBegun(state, state.step("1/jar-3-cool"), 600, 0, Kitchen.request());
        record.timerBegun(state, state.step("1/own-1"), 1200, 0, Kitchen.request());
        kitchen.restart();
        assertThat(kitchen.state(make).timers())
                .extracting(MakeState.Timer::seconds)
                .containsExactly(600L, 1200L);
        record = new RecordStep(kitchen.store);
        record.timerOff(state, state.step("1/own-1"), 0, Kitchen.request());
        kitchen.tick(make, "1/jar-3-cool");
        assertThat(kitchen.state(make).timers()).isEmpty();
    }

    /** 20 g of leaf in 200 mL of 60 % vol, of which 40 mL stay in the leaf: 160 mL and a little water of the leaf, 20 g in 0.162 L. */
    @Test
    void aTinctureThatIsLeftOverSaysHowMuchPlantItCarries() {
        kitchen.saved("Bay leaf tincture", """
                stillroom: 1
                title: Bay leaf tincture
                ingredients:
                  - {name: dried bay leaf, kind: dried plant}
                lines:
                  - {use: dried bay leaf, amount: 20 g}
                  - {use: spirit 60 %, amount: 200 ml}
                loss: 2 ml/g
                """);
        String recipe = kitchen.saved("Bay liqueur", """
                stillroom: 1
                title: Bay liqueur
                target: {volume: 1 L, strength: 30 %, sugar: 150 g/L}
                ingredients:
                  - {name: bay tincture, kind: tincture, from: bay-leaf-tincture.yaml}
                lines:
                  - {use: bay tincture, dose: 20 ml/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """);
        String make = kitchen.begun(recipe);
        kitchen.finishAsAsked(make);
        new FinishMake(kitchen.store).answer(kitchen.state(make), Kitchen.request());

        Map<String, String> fields = kitchen.store.lots().all().get(0).sheet().fields();
        assertThat(fields).containsEntry("plant", "dried bay leaf");
        assertThat(Double.parseDouble(String.valueOf(fields.get("ratio")).replace(" g/L", "")))
                .isCloseTo(20.0 / 0.162, within(1.5));
    }

    /** 100 mL of essence, of which 1 L of liqueur takes 20 mL. */
    @Test
    void whatAStageLeavesOverIsALotOfTheShelfWithItsRecipe() {
        String essence = kitchen.saved("Bay essence", """
                stillroom: 1
                title: Bay essence
                makes: essence
                target: {volume: 100 ml}
                ingredients:
                  - {name: laurel oil, kind: essential oil}
                lines:
                  - {use: laurel oil, amount: 1.5 g}
                  - {use: spirit 96 %, amount: make up}
                """);
        String recipe = kitchen.saved("Bay liqueur", """
                stillroom: 1
                title: Bay liqueur
                target: {volume: 1 L, strength: 30 %, sugar: 150 g/L}
                ingredients:
                  - {name: bay essence, kind: essence, from: bay-essence.yaml}
                lines:
                  - {use: bay essence, dose: 20 ml/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """);
        String make = kitchen.begun(recipe);
        kitchen.finishAsAsked(make);
        FinishMake finish = new FinishMake(kitchen.store);
        MakeState state = kitchen.state(make);
        BatchSheet preview = finish.preview(state);
        finish.answer(state, Kitchen.request());
        finish.answer(state, Kitchen.request());

        assertThat(preview.left()).extracting(BatchSheet.LeftSheet::name).containsExactly("bay essence");
        assertThat(kitchen.store.lots().all()).hasSize(1);
        Lot lot = kitchen.store.lots().all().get(0);
        assertThat(lot.sheet().kind()).isEqualTo("essence");
        assertThat(lot.left()).isCloseTo(80.0, within(0.3));
        assertThat(lot.sheet().full()).isCloseTo(100.0, within(0.2));
        LotSheet.Origin origin = Objects.requireNonNull(lot.sheet().origin());
        assertThat(origin.recipe()).isEqualTo(essence);
        assertThat(origin.revision()).isEqualTo(1);
        assertThat(lot.sheet().fields().get("aroma")).startsWith("laurel oil 15.0");
        String strength = Objects.requireNonNull(lot.sheet().fields().get("strength"));
        assertThat(Double.parseDouble(strength.replace(" %", "")))
                .isCloseTo(96.0 * (1.0 - 1.5 / 0.9 / 100.0), within(0.1)); // 1.5 g of oil of about 0.9 g/mL in 100 mL
        List<LeftOver> left = LeftOver.of(
                new ShelfLots(OunceMeaning.US_FLUID).of(kitchen.store.lots().all()), origin.made());
        assertThat(left).extracting(LeftOver::name).containsExactly("bay essence");
        assertThat(left.get(0).monthsOpen()).hasValue(0.0);
    }

    /** 24 drops are asked; 24 mL are a slip of the unit, and count only once somebody says that they went in. */
    @Test
    void millilitresForDropsAreAskedBeforeTheyCount() {
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        RecordStep.Outcome.NotUnderstood asked =
                (RecordStep.Outcome.NotUnderstood) kitchen.pour(make, ESSENCE, "24 ml");
        assertThat(asked.message()).contains("“24 ml”", "times what is asked (24 drops)");
        assertThat(asked.choices()).containsExactly("24 drops", "24 ml!");
        assertThat(kitchen.state(make).step(ESSENCE).isToCome()).isTrue();

        assertThat(kitchen.pour(make, ESSENCE, asked.choices().get(1))).isInstanceOf(RecordStep.Outcome.Kept.class);
        assertThat(Objects.requireNonNull(kitchen.state(make).step(ESSENCE).pour())
                        .grams())
                .isBetween(18.0, 25.0);
        assertThat(kitchen.pour(
                        kitchen.begun(kitchen.saved("Bay", Kitchen.BAY)),
                        ESSENCE,
                        asked.choices().get(0)))
                .isInstanceOf(RecordStep.Outcome.Kept.class);
    }

    /** A dropper that gives drops of water of 40 mg in place of 50 mg: the same essence in 30 drops for 24. */
    @Test
    void aDropperOfTheShelfIsChosenForALineInDrops() {
        Instrument pipette = kitchen.store
                .instruments()
                .add(new InstrumentSheet("pipette", "dropper", Map.of(), null), Kitchen.request());
        new KeepCalibration(kitchen.store.instruments())
                .answer(
                        pipette,
                        new Calibrated(40.0, 0.4),
                        Map.of("drops", List.of("50"), "weighed", List.of("2 g")),
                        LocalDate.of(2026, 1, 2),
                        Kitchen.request());
        String counted = Kitchen.BAY
                .replace("kind: dropper}", "kind: dropper, drop: 50 mg}")
                .replace(", drop: 0.02 g", "");
        String recipe = kitchen.saved("Bay", counted);
        BeginMake begin = new BeginMake(kitchen.store);
        Revision revision = kitchen.store.recipes().latest(recipe).orElseThrow();
        assertThat(begin.linesInDrops(revision)).containsExactly("juniper essence");
        String id = begin.droppers().get(0).id();

        assertThat(essence(kitchen.begun(recipe))).startsWith("24 drops");
        assertThat(essence(
                        kitchen.begun(recipe, new BeginMake.Wish("", false, Map.of(), Map.of("juniper essence", id)))))
                .startsWith("30 drops");
        assertThat(essence(kitchen.begun(recipe, new BeginMake.Wish("", true, Map.of(), Map.of()))))
                .as("the instruments of the shelf hold a dropper")
                .startsWith("30 drops");
        String weighed = kitchen.saved("Weighed", Kitchen.BAY);
        assertThat(essence(
                        kitchen.begun(weighed, new BeginMake.Wish("", false, Map.of(), Map.of("juniper essence", id)))))
                .as("the drop of this very liquid counts first")
                .startsWith("24 drops");
        BeginMake.Outcome none = begin.answer(
                recipe, 1, new BeginMake.Wish("", false, Map.of(), Map.of("juniper essence", "gone")), "x");
        assertThat(((BeginMake.Outcome.Refused) none).problems())
                .extracting(Finding::rule)
                .containsExactly("no-such-dropper");
    }

    private String essence(String make) {
        return kitchen.state(make)
                .parts()
                .get(0)
                .measured()
                .lines()
                .get(1)
                .reading()
                .words();
    }

    private static final String FOXGLOVE = Kitchen.BAY
            .replace("ingredients:\n", "ingredients:\n  - {name: foxglove, kind: dried plant}\n")
            .replace("lines:\n", "lines:\n  - {use: foxglove, amount: 1 g}\n");

    @Test
    void whatNobodyIsToDrinkIsNotBegun() {
        String recipe = kitchen.saved("Bay", FOXGLOVE);
        BeginMake.Wish wish = new BeginMake.Wish("", false, Map.of(), Map.of());
        BeginMake.Outcome outcome = new BeginMake(kitchen.store).answer(recipe, 1, wish, Kitchen.request());
        assertThat(outcome).isInstanceOf(BeginMake.Outcome.Refused.class);
        Finding why = ((BeginMake.Outcome.Refused) outcome).problems().get(0);
        assertThat(why.where()).isEqualTo("foxglove");
        assertThat(why.message()).contains("cardiac glycosides, lethal");
        assertThat(why.remedy()).isEqualTo("Leave it out.");
        assertThat(kitchen.store.makes().open()).isEmpty();
    }

    /** Begun before the stop was known, or under other tables: the stop goes with its step, stays when it is in, and goes when it is left out. */
    @Test
    void theStopOfAMakeThatIsBegunStandsAtItsStep() {
        MakeStart start = new MakeStart(null, List.of(), Map.of(), Map.of(), false, Map.of());
        String make = kitchen.store
                .makes()
                .begin(kitchen.saved("Bay", FOXGLOVE), 1, LogBodies.write(start), Kitchen.request())
                .id();
        MakeState state = kitchen.state(make);
        assertThat(state.minding().notForDrinking()).hasSize(1);
        assertThat(state.minded(state.step("1/line-1")))
                .extracting(Finding::rule)
                .containsExactly("plant", "dose-too-small");
        assertThat(state.minded(state.step("1/line-2"))).isEmpty();
        new RecordStep(kitchen.store).skipped(state, state.step("1/line-1"), state.seen(), Kitchen.request());
        assertThat(kitchen.state(make).minding().notForDrinking()).isEmpty();

        String other = kitchen.store
                .makes()
                .begin(kitchen.saved("Bay too", FOXGLOVE), 1, LogBodies.write(start), Kitchen.request())
                .id();
        kitchen.finishAsAsked(other);
        assertThat(kitchen.state(other).minding().notForDrinking()).hasSize(1);
    }

    /** Millilitres for drops: nothing begins before it is answered, the answer is kept, and the step still says it. */
    @Test
    void anImplausibleDoseIsAskedBeforeAMakeBeginsAndTheAnswerIsKept() {
        String recipe = kitchen.saved(
                "Laurel",
                Kitchen.BAY
                        .replace("ingredients:\n", "ingredients:\n  - {name: laurel oil, kind: essential oil}\n")
                        .replace("lines:\n", "lines:\n  - {use: laurel oil, amount: 3 ml}\n"));
        BeginMake begin = new BeginMake(kitchen.store);
        BeginMake.Wish unsaid = new BeginMake.Wish("", false, Map.of(), Map.of());
        BeginMake.Outcome refused = begin.answer(recipe, 1, unsaid, Kitchen.request());
        assertThat(((BeginMake.Outcome.Refused) refused).problems())
                .extracting(Finding::rule)
                .containsExactly("dose-implausible", "dose-to-answer");
        assertThat(kitchen.store.makes().open()).isEmpty();
        BeginMake.Wish answered = new BeginMake.Wish("", false, Map.of(), Map.of(), Set.of("laurel oil"));
        BeginMake.Outcome begun = begin.answer(recipe, 1, answered, Kitchen.request());
        Make make = ((BeginMake.Outcome.Begun) begun).make();
        assertThat(make.revision()).isEqualTo(2);
        assertThat(kitchen.store.recipes().revision(recipe, 2).orElseThrow().text())
                .contains("meant:", "g/L of laurel oil");
        MakeState state = kitchen.state(make.id());
        assertThat(state.minded(state.step("1/line-1")))
                .filteredOn(finding -> finding.rule().equals("dose-implausible"))
                .extracting(Finding::verdict)
                .containsExactly("meant, says its maker");
        BeginMake.Outcome again = begin.answer(recipe, 2, unsaid, Kitchen.request());
        assertThat(again).isInstanceOf(BeginMake.Outcome.Begun.class);
    }

    @Test
    void cautionsStandWhereTheThingGoesInAndWhereItIsDone() {
        String recipe = kitchen.saved(
                "Elder",
                Kitchen.BAY
                        .replace(
                                "ingredients:\n",
                                "ingredients:\n  - {name: elderflower, kind: fresh plant, contains: {water: 80 %}}\n")
                        .replace("lines:\n", "lines:\n  - {use: elderflower, amount: 30 g}\n")
                        .replace("Steep with a peel", "Put a piece of dry ice in, steep"));
        MakeState state = kitchen.state(kitchen.begun(recipe));
        assertThat(state.minded(state.step("1/line-1")))
                .extracting(Finding::verdict)
                .contains("look-alikes");
        assertThat(state.minded(state.step("1/own-1")))
                .extracting(Finding::rule)
                .containsExactly("dry-ice");
    }
}
