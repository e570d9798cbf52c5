package org.stillroom.core.tasting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.reference.Table;
import org.stillroom.core.tasting.Note.Content;

class NoteTest {
    private static final String LIMONENE = "5989-27-5";
    private static final String LINALOOL = "78-70-6";
    private static final String EUGENOL = "97-53-0";

    @Test
    void everyNameOfTheThresholdsFindsItsPartner() {
        List<String> without = new ArrayList<>();
        for (String cas : OdourThreshold.known()) {
            if (Constituents.find(cas) == null) {
                without.add(cas);
            }
        }
        assertThat(without).isEmpty();
        assertThat(OdourThreshold.known()).hasSizeGreaterThan(25);
    }

    @Test
    void theThresholdIsTakenFromTheNearestMediumWithItsWholeSpread() {
        OdourThreshold water = Objects.requireNonNull(OdourThreshold.of(LIMONENE, 0));
        assertThat(water.low()).isEqualTo(10); // Belitz and Grosch 1987
        assertThat(water.high()).isEqualTo(200); // Belitz, Grosch, Schieberle, table 5.34
        assertThat(water.middle()).isCloseTo(Math.sqrt(2000), within(1e-9));
        OdourThreshold spirit = Objects.requireNonNull(OdourThreshold.of(EUGENOL, 30));
        assertThat(spirit.medium()).isEqualTo(OdourThreshold.Medium.SPIRIT);
        assertThat(spirit.standing()).isEqualTo(Standing.FROM_MEMORY);
        assertThat(OdourThreshold.of("1-2-3", 30)).isNull();
        assertThat(Objects.requireNonNull(OdourThreshold.of(LIMONENE, 40)).medium())
                .isEqualTo(OdourThreshold.Medium.WATER);
    }

    @Test
    void odourActivityIsContentOverThreshold() {
        Note note = Note.of(Map.of(LIMONENE, new Content(1, 2, 4)), 0).get(0);
        assertThat(note.activity()).isCloseTo(2000 / Math.sqrt(2000), within(1e-9));
        assertThat(note.least()).isCloseTo(1000.0 / 200, within(1e-9));
        assertThat(note.most()).isCloseTo(4000.0 / 10, within(1e-9));
        assertThat(note.weaknesses()).contains(Note.Weakness.DECADE);
    }

    @Test
    void whatIsKnownToADecadeIsToldInOneFigureWithItsEndsRoundedOutwards() {
        Note wide = Note.of(Map.of(LIMONENE, new Content(1.1, 2, 4.1)), 0).get(0);
        // 44.7, from 5.5 to 410 by Belitz, Grosch, Schieberle, table 5.34, and Belitz and Grosch 1987
        assertThat(wide.told()).isEqualTo(new Note.Told(40, 5, 500));
        Note narrow = new Note(
                LIMONENE,
                "d-limonene",
                new Content(0.9, 1, 1.1),
                new OdourThreshold(OdourThreshold.Medium.WATER, 9, 10, Standing.READ, List.of()),
                0);
        assertThat(narrow.told()).isEqualTo(new Note.Told(110, 90, 130));
    }

    /** A threshold that is recalled, or was found at another strength, makes a hint of what would else read as well known. */
    @Test
    void whatWeakensAnActivityIsSaid() {
        Content sure = new Content(9, 10, 11);
        assertThat(weaknesses("78-70-6", sure, 0)).containsExactly();
        assertThat(weaknesses("78-70-6", sure, 30)).contains(Note.Weakness.OTHER_MEDIUM);
        assertThat(weaknesses(EUGENOL, sure, 30)).contains(Note.Weakness.RECALLED);
        assertThat(weaknesses(EUGENOL, sure, 30)).doesNotContain(Note.Weakness.OTHER_MEDIUM);
        assertThat(weaknesses("123-35-3", sure, 0)).containsExactly(); // myrcene, 14 µg/L in water, as quoted
        assertThat(weaknesses("123-35-3", sure, 30)).containsExactly(Note.Weakness.DECADE, Note.Weakness.OTHER_MEDIUM);
        assertThat(weaknesses("123-35-3", new Content(1, 5, 11), 0)).containsExactly(Note.Weakness.DECADE);
    }

    /** One figure at another strength is in doubt by half a decade to either side; several that differ more keep their own ends. */
    @Test
    void aWeakThresholdThatStandsAloneReachesOverADecade() {
        Note alone = Note.of(Map.of("123-35-3", new Content(10, 10, 10)), 30).get(0);
        assertThat(alone.most() / alone.least()).isCloseTo(10.0, within(1e-9));
        assertThat(Math.sqrt(alone.most() * alone.least())).isCloseTo(alone.activity(), within(1e-6));
        Note sure = Note.of(Map.of("123-35-3", new Content(10, 10, 10)), 0).get(0);
        OdourThreshold inWater = Objects.requireNonNull(OdourThreshold.of("123-35-3", 0));
        assertThat(sure.most() / sure.least())
                .isCloseTo(inWater.high() / inWater.low(), within(1e-9))
                .isLessThan(10.0);
        Note many = new Note(
                LIMONENE,
                "d-limonene",
                new Content(1, 1, 1),
                new OdourThreshold(OdourThreshold.Medium.WATER, 1, 100, Standing.FROM_MEMORY, List.of()),
                30);
        assertThat(many.most() / many.least()).isCloseTo(100.0, within(1e-9));
    }

    private static Set<Note.Weakness> weaknesses(String cas, Content content, double strength) {
        return Note.of(Map.of(cas, content), strength).get(0).weaknesses();
    }

    @Test
    void theNoteThatStandsOutMostLeads() {
        List<Note> notes = Note.of(
                Map.of(
                        LIMONENE,
                        new Content(9, 10, 11),
                        LINALOOL,
                        new Content(9, 10, 11),
                        "555-10-2",
                        new Content(90, 100, 110)),
                0);
        assertThat(notes).extracting(Note::name).containsExactly("linalool", "d-limonene", "beta-phellandrene");
        assertThat(notes.get(2).activity()).isEqualTo(0.0);
        assertThat(notes.get(2).weaknesses()).doesNotContain(Note.Weakness.DECADE);
    }

    @Test
    void anOilBringsItsConstituentsFromTheLeastToTheMost() {
        Map<String, Content> lemon = AromaContents.of("lemon oil", 1000, Map.of());
        Content limonene = Objects.requireNonNull(lemon.get(LIMONENE));
        assertThat(limonene.min()).isLessThan(limonene.typical());
        assertThat(limonene.max()).isBetween(limonene.typical(), 1000.0);
        Content guessed = Objects.requireNonNull(
                AromaContents.of("moon dust", 100, Map.of(LINALOOL, 0.8)).get(LINALOOL));
        assertThat(guessed).isEqualTo(new Content(40, 80, 100));
        assertThat(AromaContents.analysed(100, Map.of(LINALOOL, Span.exactly(0.8)))
                        .get(LINALOOL))
                .isEqualTo(new Content(80, 80, 80));
        assertThat(AromaContents.analysed(100, Map.of(LINALOOL, new Span(0.25, 0.75)))
                        .get(LINALOOL))
                .isEqualTo(new Content(25, 50, 75));
    }

    /** Citral is geranial and neral together (contract of names): counted once, whichever names state it. */
    @Test
    void citralIsCountedOnce() {
        String citral = "5392-40-5";
        String geranial = "141-27-5";
        String neral = "106-26-3";
        Map<String, Content> thrice = AromaContents.analysed(
                100, Map.of(citral, Span.exactly(0.03), geranial, Span.exactly(0.018), neral, Span.exactly(0.012)));
        assertThat(thrice).containsOnlyKeys(citral);
        assertThat(Objects.requireNonNull(thrice.get(citral)).typical()).isCloseTo(3, within(1e-9));
        Map<String, Content> parts =
                AromaContents.analysed(100, Map.of(geranial, Span.exactly(0.018), neral, Span.exactly(0.012)));
        assertThat(parts).containsOnlyKeys(citral);
        assertThat(Objects.requireNonNull(parts.get(citral)).typical()).isCloseTo(3, within(1e-9));
        assertThat(AromaContents.of("lemongrass", 1.0, Map.of()))
                .containsKey(citral)
                .doesNotContainKeys(geranial, neral);
    }

    @Test
    void aLadderGoesByEqualFactors() {
        assertThat(DoseLadder.around(10, DoseLadder.COARSE, 3)).containsExactly(5.0, 10.0, 20.0);
        assertThatThrownBy(() -> DoseLadder.around(10, 1, 3)).hasMessageContaining("factor above 1");
        assertThat(DoseLadder.around(8, DoseLadder.FINE, 5).get(0)).isCloseTo(4.0, within(1e-12));
    }

    @Test
    void aThresholdOfWhatIsNotThereStopsTheTable() {
        Table table = Table.of(
                "t",
                List.of("key,name,medium,low_ug_per_l,high_ug_per_l,status,source", "1-2-3,dust,water,1,2,read,x"));
        assertThatThrownBy(() -> OdourThreshold.read(table)).hasMessageContaining("no constituent of the table: 1-2-3");
        assertThatThrownBy(() -> new Content(2, 1, 3)).hasMessageContaining("not 2.0");
    }
}
