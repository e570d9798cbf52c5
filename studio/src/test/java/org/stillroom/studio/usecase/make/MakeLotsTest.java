package org.stillroom.studio.usecase.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.shelf.Bottles;

/** What is made is judged by the lots that it draws: by their plant, ratio, name, label and note. */
class MakeLotsTest {
    private static final String HERB = """
            stillroom: 1
            title: Herb liqueur
            target: {volume: 1 L, strength: 27 %, sugar: 190 g/L}
            ingredients:
              - {name: herb tincture, kind: tincture, strength: 60 %, ratio: 1:10}
            lines:
              - {use: herb tincture, amount: 200 ml}
              - {use: spirit 96 %, amount: free}
              - {use: white sugar, amount: free}
              - {use: water, amount: free}
            """;

    @TempDir
    private Path folder;

    private Kitchen kitchen;
    private String recipe = "";

    @BeforeEach
    void open() {
        kitchen = new Kitchen(folder);
        recipe = kitchen.saved("Herb liqueur", HERB);
    }

    @AfterEach
    void close() {
        kitchen.close();
    }

    private Lot lot(String name, String... fields) {
        List<String> all = new ArrayList<>(
                List.of("name", name, "kind", "tincture", "strength", "60 %", "left", "500 ml", "ratio", "1:10"));
        for (int i = 0; i < fields.length; i += 2) {
            int at = all.indexOf(fields[i]);
            if (at < 0) {
                all.add(fields[i]);
                all.add(fields[i + 1]);
            } else {
                all.set(at + 1, fields[i + 1]);
            }
        }
        return kitchen.store
                .lots()
                .add(List.of(Bottles.read(all.toArray(new String[0]))), Kitchen.request())
                .get(0);
    }

    private BeginMake.Outcome outcome(String line, Lot... lots) {
        return new BeginMake(kitchen.store)
                .answer(recipe, 1, new BeginMake.Wish("", false, Map.of(line, ids(lots)), Map.of()), Kitchen.request());
    }

    private static List<String> ids(Lot... lots) {
        return List.of(lots).stream().map(Lot::id).toList();
    }

    private MakeState state(Lot... lots) {
        assertThat(outcome("herb tincture", lots)).isInstanceOf(BeginMake.Outcome.Begun.class);
        return kitchen.state(kitchen.store.makes().open().get(0).id());
    }

    private static String minded(MakeState state) {
        return told(state.minding().findings());
    }

    private static String told(List<Finding> findings) {
        return String.join("\n", findings.stream().map(Finding::toString).toList());
    }

    /** Returns what the day sheet of a make says. */
    private String sheet(MakeState state) {
        PlanRecipe.Outcome worked = new PrintSheet(kitchen.store).ofMake(state, Workings.NONE);
        return told(((PlanRecipe.Outcome.Worked) worked).plan().findings());
    }

    private List<Finding> refused(String line, Lot... lots) {
        BeginMake.Outcome outcome = outcome(line, lots);
        assertThat(outcome).isInstanceOf(BeginMake.Outcome.Refused.class);
        return ((BeginMake.Outcome.Refused) outcome).problems();
    }

    @Test
    void thePlantsOfItsLotAreMindedAndOnTheDaySheet() {
        MakeState without = state(lot("herb tincture", "plant", "lemon balm"));
        assertThat(minded(without)).doesNotContain("hujone").doesNotContain("tonka");
        MakeState with = state(lot("herb tincture", "plant", "dried wormwood; tonka bean; celery seed"));
        assertThat(minded(with)).contains("hujone").contains("tonka");
        assertThat(sheet(with)).contains("hujone").contains("tonka").contains("contains celery");
        assertThat(with.minded(with.step(step(with)))).isNotEmpty();
    }

    private static String step(MakeState state) {
        return state.steps().stream()
                .filter(step -> {
                    MakeStep.Pour pour = step.pour();
                    return pour != null && pour.name().equals("herb tincture");
                })
                .map(MakeStep::id)
                .findFirst()
                .orElseThrow();
    }

    /** A lot that says neither is taken for what the recipe says of it. */
    @Test
    void theRatioOfItsLotCounts() {
        String same = sheet(state(lot("herb tincture", "plant", "dried wormwood")));
        String twice = sheet(state(lot("herb tincture", "plant", "dried wormwood", "ratio", "1:5")));
        assertThat(thujone(twice) / thujone(same)).isBetween(1.9, 2.1);
    }

    private static double thujone(String told) {
        return java.util.regex.Pattern.compile("hujone[^\n]*?([0-9.]+) mg/kg")
                .matcher(told)
                .results()
                .mapToDouble(found -> Double.parseDouble(found.group(1)))
                .max()
                .orElseThrow();
    }

    @Test
    void ofSeveralLotsTheMostAdverseCountsAndEachHasItsSay() {
        Lot weak = lot("herb tincture", "plant", "dried wormwood");
        Lot strong = lot("herb tincture", "plant", "dried wormwood", "ratio", "1:5");
        Lot celery = lot("herb tincture", "plant", "celery seed");
        String all = sheet(state(weak, celery, strong));
        assertThat(thujone(all)).isEqualTo(thujone(sheet(state(strong))));
        assertThat(all).contains("contains celery");
        assertThat(sheet(state(weak))).doesNotContain("contains celery");
    }

    @Test
    void whatTheNoteOrTheLabelOfItsLotSaysIsTold() {
        Lot plain = lot("herb tincture", "plant", "lemon balm");
        Lot noted = lot("herb tincture", "plant", "lemon balm", "note", "contains hazelnuts and wormwood extract");
        Lot labelled = lot("herb tincture", "plant", "lemon balm", "label", "contains milk");
        assertThat(sheet(state(plain))).doesNotContain("azelnut").doesNotContain("contains milk");
        assertThat(sheet(state(noted))).contains("hazelnut").contains("wormwood");
        assertThat(minded(state(noted))).contains("wormwood");
        assertThat(sheet(state(labelled))).contains("contains milk");
    }

    @Test
    void aLotOfAPoisonIsNotBegun() {
        Lot oleander = lot("herb tincture", "plant", "oleander");
        assertThat(told(refused("herb tincture", oleander))).contains("oleander");
    }

    @Test
    void aLotOfAnotherNameIsRefusedWithThoseThatFit() {
        Lot own = lot("herb tincture", "label", "of June");
        Lot oleander = lot("oleander tincture");
        Finding other = refused("herb tincture", oleander).get(0);
        assertThat(other.rule()).isEqualTo("lot-of-another-line");
        assertThat(other.where()).isEqualTo("herb tincture");
        assertThat(other.message()).contains("oleander tincture");
        assertThat(other.remedy()).contains(own.id()).contains("of June");
        assertThat(refused("mint tincture", own).get(0).rule()).isEqualTo("lot-of-no-line");
        assertThat(kitchen.store.makes().open()).isEmpty();
    }

    /** Plain spirits of one strength stand for each other. */
    @Test
    void aLotThatTheHouseTakesForTheSameIsDrawn() {
        Lot spirit = kitchen.lot("neutral spirit 96 %", "spirit", Map.of("strength", "96 %"), 900, "ml");
        assertThat(outcome("spirit 96 %", spirit)).isInstanceOf(BeginMake.Outcome.Begun.class);
    }

    @Test
    void beforeLotsAreChosenAnyOfThemIsMinded() {
        BeginMake begin = new BeginMake(kitchen.store);
        assertThat(told(begin.minding(kitchen.store.recipes().latest(recipe).orElseThrow())
                        .findings()))
                .doesNotContain("tonka");
        lot("herb tincture", "plant", "lemon balm");
        lot("herb tincture", "plant", "tonka bean");
        assertThat(told(begin.minding(kitchen.store.recipes().latest(recipe).orElseThrow())
                        .findings()))
                .contains("tonka");
    }
}
