package org.stillroom.studio.recipefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.stillroom.studio.recipefile.Examples.problems;
import static org.stillroom.studio.recipefile.Examples.recipe;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.stillroom.core.drops.OwnDropper;
import org.stillroom.core.ingredient.PlantRatio;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Aim;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Loss;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

class RecipeReaderTest {
    /** Two lines; what a test adds starts on line 3 and is followed by {@link #LINES}. */
    private static final String HEAD = "stillroom: 1\ntitle: Pear\n";

    private static final String LINES = "lines:\n  - {use: water, amount: 1 L}\n";

    @Test
    void everyPartOfARecipeIsRead() {
        Recipe recipe = recipe(RecipeWriterTest.EVERYTHING);
        assertThat(recipe.title()).isEqualTo("Quince: the long one");
        assertThat(Objects.requireNonNull(recipe.target().strength()).value()).isEqualTo(new Span(27, 29));
        assertThat(recipe.target().sugarBasis()).isEqualTo(SugarBasis.AS_INVERT);
        assertThat(Objects.requireNonNull(recipe.target().millilitres()).low()).isEqualTo(1050);
        assertThat(Objects.requireNonNull(recipe.ounce()).value()).isEqualTo(OunceMeaning.THIRTY_MILLILITRES);
        assertThat(recipe.measures().get(1).sizes().get(0).value()).isEqualTo(new Volume(22.5));
        assertThat(recipe.aim()).isEqualTo(Aim.usingUp(List.of("quince spirit")));
        assertThat(recipe.ingredients()).hasSize(5);
        assertThat(recipe.ingredients().get(3).plant()).isEqualTo("dried wormwood");
        assertThat(Objects.requireNonNull(recipe.ingredients().get(3).ratio()).value())
                .isEqualTo(new PlantRatio(0.2));
        assertThat(Objects.requireNonNull(recipe.ingredients().get(4).ratio()).text())
                .isEqualTo("80 g/L");
        assertThat(recipe.ingredients().get(1).contains()).containsOnlyKeys(Substance.SALT, Substance.OTHER_SOLIDS);
        assertThat(recipe.ingredients().get(2).from()).isEqualTo("stages/essence.yaml");
        assertThat(recipe.lines().get(0).amount()).isEqualTo(new LineAmount.All());
        assertThat(recipe.lines().get(2).amount()).isInstanceOf(LineAmount.PerLitre.class);
        assertThat(recipe.lines().get(4).amount()).isEqualTo(new LineAmount.MakeUp());
        assertThat(Objects.requireNonNull(recipe.loss()).value()).isEqualTo(new Loss.HeldByMarc(1.5));
        assertThat(recipe.steps()).containsExactly("Stir, then wait.", "#2: filter");
    }

    @Test
    void aDropperSaysWhatItsDropOfWaterWeighs() {
        Recipe recipe = recipe(
                HEAD + "measures:\n  - {name: pipette, kind: dropper, drop: 46 mg, tolerance: 0.8 mg}\n" + LINES);

        OwnDropper dropper = Objects.requireNonNull(recipe.measures().get(0).ownDropper());
        assertThat(dropper.waterDrop().grams()).isEqualTo(0.046);
        assertThat(dropper.relativeDoubt()).isCloseTo(0.8 / 46.0, within(1e-12));
        assertThat(RecipeWriter.write(recipe)).contains("drop: 46 mg", "tolerance: 0.8 mg");
    }

    @Test
    void aMakersOunceIsWhatTheFileSaysElseWhatTheSettingsSay() {
        String file = HEAD + "vessel: 1 oz\n" + LINES;
        assertThat(vessel(OunceMeaning.US_FLUID, file)).isEqualTo(29.5735295625);
        assertThat(vessel(OunceMeaning.THIRTY_MILLILITRES, file)).isEqualTo(30);
        assertThat(vessel(OunceMeaning.THIRTY_MILLILITRES, "ounce: US\n" + file))
                .isEqualTo(29.5735295625);
    }

    @Test
    void whatIsTakenForGrantedIsToldOnceWithItsLine() {
        RecipeReading reading = Examples.reader()
                .read(HEAD + "lines:\n  - {use: sugar, amount: 1 cup}\n  - {use: honey, amount: 1 cup}\n");
        assertThat(((RecipeReading.Understood) reading).notes()).singleElement().satisfies(note -> {
            assertThat(note.severity()).isEqualTo(Severity.NOTE);
            assertThat(note.where()).isEqualTo("line 4, use of sugar, amount");
            assertThat(note.message()).contains("US cup");
        });
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsAreRead() {
        byte[] bytes = ("\uFEFF" + HEAD + LINES).replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8);
        assertThat(Examples.reader().read(bytes)).isInstanceOf(RecipeReading.Understood.class);
    }

    @Test
    void anUnknownFieldIsToldWithTheNearestKnownOne() {
        refused(HEAD + "targt: {volume: 1 L}\n" + LINES, "line 3", "no field “targt”", "Write “target”?");
        refused(
                HEAD + "ingredients:\n  - {name: pear brandy, kind: spirit, strenght: 40 %}\n" + LINES,
                "line 4, pear brandy",
                "no field “strenght”",
                "Write “strength”?");
        refused(HEAD + "colour: red\n" + LINES, "line 3", "no field “colour”", "Known fields are stillroom, title");
    }

    @Test
    void anImpossibleValueIsToldWithItsBounds() {
        refused(
                HEAD + "ingredients:\n  - {name: neutral spirit, kind: spirit, strength: 104 %}\n" + LINES,
                "line 4, neutral spirit, strength",
                "a strength lies from 0 to 100 % vol, not 104 % vol",
                "Write it such as “strength: 40 %”");
        refused(HEAD + LINES + "loss: 120 %\n", "line 5, loss", "not 120 %", "“loss: 5 %”");
        refused(HEAD + LINES + "loss: 100 %\n", "line 5, loss", "below 100 %", "“loss: 5 %”");
        refused(HEAD + LINES + "ph: 15\n", "line 5, ph", "a drink has a pH from 1.5 to 9, not 15", "“ph: 3.4”");
        refused(HEAD + LINES + "ph: sour\n", "line 5, ph", "does not start with a number", "“ph: 3.4”");
        refused(
                HEAD + LINES + "pasteurised: maybe\n",
                "line 5, pasteurised",
                "is no pasteurised that is known",
                "Write no or yes.");
        refused(HEAD + LINES + "loss: 55 ml/g\n", "line 5, loss", "No plant holds 55 ml/g", "“loss: 1.5 ml/g”");
        refused(
                HEAD + "ingredients:\n  - {name: j, kind: juice, contains: {fructose: 60 %, glucose: 60 %}}\n" + LINES,
                "line 4, j, contains",
                "The parts make 120.0 % of the whole",
                "100 % at most");
    }

    @Test
    void aRatioOfPlantIsToldOfWhatPlantsStoodInAndWithItsBasis() {
        String start = HEAD + "ingredients:\n  - {name: sage wine, strength: 60 %, ";
        refused(
                start + "kind: macerate, ratio: 5}\n" + LINES,
                "line 4, sage wine, ratio",
                "grams of plant to millilitres of extract",
                "“ratio: 1:5” or “ratio: 200 g/L”");
        refused(
                start + "kind: macerate, ratio: 20 %}\n" + LINES,
                "line 4, sage wine, ratio",
                "such as 1:5",
                "“ratio: 200 g/L”");
        refused(
                start + "kind: macerate, ratio: 500:1}\n" + LINES,
                "line 4, sage wine, ratio",
                "not 500 g",
                "“ratio: 1:5”");
        refused(
                start + "kind: spirit, ratio: 1:5}\n" + LINES,
                "line 4, sage wine, ratio",
                "this is of kind spirit",
                "“kind: macerate”");
        refused(
                start + "kind: spirit, plant: sage}\n" + LINES,
                "line 4, sage wine, plant",
                "kind spirit",
                "Leave it out");
    }

    @Test
    void aUnitOfTheWrongKindIsToldWithTheOnesThatFit() {
        refused(
                HEAD + "target: {strength: 28 g}\n" + LINES,
                "line 3, target, strength",
                "“28 g”: \"g\" is not a unit of strength",
                "“strength: 28 %”");
        refused(
                HEAD + "measures:\n  - {name: bench scale, kind: scale, marks: 1 ml}\n" + LINES,
                "line 4, bench scale, marks",
                "A scale measures mass, so “1 ml” does not fit",
                "“marks: 1 g”");
        refused(
                HEAD + "measures:\n  - {name: bench scale, kind: scale, drop: 46 mg}\n" + LINES,
                "line 4, bench scale, drop",
                "A scale has no drop",
                "“kind: dropper”");
        refused(
                HEAD + "measures:\n  - {name: pipette, kind: dropper, drop: 46 g}\n" + LINES,
                "line 4, pipette, drop",
                "weighs 20 to 70 mg, not 46 g",
                "“drop: 46 mg”");
        refused(
                HEAD + "measures:\n  - {name: pipette, kind: dropper, drop: 46 mg, tolerance: 50 mg}\n" + LINES,
                "line 4, pipette, tolerance",
                "by as much as it weighs",
                "“tolerance: 0.8 mg”");
        refused(HEAD + "vessel: 3 kg\n" + LINES, "line 3, vessel", "“3 kg”", "“vessel: 5 L”");
    }

    @Test
    void anAmbiguousNumberIsAskedAndNeverGuessed() {
        refused(
                HEAD + "target: {strength: 28}\n" + LINES,
                "line 3, target, strength",
                "“28”: the strength has no unit",
                "Write “28 % vol”.");
        refused(
                HEAD + "lines:\n  - {use: water, amount: \"1,500 g\"}\n",
                "line 4, use of water, amount",
                "“1,500 g”: the comma may be the decimal sign",
                "Write “1.5 g” or “1500 g”.");
    }

    @Test
    void aDecimalCommaThatBracesCutInTwoIsRecognised() {
        refused(
                HEAD + "lines:\n  - {use: water, amount: 1,5 L}\n",
                "line 4, use of water, amount",
                "“1,5 L” was cut in two",
                "amount: \"1,5 L\"");
    }

    @Test
    void anUnknownIngredientIsToldWithTheNearestNames() {
        refused(
                HEAD + "ingredients:\n  - {name: quince juice, kind: juice, sugar: 95 g/L}\nlines:\n"
                        + "  - {use: quince jiuce, amount: 1 L}\n",
                "line 6, use of quince jiuce",
                "no ingredient “quince jiuce”",
                "or write “quince juice”");
        refused(
                HEAD + "lines:\n  - {use: vodka, amount: free}\n",
                "line 4, use of vodka",
                "no ingredient “vodka”",
                "or write “vodka 40”");
        refused(
                HEAD + "lines:\n  - {use: moonlight, amount: free}\n",
                "line 4, use of moonlight",
                "no ingredient “moonlight”",
                "List it under “ingredients”.");
    }

    @Test
    void aNameGivenTwiceIsToldWithBothLines() {
        refused(
                HEAD + "ingredients:\n  - {name: pear brandy, kind: spirit, strength: 40 %}\n"
                        + "  - {name: Pear brandy, kind: spirit, strength: 42 %}\n" + LINES,
                "line 5, Pear brandy, name",
                "is on line 4 already",
                "Give each its own name");
        refused(
                HEAD + "measures:\n  - {name: jug, kind: cylinder}\n  - {name: jug, kind: cup}\n" + LINES,
                "line 5, jug, name",
                "is on line 4 already",
                "Give each its own name");
    }

    @Test
    void aKeyWrittenTwiceIsToldWithBothLines() {
        refused(HEAD + "title: Plum\n" + LINES, "line 3, title", "here and already on line 2", "Keep one of the two.");
        refused(
                HEAD + "lines:\n  - {use: water, amount: 1 L, amount: 2 L}\n",
                "line 4, amount",
                "twice on this line",
                "Keep one of the two.");
    }

    @Test
    void brokenYamlIsToldInPlainWords() {
        refused(HEAD + "lines:\n\t- {use: water}\n", "line 4", "There is a tab", "two spaces");
        refused(HEAD + "notes: \"open\n" + LINES, "line 3", "quotation mark is opened and not closed", "Close");
        refused(HEAD + "target: {volume: 1 L\n" + LINES, "line 4", "They were opened on line 3", "Close with }");
        refused("stillroom: 1\ntitle: quince: bay\n" + LINES, "line 2", "colon where none can stand", "in quotes");
        refused(HEAD + "target\n" + LINES, "line 4", "key has no colon", "key: value");
        refused("stillroom: 1\ntitle: @home\n" + LINES, "line 2", "cannot start with this character", "in quotes");
        refused("stillroom: 1\ntitle: \"a\\qb\"\n" + LINES, "line 2", "backslash", "twice");
        refused(HEAD + LINES + " - {use: water, amount: 1 L}\n", "line 5", "indented otherwise", "Line up");
        refused(HEAD + "? [a, b]\n: c\n" + LINES, "line 3", "A key must be a word", "before the colon");
        refused("%YAML 3.0\n---\n" + HEAD + LINES, "line 1", "version of YAML", "Take the line");
    }

    @Test
    void aFileTooLargeIsRefusedUnreadWithItsSize() {
        refused(HEAD + "notes: " + "x".repeat(10_000_000), "", "The file has 10 MB", "file you meant");
    }

    @Test
    void anAliasBombIsRefusedAtItsFirstAnchor() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++) {
            String last = "*a" + (i - 1);
            bomb.append("a" + i + ": &a" + i + " [" + String.join(", ", List.of(last, last, last, last, last, last))
                    + "]\n");
        }
        refused(bomb.toString(), "line 1", "There is an anchor (&a0)", "Write the value out");
        refused(HEAD + "notes: *a\n" + LINES, "line 3", "There is an alias (*a)", "Write the value out");
        refused(HEAD + "notes: !!str x\n" + LINES, "line 3", "There is a tag", "Write the value out");
    }

    @Test
    void nestingAndLengthAreBounded() {
        refused("[".repeat(500_000), "line 1", "nested more than 12 deep", "brackets or indents");
        refused(HEAD + "steps: [" + "a,".repeat(30_000) + "a]\n", "line 3", "more than 20 000", "from");
    }

    @Test
    void textThatIsNoUtf8IsToldWithItsLine() {
        byte[] latin = (HEAD + "notes: caf\u00e9\n" + LINES).getBytes(StandardCharsets.ISO_8859_1);
        assertThat(((RecipeReading.Refused) Examples.reader().read(latin)).problems())
                .singleElement()
                .satisfies(finding -> check(finding, "line 3", "not UTF-8", "Save the file as UTF-8"));
        refused(HEAD + "notes: a\u0007b\n" + LINES, "line 3", "cannot be seen (U+0007)", "Delete it");
    }

    @Test
    void aNameThatIsEmptyIsRefusedWithItsLine() {
        String spirit = "ingredients:\n  - name: \"\"\n    kind: spirit\n    strength: 40 %\n";
        refused(HEAD + spirit + LINES, "line 4, ingredient 1", "“name” is empty", "“name: neutral spirit”");
        String blank = "ingredients:\n  - {name: \"  \", kind: spirit, strength: 40 %}\n";
        refused(HEAD + blank + LINES, "line 4, ingredient 1", "“name” is empty", "“name: neutral spirit”");
        String scale = "measures:\n  - {name: \"\", kind: scale, marks: 1 g}\n";
        refused(HEAD + scale + LINES, "line 4, measure 1", "“name” is empty", "“name: kitchen scale”");
    }

    @Test
    void aFileThatIsNoRecipeIsTold() {
        refused("", "", "holds no recipe", "stillroom: 1");
        refused("# only a comment\n", "", "holds no recipe", "stillroom: 1");
        refused("- a\n- b\n", "line 1", "a list where a group of keys is wanted", "{stillroom: …");
        refused(HEAD + LINES + "---\n" + HEAD, "line 5", "second document", "file of its own");
    }

    @Test
    void anotherFormatIsToldAlone() {
        refused("stillroom: 2\nnewthing: x\n", "line 1, stillroom", "format “2”", "newer program");
        refused("title: Pear\n" + LINES, "line 1", "“stillroom” is missing", "first line");
    }

    @Test
    void aLineSaysHowMuchOnce() {
        refused(
                HEAD + "lines:\n  - {use: water, amount: 8 Tropfen je Liter}\n",
                "line 4, use of water, amount",
                "so much per litre",
                "dose: 8 Tropfen je Liter");
        refused(
                HEAD + "lines:\n  - {use: water, amount: 1 L, dose: 2 g/L}\n",
                "line 4, use of water, dose",
                "an amount and a dose",
                "Keep “amount”");
        refused(HEAD + "lines:\n  - {use: water}\n", "line 4, use of water", "does not say how much", "“make up”");
        refused(
                HEAD + "lines:\n  - {use: water, amount: free}\n  - {use: water, amount: free}\n",
                "line 5, use of water, amount",
                "open on line 4 already",
                "join them");
        refused(HEAD, "line 1, lines", "no lines", "List what goes in");
    }

    @Test
    void whatAnAmountLeansOnMustBeThere() {
        refused(
                HEAD + "lines:\n  - {use: water, amount: all}\n",
                "line 4, use of water, amount",
                "how much there is",
                "at hand");
        refused(
                HEAD + "lines:\n  - {use: water, amount: make up}\n",
                "line 4, use of water, amount",
                "names no exact one",
                "target: {volume: 1 L}");
        refused(
                HEAD
                        + "target: {volume: 1 L}\nlines:\n  - {use: water, amount: make up}\n  - {use: sugar, amount: make up}\n",
                "line 6, use of sugar, amount",
                "on line 5 already",
                "Let one line alone");
        refused(
                HEAD
                        + "measures:\n  - {name: jigger, kind: jigger}\nlines:\n  - {use: water, amount: 1 L, with: jiger}\n",
                "line 6, use of water, with",
                "no measure “jiger”",
                "Write “jigger”?");
        refused(HEAD + LINES + "aim: use up plum\n", "line 5, aim", "No line uses “plum”", "Add a line");
        refused(
                HEAD + "target: {volume: 1 L, bottles: 3 x 350 ml}\n" + LINES,
                "line 3, target, bottles",
                "a volume and bottles",
                "Keep one");
    }

    @Test
    void whatAnIngredientMustBeKnownByIsAskedOnItsLine() {
        refused(
                HEAD + "ingredients:\n  - {name: pear brandy, kind: spirit}\n" + LINES,
                "line 4, pear brandy",
                "The strength of pear brandy is not said",
                "from: FILE");
        refused(
                HEAD + "ingredients:\n  - {name: pear brandy, kind: spirits, strength: 40 %}\n" + LINES,
                "line 4, pear brandy, kind",
                "“spirits” is no kind",
                "Write “spirit”?");
        assertThat(recipe(HEAD + "ingredients:\n  - {name: pear brandy, kind: spirit, strength: 40 %}\n" + LINES)
                        .ingredients()
                        .get(0)
                        .strength())
                .satisfies(strength ->
                        assertThat(Objects.requireNonNull(strength).value()).isEqualTo(AlcoholByVolume.at20(40)));
    }

    @Test
    void allProblemsComeBackTogetherByLine() {
        List<Finding> problems = problems("""
                stillroom: 1
                titel: Pear
                target: {strength: 28, volume: 1 L}
                ingredients:
                  - {name: pear brandy, kind: spirit, strength: 140 %}
                lines:
                  - {use: pear brandy, amount: free}
                  - {use: sugr, amount: free}
                rest: soon
                """);
        assertThat(problems)
                .extracting(Finding::where)
                .containsExactly(
                        "line 1",
                        "line 2",
                        "line 3, target, strength",
                        "line 5, pear brandy, strength",
                        "line 8, use of sugr",
                        "line 9, rest");
        assertThat(problems).extracting(Finding::severity).containsOnly(Severity.STOP);
    }

    @Test
    void moreProblemsThanAnybodyReadsAreCounted() {
        List<Finding> problems = problems(HEAD + "lines:\n" + "  - {use: moonlight, amount: 1 L}\n".repeat(150));
        assertThat(problems).hasSize(101);
        assertThat(problems.get(100).message()).isEqualTo("There are 50 further problems that are not listed.");
    }

    private static double vessel(OunceMeaning usual, String file) {
        RecipeReading reading = new RecipeReader(usual).read(file);
        return Objects.requireNonNull(
                        ((RecipeReading.Understood) reading).recipe().vessel())
                .value()
                .millilitres();
    }

    private static void refused(String text, String where, String message, String remedy) {
        assertThat(problems(text)).singleElement().satisfies(finding -> check(finding, where, message, remedy));
    }

    private static void check(Finding finding, String where, String message, String remedy) {
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.where()).isEqualTo(where);
        assertThat(finding.message()).contains(message);
        assertThat(finding.remedy()).contains(remedy);
    }
}
