package org.stillroom.studio.web.frame;

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
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;

/** Reads pages and sends forms without a script, over real HTTP, in a studio that is open for nobody else. */
public final class Guest implements AutoCloseable {
    private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" content=\"([^\"]+)\"");

    private final Store store;
    private final StudioServer server;
    private final HttpClient browser =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    private String token = "";

    /**
     * Opens a studio with one room.
     *
     * @param dir where it may keep its data
     */
    public Guest(Path dir, Function<Store, Room> room) {
        this(Store.open(new DataFolder(dir.resolve("data"))), dir, room);
    }

    /** Opens one on a store that is there. */
    public Guest(Store store, Path dir, Function<Store, Room> room) {
        this.store = store;
        server = StudioServer.start(
                new StudioServer.Settings(0, "127.0.0.1"),
                store,
                List.of(room.apply(store)),
                new FaultLog(dir.resolve("log")));
    }

    public Store store() {
        return store;
    }

    public String token() {
        return token;
    }

    public URI address(String path) {
        return URI.create(server.url()).resolve(path);
    }

    public HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return browser.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    public HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return get(path, "en");
    }

    public HttpResponse<String> get(String path, String language) throws IOException, InterruptedException {
        HttpResponse<String> answer = send(HttpRequest.newBuilder(address(path)).header("Accept-Language", language));
        Matcher found = TOKEN.matcher(answer.body());
        token = found.find() ? found.group(1) : token;
        return answer;
    }

    /** Returns a page that there has to be. */
    public String page(String path) throws IOException, InterruptedException {
        return page(path, "en");
    }

    public String page(String path, String language) throws IOException, InterruptedException {
        HttpResponse<String> answer = get(path, language);
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer.body();
    }

    /** Sends a form with names and texts in turn, as from a page that was read before. */
    public HttpResponse<String> post(String path, String... pairs) throws IOException, InterruptedException {
        List<String> fields = new ArrayList<>(List.of(field("token", token), field("request", "" + UUID.randomUUID())));
        for (int i = 0; i < pairs.length; i += 2) {
            fields.add(field(pairs[i], pairs[i + 1]));
        }
        return send(HttpRequest.newBuilder(address(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Accept-Language", "en")
                .POST(HttpRequest.BodyPublishers.ofString(String.join("&", fields))));
    }

    /** Sends a form of these fields. */
    public HttpResponse<String> post(String path, Map<String, String> fields) throws IOException, InterruptedException {
        List<String> pairs = new ArrayList<>();
        fields.forEach((name, text) -> pairs.addAll(List.of(name, text)));
        return post(path, pairs.toArray(String[]::new));
    }

    /** Sends a form and goes on to where it leads. */
    public HttpResponse<String> goOn(String path, String... pairs) throws IOException, InterruptedException {
        HttpResponse<String> answer = post(path, pairs);
        return answer.statusCode() == 303
                ? get(answer.headers().firstValue("Location").orElseThrow())
                : answer;
    }

    /** Returns a field as it stands in an address or a form. */
    public static String field(String name, String text) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8) + "=" + URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.close();
    }
}
