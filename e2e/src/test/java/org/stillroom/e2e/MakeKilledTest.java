package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Store;

/** A studio that is killed while somebody makes: everything that it has acknowledged is there afterwards, once. */
class MakeKilledTest {
    private static final int MOMENTS = Boolean.getBoolean("stillroom.long") ? 50 : 5;
    private static final long SEED = 7;
    private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" content=\"([^\"]+)\"");

    @TempDir
    Path dir;

    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    @Test
    void nothingAcknowledgedIsLost() throws Exception {
        Path data = dir.resolve("data");
        MakingStudio.stock(data);
        Random random = new Random(SEED);
        List<String> acknowledged = new ArrayList<>();
        String make = null;
        for (int moment = 0; moment < MOMENTS; moment++) {
            try (OpenStudio studio = OpenStudio.on(data)) {
                String token = token(studio);
                make = make == null ? begun(studio, token) : make;
                int notes = 1 + random.nextInt(6);
                acknowledged.addAll(notesUntilKilled(studio, token, make, notes, random.nextInt(40)));
            }
            assertThat(kept(data, make))
                    .as("seed %d, moment %d", SEED, moment)
                    .containsAll(acknowledged)
                    .doesNotHaveDuplicates();
        }
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(MOMENTS);
    }

    /** Kills the studio so many milliseconds after it has acknowledged so many notes, while more are on their way. */
    private List<String> notesUntilKilled(OpenStudio studio, String token, String make, int notes, int milliseconds)
            throws InterruptedException {
        List<String> acknowledged = new CopyOnWriteArrayList<>();
        Thread writing = new Thread(() -> {
            try {
                while (true) {
                    String note = UUID.randomUUID().toString();
                    int status = post(studio, "/make/" + make + "/note", token, note, "typed=" + note)
                            .statusCode();
                    if (status != 303) {
                        throw new IOException("a note was answered with " + status);
                    }
                    acknowledged.add(note);
                }
            } catch (IOException | InterruptedException killed) {
                Thread.currentThread().interrupt();
            }
        });
        writing.start();
        while (acknowledged.size() < notes && writing.isAlive()) {
            TimeUnit.MILLISECONDS.sleep(1);
        }
        TimeUnit.MILLISECONDS.sleep(milliseconds);
        studio.kill();
        writing.join();
        return acknowledged;
    }

    private static List<String> kept(Path data, String make) {
        try (Store store = Store.open(new DataFolder(data))) {
            return store.makes().entries(make).stream()
                    .filter(entry -> entry.kind().equals("note"))
                    .map(HistoryEntry::body)
                    .map(body -> body.replaceFirst(".*\"typed\":\\s*\"([^\"]+)\".*", "$1"))
                    .toList();
        }
    }

    private String token(OpenStudio studio) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(studio.page("/make")).build();
        String page = client.send(request, HttpResponse.BodyHandlers.ofString()).body();
        Matcher found = TOKEN.matcher(page);
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    private String begun(OpenStudio studio, String token) throws IOException, InterruptedException {
        HttpRequest list = HttpRequest.newBuilder(studio.page("/make")).build();
        String page = client.send(list, HttpResponse.BodyHandlers.ofString()).body();
        Matcher recipe = Pattern.compile("recipe=([a-z0-9]+)\"><b>Bay leaf").matcher(page);
        assertThat(recipe.find()).isTrue();
        String to = post(studio, "/make/begin", token, UUID.randomUUID().toString(), "recipe=" + recipe.group(1))
                .headers()
                .firstValue("Location")
                .orElseThrow();
        return URI.create(to).getPath().substring("/make/".length());
    }

    private HttpResponse<String> post(OpenStudio studio, String path, String token, String request, String field)
            throws IOException, InterruptedException {
        String body = "token=" + URLEncoder.encode(token, StandardCharsets.UTF_8) + "&request=" + request + "&" + field;
        HttpRequest post = HttpRequest.newBuilder(studio.page(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        return client.send(post, HttpResponse.BodyHandlers.ofString());
    }
}
