package org.stillroom.studio.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.DeskQuestions;
import org.stillroom.studio.answer.desk.Manner;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.answer.desk.WrongInput;
import org.stillroom.studio.web.tables.Labels;

/** The questions at the desk as a German reader meets them. */
class DeskInGermanTest {
    private static final Words GERMAN = new Words(Language.GERMAN, UnitSystem.METRIC);

    /** Bare units, and words that are the same in both languages. */
    private static final Set<String> SAME = Set.of(
            "",
            "g",
            "mg",
            "mL",
            "mL/L",
            "µL",
            "g/L",
            "%",
            "% (°Bx)",
            "°C",
            "g/g",
            "% vol",
            "kg/m³",
            "mg/kg",
            "± % vol",
            "± g/L",
            "% vol, 90 %");

    /** What each method has to be minded for stays English; what is typed into a command is no language. */
    private static final List<String> STAY = List.of("readings: What to mind", "calibrate: To gauge with it");

    static List<DeskQuestion> questions() {
        return DeskQuestions.all();
    }

    private static boolean isEnglish(String text) {
        return !SAME.contains(text) && GERMAN.told("desk", text).language() == Language.ENGLISH;
    }

    @ParameterizedTest
    @MethodSource("questions")
    void whatIsAskedIsGerman(DeskQuestion question) {
        List<String> texts = new ArrayList<>(List.of(question.name(), question.summary()));
        for (Part part : question.parts()) {
            texts.add(part.name().replace('-', ' '));
            texts.add(part.description());
            texts.add(part.group());
            part.choices().forEach(choice -> texts.add(choice.words()));
        }
        assertThat(texts).filteredOn(DeskInGermanTest::isEnglish).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("questions")
    void theAnswerOfTheExampleIsGerman(DeskQuestion question) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        for (Manner.Given given : question.example()) {
            typed.computeIfAbsent(given.part(), part -> new ArrayList<>()).add(given.value());
        }
        Workings.Written steps = new Workings.Written();
        Told told = question.answer(typed, Labels.PLAIN, steps);
        Set<String> texts = new TreeSet<>(Set.of(told.heading()));
        for (Told.Row row : told.rows()) {
            texts.addAll(
                    List.of(row.name().label(), row.name().unit(), row.word().label()));
        }
        steps.steps().forEach(step -> texts.addAll(List.of(step.what(), step.unit())));
        told.sections().forEach(section -> {
            texts.add(section.heading());
            if (!STAY.contains(question.name() + ": " + section.heading())) {
                texts.addAll(section.sentences());
            }
        });
        told.series().forEach(series -> {
            texts.add(series.heading());
            series.columns().forEach(column -> texts.addAll(List.of(column.label(), column.unit())));
        });
        assertThat(texts).filteredOn(DeskInGermanTest::isEnglish).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"together", "spirit-first", "on-the-marc"})
    void fruitInSugarIsGermanInEveryOrder(String order) {
        DeskQuestion macerate = question("macerate");
        Map<String, List<String>> typed = new LinkedHashMap<>();
        macerate.example().forEach(given -> typed.put(given.part(), List.of(given.value())));
        typed.put("order", List.of(order));
        assertThat(macerate.answer(typed, Labels.PLAIN, Workings.NONE).rows())
                .extracting(row -> row.name().label())
                .filteredOn(DeskInGermanTest::isEnglish)
                .isEmpty();
    }

    @Test
    void drawsOfOneMarcAndOtherSpiritsAreGerman() {
        DeskQuestion macerate = question("macerate");
        Map<String, List<String>> typed = new LinkedHashMap<>();
        macerate.example().forEach(given -> typed.put(given.part(), List.of(given.value())));
        typed.put("again", List.of("300ml@40%", "200ml@20%"));
        typed.remove("sugar-on-fruit");
        List<String> texts = new ArrayList<>();
        for (Told.Series series :
                macerate.answer(typed, Labels.PLAIN, Workings.NONE).series()) {
            texts.add(series.heading());
            series.columns().forEach(column -> texts.add(column.label()));
            series.rows().forEach(row -> texts.add(row.name()));
        }
        assertThat(texts)
                .contains("draw 3", "of 40 % vol", "at 30 °C")
                .filteredOn(DeskInGermanTest::isEnglish)
                .isEmpty();
    }

    /** Parts with their texts, parted by "; ", and what is asked. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "match | want=pennyroyal=50mg; want=lime=1mg; have=lemon",
                "match | want=bergamot=50mg; have=pennyroyal; by=smell",
                "macerate | plant=dried herbs; mass=100g; solvent=1L; strength=5%; again=2L@0%",
                "macerate | tincture=lemon; yield=1L",
            })
    void whatIsSaidOfTheFiguresIsGerman(String name, String parts) {
        Told told = question(name).answer(typed(parts), Labels.PLAIN, Workings.NONE);
        assertThat(told.findings()).isNotEmpty();
        assertThat(english(told.findings())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "match | have=lemon",
                "match | want=bergamot=50mg",
                "macerate | tincture=moon dust; yield=1L",
                "macerate | tincture=Enziantinktur",
                "macerate | tincture=compound gentian tincture; yield=1L",
                "macerate | tincture=lemon; yield=1L; mass=100g",
                "macerate | plant=plum; yield=1L; strength=60%",
                "macerate | plant=plum; mass=1000000kg; solvent=1L; strength=60%; again=1L 40%; make-up-to=0L",
                "macerate | solvent=1L; strength=60%",
                "combine | macerate=300ml@62%@1:5; ratio=1:2; to=0%",
                "extract | dose=12ml/L; content=12; my-content=17mg; strength=60%",
                "still | charge=10L; strength=0%; to=40%",
                "materials | name=lemon; kind=plant",
            })
    void whatIsRefusedIsRefusedInGerman(String name, String parts) {
        assertThatExceptionOfType(WrongInput.class)
                .isThrownBy(() -> question(name).answer(typed(parts), Labels.PLAIN, Workings.NONE))
                .satisfies(wrong -> assertThat(english(wrong.findings())).isEmpty());
    }

    private static DeskQuestion question(String name) {
        return questions().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Map<String, List<String>> typed(String parts) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        for (String part : parts.split("; ", -1)) {
            int sign = part.indexOf('=');
            typed.computeIfAbsent(part.substring(0, sign), key -> new ArrayList<>())
                    .add(part.substring(sign + 1));
        }
        return typed;
    }

    private static List<String> english(List<Finding> findings) {
        List<String> english = new ArrayList<>();
        for (Finding finding : findings) {
            for (String text : List.of(finding.verdict(), finding.message(), finding.howSure(), finding.remedy())) {
                if (!text.isEmpty() && GERMAN.told(finding.rule(), text).language() == Language.ENGLISH) {
                    english.add(finding.rule() + ": " + text);
                }
            }
        }
        return english;
    }

    @Test
    void everyMaterialIsToldInGerman() {
        DeskQuestion materials = question("materials");
        List<String> texts = new ArrayList<>();
        Materials.list().forEach(material -> {
            Told told = materials.answer(Map.of("name", List.of(material.name())), Labels.PLAIN, Workings.NONE);
            texts.add(told.heading());
            told.sections().forEach(section -> texts.addAll(section.sentences()));
            told.series().forEach(series -> texts.add(series.heading()));
        });
        assertThat(texts)
                .hasSizeGreaterThan(500)
                .filteredOn(DeskInGermanTest::isEnglish)
                .isEmpty();
    }

    @Test
    void aFigureHasTheDecimalMarkOfItsReader() {
        assertThat(GERMAN.told("desk", "Then 1922 mL at 20 °C of 28.00 % vol and 0.5 g/L of sugar.")
                        .text())
                .isEqualTo("Dann 1922 mL bei 20 °C mit 28,00 % vol und 0,5 g/L Zucker.");
    }
}
