package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The start script in a small tree, where stand-ins for Maven and Java write down that they were called. */
class StartScriptTest {
    private static final String JAVAC = "#!/bin/sh\necho javac 17.0.1\n";
    private static final String JAVA = """
            #!/bin/sh
            case "$*" in *Rehearsal*) exit 0 ;; esac
            for last in "$@"; do :; done
            echo "ran in $PWD with $last"
            """;
    private static final String MAVEN = """
            #!/bin/sh
            case "$*" in *-v*) echo Apache Maven 3.8.7; exit 0 ;; esac
            echo chatter of the build
            echo built >>"$BUILDS"
            [ ! -f broken ] || { echo this source is broken; exit 1; }
            sleep 0.2
            mkdir -p studio/target
            [ -f incomplete ] || mkdir -p studio/target/lib
            echo jar >studio/target/stillroom.jar
            """;

    @TempDir
    Path dir;

    private Path tree;
    private Path source;

    @BeforeEach
    void layOut() throws IOException {
        tree = Files.createDirectories(dir.resolve("a tree"));
        for (String file : List.of("stillroom", "scripts/machine.sh")) {
            Files.createDirectories(tree.resolve(file).getParent());
            Files.copy(Program.root().resolve(file), tree.resolve(file));
        }
        source = tree.resolve("core/src/main/Water.java");
        write(source, "class Water {}");
        write(tree.resolve("pom.xml"), "<project/>");
        executable(dir.resolve("jdk/bin/javac"), JAVAC);
        executable(dir.resolve("jdk/bin/java"), JAVA);
        executable(dir.resolve("path/mvn"), MAVEN);
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static void executable(Path file, String text) throws IOException {
        write(file, text);
        assertThat(file.toFile().setExecutable(true)).isTrue();
    }

    private Program.Run start(Path script) throws IOException, InterruptedException {
        Map<String, String> environment = Map.of(
                "JAVA_HOME", dir.resolve("jdk").toString(),
                "PATH", dir.resolve("path") + ":" + System.getenv("PATH"),
                "BUILDS", dir.resolve("builds").toString());
        Path elsewhere = Files.createDirectories(dir.resolve("elsewhere"));
        return Program.run(elsewhere, environment, List.of(script.toString(), "recipe.yaml"));
    }

    private Program.Run start() throws IOException, InterruptedException {
        return start(tree.resolve("stillroom"));
    }

    private int builds() throws IOException {
        return Files.readAllLines(dir.resolve("builds")).size();
    }

    @Test
    void theFirstStartBuildsAndRunsWhereThePersonIs() throws Exception {
        Program.Run run = start();
        assertThat(run.exit()).isZero();
        assertThat(run.out()).isEqualTo("ran in " + dir.toRealPath().resolve("elsewhere") + " with recipe.yaml\n");
        assertThat(run.err()).contains("building for the first time").doesNotContain("chatter");
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void theSecondStartBuildsNothingAndSaysNothing() throws Exception {
        start();
        Program.Run second = start();
        assertThat(second.out()).startsWith("ran in");
        assertThat(second.err()).isEmpty();
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void aChangedAnAddedAndARestoredSourceAreEachBuilt() throws Exception {
        start();
        Files.writeString(source, "class Water { int grams; }");
        assertThat(start().err()).contains("building, since its sources changed");
        Path added = source.resolveSibling("Sugar.java");
        Files.writeString(added, "class Sugar {}");
        start();
        Files.delete(added);
        start();
        Files.setLastModifiedTime(source, FileTime.from(Instant.parse("2001-01-01T00:00:00Z")));
        start();
        assertThat(builds()).isEqualTo(5);
    }

    @Test
    void aFailedBuildSaysWhyAndIsTriedAgain() throws Exception {
        Files.createFile(tree.resolve("broken"));
        Program.Run failed = start();
        assertThat(failed.exit()).isEqualTo(70);
        assertThat(failed.out()).isEmpty();
        assertThat(failed.err()).contains("this source is broken", "the build failed");
        Files.delete(tree.resolve("broken"));
        assertThat(start().out()).startsWith("ran in");
        assertThat(builds()).isEqualTo(2);
    }

    @Test
    void aFailedBuildAfterAChangeDoesNotRunTheOldProgram() throws Exception {
        start();
        Files.writeString(source, "class Water {");
        Files.createFile(tree.resolve("broken"));
        assertThat(start().exit()).isEqualTo(70);
        assertThat(start().out()).isEmpty();
    }

    @Test
    void aBuildThatCannotBeKeptWholeIsNotKept() throws Exception {
        Files.createFile(tree.resolve("incomplete"));
        assertThat(start().exit()).isEqualTo(70);
        assertThat(tree.resolve(".build/app")).doesNotExist();
        Files.delete(tree.resolve("incomplete"));
        assertThat(start().exit()).isZero();
    }

    @Test
    void startsAtTheSameTimeBuildOnce() throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(4);
        Callable<Program.Run> start = this::start;
        List<Program.Run> runs = new ArrayList<>();
        for (Future<Program.Run> run : people.invokeAll(List.of(start, start, start, start))) {
            runs.add(run.get());
        }
        people.shutdown();
        assertThat(runs)
                .allSatisfy(run -> assertThat(run.out()).startsWith("ran in"))
                .allSatisfy(run -> assertThat(run.exit()).isZero());
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void aLinkToTheScriptStartsTheSameTree() throws Exception {
        start();
        Path link = Files.createSymbolicLink(dir.resolve("link"), tree.resolve("stillroom"));
        assertThat(start(link).out()).startsWith("ran in");
        assertThat(builds()).isEqualTo(1);
    }
}
