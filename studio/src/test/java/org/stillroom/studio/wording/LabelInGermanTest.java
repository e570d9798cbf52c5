package org.stillroom.studio.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.label.Duty;
import org.stillroom.core.label.LegalClass;
import org.stillroom.core.label.Market;
import org.stillroom.core.label.Shown;
import org.stillroom.core.label.StatedStrength;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Condition;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.sheet.LabelSheet;
import org.stillroom.studio.sheet.Saying;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.TellLabel;
import org.stillroom.studio.usecase.batch.LabelBottles;
import org.stillroom.studio.web.safety.LabelView;

/** A label as a German reader sticks it on a bottle. */
class LabelInGermanTest {
    private static final Words GERMAN = new Words(Language.GERMAN, UnitSystem.METRIC);

    /** Lines of recipes whose labels say everything that a label can say. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{use: spirit 96 %, amount: 300 ml}",
                "{use: spirit 96 %, amount: 100 ml}",
                "{use: spirit 96 %, amount: 60 ml}",
                "{use: cream, amount: 200 g}",
                "{use: egg yolk, amount: 100 g}",
                "{use: liquorice, amount: 60 g}",
                "{use: coffee beans, amount: 80 g}",
                "{use: cinchona bark, amount: 1 g}",
                "{use: white wine, amount: 500 ml}",
                "{use: honey, amount: 100 g}"
            })
    void nothingThatTheProgramSaysStaysEnglish(String line) {
        TellLabel.Found found = found(line).bearing("EU minimum");
        Set<String> english = new TreeSet<>();
        Saying german = new Saying("de", (rule, text) -> {
            if (GERMAN.told(rule, text).language() != Language.GERMAN) {
                english.add(rule + ": " + text);
            }
            return GERMAN.toldOrMarked(rule, text);
        });
        LabelSheet.Look look = new LabelSheet.Look(new LabelSheet.Size(190, 120), german, LabelSheet.Cost.PRINTED);
        LocalDate day = LocalDate.of(2027, 5, 3);
        String label =
                LabelSheet.svg(found, look, new LabelBottles.Marking(3, 2, "L3-20270503", day, day.plusDays(14)));
        assertThat(english).isEmpty();
        assertThat(label)
                .contains(
                        "Charge 3, Flasche 2, Los L3-20270503",
                        "mindestens haltbar bis",
                        "Selbst gemacht",
                        "Zutaten: ",
                        "Neutralalkohol",
                        "Wasser",
                        "Zucker",
                        "Kosten mit Steuer")
                .doesNotContainPattern(">[^<]*\\b(contains|filled|energy|cost|keep|lot)\\b")
                .doesNotContainPattern("\\d\\.\\d+ (% vol|EUR)");
        assertThat(LabelSheet.svg(found, look)).contains("Abgefüllt");
    }

    /** What names ask of what goes in, and why lines rule it out, by what is in the drink. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{use: neutral spirit, amount: 300 ml}",
                "{use: white wine, amount: 900 ml}",
                "{use: gin, amount: 300 ml}",
                "{use: caraway oil, amount: 1 g}",
                "{use: gentian root, amount: 5 g}",
                "{use: mead, amount: 300 ml}",
                "{use: rum, amount: 300 ml}",
                "{use: cherry spirit, amount: 500 ml}",
                "{use: food colouring, amount: 1 g}",
                "{use: cream, amount: 200 g}"
            })
    void whatGoesInIsSaidInGerman(String line) {
        TellLabel.Found found = found(line);
        assertThat(found.classes())
                .flatExtracting(LegalClass::asked)
                .isNotEmpty()
                .allSatisfy(shown -> {
                    assertThat(GERMAN.told(LabelView.LABEL, shown.what()).language())
                            .as(shown.what())
                            .isEqualTo(Language.GERMAN);
                    if (!shown.why().isEmpty()) {
                        assertThat(GERMAN.told(LabelView.LABEL, shown.why()).language())
                                .as(shown.why())
                                .isEqualTo(Language.GERMAN);
                    }
                });
        assertThat(found.classes())
                .flatExtracting(LegalClass::ruledOut)
                .extracting(Shown::why)
                .doesNotContain("");
    }

    /** Whatever a German page calls a name or a country, it understands. */
    @Test
    void whatIsShownIsUnderstoodWhenItIsTyped() {
        TellLabel.Found found = found("{use: gin, amount: 300 ml}");
        assertThat(found.classes().stream().filter(each -> each.market() == Market.EU))
                .allSatisfy(each -> {
                    String german = GERMAN.told(LabelView.LABEL, each.name()).text();
                    for (String part : german.split(" / ", -1)) {
                        String plain = part.replaceAll(" \\(.*", "");
                        assertThat(each.isCalled(plain)).as(plain).isTrue();
                    }
                });
        assertThat(Duty.countries(found.tables()))
                .allSatisfy(country -> assertThat(Duty.country(
                                found.tables(),
                                GERMAN.told(LabelView.LABEL, country).text()))
                        .hasValue(country));
    }

    /** What the contents of are not said, and what the law counts by another factor, is printed on its side. */
    @Test
    void energyThatIsNotCountedWholeIsToldAsTheLeastOrTheMost() {
        assertThat(printed("{use: bare cream, amount: 200 g}")).contains("Energie mindestens", "Zucker mindestens");
        assertThat(printed("{use: erythritol, amount: 100 g}")).contains("Energie höchstens");
        assertThat(printed("{use: gin, amount: 100 g}")).contains("Energie ").doesNotContain("mindestens", "höchstens");
    }

    @Test
    void caffeineOfBeansLeavesABlankToFillIn() {
        assertThat(printed("{use: coffee beans, amount: 80 g}").replaceAll("<[^>]*>", " "))
                .contains("________")
                .doesNotContain("…");
    }

    private static String printed(String line) {
        Saying german = new Saying("de", GERMAN::toldOrMarked);
        return LabelSheet.svg(
                found(line), new LabelSheet.Look(new LabelSheet.Size(190, 120), german, LabelSheet.Cost.LEFT_OUT));
    }

    private static TellLabel.Found found(String line) {
        String text = """
                stillroom: 1
                title: Quitte
                ingredients:
                  - {name: neutral spirit, kind: spirit, strength: 96 %, price: 20 EUR/L}
                  - {name: cream, kind: dairy, contains: {fat: 36 %, water: 60 %}}
                  - {name: bare cream, kind: dairy}
                  - {name: erythritol, kind: other, contains: {other solids: 100 %}}
                  - {name: egg yolk, kind: egg, contains: {fat: 30 %, water: 50 %}}
                  - {name: liquorice, kind: dried plant}
                  - {name: coffee beans, kind: dried plant}
                  - {name: cinchona bark, kind: dried plant}
                  - {name: white wine, kind: wine, strength: 12 %}
                  - {name: gin, kind: spirit, strength: 40 %}
                  - {name: rum, kind: spirit, strength: 40 %}
                  - {name: cherry spirit, kind: spirit, strength: 45 %}
                  - {name: mead, kind: wine, strength: 12 %}
                  - {name: caraway oil, kind: essential oil}
                  - {name: gentian root, kind: dried plant}
                  - {name: food colouring, kind: other, contains: {water: 100 %}}
                lines:
                  - {use: neutral spirit, amount: 100 ml}
                  - {use: water, amount: 500 ml}
                  - {use: white sugar, amount: 100 g}
                  - LINE
                """.replace("LINE", line);
        RecipeReading reading = new RecipeReader(OunceMeaning.US_FLUID).read(text);
        Making making = Making.alone(((RecipeReading.Understood) reading).recipe());
        PlanRecipe.Outcome outcome = PlanRecipe.answer(making, null, Workings.NONE);
        return TellLabel.answer(
                ((PlanRecipe.Outcome.Worked) outcome).plan(),
                new TellLabel.Asking(Market.EU, StatedStrength.LeftIn.NOTHING, 30, 350),
                Grounds.SHIPPED.with(Condition.AS_MIXED));
    }
}
