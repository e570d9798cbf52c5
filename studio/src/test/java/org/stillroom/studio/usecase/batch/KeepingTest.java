package org.stillroom.studio.usecase.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.stillroom.studio.usecase.batch.Rested.typed;
import static org.stillroom.studio.usecase.make.Kitchen.request;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.label.Market;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.Keeping;
import org.stillroom.studio.sheet.LabelSheet;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.batch.RecordBatch.Outcome;

/** Whether a batch keeps follows from what is in its vessels and bottles, and from what was measured of these and done with them. */
class KeepingTest {
    private static final String SOUR = """
            stillroom: 1
            title: Quince cordial with alcohol
            target: {volume: 1 L, strength: 8 %%}
            ingredients:
              - {name: neutral spirit, kind: spirit, strength: 96 %%}
              - {name: quince juice, kind: juice, sugar: 95 g/L}
            lines:
              - {use: quince juice, amount: 700 ml}
              - {use: neutral spirit, amount: free}
              - {use: water, amount: free}
            %s""";

    private static final String WORMWOOD = """
            stillroom: 1
            title: Bitter of the dyke
            target: {volume: 1 L, strength: 30 %}
            ingredients:
              - {name: neutral spirit, kind: spirit, strength: 96 %}
              - {name: wormwood distillate, kind: distillate, strength: 40 %, plant: wormwood}
            lines:
              - {use: wormwood distillate, amount: 300 ml}
              - {use: neutral spirit, amount: free}
              - {use: water, amount: free}
            """;

    @TempDir
    private Path folder;

    private Rested rested;

    @BeforeEach
    void open() {
        rested = new Rested(folder);
    }

    @AfterEach
    void close() {
        rested.close();
    }

    private Book book() {
        return Book.open(rested.kitchen.store);
    }

    private TellKeeping.Found ofVessel(Batch batch) {
        return new TellKeeping(rested.kitchen.store, book()).of(batch, rested.held(batch, "1"));
    }

    private TellKeeping.Found ofBottles(Batch batch) {
        return new TellKeeping(rested.kitchen.store, book()).of(batch, bottling(batch));
    }

    private Bottling bottling(Batch batch) {
        return book().cellar().bottlings(batch.id()).get(0);
    }

    private String label(Batch batch) {
        LabelBottles.Found found = new LabelBottles(rested.kitchen.store).answer(book(), bottling(batch), Market.EU);
        return LabelSheet.svg(
                found.label(), LabelSheet.Look.USUAL, found.markings().get(0));
    }

    private static Keeping keeping(TellKeeping.Found found) {
        return Objects.requireNonNull(found.keeping());
    }

    private static List<String> verdicts(TellKeeping.Found found) {
        return found.findings().stream().map(Finding::verdict).toList();
    }

    private static void kept(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Kept.class);
    }

    private static Finding refused(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.NotKept.class);
        return ((Outcome.NotKept) outcome).problems().get(0);
    }

    @Test
    void aMeasuredPhAndPasteurisedBottlesChangeWhatTheBatchAndItsLabelsSay() {
        Batch batch = rested.batch(SOUR.formatted(""));
        assertThat(keeping(ofVessel(batch)).sourness().ph()).isNull();
        assertThat(verdicts(ofVessel(batch))).contains("botulism", "keep it cold");

        kept(rested.after(1).phMeasured(batch, Map.of("of", "1", "ph", "3,4"), request()));
        assertThat(keeping(ofVessel(batch)).sourness().ph()).isEqualTo(3.4);
        assertThat(keeping(ofVessel(batch)).days()).isEqualTo(30);
        assertThat(verdicts(ofVessel(batch))).doesNotContain("botulism");

        kept(rested.after(2).bottled(batch, typed("1", "fills", "2 x 350 ml"), request()));
        assertThat(label(batch)).contains("best before").contains("Keep in the fridge, best within a month");
        kept(rested.after(3).pasteurised(batch, Map.of("of", "bottles 1-2"), request()));
        assertThat(keeping(ofBottles(batch)).where()).isEqualTo(Keeping.Where.COLD_ONCE_OPEN);
        assertThat(label(batch)).contains("Keep in the fridge once open").doesNotContain("best before");
    }

    @Test
    void pasteurisedBottlesOfUnknownPhStayInTheCold() {
        Batch batch = rested.batch(SOUR.formatted(""));
        kept(rested.after(2).bottled(batch, typed("1", "fills", "2 x 350 ml"), request()));
        kept(rested.after(3).pasteurised(batch, Map.of(), request()));
        assertThat(keeping(ofBottles(batch)).where()).isEqualTo(Keeping.Where.FRIDGE);
        assertThat(verdicts(ofBottles(batch))).contains("botulism");

        kept(rested.after(4).phMeasured(batch, Map.of("of", "bottles 1", "ph", "3.4"), request()));
        assertThat(keeping(ofBottles(batch)).where()).isEqualTo(Keeping.Where.COLD_ONCE_OPEN);
        Bottling second = book().cellar().bottlings(batch.id()).get(1);
        assertThat(keeping(new TellKeeping(rested.kitchen.store, book()).of(batch, second))
                        .where())
                .as("the bottle that nobody measured")
                .isEqualTo(Keeping.Where.FRIDGE);
    }

    @Test
    void whatTheRecipeSaysDoesNotClearABatch() {
        Batch batch = rested.batch(SOUR.formatted("ph: 3.1\npasteurised: \"yes\"\n"));
        assertThat(keeping(ofVessel(batch)).sourness().ph()).isNull();
        assertThat(verdicts(ofVessel(batch))).contains("botulism");
        kept(rested.after(2).bottled(batch, typed("1", "fills", "2 x 350 ml"), request()));
        assertThat(keeping(ofBottles(batch)).where()).isEqualTo(Keeping.Where.FRIDGE);
    }

    @Test
    void aBatchThatWasWateredDownIsJudgedByWhatItIsNow() {
        Batch batch = rested.batch();
        assertThat(keeping(ofVessel(batch)).where()).isEqualTo(Keeping.Where.SHELF);
        kept(rested.after(5).added(batch, typed("1", "what", "water", "amount", "900 ml"), request()));
        assertThat(keeping(ofVessel(batch)).where()).isEqualTo(Keeping.Where.FRIDGE);
    }

    @Test
    void whatWasAddedOrBlendedInIsOnTheLabel() {
        Batch batch = rested.batch();
        Lot cream = rested.kitchen.lot("double cream", "dairy", Map.of("fat", "36 %", "water", "60 %"), 500, "g");
        kept(rested.after(5).added(batch, typed("1", "what", cream.id(), "amount", "100 g"), request()));
        assertThat(keeping(ofVessel(batch)).isCold()).isTrue();
        kept(rested.after(6).bottled(batch, typed("1", "fills", "1 x 350 ml"), request()));
        assertThat(label(batch)).contains("Contains milk");

        Batch other = rested.batch();
        kept(rested.after(7).moved(batch, typed("1", "to", "1", "batch", other.id(), "amount", "100 ml"), request()));
        kept(rested.after(8).bottled(other, typed("1", "fills", "1 x 350 ml"), request()));
        assertThat(label(other)).contains("Contains milk");
        assertThat(keeping(ofBottles(other)).isCold()).isTrue();
    }

    /** 20 mg/kg is above the 10 mg/kg of Regulation (EC) No 1334/2008, Annex III, part B; 8 is below. */
    @Test
    void whatALaboratoryFoundInTheseBottlesCountsForThem() {
        Batch batch = rested.batch(WORMWOOD);
        assertThat(thujone(ofVessel(batch))).containsOnly("not known");

        kept(rested.after(1).analysed(batch, Map.of("of", "1", "found", "thujone 20 mg/kg"), request()));
        assertThat(thujone(ofVessel(batch))).containsExactly("above the limit");
        kept(rested.after(2).bottled(batch, typed("1", "fills", "2 x 350 ml"), request()));
        assertThat(thujone(ofBottles(batch))).containsExactly("above the limit");

        kept(rested.after(3).analysed(batch, Map.of("of", "bottles 1-2", "found", "thujone 8,0 mg/kg"), request()));
        assertThat(thujone(ofBottles(batch))).isEmpty();
        assertThat(bottling(batch).each().analysed().told()).isEqualTo("thujone 8.00 mg/kg");
    }

    private static List<String> thujone(TellKeeping.Found found) {
        return found.findings().stream()
                .filter(finding -> finding.message().toLowerCase(Locale.ROOT).contains("thujone"))
                .map(Finding::verdict)
                .toList();
    }

    @Test
    void whatCannotBeIsRefusedAtItsField() {
        Batch batch = rested.batch();
        assertThat(refused(rested.after(1).phMeasured(batch, Map.of("of", "1", "ph", "40"), request()))
                        .where())
                .isEqualTo("ph");
        assertThat(refused(rested.after(1).phMeasured(batch, Map.of("of", "1"), request()))
                        .where())
                .isEqualTo("ph");
        assertThat(refused(rested.after(1).phMeasured(batch, Map.of("of", "jug", "ph", "3"), request()))
                        .rule())
                .isEqualTo("vessel-not-known");
        for (String found : List.of("", "thujone", "thujone 8", "limewater 8 mg/kg", "alpha-thujone 8 mg/kg")) {
            assertThat(refused(rested.after(1).analysed(batch, Map.of("of", "1", "found", found), request()))
                            .where())
                    .as(found)
                    .isEqualTo("found");
        }
        assertThat(refused(rested.after(1).pasteurised(batch, Map.of(), request()))
                        .rule())
                .isEqualTo("bottles-not-filled");
        assertThat(refused(rested.after(1).pasteurised(batch, Map.of("of", "1"), request()))
                        .rule())
                .isEqualTo("bottles-wanted");
    }
}
