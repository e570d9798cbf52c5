package org.stillroom.core.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.label.GoneIn.Tells;
import org.stillroom.core.label.Shown.Outcome;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** What names ask of what goes in, question by question: Regulation (EU) 2019/787 Annex I, 27 CFR 5.1 and 5.150. */
class AskedTest {
    private static final long SEED = 20261128;
    private static final Set<Tells> ALL_BUT_FLAVOUR = EnumSet.of(Tells.PLANTS, Tells.ALCOHOL);

    private static final GoneIn NEUTRAL = spirit("neutral spirit", 1.0);
    private static final GoneIn WATER = thing("water", Kind.WATER, 0.0, 0.0, EnumSet.allOf(Tells.class));
    private static final GoneIn SUGAR = thing("white sugar", Kind.SUGAR, 0.0, 0.0, EnumSet.allOf(Tells.class));

    /** Something whose words are read as they stand, by the letters alone. */
    private static GoneIn thing(String name, Kind kind, double alcohol, double volume, Set<Tells> tells) {
        return new GoneIn(
                name,
                kind,
                new Contained.Part(alcohol, alcohol),
                new Contained.Part(volume, volume),
                tells,
                words -> words.stream().anyMatch(word -> (" " + name + " ").contains(" " + word + " ")),
                words -> kind != Kind.DRIED_PLANT
                                || words.stream().anyMatch(word -> (" " + name + " ").contains(" " + word + " "))
                        ? List.of()
                        : List.of(name));
    }

    private static GoneIn spirit(String name, double alcohol) {
        return thing(
                name,
                Kind.SPIRIT,
                alcohol,
                0.0,
                name.equals("neutral spirit") ? EnumSet.allOf(Tells.class) : ALL_BUT_FLAVOUR);
    }

    private static GoneIn plant(String name) {
        return thing(name, Kind.DRIED_PLANT, 0.0, 0.0, ALL_BUT_FLAVOUR);
    }

    private static GoneIn unknown(double alcohol, double volume) {
        return thing("house blend", Kind.TINCTURE, alcohol, volume, Set.of());
    }

    private static GoneIn wine(double alcohol, double volume) {
        return thing("red wine", Kind.WINE, alcohol, volume, ALL_BUT_FLAVOUR);
    }

    /** Returns the one answer to a question that a name asks. */
    private static Shown asked(Market market, String name, Asks asks, double strength, GoneIn... all) {
        return Asked.of(market, name, strength).stream()
                .filter(row -> row.asks() == asks)
                .map(row -> row.of(List.of(all)))
                .findFirst()
                .orElseThrow();
    }

    private static Shown asked(String name, Asks asks, GoneIn... all) {
        return asked(Market.EU, name, asks, 30.0, all);
    }

    /** Annex I 33: of the exception for cherry liqueurs the alcohol is cherry or sour cherry spirit alone; a gram of other spirit is too much. */
    @Test
    @Tag("published")
    void cherryLiqueurOfLittleSugarHasCherrySpiritAlone() {
        String name = "liqueur of cherry or sour cherry spirit";
        assertThat(asked(name, Asks.ALCOHOL_OF, spirit("cherry spirit", 1.0), SUGAR)
                        .outcome())
                .isEqualTo(Outcome.MET);
        Shown mixed = asked(
                name, Asks.ALCOHOL_OF, spirit("cherry spirit", 0.75), spirit("neutral spirit", 0.25), SUGAR, WATER);
        assertThat(mixed.outcome()).isEqualTo(Outcome.RULED_OUT);
        assertThat(mixed.by()).containsExactly("neutral spirit");
        assertThat(mixed.why()).contains("no more than 75 % is, beside neutral spirit");
        assertThat(mixed.isFar()).isFalse();
        assertThat(asked(name, Asks.ALCOHOL_OF, spirit("cherry spirit", 0.999), spirit("rum", 0.001))
                        .outcome())
                .isEqualTo(Outcome.RULED_OUT);
        assertThat(asked(name, Asks.ALCOHOL_OF, NEUTRAL).isFar()).isTrue();
        assertThat(asked(name, Asks.ALCOHOL_OF, spirit("cherry spirit", 0.9), unknown(0.1, 0.1))
                        .outcome())
                .as("nobody knows what the blend is")
                .isEqualTo(Outcome.NOT_KNOWN);
    }

    /** 27 CFR 5.150(b)(2): 51 % of the proof gallons are of rye or of bourbon; two that make it together do not. */
    @Test
    @Tag("published")
    void whiskyLiqueurHasFiftyOnePercentOfOneWhisky() {
        String name = "rye or bourbon liqueur";
        assertThat(whisky(0.51, "rye")).isEqualTo(Outcome.MET);
        assertThat(whisky(0.5099, "rye")).isEqualTo(Outcome.RULED_OUT);
        Shown both = asked(
                Market.US, name, Asks.ALCOHOL_OF, 35.0, spirit("rye", 0.5), spirit("bourbon", 0.4), spirit("rum", 0.1));
        assertThat(both.outcome()).isEqualTo(Outcome.RULED_OUT);
        assertThat(both.by()).containsExactly("rum");
        assertThat(asked(Market.US, name, Asks.ALCOHOL_OF, 35.0, spirit("rye", 0.5), spirit("bourbon", 0.5))
                        .by())
                .as("where every line is one of the named, each of them is told")
                .containsExactly("rye", "bourbon");
    }

    private static Outcome whisky(double part, String whisky) {
        return asked(
                        Market.US,
                        "rye or bourbon liqueur",
                        Asks.ALCOHOL_OF,
                        35.0,
                        spirit(whisky, part),
                        spirit("neutral spirit", 1.0 - part))
                .outcome();
    }

    /** Annex I 42: wine is at most half of a spritglögg. A wine of other fruit is no wine there. */
    @Test
    @Tag("published")
    void spritgloggIsAtMostHalfWine() {
        String name = "väkevä glögi / spritglögg";
        assertThat(asked(name, Asks.VOLUME_OF, wine(0.4, 0.5), NEUTRAL).outcome())
                .isEqualTo(Outcome.MET);
        Shown much = asked(name, Asks.VOLUME_OF, wine(0.4, 0.501), NEUTRAL);
        assertThat(much.outcome()).isEqualTo(Outcome.RULED_OUT);
        assertThat(much.why()).contains("At most 50 % of its volume", "50.1 % is (red wine)");
        assertThat(asked(name, Asks.VOLUME_OF, wine(0.4, 0.4), unknown(0.1, 0.2))
                        .outcome())
                .as("the blend can be wine too")
                .isEqualTo(Outcome.NOT_KNOWN);
        assertThat(asked(name, Asks.VOLUME_OF, thing("apple wine", Kind.WINE, 0.5, 0.8, ALL_BUT_FLAVOUR))
                        .outcome())
                .isNotEqualTo(Outcome.RULED_OUT);
    }

    /** 27 CFR 5.1: up to 24 % vol (48° proof) a mixture whose alcohol is of wine for more than half is no distilled spirit. */
    @Test
    @Tag("published")
    void aMixtureWithWineIsNoCordialUpToTwentyFour() {
        String name = "liqueur or cordial";
        assertThat(asked(Market.US, name, Asks.ALCOHOL_OF, 24.0, wine(0.501, 0.8), spirit("rum", 0.499))
                        .outcome())
                .isEqualTo(Outcome.RULED_OUT);
        assertThat(asked(Market.US, name, Asks.ALCOHOL_OF, 24.0, wine(0.5, 0.8), spirit("rum", 0.5))
                        .outcome())
                .isEqualTo(Outcome.MET);
        assertThat(Asked.of(Market.US, name, 24.1)).noneMatch(row -> row.asks() == Asks.ALCOHOL_OF);
    }

    /** Annex I 44: fermented honey mash is at least 30 % of the volume, and nothing but honey sweetens it. */
    @Test
    @Tag("published")
    void honeyNectarIsOfMeadAndHoney() {
        String name = "honey nectar / mead nectar";
        GoneIn honey = thing("honey", Kind.HONEY, 0.0, 0.1, ALL_BUT_FLAVOUR);
        assertThat(asked(name, Asks.VOLUME_OF, mead(0.3), NEUTRAL, honey).outcome())
                .isEqualTo(Outcome.MET);
        assertThat(asked(name, Asks.VOLUME_OF, mead(0.299), NEUTRAL, honey).outcome())
                .isEqualTo(Outcome.RULED_OUT);
        assertThat(asked(name, Asks.VOLUME_OF, mead(0.2), unknown(0.1, 0.2)).outcome())
                .isEqualTo(Outcome.NOT_KNOWN);
        Shown sugared = asked(name, Asks.WITHOUT, mead(0.4), honey, SUGAR);
        assertThat(sugared.outcome()).isEqualTo(Outcome.RULED_OUT);
        assertThat(sugared.by()).containsExactly("white sugar");
        assertThat(asked(name, Asks.WITHOUT, mead(0.4), honey).outcome()).isEqualTo(Outcome.NOT_KNOWN);
        GoneIn syrup = thing("honey syrup", Kind.SYRUP, 0.0, 0.1, Set.of());
        assertThat(asked(name, Asks.WITHOUT, mead(0.4), syrup).outcome()).isEqualTo(Outcome.NOT_KNOWN);
    }

    private static GoneIn mead(double volume) {
        return thing("mead", Kind.WINE, 0.2, volume, ALL_BUT_FLAVOUR);
    }

    /** Annex I 33: the exception of 80 g/L is for gentian, a similar plant or wormwood alone. */
    @Test
    @Tag("published")
    void gentianLiqueurOfLittleSugarIsFlavouredSoAlone() {
        String name = "liqueur of gentian or wormwood alone";
        assertThat(asked(name, Asks.FLAVOURED_ALONE_BY, NEUTRAL, SUGAR, WATER, plant("gentian"))
                        .outcome())
                .isEqualTo(Outcome.MET);
        Shown beside = asked(name, Asks.FLAVOURED_ALONE_BY, NEUTRAL, plant("gentian"), plant("orange peel"));
        assertThat(beside.outcome()).isEqualTo(Outcome.RULED_OUT);
        assertThat(beside.by()).containsExactly("orange peel");
        assertThat(asked(name, Asks.FLAVOURED_ALONE_BY, spirit("gin", 1.0), plant("gentian"))
                        .by())
                .as("gin is of juniper")
                .containsExactly("gin");
        assertThat(asked(name, Asks.FLAVOURED_ALONE_BY, spirit("pear spirit", 1.0), plant("gentian"))
                        .outcome())
                .as("what it was distilled of may be no flavouring")
                .isEqualTo(Outcome.NOT_KNOWN);
        assertThat(asked(name, Asks.FLAVOURED_ALONE_BY, NEUTRAL, plant("gentian"), unknown(0.1, 0.1))
                        .outcome())
                .isEqualTo(Outcome.NOT_KNOWN);
    }

    /** Annex I 35: a gin is no source of sloes, but a sloe gin is. */
    @Test
    @Tag("published")
    void ginBringsNoSloes() {
        GoneIn gin = thing("gin", Kind.SPIRIT, 1.0, 0.9, EnumSet.of(Tells.ALCOHOL));
        assertThat(asked("sloe gin", Asks.HOLDS, gin, plant("lemon")).outcome()).isEqualTo(Outcome.RULED_OUT);
        assertThat(asked("sloe gin", Asks.HOLDS, gin, plant("sloe")).outcome()).isEqualTo(Outcome.MET);
        GoneIn bought = thing("sloe gin", Kind.LIQUEUR, 1.0, 0.9, Set.of());
        assertThat(asked("sloe gin", Asks.HOLDS, bought).outcome()).isEqualTo(Outcome.NOT_KNOWN);
        assertThat(asked("sloe gin", Asks.HOLDS, gin, unknown(0.1, 0.1)).outcome())
                .isEqualTo(Outcome.NOT_KNOWN);
    }

    /** Annex I 24: no essential oils go into an akvavit; Annex I 21: essences in alcohol alone make no distilled gin. */
    @Test
    @Tag("published")
    void oilsAreNoDistillate() {
        GoneIn caraway = thing("caraway oil", Kind.ESSENTIAL_OIL, 0.0, 0.0, ALL_BUT_FLAVOUR);
        assertThat(asked("akvavit / aquavit", Asks.WITHOUT, NEUTRAL, caraway).by())
                .containsExactly("caraway oil");
        assertThat(asked("akvavit / aquavit", Asks.HOLDS, NEUTRAL, caraway).outcome())
                .isEqualTo(Outcome.RULED_OUT);
        GoneIn juniper = thing("juniper oil", Kind.ESSENTIAL_OIL, 0.0, 0.0, ALL_BUT_FLAVOUR);
        assertThat(asked("gin", Asks.HOLDS, NEUTRAL, juniper).outcome()).isEqualTo(Outcome.MET);
        assertThat(asked("distilled gin", Asks.HOLDS, NEUTRAL, juniper).outcome())
                .isEqualTo(Outcome.RULED_OUT);
        assertThat(asked("distilled gin", Asks.HOLDS, NEUTRAL, plant("juniper")).outcome())
                .isEqualTo(Outcome.MET);
    }

    /** Annex I 33: a liqueur is sweetened and flavoured; 34: milk is no raw material of a crème. Article 2: wine alone is no spirit drink. */
    @Test
    @Tag("published")
    void spiritSugarAndWaterMakeNoLiqueur() {
        assertThat(asked("liqueur (general)", Asks.FLAVOURED, NEUTRAL, SUGAR, WATER)
                        .outcome())
                .isEqualTo(Outcome.RULED_OUT);
        assertThat(asked("liqueur (general)", Asks.FLAVOURED, spirit("rum", 1.0), SUGAR)
                        .outcome())
                .isEqualTo(Outcome.NOT_KNOWN);
        assertThat(asked("liqueur (general)", Asks.FLAVOURED, NEUTRAL, SUGAR, plant("mint"))
                        .outcome())
                .isEqualTo(Outcome.MET);
        GoneIn cream = thing("cream", Kind.DAIRY, 0.0, 0.3, ALL_BUT_FLAVOUR);
        assertThat(asked("crème de (fruit or other, not milk)", Asks.FLAVOURED, NEUTRAL, SUGAR, cream)
                        .outcome())
                .isEqualTo(Outcome.RULED_OUT);
        assertThat(asked("liqueur (general)", Asks.FLAVOURED, NEUTRAL, SUGAR, cream)
                        .outcome())
                .isEqualTo(Outcome.NOT_KNOWN);
        assertThat(asked("spirit drink (general)", Asks.HOLDS, wine(1.0, 0.9), SUGAR)
                        .outcome())
                .isEqualTo(Outcome.RULED_OUT);
        assertThat(asked("spirit drink (general)", Asks.HOLDS, wine(0.9, 0.9), NEUTRAL)
                        .outcome())
                .isEqualTo(Outcome.MET);
    }

    /** Annex I 36: a sambuca is not coloured; that nothing is called so shows nothing. */
    @Test
    @Tag("published")
    void aColouringRulesOutWhatIsNotColoured() {
        GoneIn colouring = thing("food colouring", Kind.OTHER, 0.0, 0.0, Set.of());
        assertThat(asked("sambuca", Asks.WITHOUT, NEUTRAL, SUGAR, colouring).by())
                .containsExactly("food colouring");
        assertThat(asked("sambuca", Asks.WITHOUT, NEUTRAL, SUGAR).outcome()).isEqualTo(Outcome.NOT_KNOWN);
    }

    /** Each row can be read, and asks for as much as its question needs. */
    @Test
    void everyRowSaysWhatItsQuestionNeeds() {
        assertThat(Tables.open("label/category_conditions.csv").rows())
                .isNotEmpty()
                .allSatisfy(row -> {
                    Asked asked = Asked.read(row);
                    boolean share = asked.asks() == Asks.ALCOHOL_OF || asked.asks() == Asks.VOLUME_OF;
                    assertThat((asked.least() == null ? 0 : 1) + (asked.most() == null ? 0 : 1))
                            .as(row.cells().toString())
                            .isEqualTo(share ? 1 : 0);
                    boolean said = !asked.allWords().isEmpty() || !asked.kinds().isEmpty();
                    assertThat(said).as(row.cells().toString()).isEqualTo(asked.asks() != Asks.FLAVOURED);
                    if (asked.least() != null) {
                        assertThat(asked.kinds())
                                .as("groups count each kind by itself")
                                .isEmpty();
                    }
                });
    }

    /** Something that nobody recognises meets nothing by itself, and beside other things nothing that was not met before. */
    @Test
    @Tag("property")
    void whatIsNotRecognisedNeverMeetsAnything() {
        Random random = new Random(SEED);
        List<Table.Row> rows = Tables.open("label/category_conditions.csv").rows();
        int kept = 0;
        for (int i = 0; i < 400; i++) {
            List<GoneIn> before = some(random);
            double part = random.nextDouble();
            List<GoneIn> after = new ArrayList<>();
            before.forEach(one -> after.add(new GoneIn(
                    one.name(),
                    one.kind(),
                    times(one.alcohol(), 1.0 - part),
                    times(one.volume(), 1.0 - part),
                    one.tells(),
                    one.named(),
                    one.plantsBeside())));
            Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
            after.add(stranger(kind, part));
            for (Table.Row row : rows) {
                Asked asked = Asked.read(row);
                if (asked.of(after).outcome() == Outcome.MET) {
                    kept++;
                    assertThat(asked.of(before).outcome())
                            .as("seed %s, try %s, a %s: %s", SEED, i, kind, row.cells())
                            .isEqualTo(Outcome.MET);
                }
            }
        }
        assertThat(kept).as("what is met can stay so").isPositive();
        for (Kind kind : Kind.values()) {
            GoneIn alone = stranger(kind, 1.0);
            assertThat(rows)
                    .allSatisfy(
                            row -> assertThat(Asked.read(row).of(List.of(alone)).outcome())
                                    .as("%s: %s", kind, row.cells())
                                    .isNotEqualTo(Outcome.MET));
        }
    }

    /** Something of which nothing is recognised but the kind that its maker gave it. */
    private static GoneIn stranger(Kind kind, double part) {
        Contained.Part some = new Contained.Part(part, part);
        return new GoneIn("qvxz", kind, some, some, Set.of(), words -> false, words -> List.of());
    }

    private static Contained.Part times(Contained.Part part, double factor) {
        return new Contained.Part(part.least() * factor, part.most() * factor);
    }

    /** Returns some of what recipes hold; the parts of alcohol and volume make one together. */
    private static List<GoneIn> some(Random random) {
        List<String> names = List.of(
                "neutral spirit", "rum", "gin", "cherry spirit", "rye", "bourbon", "brandy", "red wine", "mead");
        List<String> plants = List.of("gentian", "sloe", "juniper", "cherry", "walnut", "anise", "clove", "laurel");
        List<String> drawn = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            drawn.add(names.get(random.nextInt(names.size())));
        }
        double[] parts = new double[drawn.size()];
        Arrays.setAll(parts, each -> random.nextDouble());
        double sum = Arrays.stream(parts).sum();
        List<GoneIn> all = new ArrayList<>(List.of(SUGAR, WATER));
        for (int i = 0; i < parts.length; i++) {
            String name = drawn.get(i);
            boolean wine = name.equals("red wine") || name.equals("mead");
            all.add(
                    wine
                            ? thing(name, Kind.WINE, parts[i] / sum, parts[i] / sum, ALL_BUT_FLAVOUR)
                            : thing(
                                    name,
                                    Kind.SPIRIT,
                                    parts[i] / sum,
                                    parts[i] / sum,
                                    name.equals("neutral spirit") ? EnumSet.allOf(Tells.class) : ALL_BUT_FLAVOUR));
        }
        for (int i = 0; i < random.nextInt(3); i++) {
            all.add(plant(plants.get(random.nextInt(plants.size()))));
        }
        return all;
    }
}
