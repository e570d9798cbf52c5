package org.stillroom.studio.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.plan.MixingStep;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Tables;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.HouseRules;
import org.stillroom.studio.docs.Names;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.usecase.OpenRecipe;
import org.stillroom.studio.usecase.PlanRecipe;

/** What the program finds is said in German on German pages. */
class FindingsInGermanTest {
    private static final Path ROOT = Names.findRoot();
    private static final Words GERMAN = new Words(Language.GERMAN, UnitSystem.METRIC);

    /** Where findings are made that no page shows: the command line and the API stay English. */
    private static final List<String> ENGLISH_EDGES =
            List.of("org/stillroom/studio/cli/", "org/stillroom/studio/web/api/");

    private static final Pattern MADE =
            Pattern.compile("(?:Finding\\.of|new Finding|new CannotHaveHappened)\\(\\s*(?:\"([a-z-]+)\"|([A-Z_]+)),"
                    + "|typing\\.object\\(\\s*[^,;]+,\\s*\"([a-z-]+)\",");

    /**
     * English words that betray a German sentence with an English one in it; none of them is a German word or in the names
     * that the recipes here use.
     */
    private static final Pattern ENGLISH =
            Pattern.compile("\\b(the|of|and|is|are|with|not|or|it|its|to|by|from memory|which|most|this|that)\\b");

    @Test
    void everyRuleHasAGroupInTheBook() throws IOException {
        Map<String, String> made = new TreeMap<>();
        for (String module : List.of("core", "planner", "studio")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(module + "/src/main/java"))) {
                for (Path file : files.filter(each -> each.toString().endsWith(".java"))
                        .filter(each -> ENGLISH_EDGES.stream().noneMatch(each.toString()::contains))
                        .toList()) {
                    gather(file, made);
                }
            }
        }
        assertThat(made).hasSizeGreaterThan(120);

        Set<String> missing = new TreeSet<>(made.keySet());
        missing.removeAll(Phrasebook.of(Language.GERMAN).orElseThrow().rules());
        assertThat(missing.stream().map(rule -> rule + " in " + made.get(rule)).toList())
                .as("rules without German in findings_de.txt; whoever writes a finding adds its German there")
                .isEmpty();
    }

    private static void gather(Path file, Map<String, String> made) throws IOException {
        String text = Files.readString(file);
        Matcher found = MADE.matcher(text);
        while (found.find()) {
            String rule = found.group(1) != null ? found.group(1) : found.group(3);
            if (found.group(2) != null) {
                Matcher constant = Pattern.compile("String " + found.group(2) + "\\s*=\\s*\"([a-z-]+)\"")
                        .matcher(text);
                rule = constant.find() ? constant.group(1) : null;
            }
            if (rule != null) {
                made.put(rule, file.getFileName().toString());
            }
        }
    }

    @Test
    void everyCautionOfTheTableIsSaidInGerman() {
        List<String> english = new ArrayList<>();
        Tables.open("safety/cautions.csv").rows().forEach(row -> {
            for (String column : List.of("verdict", "message", "remedy")) {
                String text = row.text(column);
                if (GERMAN.told(row.text("rule"), text).language() != Language.GERMAN) {
                    english.add(row.text("rule") + ": " + text);
                }
            }
        });
        assertThat(english).isEmpty();
    }

    @Test
    void everyAllergenIsSaidInGermanAsItIsNamedOnLabels() {
        List<String> english = new ArrayList<>();
        Tables.open("safety/allergens.csv").rows().forEach(row -> {
            String allergen = row.text("allergen");
            String what = row.text("what");
            if (!allergen.equals("any") && !row.text("says").equals("none")) {
                String rule = allergen.equals("sulphites") ? allergen : "allergen-" + allergen;
                noteIfEnglish(rule, "contains " + what, english);
                noteIfEnglish(rule, "not known if it contains " + what, english);
                noteIfEnglish(rule, "The EU asks that " + what + " be named.", english);
            }
        });
        assertThat(english).isEmpty();
    }

    @Test
    void everyPlantAndOilThatIsNotForDrinkingIsSaidInGerman() {
        List<String> english = new ArrayList<>();
        Tables.open("safety/toxic_plants.csv").rows().forEach(row -> {
            String plant = row.text("plant");
            String message = Character.toUpperCase(plant.charAt(0)) + plant.substring(1) + " (" + row.text("botanical")
                    + "): " + row.text("reason") + ".";
            noteIfEnglish("plant", message, english);
        });
        Tables.open("safety/not_for_ingestion.csv").rows().forEach(row -> {
            String material = row.text("material");
            noteIfEnglish("not-for-drinking", "my bottle (" + material + "): " + row.text("reason") + ".", english);
            if (!material.matches(".*[,/(].*")) { // a name that a bottle can bear by itself
                noteIfEnglish("not-for-drinking", material + ": " + row.text("reason") + ".", english);
            }
        });
        assertThat(english).isEmpty();
    }

    @Test
    void otherHazesAndWaysToClarifyAreSaidInGerman() {
        Map<String, List<String>> tables = Map.of(
                "other_hazes", List.of("haze", "test", "try_first"),
                "signs", List.of("question"),
                "clarifying", List.of("way", "takes_out", "how", "wait", "allergens"),
                "cream_limits", List.of("why", "remedy"));
        List<String> english = new ArrayList<>();
        tables.forEach((name, columns) -> Tables.open("clarity/" + name + ".csv")
                .rows()
                .forEach(row -> columns.stream()
                        .map(row::textOrEmpty)
                        .filter(text -> !text.isEmpty())
                        .forEach(text -> noteIfEnglish("haze", text, english))));
        assertThat(english).isEmpty();
    }

    @Test
    void figuresAreNamedInGermanWithTheirUnits() {
        List<String> english = new ArrayList<>();
        for (Figure figure : Figure.values()) {
            noteIfEnglish("figure", figure.label(), english);
            noteIfEnglish("figure", figure.unit().replace("the temperature asked", "20 °C"), english);
        }
        assertThat(english).isEmpty();
    }

    private static void noteIfEnglish(String rule, String text, List<String> english) {
        if (GERMAN.told(rule, text).language() != Language.GERMAN) {
            english.add(rule + ": " + text);
        }
    }

    @TestFactory
    Stream<DynamicTest> findingsOfTheExamplesAreGerman() throws IOException {
        List<Path> files = examples();
        assertThat(files).hasSizeGreaterThan(6);
        return files.stream()
                .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> areGerman(ofFile(file))));
    }

    @TestFactory
    Stream<DynamicTest> theOrderOfMixingIsGerman() throws IOException {
        return examples().stream()
                .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> stepsAreGerman(file)));
    }

    private static List<Path> examples() throws IOException {
        try (Stream<Path> all = Files.walk(ROOT.resolve("examples"))) {
            return all.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    private static void stepsAreGerman(Path file) {
        OpenRecipe.Outcome.Opened opened = (OpenRecipe.Outcome.Opened) OpenRecipe.at(file);
        PlanRecipe.Outcome outcome =
                PlanRecipe.answer(PlanRecipe.making(opened.recipe()), null, Grounds.SHIPPED, Workings.NONE);
        List<String> english = new ArrayList<>();
        for (MixingStep step : ((PlanRecipe.Outcome.Worked) outcome).plan().steps()) {
            if (step.act() != MixingStep.Act.OWN) {
                noteIfEnglish("mixing", step.what(), english);
            }
            if (!step.why().isEmpty()) {
                noteIfEnglish("mixing", step.why(), english);
            }
        }
        assertThat(english).isEmpty();
    }

    private static List<Finding> ofFile(Path file) {
        OpenRecipe.Outcome.Opened opened = (OpenRecipe.Outcome.Opened) OpenRecipe.at(file);
        List<Finding> findings = new ArrayList<>(worked(PlanRecipe.making(opened.recipe()), Grounds.SHIPPED));
        findings.addAll(opened.notes());
        return findings;
    }

    @TestFactory
    Stream<DynamicTest> findingsOfBadRecipesAreGerman() {
        return BadRecipes.all().entrySet().stream()
                .map(each -> DynamicTest.dynamicTest(each.getKey(), () -> {
                    List<Finding> findings = of(each.getValue());
                    assertThat(findings).isNotEmpty();
                    areGerman(findings);
                }));
    }

    private static List<Finding> of(String text) {
        RecipeReading reading = new RecipeReader(OunceMeaning.US_FLUID).read(text);
        if (reading instanceof RecipeReading.Refused refused) {
            return refused.problems();
        }
        RecipeReading.Understood understood = (RecipeReading.Understood) reading;
        Making making = new Making(understood.recipe(), Map.of());
        HouseRules.Reading rules = HouseRules.read(
                "no tonka because of the lot\nat most 0.2 g/L oil\nat most 2 mg/L thujone\nat most many things",
                Grounds.SHIPPED.knowledge());
        List<Finding> findings = new ArrayList<>(worked(making, Grounds.SHIPPED.with(rules.kept())));
        findings.addAll(understood.notes());
        findings.addAll(rules.problems());
        return findings;
    }

    private static List<Finding> worked(Making making, Grounds grounds) {
        PlanRecipe.Outcome outcome = PlanRecipe.answer(making, null, grounds, Workings.NONE);
        return outcome instanceof PlanRecipe.Outcome.Refused refused
                ? refused.problems()
                : ((PlanRecipe.Outcome.Worked) outcome).plan().findings();
    }

    private static void areGerman(List<Finding> findings) {
        List<String> wrong = new ArrayList<>();
        for (Finding finding : findings) {
            for (String text : List.of(finding.verdict(), finding.message(), finding.howSure(), finding.remedy())) {
                Spoken told = GERMAN.told(finding.rule(), text);
                boolean english = told.language() == Language.ENGLISH
                        || ENGLISH.matcher(withoutWhatStays(finding.rule(), told.text()))
                                .find();
                if (!text.isEmpty() && english) {
                    wrong.add(finding.rule() + ": " + text + " → " + told.text());
                }
            }
            String where = GERMAN.told(finding.rule(), finding.where()).text();
            if (where.contains("line ") || where.contains("target")) {
                wrong.add(finding.rule() + " at " + finding.where());
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** Leaves out what stays English on purpose. */
    private static String withoutWhatStays(String rule, String text) {
        String left = text.replaceAll("„[^“]*“|\\w+: \\{[^}]*}", ""); // quotations, and examples to type
        return switch (rule) {
            case "intake" -> left.replaceAll("\\(.*\\)", ""); // the body that gave the guidance, and its paper
            case "us-listed" -> left.replaceAll("gelistet als .*", ""); // the entry as the US list prints it
            case "field-choice", "field-unknown" -> left.replaceAll("\\(englisch\\).*", ""); // keys as they are typed
            case "house-rule" -> // house rules are written in English, and their reasons as the maker wants
                left.replaceAll("etwa: at most 20 mg/L thujone|\\(weil: .*\\)", "");
            default -> left.replaceAll("\\([^)]*\\)", ""); // groups of sources, botanical names
        };
    }
}
