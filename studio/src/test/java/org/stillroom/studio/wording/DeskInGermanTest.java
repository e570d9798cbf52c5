package org.stillroom.studio.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.DeskQuestions;
import org.stillroom.studio.answer.desk.Manner;
import org.stillroom.studio.answer.desk.Part;
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
        DeskQuestion macerate = questions().stream()
                .filter(each -> each.name().equals("macerate"))
                .findFirst()
                .orElseThrow();
        Map<String, List<String>> typed = new LinkedHashMap<>();
        macerate.example().forEach(given -> typed.put(given.part(), List.of(given.value())));
        typed.put("order", List.of(order));
        assertThat(macerate.answer(typed, Labels.PLAIN, Workings.NONE).rows())
                .extracting(row -> row.name().label())
                .filteredOn(DeskInGermanTest::isEnglish)
                .isEmpty();
    }

    @Test
    void drawsOfOneMarcAreGerman() {
        DeskQuestion macerate = questions().stream()
                .filter(each -> each.name().equals("macerate"))
                .findFirst()
                .orElseThrow();
        Map<String, List<String>> typed = new LinkedHashMap<>();
        macerate.example().forEach(given -> typed.put(given.part(), List.of(given.value())));
        typed.put("again", List.of("300ml@40%", "200ml@20%"));
        Told.Series draws =
                macerate.answer(typed, Labels.PLAIN, Workings.NONE).series().get(0);
        List<String> texts = new ArrayList<>(List.of(draws.heading()));
        draws.columns().forEach(column -> texts.add(column.label()));
        draws.rows().forEach(row -> texts.add(row.name()));
        assertThat(texts)
                .contains("draw 3")
                .filteredOn(DeskInGermanTest::isEnglish)
                .isEmpty();
    }

    @Test
    void everyMaterialIsToldInGerman() {
        DeskQuestion materials = questions().stream()
                .filter(each -> each.name().equals("materials"))
                .findFirst()
                .orElseThrow();
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
