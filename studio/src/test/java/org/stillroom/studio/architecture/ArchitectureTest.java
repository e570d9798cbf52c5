package org.stillroom.studio.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rules of {@link House}, held to the classes of Stillroom; a canary breaks each to show that it can fail. */
class ArchitectureTest {
    private static final JavaClasses STILLROOM = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.stillroom");

    private static final House CANARY = new House(ArchitectureTest.class.getPackageName() + ".canary");
    private static final JavaClasses CANARIES = new ClassFileImporter().importPackages(CANARY.root());

    @TestFactory
    Stream<DynamicTest> aSubjectSeesOnlyTheStepsBeforeIt() {
        return House.STEPS.stream()
                .flatMap(List::stream)
                .filter(subject -> present("core." + subject))
                .map(subject -> holds(subject, House.STILLROOM.subject(subject)));
    }

    @TestFactory
    Stream<DynamicTest> aRoomUsesOnlyWhatItMay() {
        return House.ROOMS.keySet().stream()
                .filter(room -> present("studio." + room))
                .map(room -> holds(room, House.STILLROOM.room(room)));
    }

    @Test
    void thePlannerUsesTheCoreAndNumericalLibrariesOnly() {
        House.STILLROOM.planner().allowEmptyShould(true).check(STILLROOM);
    }

    @Test
    void theModuleForBrowsersUsesTheCoreAlone() {
        House.STILLROOM.page().check(STILLROOM);
    }

    @Test
    void theSameInputGivesTheSameOutput() {
        House.STILLROOM.sameInputSameOutput().check(STILLROOM);
    }

    @Test
    void everyPackageHasItsPlace() {
        assertThat(unplaced(STILLROOM, House.STILLROOM)).isEmpty();
    }

    @Test
    void aPackageWithoutAPlaceIsCaught() {
        assertThat(unplaced(CANARIES, CANARY)).containsExactly(CANARY.root() + ".core.unplaced");
    }

    @Test
    void aLookAtALaterStepIsCaught() {
        assertCaught(CANARY.subject("quantity"), "SeesALaterStep");
    }

    @Test
    void aLookAtANeighbourIsCaught() {
        assertCaught(CANARY.subject("alcohol"), "SeesItsNeighbour");
    }

    @Test
    void aFileInTheCoreIsCaught() {
        assertCaught(CANARY.subject("sugar"), "ReadsAFile");
    }

    @Test
    void aFileByItsNameInTheTablesIsCaught() {
        assertCaught(CANARY.subject("reference"), "ReadsAPath");
    }

    @Test
    void aClockAChanceAndALocaleAreEachCaught() {
        assertCaught(CANARY.sameInputSameOutput(), "AsksTheClock");
        assertCaught(CANARY.sameInputSameOutput(), "HandsOnTheClock");
        assertCaught(CANARY.sameInputSameOutput(), "AsksChance");
        assertCaught(CANARY.sameInputSameOutput(), "AsksTheLocale");
    }

    @Test
    void aFrameworkInThePlannerIsCaught() {
        assertCaught(CANARY.planner(), "UsesAFramework");
    }

    @Test
    void aFrameworkInTheModuleForBrowsersIsCaught() {
        assertCaught(CANARY.page(), "UsesAServer");
    }

    @Test
    void aRoomThatUsesAnothersLibraryIsCaught() {
        assertCaught(CANARY.room("recipefile"), "ParsesOptions");
    }

    @Test
    void aRoomThatUsesARoomItMayNotIsCaught() {
        assertCaught(CANARY.room("recipefile"), "AsksAUseCase");
    }

    private static DynamicTest holds(String name, ArchRule rule) {
        return DynamicTest.dynamicTest(name, () -> rule.check(STILLROOM));
    }

    private static boolean present(String name) {
        return packages(STILLROOM).contains(House.STILLROOM.root() + "." + name);
    }

    private static void assertCaught(ArchRule rule, String canary) {
        List<String> caught =
                new ArrayList<>(rule.evaluate(CANARIES).getFailureReport().getDetails());
        assertThat(caught).anyMatch(detail -> detail.contains("." + canary));
    }

    /** Returns the packages with classes that no rule names; what lies below a room belongs to it. */
    private static Set<String> unplaced(JavaClasses classes, House house) {
        Set<String> left = new TreeSet<>(packages(classes));
        left.removeIf(name -> house.placed().contains(name)
                || House.ROOMS.keySet().stream()
                        .anyMatch(room -> name.startsWith(house.root() + ".studio." + room + "."))
                || name.startsWith(house.root() + ".planner."));
        return left;
    }

    private static Set<String> packages(JavaClasses classes) {
        return classes.stream().map(JavaClass::getPackageName).collect(Collectors.toSet());
    }
}
