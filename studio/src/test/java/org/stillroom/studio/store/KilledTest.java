package org.stillroom.studio.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** A studio whose process is killed (SIGKILL) has kept all that it acknowledged, and nothing half. */
@Tag("property")
class KilledTest {
    private static final int MOMENTS = Boolean.getBoolean("stillroom.long") ? 50 : 5;

    @TempDir
    private Path dir;

    @TestFactory
    Stream<DynamicTest> nothingAcknowledgedIsLost() {
        return IntStream.range(0, MOMENTS)
                .mapToObj(seed -> DynamicTest.dynamicTest("killed, seed " + seed, () -> {
                    DataFolder folder = new DataFolder(dir.resolve("studio" + seed));
                    List<String> acknowledged = killed(folder, seed, "store");
                    assertThat(acknowledged).hasSizeGreaterThan(1);
                    try (Store store = Store.open(folder)) {
                        assertThat(lost(store, acknowledged)).isEmpty();
                        assertNothingIsHalf(store);
                    }
                }));
    }

    @Test
    void aStoreThatAcknowledgesBeforeItCommitsIsFound() throws Exception {
        DataFolder folder = new DataFolder(dir.resolve("late"));
        List<String> acknowledged = killed(folder, 1, "late");
        try (Store store = Store.open(folder)) {
            assertThat(lost(store, acknowledged)).isNotEmpty();
        }
    }

    /** Starts a busy studio, kills it at a moment that the seed sets, and returns what it had acknowledged by then. */
    private List<String> killed(DataFolder folder, int seed, String kind) throws Exception {
        Path errors = dir.resolve("errors" + kind + seed);
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        BusyStudio.class.getName(),
                        folder.path().toString(),
                        String.valueOf(seed),
                        kind)
                .redirectError(errors.toFile())
                .start();
        try (BufferedReader said = process.inputReader(StandardCharsets.UTF_8)) {
            String first = said.readLine();
            assertThat(first)
                    .as("what it said, and: %s", Files.readString(errors))
                    .isNotNull();
            Thread killer = killer(process, 20 + new Random(seed).nextInt(400));
            List<String> acknowledged = whole(said, first);
            killer.join();
            assertThat(process.waitFor(10, TimeUnit.SECONDS)).isTrue();
            assertThat(process.exitValue()).isEqualTo(128 + 9);
            return acknowledged;
        } finally {
            process.destroyForcibly();
        }
    }

    private static Thread killer(Process process, int milliseconds) {
        Thread killer = new Thread(() -> {
            try {
                Thread.sleep(milliseconds);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            process.toHandle().destroyForcibly(); // by its handle, so that what it has said can still be read
        });
        killer.start();
        return killer;
    }

    /** Reads to the end; a line that was cut off is no acknowledgement. */
    private static List<String> whole(BufferedReader said, String first) throws IOException {
        StringBuilder all = new StringBuilder(first).append('\n');
        char[] part = new char[8192];
        for (int read = said.read(part); read >= 0; read = said.read(part)) {
            all.append(part, 0, read);
        }
        return all.substring(0, all.lastIndexOf("\n")).lines().toList();
    }

    private static List<String> lost(Store store, List<String> acknowledged) {
        List<String> lost = new ArrayList<>();
        for (String line : acknowledged) {
            String[] words = line.split(" ", -1);
            boolean there = switch (words[0]) {
                case "make" -> store.makes().make(words[1]).isPresent();
                case "revision" -> {
                    int number = Integer.parseInt(words[2]);
                    yield store.recipes()
                            .revision(words[1], number)
                            .filter(revision -> revision.text().equals(BusyStudio.text(number)))
                            .isPresent();
                }
                case "move" -> told(store, "lot:" + words[1], words[2]);
                case "entry" -> told(store, "make:" + words[1], words[2]);
                case "batch" -> told(store, "batch:" + words[1], words[2]);
                default -> throw new UncheckedIOException(new IOException("what is \"" + line + "\"?"));
            };
            if (!there) {
                lost.add(line);
            }
        }
        return lost;
    }

    private static boolean told(Store store, String subject, String id) {
        return store.history()
                .entry(Long.parseLong(id))
                .filter(entry -> entry.subject().equals(subject))
                .isPresent();
    }

    /** Whatever the history tells of was done, and whatever was done is told of. */
    private static void assertNothingIsHalf(Store store) {
        List<HistoryEntry> history = store.history().latest(Long.MAX_VALUE, Integer.MAX_VALUE);
        for (RecipeHead recipe : store.recipes().heads(false)) {
            assertThat(store.recipes().revisions(recipe.id()))
                    .hasSize((int) count(history, "recipe.saved"))
                    .hasSize(recipe.revision());
        }
        for (Lot lot : store.lots().all()) {
            assertThat(lot.left()).isEqualTo(1e6 - count(history, "lot.moved"));
        }
    }

    private static long count(List<HistoryEntry> history, String kind) {
        return history.stream().filter(entry -> entry.kind().equals(kind)).count();
    }
}
