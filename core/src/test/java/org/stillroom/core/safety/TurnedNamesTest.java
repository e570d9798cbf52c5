package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.reference.Severity;

/** A name that stands turned round warns of all that it warns of in the order in which it is said. */
class TurnedNamesTest {
    private static final Knowledge KNOWN = Knowledge.SHIPPED;

    private static Bench with(String name, Kind kind) {
        Bench drink = new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        return kind == Kind.ESSENTIAL_OIL
                ? drink.grams(name, kind, 0.1)
                : drink.holding(name, kind, Substance.WATER, 10.0, 5.0);
    }

    /** Returns "STOP plant poisonous" and its like of what a name alone calls for, notes left out. */
    private static Set<String> warnings(String name, Kind kind) {
        Drink drink = Drink.of(with(name, kind).plan(), Grounds.SHIPPED);
        return ByName.against(drink).stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .map(finding -> finding.severity() + " " + finding.rule() + " " + finding.verdict())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bitter almonds | almonds, bitter | DRIED_PLANT",
                "bitter almond | Almond, bitter | DRIED_PLANT",
                "bitter almond | Mandel (bitter) | DRIED_PLANT",
                "bitter almond oil | Almond, bitter oil | ESSENTIAL_OIL",
                "bitter almond oil | almond oil, bitter | ESSENTIAL_OIL",
                "bitter almond oil | Almond, bitter, oil | ESSENTIAL_OIL",
                "bitter almond oil | oil of almond, bitter | ESSENTIAL_OIL",
                "bitter almond oil | Mandelöl, bitter | ESSENTIAL_OIL",
                "bitter almond oil | Öl aus Bittermandeln | ESSENTIAL_OIL",
                "sweet birch oil | Birch, sweet oil | ESSENTIAL_OIL",
                "sweet birch oil | birch, sweet, oil | ESSENTIAL_OIL",
                "cedar leaf oil | Cedar leaf, oil of | ESSENTIAL_OIL",
                "parsley seed oil | Parsley, seed oil | ESSENTIAL_OIL",
                "rhubarb leaves | leaves of rhubarb | DRIED_PLANT",
                "rhubarb leaves | rhubarb, dried leaves | DRIED_PLANT",
                "rhubarb leaves | Blätter vom Rhabarber | DRIED_PLANT",
                "rhubarb leaves | Rhabarber (Blätter) | DRIED_PLANT",
                "tomato leaves | leaves of tomato | DRIED_PLANT",
                "tomato leaves | leaves of the tomato plant | DRIED_PLANT",
                "sweet flag | flag, sweet | DRIED_PLANT",
                "sweet flag | sweetflag | DRIED_PLANT",
                "autumn crocus | crocus, autumn | DRIED_PLANT",
                "green potato | potato, green | DRIED_PLANT",
                "green potato | potatoes (green) | DRIED_PLANT",
                "wild ginger | ginger, wild | DRIED_PLANT",
                "wild ginger | dried ginger, wild | DRIED_PLANT",
                "Japanese star anise | star anise, Japanese | DRIED_PLANT",
                "Japanese star anise | star anise (Japanese) | DRIED_PLANT",
                "Japanese star anise | star anise – Japanese | DRIED_PLANT",
                "Japanese star anise | Sternanis, japanischer | DRIED_PLANT",
                "black locust bark | bark of black locust | DRIED_PLANT",
                "borage seed | seeds of borage | DRIED_PLANT",
                "apricot kernels | kernels of apricots | DRIED_PLANT",
                "apricot kernels | Kerne von Aprikosen | DRIED_PLANT",
                "sassafras root | root of sassafras | DRIED_PLANT",
            })
    void aNameThatStandsTurnedRoundWarnsAsItDoesInOrder(String inOrder, String turned, Kind kind) {
        Set<String> warnings = warnings(inOrder, kind);
        assertThat(warnings).as(inOrder).isNotEmpty();
        assertThat(warnings(turned, kind)).as(turned).containsAll(warnings);
    }

    /** What is listed, said not to be so, or a thing of its own is no name turned round. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "almonds, not bitter | DRIED_PLANT",
                "almonds, sweet, never bitter | DRIED_PLANT",
                "Mandeln, nicht bitter | DRIED_PLANT",
                "ginger, wild honey | DRIED_PLANT",
                "orange peel, bitters and almond | DRIED_PLANT",
                "lemon, orange peel | DRIED_PLANT",
            })
    void whatIsNoSuchNameIsNotTurned(String name, Kind kind) {
        assertThat(warnings(name, kind)).as(name).isEmpty();
    }

    @Test
    void plantsThatAnEssenceIsMadeOfAreNotRunTogether() {
        Bench essence = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0)
                .carrying("my essence", Kind.ESSENCE, 80.0, "bay oil 5 g/L, rose oil 5 g/L", 10.0);
        assertThat(essence.findings("plant")).isEmpty(); // rose bay is oleander
    }

    @Test
    void aNameThatIsReadTurnedRoundIsNotSaidToBeAnotherPlant() {
        NamedPlants named = NamedPlants.of("almond, bitter", KNOWN.plants());
        assertThat(named.plants()).extracting(Plant::name).contains("bitter almond");
        assertThat(named.unread()).isEmpty();
        assertThat(NamedPlants.of("almond, bitter, from Kaffa", KNOWN.plants()).unread())
                .containsExactly("kaffa");
    }

    @Test
    void whatOnlyATurnedNameSaysSettlesNothing() {
        assertThat(with("lime oil, freshly distilled", Kind.ESSENTIAL_OIL).findings("medicines"))
                .as("not read in this order before")
                .isNotEmpty();
        assertThat(with("wormwood, Roman", Kind.DRIED_PLANT).findings("kind-not-said"))
                .extracting("verdict")
                .contains("kind not said");
    }

    /** Whatever two words a table of stops and cautions knows, "B, A" and "B (A)" say what "A B" says. */
    @Test
    @Tag("property")
    void turningAnyNameOfTwoWordsLosesNoStopAndNoCaution() {
        Map<String, Kind> names = new LinkedHashMap<>();
        KNOWN.poisons().forEach(row -> row.names().forEach(name -> names.put(name.strip(), Kind.DRIED_PLANT)));
        KNOWN.cautions().forEach(row -> row.names().forEach(name -> names.put(name.strip(), Kind.DRIED_PLANT)));
        KNOWN.plants().forEach(row -> row.names().forEach(name -> names.put(name.strip(), Kind.DRIED_PLANT)));
        KNOWN.blocked().forEach(row -> row.names().forEach(name -> names.put(name.strip(), Kind.ESSENTIAL_OIL)));
        List<String> lost = new ArrayList<>();
        int asked = 0;
        for (Map.Entry<String, Kind> each : names.entrySet()) {
            String[] words = each.getKey().split(" ", -1);
            boolean turns = words.length == 2 && !TextWords.isDenial(words[0]);
            if (turns) {
                asked++;
                Set<String> warnings = warnings(each.getKey(), each.getValue());
                for (String turned : List.of(words[1] + ", " + words[0], words[1] + " (" + words[0] + ")")) {
                    Set<String> missing = new TreeSet<>(warnings);
                    missing.removeAll(warnings(turned, each.getValue()));
                    missing.forEach(warning -> lost.add(turned + ": " + warning));
                }
            }
        }
        assertThat(asked).isGreaterThan(400);
        assertThat(lost).isEmpty();
    }
}
