package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.Kitchen;
import org.stillroom.studio.web.api.ApiRoom;
import org.stillroom.studio.web.frame.StudioServer;

/** Commands in processes of their own while the studio is open: all that either acknowledged is there, once. */
@Tag("property")
class BesideTest {
    private static final int TIMES = Boolean.getBoolean("stillroom.long") ? 100 : 10;

    @TempDir
    private Path dir;

    private Kitchen kitchen;
    private StudioServer server;
    private Batch batch;
    private Lot water;
    private final HttpClient browser = HttpClient.newHttpClient();

    @BeforeEach
    void open() {
        kitchen = new Kitchen(dir.resolve("data"));
        water = kitchen.lot("spring water", "water", Map.of(), 900.0, "ml");
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        kitchen.finishAsAsked(make);
        batch = new FinishMake(kitchen.store).answer(kitchen.state(make), Kitchen.request());
        server = StudioServer.start(
                new StudioServer.Settings(0, "127.0.0.1"),
                kitchen.store,
                List.of(new ApiRoom(kitchen.store)),
                new FaultLog(dir.resolve("log")));
    }

    @AfterEach
    void close() {
        server.close();
    }

    private Process commands(int times, String... lines) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                BusyCommands.class.getName(),
                "" + times));
        for (String line : lines) {
            command.add(line + " --data " + dir.resolve("data"));
        }
        return new ProcessBuilder(command)
                .redirectError(Files.createTempFile(dir, "errors", ".txt").toFile())
                .start();
    }

    private static List<String> said(Process process) throws Exception {
        try (BufferedReader reader = process.inputReader(StandardCharsets.UTF_8)) {
            List<String> lines = reader.lines().toList();
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
            return lines;
        }
    }

    private boolean log(String body) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(server.url() + "api/v1/batches/" + batch.id() + "/log"))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        return browser.send(request, HttpResponse.BodyHandlers.ofString()).statusCode() == 200;
    }

    /** Returns how many entries of a kind hold a text. */
    private long kept(String text) {
        return kitchen.store.batches().log().stream()
                .map(HistoryEntry::body)
                .filter(body -> body.contains(text))
                .count();
    }

    @Test
    void whatPagesAndCommandsWriteAtOnceIsAllThereOnce() throws Exception {
        Process one = commands(TIMES, "log 1 noted --note one-#-", "log 1 added --what spring~water --amount 1ml");
        Process other = commands(TIMES, "log 1 noted --note other-#-", "batches 1");
        int pages = 0;
        while (one.isAlive() || other.isAlive()) {
            assertThat(log("{\"act\": \"noted\", \"note\": \"page-" + pages + "-\"}"))
                    .isTrue();
            assertThat(log("{\"act\": \"added\", \"what\": \"" + water.id() + "\", \"amount\": \"0.1 ml\"}"))
                    .isTrue();
            pages++;
        }
        assertThat(said(one)).hasSize(2 * TIMES).allMatch(line -> line.startsWith("done"));
        assertThat(said(other)).hasSize(2 * TIMES).allMatch(line -> line.startsWith("done"));
        for (int i = 0; i < TIMES; i++) {
            assertThat(kept("one-" + i + "-")).isEqualTo(1);
            assertThat(kept("other-" + i + "-")).isEqualTo(1);
        }
        for (int i = 0; i < pages; i++) {
            assertThat(kept("page-" + i + "-")).isEqualTo(1);
        }
        assertThat(kitchen.store.lots().lot(water.id()).orElseThrow().left())
                .isCloseTo(900.0 - TIMES - 0.1 * pages, within(1e-6));
        assertThat(kitchen.store.batches().log()).hasSize(3 * TIMES + 2 * pages);
    }

    @Test
    void aCommandThatIsKilledLeavesWhatItAcknowledged() throws Exception {
        Process busy = commands(1000, "log 1 noted --note busy-#-");
        List<String> done = new ArrayList<>();
        try (BufferedReader reader = busy.inputReader(StandardCharsets.UTF_8)) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                done.add(line);
                if (done.size() == 5) {
                    busy.destroyForcibly();
                    break;
                }
            }
        }
        assertThat(busy.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(done).hasSize(5).allMatch(line -> line.startsWith("done"));
        for (int i = 0; i < 5; i++) {
            assertThat(kept("busy-" + i + "-")).isEqualTo(1);
        }
        assertThat(log("{\"act\": \"noted\", \"note\": \"after\"}")).isTrue();
    }

    @Test
    void aCommandReadsWhatAPageHasJustWritten() throws Exception {
        assertThat(log("{\"act\": \"noted\", \"note\": \"just now\"}")).isTrue();
        assertThat(said(commands(1, "batches 1"))).allMatch(line -> line.startsWith("done"));
        assertThat(Desk.type("batches 1 --data " + dir.resolve("data")).out()).contains("just now");
        assertThat(Desk.type("rest --data " + dir.resolve("data")).exit()).isZero();
    }
}
