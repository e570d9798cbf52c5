package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.aroma.CommonNames;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.safety.UsListing.Fit;

/** The US lists name a plant by whole names of it, and nothing else by a word that it shares with one. */
class UsListingTest {
    private static final Knowledge KNOWN = Knowledge.SHIPPED;
    private static final long SEED = 20261;
    private static final Set<String> NEUTRAL = Set.of("oil", "free", "from", "of", "1", "3");

    private static Fit fit(String name, boolean isOil) {
        return UsListing.find(name, isOil, KNOWN.usLists()).fit();
    }

    private static boolean isTicked(String name) {
        return fit(name, false) == Fit.LISTED || fit(name, true) == Fit.LISTED;
    }

    /** Plants that poison, and weeds and garden plants that share a word with a line of the lists. From memory. */
    private static final List<String> OTHERS = List.of(
            "white bryony",
            "white bryony root",
            "black bryony",
            "black bryony root",
            "wild arum root",
            "wild parsnip",
            "wild mushroom",
            "wild mushrooms, dried",
            "wild carrot",
            "wild fennel",
            "wild angelica root",
            "wild lettuce",
            "wild garlic",
            "lantana flowers",
            "lily flowers",
            "lily of the valley flowers",
            "bluebell flowers",
            "sweet flag oil",
            "sweet flag root",
            "sweet pea flowers",
            "sweet birch oil",
            "sweet clover",
            "sweet grass",
            "tea tree oil",
            "tea tree leaves",
            "labrador tea",
            "rose bay",
            "rose bay leaves",
            "rosebay",
            "christmas rose",
            "guelder rose berries",
            "rock rose",
            "spindle berries",
            "ivy berries",
            "ivy leaves",
            "privet berries",
            "holly berries",
            "mistletoe berries",
            "yew berries",
            "laurel water",
            "mountain laurel leaves",
            "spurge laurel",
            "cow parsley",
            "cow parsley root",
            "fool's parsley",
            "stone parsley",
            "horse chestnut leaves",
            "horse chestnut",
            "black nightshade berries",
            "deadly nightshade berries",
            "black henbane",
            "black hellebore",
            "white hellebore root",
            "false hellebore",
            "green hellebore",
            "stinking hellebore",
            "thorn apple seed",
            "apple of peru",
            "autumn crocus",
            "meadow saffron",
            "monkshood root",
            "foxglove leaves",
            "oleander flowers",
            "laburnum flowers",
            "black locust bark",
            "robinia flowers",
            "dwarf elder berries",
            "elder bark",
            "elder berries",
            "rhubarb leaves",
            "tomato leaves",
            "castor beans",
            "castor bean oil",
            "water hemlock root",
            "poison hemlock",
            "hemlock",
            "hemlock oil",
            "hemlock water dropwort",
            "giant hogweed",
            "hogweed seeds",
            "birthwort",
            "tobacco leaves",
            "comfrey leaves",
            "comfrey root",
            "borage seed",
            "coltsfoot leaves",
            "butterbur",
            "japanese star anise",
            "wild marjoram oil of the market",
            "bog myrtle",
            "sweet gale",
            "ground ivy",
            "ground elder",
            "wood sage",
            "jerusalem sage",
            "white sage",
            "cat thyme",
            "basil thyme",
            "corn mint",
            "water mint",
            "mountain mint",
            "cat mint",
            "lemon ant",
            "lemon eucalyptus",
            "rose of sharon",
            "marsh marigold",
            "corn marigold",
            "rosary pea",
            "juniper savin",
            "savin juniper",
            "juniper tar",
            "cherry leaves",
            "cherry laurel",
            "cherry kernels",
            "bitter almond oil",
            "bitter almonds",
            "almond",
            "sassafras",
            "sassafras oil",
            "sassafras root bark",
            "camphor",
            "camphor oil",
            "camphor crystals",
            "white camphor",
            "mustard gas",
            "horse radish leaves",
            "pennyroyal blend",
            "nutmeg flower of the moon",
            "snow rose",
            "dog rose bark",
            "pine",
            "pine tar",
            "turpentine weed",
            "oak",
            "poppy heads",
            "poppy straw",
            "poppy",
            "coca leaves",
            "tonka beans",
            "calamus root",
            "calamus oil",
            "arnica root",
            "quinine bark",
            "moon dust");

    @Test
    void whatSharesAWordWithALineIsNotListed() {
        List<String> ticked = OTHERS.stream().filter(UsListingTest::isTicked).toList();
        assertThat(ticked).isEmpty();
    }

    /**
     * Names of our own lists of what must not be drunk; those that the US lists do name stand here, as the law has them: what stops
     * them is told beside it.
     */
    @Test
    void whatStopsARecipeIsListedOnlyWhereTheLawNamesIt() {
        Set<String> stops = new TreeSet<>();
        KNOWN.blocked().stream().filter(Knowledge.Blocked::stops).forEach(row -> stops.addAll(row.names()));
        KNOWN.poisons().stream().filter(Knowledge.Poison::stops).forEach(row -> stops.addAll(row.names()));
        List<String> ticked = new ArrayList<>();
        stops.stream().map(String::strip).filter(UsListingTest::isTicked).forEach(ticked::add);
        assertThat(ticked)
                .containsExactlyInAnyOrder(
                        "apricot kernel", // 182.40, its oil
                        "peach kernel", // 182.40, its oil
                        "ricinus", // 172.510, castor oil
                        "pennyroyal", // 172.510
                        "rue", // 184.1698
                        "tansy", // 172.510
                        "mugwort", // 172.510 by its genus
                        "wormwood", // 172.510
                        "hyssop", // 182.20, 182.10
                        "mustard", // 182.20
                        "horseradish", // 182.10, as a spice
                        "parsley", // 182.20, 182.10
                        "parsley seed", // 182.20
                        "virginia snakeroot", // 172.510
                        "canadian snakeroot", // 172.510
                        "wild ginger"); // 172.510
    }

    @Test
    @Tag("property")
    void everyNameOfALineIsListed() {
        List<String> missed = new ArrayList<>();
        for (Knowledge.UsEntry entry : KNOWN.usLists()) {
            for (Set<String> name : entry.names()) {
                String said = String.join(" ", name);
                if (!found(said, entry) && !found(said + " oil", entry)) {
                    missed.add(said + " of " + entry.name());
                }
            }
            if (!found(entry.name(), entry)) {
                missed.add(entry.name() + " itself");
            }
        }
        assertThat(missed).isEmpty();
    }

    private static boolean found(String name, Knowledge.UsEntry entry) {
        return UsListing.find(name, false, KNOWN.usLists()).entries().contains(entry);
    }

    /** Synonyms as the lists print them in brackets; "see" points elsewhere, and clove's bracket lists what is made of it. */
    @Test
    @Tag("property")
    void everySynonymThatIsPrintedIsFound() {
        List<String> missed = new ArrayList<>();
        for (Knowledge.UsEntry entry : KNOWN.usLists()) {
            for (String synonym : printedSynonyms(entry.name())) {
                if (fit(synonym, false) == Fit.NOT_LISTED) {
                    missed.add(synonym + " of " + entry.name());
                }
            }
        }
        assertThat(missed)
                .containsExactlyInAnyOrder(
                        "Clove and its derivatives of Clove and its derivatives (bud oil, leaf oil, stem oil, oleoresin, eugenol)",
                        "bud oil of Clove and its derivatives (bud oil, leaf oil, stem oil, oleoresin, eugenol)",
                        "leaf oil of Clove and its derivatives (bud oil, leaf oil, stem oil, oleoresin, eugenol)",
                        "stem oil of Clove and its derivatives (bud oil, leaf oil, stem oil, oleoresin, eugenol)",
                        "oleoresin of Clove and its derivatives (bud oil, leaf oil, stem oil, oleoresin, eugenol)",
                        // parts and kinds, which name no plant by themselves
                        "bitter peel of Curacao orange peel (orange, bitter peel)",
                        "seed of Ambrette (seed)",
                        "free from prussic acid of Almond, bitter (free from prussic acid)",
                        "free from prussic acid of Bitter almond (free from prussic acid)",
                        "berries of Juniper (berries)",
                        "extract of Molasses (extract)",
                        "hips of Rose fruit (hips)",
                        "decocainized of Coca (decocainized)",
                        "yellow of Sandalwood, white (yellow, or East Indian)",
                        "East Indian of Sandalwood, white (yellow, or East Indian)",
                        "pine of Fir (pine) needles and twigs",
                        "hulls of Walnut husks (hulls), leaves, and green nuts",
                        "hydrochloride of Quinine (hydrochloride or sulfate)",
                        "sulfate of Quinine (hydrochloride or sulfate)",
                        "pale of Gambir (catechu, pale)",
                        "d- of Limonene (d-, l- and dl-)",
                        "l- and dl- of Limonene (d-, l- and dl-)");
    }

    private static List<String> printedSynonyms(String name) {
        List<String> synonyms = new ArrayList<>();
        int open = name.indexOf('(');
        int close = name.indexOf(')');
        if (open > 0 && close > open) {
            synonyms.add(name.substring(0, open).strip());
            String within = name.substring(open + 1, close);
            if (!within.startsWith("see ")) {
                synonyms.addAll(List.of(within.split(", or |, | or ", -1)));
            }
        }
        return synonyms;
    }

    private static final Pattern SPECIES = Pattern.compile(
            "\\b([A-Z][a-z]+|[A-Z]\\.)\\s+(?:x\\s+)?((?!spp|and|or|et|ex|f\\b|var|subsp|related|section|between)[a-z][a-z-]+)");

    /** Reads species out of a printed column, by itself: "Arnica montana L., A. fulgens Pursh" are two. */
    static List<String> species(String printed) {
        List<String> species = new ArrayList<>();
        Matcher matcher = SPECIES.matcher(printed);
        String genus = "";
        while (matcher.find()) {
            String first = matcher.group(1);
            boolean initial = first.endsWith(".");
            if (!initial) {
                genus = first;
            }
            if (!initial || genus.startsWith(first.substring(0, 1))) {
                species.add(genus + " " + matcher.group(2));
            }
        }
        return species;
    }

    /** By each botanical name that the lists print: listed, or told by which part; as oil, as plant, with and without botanist. */
    @Test
    @Tag("published")
    void everyBotanicalNameThatIsPrintedIsFound() {
        Set<String> missed = new LinkedHashSet<>();
        int asked = 0;
        for (Knowledge.UsEntry entry : KNOWN.usLists()) {
            for (String species : species(entry.botanical())) {
                asked++;
                if (fit(species, false) == Fit.NOT_LISTED
                        || fit(species.toLowerCase(Locale.ROOT) + " L.", false) == Fit.NOT_LISTED) {
                    missed.add(species + ": " + entry.name());
                }
            }
        }
        assertThat(asked).isGreaterThan(400);
        assertThat(missed)
                .containsExactlyInAnyOrder(
                        "Ethyl oenanthate: Cognac oil, white and green", // an ester, no plant
                        "Arachis hypogaea: Peanut stearine"); // of the nut itself the lists say nothing
    }

    /** Rows that the audit of the program found wanting. */
    @ParameterizedTest
    @CsvSource({
        "Mentha piperita oil, LISTED",
        "Mentha x piperita, LISTED",
        "Mentha piperita L., LISTED",
        "Carum carvi, LISTED",
        "Ocimum basilicum, LISTED",
        "Zingiber officinale Rosc., LISTED",
        "Z. officinale, LISTED",
        "peppermint (Mentha piperita L.) leaves, LISTED",
        "Sambucus nigra, PART_NOT_SAID",
        "Sambucus nigra flowers, LISTED",
        "Sambucus nigra bark, NOT_LISTED",
        "Mentha piperita moonroot, NOT_LISTED",
        "Sassafras albidum oil, PART_NOT_SAID",
        "sassafras leaves, LISTED",
        "Melaleuca oil, NOT_LISTED",
        "Illicium anisatum, NOT_LISTED",
        "Citrus aurantium subsp. bergamia, LISTED",
        "Foeniculum vulgare Mill. var. dulce (DC.) Alex., LISTED",
        "camphor, PART_NOT_SAID",
        "poppy, PART_NOT_SAID"
    })
    void byBotanicalName(String name, Fit fit) {
        assertThat(fit(name, false)).isEqualTo(fit);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tagetes flowers", "marigold", "Tagetes erecta"})
    void aPlantOfWhichTheOilAloneIsListedIsNotListed(String name) {
        assertThat(fit(name, false)).isEqualTo(Fit.OIL_ALONE);
        assertThat(fit(name + " oil", true)).isEqualTo(Fit.LISTED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"star anise oil", "horseradish oil", "poppy seed oil"})
    void anOilOfWhichTheSpiceAloneIsListedIsNotListed(String name) {
        assertThat(fit(name, true)).isEqualTo(Fit.SPICE_ALONE);
    }

    /** Any other word makes it another plant, unless that is a name of the lists as a whole. */
    @Test
    @Tag("property")
    void aForeignWordTakesTheTickAway() {
        Random random = new Random(SEED);
        List<String> foreign = new ArrayList<>(List.of(
                "cow",
                "christmas",
                "tree",
                "bay",
                "white",
                "black",
                "wild",
                "sweet",
                "false",
                "stinking",
                "dog",
                "horse",
                "flag",
                "bark",
                "root",
                "berries",
                "flowers",
                "kernels",
                "moon",
                "golden",
                "dwarf",
                "water",
                "stone",
                "japanese",
                "giant",
                "devil's",
                "poison",
                "hemlock",
                "bryony",
                "nightshade"));
        for (Knowledge.UsEntry entry : KNOWN.usLists()) {
            entry.names().forEach(foreign::addAll);
        }
        int asked = 0;
        List<String> kept = new ArrayList<>();
        for (Knowledge.UsEntry entry : KNOWN.usLists()) {
            for (Set<String> name : entry.names()) {
                for (int i = 0; i < 8; i++) {
                    String word = foreign.get(random.nextInt(foreign.size()));
                    String said = random.nextBoolean()
                            ? word + " " + String.join(" ", name)
                            : String.join(" ", name) + " " + word;
                    asked++;
                    if (isTicked(said) && !isMeantAsAWhole(said)) {
                        kept.add("seed " + SEED + ": " + said);
                    }
                }
            }
        }
        assertThat(asked).isGreaterThan(4_000);
        assertThat(kept).isEmpty();
    }

    /**
     * Whole names of one line with neutral words, or with parts that the line itself allows: written anew, by counting the words
     * that are left over, so that both can be wrong alone.
     */
    private static boolean isMeantAsAWhole(String said) {
        Set<String> told = NameWords.of(CommonNames.readings(said).get(0));
        told.removeAll(NEUTRAL);
        return KNOWN.usLists().stream().anyMatch(entry -> {
            Set<String> rest = new TreeSet<>(told);
            boolean one = false;
            for (Set<String> name : entry.names()) {
                Set<String> head = new TreeSet<>(name);
                head.removeAll(NEUTRAL);
                one |= told.containsAll(head);
                if (told.containsAll(head)) {
                    rest.removeAll(head);
                }
            }
            rest.removeAll(entry.parts());
            return one && rest.isEmpty();
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "dried peppermint leaves",
                "organic lemon peel, untreated",
                "fresh thyme",
                "oil of caraway",
                "anise seeds",
                "ground cinnamon",
                "cinnamon sticks",
                "juniper berries",
                "lavender flowers",
                "gentian root, cut",
                "coffee beans, roasted",
                "vanilla pods",
                "bay leaves",
                "St. John's bread"
            })
    void whatCommonNamesSayBesidesKeepsIt(String name) {
        assertThat(fit(name, false)).isEqualTo(Fit.LISTED);
    }

    @Test
    void aForeignPlantIsToldAsNotListed() {
        Bench wild = new Bench().grams("cow parsley", Kind.DRIED_PLANT, 1.0).strong("spirit", Kind.SPIRIT, 40.0, 999.0);
        assertThat(wild.verdicts("us-listed")).containsExactly("NOTE US not listed");
    }

    @Test
    void quinineIsListedByItsOwnClauseForOtherDrinks() {
        Bench bitter = new Bench().grams("quinine sulfate", Kind.SALT, 0.01).strong("spirit", Kind.SPIRIT, 40.0, 999.0);
        assertThat(bitter.findings("us-listed")).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo("listed for other drinks");
            assertThat(finding.message()).contains("172.575", "83 ppm");
        });
    }

    /** 21 CFR 182.60 is held by its names, 172.515 not at all. */
    @ParameterizedTest
    @ValueSource(strings = {"vanillin", "piperonal", "raspberry ketone"})
    void whatIsNotHeldOfSyntheticFlavouringsIsSaid(String name) {
        Bench drink = new Bench()
                .carrying(name + " essence", Kind.ESSENCE, 60.0, "oil: 1 g/L", 10.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 500.0);
        assertThat(drink.findings("us-listed"))
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(finding.message()).contains("182.60", "172.515", "not checked"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Paradieskörner", "Kubebenpfeffer", "Kubeben"})
    void spicesAreListedByTheirGermanNamesToo(String name) {
        assertThat(fit(name, false)).as(name).isEqualTo(Fit.LISTED);
    }
}
