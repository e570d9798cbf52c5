package org.stillroom.studio.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.accessTargetWhere;
import static com.tngtech.archunit.lang.conditions.ArchConditions.never;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.ConstructorCallTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Who may use whom, as lists of what is allowed.
 *
 * @param root package that holds core, planner and studio: the house itself, or the canaries' copy of its layout
 */
record House(String root) {
    /** The subjects of the core, each step seeing the steps before it and no neighbour on its own. */
    static final List<List<String>> STEPS = List.of(
            List.of("quantity"),
            List.of("reference"),
            List.of("alcohol", "sugar", "acid", "aroma"),
            List.of("liquid"),
            List.of("clarity", "extraction", "drops", "tasting", "chilling"),
            List.of("ingredient"),
            List.of("recipe"),
            List.of("blend"),
            List.of("plan", "gauging"),
            List.of("safety", "label", "triangle", "mixing"),
            List.of("batch"));

    /** The rooms of the studio, and which others each may use; the root package starts the program. */
    static final Map<String, Set<String>> ROOMS = Map.of(
            "faults", Set.of(),
            "recipefile", Set.of(),
            "store", Set.of(),
            "wording", Set.of(),
            "shelffile", Set.of("recipefile"),
            "usecase", Set.of("recipefile", "shelffile", "store"),
            "answer", Set.of("usecase"),
            "sheet", Set.of("usecase"),
            "web", Set.of("faults", "recipefile", "shelffile", "store", "wording", "usecase", "answer", "sheet"),
            "cli", Set.of("faults", "recipefile", "store", "usecase", "answer", "sheet", "web", "wording"));

    private static final Map<String, List<String>> LIBRARIES = Map.of(
            "recipefile", List.of("org.snakeyaml.engine.."),
            "shelffile", List.of("de.siegmar.fastcsv.."),
            "store",
                    List.of(
                            "org.jdbi.v3.core..",
                            "org.flywaydb.core..",
                            "org.sqlite..",
                            "com.zaxxer.hikari..",
                            "javax.sql",
                            "tools.jackson.core..",
                            "tools.jackson.databind.."),
            "wording", List.of(),
            "usecase", List.of("tools.jackson.databind.."),
            "answer", List.of("tools.jackson.core.."),
            "web",
                    List.of(
                            "io.javalin..",
                            "org.eclipse.jetty..",
                            "jakarta.servlet..",
                            "gg.jte..",
                            "com.password4j..",
                            "tools.jackson.core..",
                            "tools.jackson.databind.."),
            "sheet",
                    List.of("com.openhtmltopdf..", "org.apache.pdfbox..", "org.apache.fontbox..", "com.google.zxing.."),
            "cli", List.of("picocli..", "tools.jackson.core.."));

    /** What the core may use of the JDK: the language and its collections, so that it also compiles for a browser. */
    private static final List<String> PURE_JDK = List.of(
            "", // primitives and their arrays
            "java.lang",
            "java.lang.annotation",
            "java.lang.invoke",
            "java.lang.runtime",
            "java.util",
            "java.util.function",
            "java.util.regex",
            "java.util.stream",
            "java.time..",
            "org.jspecify.annotations");

    /** What opening the shipped tables takes besides. */
    private static final List<String> TABLES = List.of("java.io", "java.nio.charset");

    private static final List<String> SEARCH = List.of("org.ojalgo..", "org.hipparchus..");

    /** Methods by which the machine, the moment or chance would enter a computation, by class and name; * is any. */
    private static final Set<String> OUTSIDE_WORLD = Set.of(
            "java.lang.System.currentTimeMillis",
            "java.lang.System.nanoTime",
            "java.lang.System.getenv",
            "java.lang.System.getProperty",
            "java.lang.Math.random",
            "java.lang.StrictMath.random",
            "java.lang.Thread.*",
            "java.lang.Runtime.*",
            "java.util.Locale.getDefault",
            "java.util.TimeZone.getDefault",
            "java.util.UUID.randomUUID",
            "java.util.Collections.shuffle",
            "java.time.Clock.*",
            "java.time.Instant.now",
            "java.time.LocalDate.now",
            "java.time.LocalDateTime.now",
            "java.time.ZonedDateTime.now",
            "java.util.Date.<init>",
            "java.util.Random.<init>");

    static final House STILLROOM = new House("org.stillroom");

    /** Returns the subjects and rooms that the rules place, as package names. */
    List<String> placed() {
        List<String> placed = new ArrayList<>();
        STEPS.forEach(step -> step.forEach(subject -> placed.add(core(subject))));
        ROOMS.keySet().forEach(room -> placed.add(studio(room)));
        placed.add(root + ".planner");
        placed.add(root + ".page");
        placed.add(root + ".studio");
        return placed;
    }

    /** Holds a subject of the core to the steps before it and to the pure part of the JDK. */
    ArchRule subject(String subject) {
        List<String> allowed = new ArrayList<>(PURE_JDK);
        if (subject.equals("reference")) {
            allowed.addAll(TABLES);
        }
        allowed.add(core(subject));
        for (List<String> step : STEPS) {
            if (step.contains(subject)) {
                break;
            }
            step.forEach(earlier -> allowed.add(core(earlier)));
        }
        return only(core(subject), allowed);
    }

    /** Keeps clock, locale, chance and machine out of the core and the planner. */
    ArchRule sameInputSameOutput() {
        DescribedPredicate<JavaClass> computing = resideInAnyPackage(root + ".core..", root + ".planner..");
        return classes()
                .that(computing)
                .should(never(accessTargetWhere(
                        DescribedPredicate.describe("the outside world is asked", House::isOutside))));
    }

    private static boolean isOutside(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getName();
        String name = access.getName();
        if (access.getTarget() instanceof ConstructorCallTarget made
                && !made.getRawParameterTypes().isEmpty()) {
            return OUTSIDE_WORLD.contains(owner + ".*"); // made from a seed or a moment that was handed in
        }
        return OUTSIDE_WORLD.contains(owner + "." + name) || OUTSIDE_WORLD.contains(owner + ".*");
    }

    /** Holds the planner to the core, the JDK and the numerical libraries. */
    ArchRule planner() {
        List<String> allowed = new ArrayList<>(PURE_JDK);
        allowed.addAll(SEARCH);
        allowed.add(root + ".core..");
        allowed.add(root + ".planner..");
        return only(root + ".planner..", allowed);
    }

    /** Holds the module for browsers to the core and to what the compiler to a browser's language can take. */
    ArchRule page() {
        List<String> allowed = new ArrayList<>(PURE_JDK);
        allowed.add("org.teavm.jso..");
        allowed.add(root + ".core..");
        allowed.add(root + ".page..");
        return only(root + ".page..", allowed);
    }

    /** Holds a room of the studio to the rooms that it may use and to its own libraries. */
    ArchRule room(String room) {
        List<String> allowed = new ArrayList<>(List.of("", "java..", "org.jspecify.annotations"));
        allowed.add(root + ".core..");
        allowed.add(root + ".planner..");
        allowed.add(studio(room) + "..");
        ROOMS.getOrDefault(room, Set.of()).forEach(other -> allowed.add(studio(other) + ".."));
        allowed.addAll(LIBRARIES.getOrDefault(room, List.of()));
        return only(studio(room) + "..", allowed);
    }

    private static ArchRule only(String who, List<String> allowed) {
        return classes()
                .that(resideInAPackage(who))
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(allowed.toArray(String[]::new)));
    }

    private String core(String subject) {
        return root + ".core." + subject;
    }

    private String studio(String room) {
        return root + ".studio." + room;
    }
}
