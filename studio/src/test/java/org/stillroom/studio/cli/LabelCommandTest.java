package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The label command as it is typed. */
class LabelCommandTest {
    @TempDir
    private Path folder;

    private String recipe(String strength, String sugar) throws IOException {
        Path file = folder.resolve("recipe.yaml");
        Files.writeString(file, """
                stillroom: 1
                title: Hedge cup
                target: {volume: 1 L, strength: STRENGTH, sugar: SUGAR}
                lines:
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """.replace("STRENGTH", strength).replace("SUGAR", sugar));
        return file.toString();
    }

    /** Adds a line to a recipe: name and kind, with what else is told of it, and its amount. */
    private static String flavoured(String file, String thing, String amount) throws IOException {
        String name = thing.substring(0, thing.indexOf(','));
        Path path = Path.of(file);
        String text = Files.readString(path);
        String listed = text.contains("ingredients:") ? text : text.replace("lines:", "ingredients:\nlines:");
        Files.writeString(
                path,
                listed.replace("ingredients:\n", "ingredients:\n  - {name: " + thing + "}\n")
                        .replace("lines:\n", "lines:\n  - {use: " + name + ", amount: " + amount + "}\n"));
        return file;
    }

    private static boolean isMet(JsonNode json, String name) {
        return named(json, name).get("met_by_figures").booleanValue();
    }

    /** Hydrogen cyanide, at most 35 mg/kg of alcoholic drinks: Regulation (EC) No 1334/2008, annex III, part B. */
    @Test
    void aLabelOfWhatPassesALimitSaysSo() throws IOException {
        Path over = folder.resolve("over.yaml");
        Files.writeString(over, """
                stillroom: 1
                title: Kernel cup
                target: {volume: 1 L, strength: 30 %, sugar: 200 g/L}
                ingredients:
                  - {name: bitter almonds, kind: dried plant}
                lines:
                  - {use: bitter almonds, amount: 50 g}
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """);
        for (String language : new String[] {"en", "de"}) {
            Path out = folder.resolve("over-" + language + ".svg");
            assertThat(Desk.type("label " + over + " --size 120x90 --language " + language + " --out " + out)
                            .exit())
                    .isEqualTo(1);
            assertThat(Files.readString(out))
                    .contains(language.equals("en") ? "Above a limit of law" : "Über einem Höchstwert");
        }
        Path within = folder.resolve("within.svg");
        assertThat(Desk.type("label " + recipe("30 %", "200 g/L") + " --out " + within)
                        .exit())
                .isZero();
        assertThat(Files.readString(within)).doesNotContain("Above a limit");
    }

    @Test
    void namesOfPlantsThatAreNotInItAreSaidOnceAndNotOffered() throws IOException {
        String file = recipe("38 %", "120 g/L");
        Desk.Run said = Desk.type("label " + file);
        assertThat(said.out())
                .contains("Out of reach")
                .doesNotContain("EU: gin,")
                .doesNotContain("EU: sloe gin");
        Desk.Run drawn = Desk.type("label " + file + " --called gin --out " + folder.resolve("gin.svg"));
        assertThat(drawn.exit()).isNotZero();
        assertThat(drawn.err()).contains("it asks for juniper, and nothing in it is of that");
    }

    @Test
    void aPlaceHasItsOwnNamesAndStatementsAlone() throws IOException {
        String file = recipe("28 %", "180 g/L");
        assertThat(Desk.type("label " + file).out()).contains("- EU: ", "- US: ", "GOVERNMENT WARNING");
        assertThat(Desk.type("label " + file + " --place EU").out())
                .contains("- EU: ")
                .doesNotContain("- US: ")
                .doesNotContain("GOVERNMENT WARNING");
        assertThat(Desk.type("label " + file + " --place US").out())
                .contains("- US: ", "GOVERNMENT WARNING")
                .doesNotContain("- EU: ");
    }

    @Test
    void whatIsHardlyAlcoholicIsOfferedNoNameAndNoEmptyTable() throws IOException {
        String said = Desk.type("label " + recipe("0.3 %", "100 g/L")).out();
        assertThat(said)
                .contains("None of the names that law keeps here.", "The table has no rate for this strength")
                .doesNotContain("What it misses")
                .doesNotContain("a bottle       rates as of");
    }

    @Test
    void aLabelOfADoseThatNobodySaidIsMeantSaysSo() throws IOException {
        String text = """
                stillroom: 1
                title: Clove cup
                target: {volume: 1 L, strength: 30 %}
                ingredients:
                  - {name: clove oil, kind: essential oil}
                lines:
                  - {use: clove oil, dose: 1.2 g/LMEANT}
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: free}
                """;
        for (String language : new String[] {"en", "de"}) {
            Path asked = Files.writeString(folder.resolve("asked.yaml"), text.replace("MEANT", ""));
            Path out = folder.resolve("asked-" + language + ".svg");
            Desk.Run run = Desk.type("label " + asked + " --size 120x90 --language " + language + " --out " + out);
            assertThat(run.out()).contains("times the most");
            assertThat(Files.readString(out))
                    .contains(
                            language.equals("en")
                                    ? "Dose not said to be meant:"
                                    : "Dosis nicht als gemeint bestätigt:");
        }
        Path meant =
                Files.writeString(folder.resolve("meant.yaml"), text.replace("MEANT", ", meant: 1.2 g/L of clove oil"));
        Path answered = folder.resolve("answered.svg");
        Desk.type("label " + meant + " --size 120x90 --out " + answered);
        assertThat(Files.readString(answered)).contains("Clove cup").doesNotContain("Dose not said");
    }

    @Test
    void whatNobodyIsToDrinkGetsNoLabel() throws IOException {
        Path poison = folder.resolve("poison.yaml");
        Files.writeString(poison, """
                stillroom: 1
                title: Garden bitter
                target: {volume: 1 L, strength: 30 %, sugar: 200 g/L}
                ingredients:
                  - {name: foxglove, kind: dried plant}
                lines:
                  - {use: foxglove, amount: 1 g}
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """);
        for (String name : new String[] {"bad.pdf", "bad.svg"}) {
            Path out = folder.resolve(name);
            Desk.Run run = Desk.type("label " + poison + " --out " + out);
            assertThat(run.exit()).as(name).isEqualTo(1);
            assertThat(run.err()).as(name).contains("no label is drawn", "Foxglove", "Leave it out.");
            assertThat(out).as(name).doesNotExist();
        }
        assertThat(Desk.type("label " + poison).exit()).isEqualTo(1);
        assertThat(Desk.type("label " + recipe("28 %", "200 g/L")).exit()).isZero();
    }

    /** A published label of 45 % vol and 100 g/L: 289 kcal and 1200 kJ per 100 mL. */
    @Test
    @Tag("published")
    void energyIsPerHundredMillilitres() throws IOException {
        Desk.Run run = Desk.ask("label " + recipe("45 %", "100 g/L"));
        assertThat(run.number("energy_kcal_per_100ml")).isCloseTo(289, within(0.5));
        assertThat(run.number("energy_kj_per_100ml")).isCloseTo(1200, within(0.5));
        assertThat(run.number("energy_kj_per_serving")).isCloseTo(360, within(0.2));
    }

    /** 95.0 g/L of sucrose are 100 g/L as invert (Regulation (EU) 2019/787, Annex I 33). */
    @Test
    @Tag("published")
    void ninetyFiveGramsMakeALiqueur() throws IOException {
        assertThat(isMet(Desk.ask("label " + recipe("25 %", "95 g/L")).json(), "liqueur (general)"))
                .isTrue();
        assertThat(isMet(Desk.ask("label " + recipe("25 %", "94 g/L")).json(), "liqueur (general)"))
                .isFalse();
    }

    /** What lines rule out is missed, says by which line, and stands before the names of the law that are only out of reach. */
    @Test
    @Tag("published")
    void whatGoesInCanRuleANameOut() throws IOException {
        String name = "liqueur of gentian or wormwood alone";
        String gentian = flavoured(recipe("25 %", "80 g/L"), "gentian root, kind: dried plant", "5 g");
        assertThat(named(Desk.ask("label " + gentian).json(), name)
                        .get("standing")
                        .stringValue())
                .isEqualTo("asks besides");
        JsonNode mixed = named(
                Desk.ask("label " + flavoured(gentian, "orange peel, kind: dried plant", "5 g"))
                        .json(),
                name);
        assertThat(mixed.get("standing").stringValue()).isEqualTo("missed");
        assertThat(mixed.get("met_by_figures").booleanValue()).isTrue();
        assertThat(mixed.get("near").booleanValue()).isTrue();
        assertThat(mixed.at("/asked/0/outcome").stringValue()).isEqualTo("met");
        assertThat(mixed.at("/asked/1/outcome").stringValue()).isEqualTo("ruled out");
        assertThat(mixed.at("/asked/1/by/0").stringValue()).isEqualTo("orange peel");
        assertThat(Desk.type("label " + gentian).out().replaceAll("\\s+", " "))
                .contains(name + ", missed. It is flavoured with gentian or the like alone, and orange peel is in it:"
                        + " leave that out. Besides: It is flavoured with gentian");
    }

    private static JsonNode named(JsonNode json, String name) {
        for (JsonNode each : json.get("classes")) {
            if (each.get("name").stringValue().equals(name)) {
                return each;
            }
        }
        throw new AssertionError("no class " + name);
    }

    /** Of 300 g/L to less than 10 % by weight takes nearly three times as much: that is another drink. */
    @Test
    void aWayThatMoreThanDoublesTheDrinkIsNotTold() throws IOException {
        String file = flavoured(recipe("40 %", "300 g/L"), "mint tincture, kind: tincture, strength: 60 %", "10 ml");
        String asked = "label " + file + " --called liqueur-or-cordial-dry";
        assertThat(Desk.type(asked).out().replaceAll("\\s+", " "))
                .contains("No sensible way by adding: it would take more than there is of the drink.");
        assertThat(Desk.ask(asked).json().at("/called/0/gets_there")).isEmpty();
    }

    /** 700 mL at 40 % vol are 28.0 UK units. */
    @Test
    @Tag("published")
    void standardDrinksAreCountedPerBottle() throws IOException {
        for (JsonNode drink :
                Desk.ask("label " + recipe("40 %", "50 g/L")).json().get("standard_drinks")) {
            if (drink.get("country").stringValue().equals("UK")) {
                assertThat(drink.get("per_bottle").doubleValue()).isCloseTo(28.0, within(0.02));
                return;
            }
        }
        throw new AssertionError("no drink of the UK");
    }

    @Test
    void fruitLeftInWidensTheTolerance() throws IOException {
        String file = recipe("28 %", "200 g/L");
        assertThat(Desk.ask("label " + file)
                        .json()
                        .get("strength")
                        .get("tolerance_vol_percent")
                        .doubleValue())
                .isEqualTo(0.3);
        assertThat(Desk.ask("label " + file + " --fruit-left-in")
                        .json()
                        .get("strength")
                        .get("tolerance_vol_percent")
                        .doubleValue())
                .isEqualTo(1.5);
    }

    @Test
    void aBottleThatHoldsNothingIsRefused() throws IOException {
        Desk.Run run = Desk.type("label " + recipe("28 %", "200 g/L") + " --bottle 0ml --serving 0ml");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--bottle", "--serving");
    }

    @Test
    void labelsAreWrittenToPrint() throws IOException {
        String file = flavoured(recipe("28 %", "200 g/L"), "quince tincture, kind: tincture, strength: 60 %", "10 ml");
        Path svg = folder.resolve("label.svg");
        assertThat(Desk.type("label " + file + " --out " + svg + " --size 80x50")
                        .exit())
                .isZero();
        assertThat(Files.readString(svg))
                .startsWith("<svg")
                .contains("width=\"80mm\"", "Hedge cup", "Liqueur", "28.0 % vol", "700 mL", "not for sale");
        Path pdf = folder.resolve("labels.pdf");
        assertThat(Desk.type("label " + file + " --out " + pdf).exit()).isZero();
        assertThat(Files.readAllBytes(pdf)).startsWith("%PDF".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        assertThat(Desk.type("label " + file + " --out " + pdf).exit()).isEqualTo(2);
    }

    /** The printed sheet is looked at as a camera would: what the code says is the address that was typed. */
    @Test
    void theLinkIsReadOffThePrintedSheet() throws Exception {
        String link = "https://example.org/recipes/hedge-cup?batch=7&lang=de";
        Path pdf = folder.resolve("labels.pdf");
        assertThat(Desk.type("label " + recipe("28 %", "200 g/L") + " --link " + link + " --out " + pdf)
                        .exit())
                .isZero();
        BufferedImage page;
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            page = new PDFRenderer(document).renderImageWithDPI(0, 200);
        }
        BufferedImage label = page.getSubimage(0, 0, page.getWidth() / 2, page.getHeight() / 4);
        int[] pixels = label.getRGB(0, 0, label.getWidth(), label.getHeight(), null, 0, label.getWidth());
        BinaryBitmap seen = new BinaryBitmap(
                new HybridBinarizer(new RGBLuminanceSource(label.getWidth(), label.getHeight(), pixels)));
        assertThat(new QRCodeReader().decode(seen).getText()).isEqualTo(link);
    }

    @Test
    void aLinkThatIsNoneOrDoesNotFitIsRefused() throws IOException {
        String file = recipe("28 %", "200 g/L");
        for (String link : new String[] {
            "example.org", "javascript:alert(1)", "https://u:p@example.org/", "https://" + "a".repeat(200) + ".org"
        }) {
            Desk.Run run = Desk.type("label " + file + " --link " + link);
            assertThat(run.exit()).as(link).isEqualTo(2);
            assertThat(run.err()).as(link).contains("--link");
        }
        Desk.Run narrow = Desk.type(
                "label " + file + " --link https://example.org/a --size 45x60 --out " + folder.resolve("narrow.svg"));
        assertThat(narrow.exit()).isEqualTo(2);
        assertThat(narrow.err()).contains("--size", "leave the link out");
    }

    /** 1 L at 40 % vol takes 417 mL of 96 %: half a litre of it 208 mL, at 22 EUR/L 4.58 EUR. */
    @Test
    void aBottleCostsWhatGoesIntoIt() throws IOException {
        Path file = folder.resolve("priced.yaml");
        Files.writeString(file, """
                stillroom: 1
                title: Hedge spirit
                target: {volume: 1 L, strength: 40 %}
                ingredients:
                  - {name: neutral spirit, kind: spirit, strength: 96 %, price: 22 EUR/L}
                lines:
                  - {use: neutral spirit, amount: free}
                  - {use: water, amount: free}
                """);
        JsonNode cost = Desk.ask("label " + file + " --bottle 500ml").json().get("cost");
        assertThat(cost.at("/per_bottle/0/amount").doubleValue()).isCloseTo(22.0 * 0.4 / 0.96 / 2.0, within(0.005));
        assertThat(cost.at("/per_bottle/0/currency").stringValue()).isEqualTo("EUR");
        assertThat(cost.get("unpriced")).isEmpty();
        assertThat(Desk.type("label " + recipe("28 %", "200 g/L")).out())
                .contains("What a bottle costs is not known. Without a known price: ");
    }

    @Test
    void aSizeThatIsNoneIsRefused() throws IOException {
        String file = recipe("28 %", "200 g/L");
        for (String size : new String[] {"large", "10x10", "300x60", "40x30"}) {
            Desk.Run run = Desk.type("label " + file + " --out " + folder.resolve("x.svg") + " --size " + size);
            assertThat(run.exit()).isEqualTo(2);
            assertThat(run.err()).contains("--size");
        }
    }

    /** A name is asked for as it is typed; what misses is told with what gets there, in grams for what the recipe makes. */
    @Test
    void aNameIsAskedForAndWhatGetsThereIsTold() throws IOException {
        String file = recipe("18 %", "200 g/L");
        JsonNode cassis =
                Desk.ask("label " + file + " --called creme-de-cassis").json().at("/called/0");
        assertThat(cassis.get("name").stringValue()).isEqualTo("crème de cassis");
        assertThat(cassis.get("standing").stringValue()).isEqualTo("missed");
        JsonNode way = cassis.at("/gets_there/0");
        assertThat(way.get("sugar_as_invert_g_per_l").doubleValue()).isCloseTo(400.1, within(1e-6));
        assertThat(way.at("/add/0/what").stringValue()).isEqualTo("white sugar");
        // 200 g in the litre; S more make V: (200 + S)·360.312/342.297 = 0.4001·V.
        double sugar = way.at("/add/0/mass_g").doubleValue();
        assertThat((200.0 + sugar) * 360.312 / 342.297)
                .isCloseTo(0.4001 * way.get("volume_20c_ml").doubleValue(), within(0.01));
        assertThat(Desk.type("label " + file + " --called creme-de-cassis")
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("crème de cassis, missed", "of white sugar: then it has", "Its fruit is the blackcurrant.");
        Path svg = folder.resolve("named.svg");
        Desk.Run missed = Desk.type("label " + file + " --called creme-de-cassis --out " + svg);
        assertThat(missed.exit()).isEqualTo(2);
        assertThat(missed.err()).contains("--called", "crème de cassis");
        assertThat(missed.err().replaceAll("\\s+", " "))
                .contains("crème de cassis is missed: it asks for blackcurrant, and nothing in it is of that");
        Path cassisFile = Path.of(recipe("18 %", "400 g/L"));
        Files.writeString(cassisFile, Files.readString(cassisFile).replace("lines:", """
                ingredients:
                  - {name: blackcurrants, kind: dried plant}
                lines:
                  - {use: blackcurrants, amount: 5 g}"""));
        assertThat(Desk.type("label " + cassisFile + " --called Creme-de-Cassis --out " + svg)
                        .exit())
                .isZero();
        assertThat(Files.readString(svg)).contains("crème de cassis");
        assertThat(Desk.type("label " + file + " --called moon-juice").err()).contains("--called", "crème de cassis");
    }

    /** Nothing of aniseed goes in, so that no aniseed name is offered; a bitter taste is for its maker to know. */
    @Test
    void noAniseedDrinkIsMetWithoutAniseed() throws IOException {
        JsonNode classes = Desk.ask("label " + recipe("40 %", "50 g/L")).json().get("classes");
        for (JsonNode each : classes) {
            String name = each.get("name").stringValue();
            String standing = each.get("standing").stringValue();
            assertThat(standing).as(name).isNotEqualTo("met");
            if (name.contains("anis") && each.get("market").stringValue().equals("EU")) {
                assertThat(standing).as(name).isEqualTo("missed");
            }
        }
    }

    private String hedgerow(String title) throws IOException {
        Path file = folder.resolve("hedgerow.yaml");
        Files.writeString(file, """
                stillroom: 1
                title: TITLE
                target: {volume: 1 L, strength: 28 %, sugar: 180 g/L}
                ingredients:
                  - {name: liquorice root, kind: dried plant}
                  - {name: white wine, kind: wine, strength: 12 %}
                lines:
                  - {use: liquorice root, amount: 2 g}
                  - {use: white wine, amount: 100 ml}
                  - {use: honey, amount: 60 g}
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """.replace("TITLE", title));
        return file.toString();
    }

    private String drawn(String typed) throws IOException {
        Path svg = folder.resolve("drawn.svg");
        Desk.Run run = Desk.type("label " + typed + " --force --out " + svg);
        assertThat(run.exit()).as(run.err()).isZero();
        return Files.readString(svg);
    }

    /** Ingredients most by mass first; sugar 180 g/L are 18.0 g per 100 mL; 700 mL of 28 % vol are 154.7 g of ethanol. */
    @Test
    void theLabelSaysWhatIsInIt() throws IOException {
        String label = drawn(hedgerow("Hedge cup") + " --size 110x80");
        assertThat(label)
                .contains("Ingredients: water, spirit 96 %, white sugar, white wine, honey, liquorice root.")
                .contains("Sugar 18.0 g per 100 mL", "15.5 standard drinks of 10 g alcohol")
                .contains("Contains honey: not for infants under 12 months.", "ulphites")
                .doesNotContain("GOVERNMENT");
        assertThat(label.split("Contains liquorice", -1)).hasSize(2);
        assertThat(drawn(hedgerow("Hedge cup") + " --size 110x80 --language de"))
                .contains("Zutaten: Wasser, Alkohol 96 % vol, Zucker, Weißwein, Honig, Süßholz.")
                .contains("Zucker 18,0 g je 100 mL", "12,9 Standardgläser zu 12 g Alkohol", "nicht für Säuglinge")
                .contains("Selbst gemacht – nicht zum Verkauf");
    }

    /** 27 CFR 16.21, from memory: the warning word for word, also where the label is in German. */
    @Test
    void aLabelForTheUsaCarriesItsWarning() throws IOException {
        for (String language : new String[] {"en", "de"}) {
            String label = drawn(hedgerow("Hedge cup") + " --size 110x110 --place US --language " + language);
            String plain = label.replaceAll("<[^>]+>", " ").replaceAll(" +", " ");
            assertThat(plain)
                    .as(language)
                    .contains(org.stillroom.core.label.Statements.US_WARNING, "% alc/vol · 700 mL");
            assertThat(label).as(language).contains("font-weight=\"700\">GOVERNMENT WARNING:</tspan>");
        }
        assertThat(drawn(hedgerow("Hedge cup") + " --size 110x110 --place US")).contains("not for sale");
        assertThat(Desk.type("label " + hedgerow("Hedge cup") + " --place Mars").err())
                .contains("--place", "EU, US");
    }

    /** What does not fit is refused with the height that it takes, and that height is enough. */
    @Test
    void whatDoesNotFitIsSaidAndNeverCut() throws IOException {
        Path svg = folder.resolve("tight.svg");
        String file = hedgerow("WWWW MMMM WWWW MMMM");
        Desk.Run tight = Desk.type("label " + file + " --size 60x50 --out " + svg);
        assertThat(tight.exit()).isEqualTo(2);
        assertThat(svg).doesNotExist();
        java.util.regex.Matcher needed =
                java.util.regex.Pattern.compile("takes (\\d+)\\s+mm").matcher(tight.err());
        assertThat(needed.find()).as(tight.err()).isTrue();
        drawn(file + " --size 60x" + needed.group(1));
        Desk.Run wide = Desk.type("label " + hedgerow("W".repeat(60)) + " --size 60x90 --out " + svg);
        assertThat(wide.exit()).isEqualTo(2);
        assertThat(wide.err()).contains("--size", "the name takes more than");
    }
}
