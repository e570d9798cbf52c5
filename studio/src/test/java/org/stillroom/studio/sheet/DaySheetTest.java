package org.stillroom.studio.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.reference.Workings;
import org.stillroom.planner.marks.MeasuredLine;
import org.stillroom.studio.usecase.OpenRecipe;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.wording.Language;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

class DaySheetTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final SheetOptions ON_LETTER =
            new SheetOptions(SheetOptions.Paper.LETTER, SheetOptions.Units.US, Saying.ENGLISH);
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

    private static final String HOSTILE = """
            stillroom: 1
            title: <script>alert("1")</script> & </style><b>bold</b>
            target: {volume: 1 L, strength: 38 %, sugar: 210 g/L}
            ingredients:
              - {name: "<script>vodka</script>", kind: spirit, strength: 40 %, note: "</td><script>"}
            lines:
              - {use: "<script>vodka</script>", amount: free}
              - {use: white sugar, amount: free}
              - {use: water, amount: free}
            steps: ["<img src=x onerror=alert(1)>"]
            notes: "<!-- & -->"
            """;

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicTest> everyExampleIsWellFormedAndNamesEachAmount() throws IOException {
        return examples()
                .map(file -> DynamicTest.dynamicTest(file.toString(), () -> {
                    WorkedPlan worked = worked(file);
                    String text = parsed(DaySheet.html(worked, SheetOptions.USUAL))
                            .getDocumentElement()
                            .getTextContent();
                    assertThat(text.replace('\u00a0', ' ')).contains(amounts(worked));
                }));
    }

    @TestFactory
    Stream<DynamicTest> everyExampleIsPrintedWithEachAmount() throws IOException {
        return examples()
                .map(file -> DynamicTest.dynamicTest(file.toString(), () -> {
                    WorkedPlan worked = worked(file);
                    try (PDDocument pdf = Loader.loadPDF(DaySheet.pdf(worked, SheetOptions.USUAL))) {
                        assertThat(text(pdf))
                                .contains(amounts(worked))
                                .contains("Amounts by weight are the ones to follow");
                    }
                }));
    }

    @Test
    void whatAPersonTypedIsNeverMarkup() throws Exception {
        Document page = parsed(DaySheet.html(hostile(), SheetOptions.USUAL));
        assertThat(page.getElementsByTagName("script").getLength()).isZero();
        assertThat(page.getElementsByTagName("img").getLength()).isZero();
        assertThat(page.getElementsByTagName("b").getLength()).isZero();
        assertThat(page.getElementsByTagName("h1").item(0).getTextContent())
                .isEqualTo("<script>alert(\"1\")</script> & </style><b>bold</b>");
        assertThat(page.getDocumentElement().getTextContent())
                .contains("<script>vodka</script>", "<img src=x onerror=alert(1)>", "<!-- & -->");
    }

    @Test
    void aTitleThatLooksLikeMarkupIsPrintedAsItWasTyped() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(DaySheet.pdf(hostile(), SheetOptions.USUAL))) {
            assertThat(text(pdf)).contains("<script>alert(\"1\")</script> & </style><b>bold</b>");
        }
    }

    @Test
    void whatStoodInAnExtractAndHowMuchStandsBesideItInBothLanguages() throws Exception {
        Path file = Files.writeString(folder.resolve("bitter.yaml"), """
                stillroom: 1
                title: Bitter
                target: {volume: 1 L, strength: 30 %}
                ingredients:
                  - {name: garden bitter, kind: macerate, strength: 58 %, plant: dried yarrow, ratio: 1:8}
                lines:
                  - {use: garden bitter, dose: 40 ml/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: free}
                """);
        assertThat(seen(file, Saying.ENGLISH)).contains("plant 1:8 (g to mL), dried yarrow");
        Words words = new Words(Language.GERMAN, UnitSystem.METRIC);
        assertThat(seen(file, new Saying("de", words::toldOrMarked))).contains("Pflanze 1:8 (g zu mL), dried yarrow");
    }

    @Test
    void whatSetsCyanideFreeIsToMindWhereItGoesInAndIsSaidOnce() throws Exception {
        Path file = Files.writeString(folder.resolve("stones.yaml"), """
                stillroom: 1
                title: Stones
                ingredients:
                  - {name: plum stones, kind: dried plant}
                lines:
                  - {use: plum stones, amount: 10 x 1.2 g}
                  - {use: vodka 40 %, amount: 1 L}
                """);
        String english = seen(file, Saying.ENGLISH);
        assertThat(english).contains("To mind: plum stones: Kernels,", "hydrogen cyanide free", "10 x 1.2 g");
        assertThat(english.split("plum stones: above the limit at worst", -1)).hasSizeLessThanOrEqualTo(2);
        Words words = new Words(Language.GERMAN, UnitSystem.METRIC);
        assertThat(seen(file, new Saying("de", words::toldOrMarked)))
                .contains("Zu beachten: plum stones: Kerne,", "Blausäure frei");
    }

    private static String seen(Path file, Saying saying) throws Exception {
        SheetOptions options = new SheetOptions(SheetOptions.Paper.A4, SheetOptions.Units.METRIC, saying);
        return parsed(DaySheet.html(worked(file), options))
                .getDocumentElement()
                .getTextContent()
                .replace('\u00a0', ' ');
    }

    @Test
    void whatCannotBeReachedStandsAboveTheAmounts() throws Exception {
        String text = parsed(DaySheet.html(hostile(), SheetOptions.USUAL))
                .getDocumentElement()
                .getTextContent();
        assertThat(text).contains("Stop: cannot be reached. These amounts are the nearest.", "What to do: ");
        assertThat(text.indexOf("Stop: cannot be reached")).isLessThan(text.indexOf("Amounts, in order of mixing"));
    }

    @Test
    void whatIsReachedHasNoStop() throws Exception {
        assertThat(DaySheet.html(plain(), SheetOptions.USUAL)).doesNotContain("Stop");
    }

    @Test
    void aPlainRecipeFitsOnePageOfEitherPaper() throws Exception {
        try (PDDocument a4 = Loader.loadPDF(DaySheet.pdf(plain(), SheetOptions.USUAL));
                PDDocument letter = Loader.loadPDF(DaySheet.pdf(plain(), ON_LETTER))) {
            assertThat(a4.getNumberOfPages()).isEqualTo(1);
            assertThat(letter.getNumberOfPages()).isEqualTo(1);
            assertSize(a4.getPage(0), 210 * POINTS_PER_MILLIMETRE, 297 * POINTS_PER_MILLIMETRE);
            assertSize(letter.getPage(0), 8.5 * 72, 11 * 72);
        }
    }

    @Test
    void everyFontIsEmbedded() throws Exception {
        try (PDDocument pdf =
                Loader.loadPDF(DaySheet.pdf(worked(EXAMPLES.resolve("quince-and-bay.yaml")), ON_LETTER))) {
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded())
                            .as(page.getResources().getFont(name).getName())
                            .isTrue();
                }
            }
        }
    }

    @Test
    void theTriangleIsShadedWhereItsOilsWouldCloud() throws Exception {
        WorkedPlan oily = worked(Files.writeString(folder.resolve("oily.yaml"), """
                stillroom: 1
                title: Quince and juniper
                target: {volume: 1 L, strength: 30 %, sugar: 180 g/L}
                ingredients: [{name: juniper oil, kind: essential oil}]
                lines:
                  - {use: juniper oil, dose: 1 g/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: make up}
                """));
        Document page = parsed(DaySheet.html(oily, SheetOptions.USUAL));
        assertThat(page.getDocumentElement().getTextContent().replace('\u00a0', ' '))
                .contains("1.00 g/L of oil it is cloudy by the forecast at 20 °C, clear from ")
                .contains("Light grey is where it would be hazy, dark grey where cloudy.");
        try (PDDocument pdf = Loader.loadPDF(DaySheet.pdf(oily, SheetOptions.USUAL))) {
            assertThat(text(pdf)).contains("by the forecast at 20 °C");
            assertThat(pixels(new PDFRenderer(pdf).renderImage(0, 2), 0xbfbfbf)).isGreaterThan(1000);
        }
        assertThat(DaySheet.html(plain(), SheetOptions.USUAL)).doesNotContain("of oil");
    }

    private static int pixels(BufferedImage image, int colour) {
        int count = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                count += (image.getRGB(x, y) & 0xffffff) == colour ? 1 : 0;
            }
        }
        return count;
    }

    @Test
    void stagesComeFirstWithWaitAndYield() throws Exception {
        String text = parsed(DaySheet.html(worked(EXAMPLES.resolve("quince-and-bay.yaml")), SheetOptions.USUAL))
                .getDocumentElement()
                .getTextContent();
        assertThat(text)
                .containsSubsequence(
                        "Part 1 of 3: Caraway and cardamom essence",
                        "Wait 3 days.",
                        "It leaves",
                        "Part 2 of 3: Bay leaf tincture",
                        "Loss reckoned with: 2 ml/g.",
                        "Part 3 of 3: Quince, bay leaf and caraway");
    }

    @Test
    void strongSpiritAndOilsBringTheirCautions() throws Exception {
        assertThat(DaySheet.html(worked(EXAMPLES.resolve("stages/caraway-essence.yaml")), SheetOptions.USUAL))
                .contains("no flame", "food grade only", "out of reach of children");
        assertThat(DaySheet.html(worked(EXAMPLES.resolve("bay-leaf-with-cups.yaml")), SheetOptions.USUAL))
                .doesNotContain("food grade only", "no spark");
    }

    @Test
    void unitedStatesUnitsAreThoseToTake() throws Exception {
        String text =
                parsed(DaySheet.html(plain(), ON_LETTER)).getDocumentElement().getTextContent();
        assertThat(text)
                .contains(
                        Told.amount(plain().measured().lines().get(0).reading().us()), "fl\u00a0oz");
    }

    @Test
    void headingsFollowEachOtherAndTableHeadsHaveAScope() throws Exception {
        Document page = parsed(DaySheet.html(worked(EXAMPLES.resolve("quince-and-bay.yaml")), SheetOptions.USUAL));
        NodeList all = page.getElementsByTagName("*");
        int before = 0;
        for (int i = 0; i < all.getLength(); i++) {
            String name = all.item(i).getNodeName();
            if (name.matches("h[1-6]")) {
                int level = name.charAt(1) - '0';
                assertThat(level).isLessThanOrEqualTo(before + 1);
                before = level;
            }
            if (name.equals("th")) {
                assertThat(all.item(i).getAttributes().getNamedItem("scope")).isNotNull();
            }
        }
        assertThat(before).isPositive();
    }

    private static void assertSize(PDPage page, double width, double height) {
        assertThat((double) page.getMediaBox().getWidth()).isCloseTo(width, org.assertj.core.data.Offset.offset(0.5));
        assertThat((double) page.getMediaBox().getHeight()).isCloseTo(height, org.assertj.core.data.Offset.offset(0.5));
    }

    private static List<String> amounts(WorkedPlan worked) {
        List<String> amounts = new ArrayList<>();
        for (MeasuredLine line : worked.measured().lines()) {
            amounts.add(line.name());
            amounts.add(line.reading().words());
        }
        worked.stages().forEach(stage -> amounts.addAll(amounts(stage.worked())));
        return amounts;
    }

    private static String text(PDDocument pdf) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(false);
        stripper.setLineSeparator(" ");
        return stripper.getText(pdf).replaceAll("[ \u00a0]+", " ");
    }

    private static Document parsed(String html) throws Exception {
        String xml = html.replaceFirst("<!DOCTYPE html>\n", "");
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
    }

    private static Stream<Path> examples() throws IOException {
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    private static WorkedPlan plain() {
        return worked(EXAMPLES.resolve("caraway-brought-down.yaml"));
    }

    private WorkedPlan hostile() throws IOException {
        return worked(Files.writeString(folder.resolve("hostile.yaml"), HOSTILE));
    }

    private static WorkedPlan worked(Path file) {
        OpenRecipe.Outcome.Opened opened = (OpenRecipe.Outcome.Opened) OpenRecipe.at(file);
        return ((PlanRecipe.Outcome.Worked) PlanRecipe.answer(PlanRecipe.making(opened.recipe()), null, Workings.NONE))
                .plan();
    }
}
