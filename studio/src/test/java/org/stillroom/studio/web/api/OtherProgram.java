package org.stillroom.studio.web.api;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.web.frame.StudioServer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A program that talks to a studio of its own over real HTTP. */
final class OtherProgram implements AutoCloseable {
    private static final JsonMapper JSON = new JsonMapper();

    private final Store store;
    private final StudioServer server;
    private final HttpClient client = HttpClient.newHttpClient();

    OtherProgram(Path dir) {
        store = Store.open(new DataFolder(dir.resolve("data")));
        server = StudioServer.start(
                new StudioServer.Settings(0, "127.0.0.1"),
                store,
                List.of(new ApiRoom(store)),
                new FaultLog(dir.resolve("log")));
    }

    /** What came back. */
    record Answer(int status, String body, HttpResponse<String> response) {
        JsonNode json() {
            return JSON.readTree(body);
        }

        String text(String key) {
            return json().get(key).asString();
        }

        /** Returns the first finding. */
        JsonNode finding() {
            return json().get("findings").get(0);
        }

        String header(String name) {
            return response.headers().firstValue(name).orElse("");
        }
    }

    Store store() {
        return store;
    }

    /** Asks for something; headers are names and values in turn. */
    Answer send(String method, String path, String body, String... headers) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server.url() + "api/v1" + path));
        if (body.isEmpty()) {
            request.method(method, HttpRequest.BodyPublishers.noBody());
        } else {
            request.header("Content-Type", "application/json")
                    .method(method, HttpRequest.BodyPublishers.ofString(body));
        }
        for (int i = 0; i + 1 < headers.length; i += 2) {
            request.setHeader(headers[i], headers[i + 1]);
        }
        HttpResponse<String> response = client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        return new Answer(response.statusCode(), response.body(), response);
    }

    Answer get(String path) throws IOException, InterruptedException {
        return send("GET", path, "");
    }

    Answer post(String path, String body, String... headers) throws IOException, InterruptedException {
        return send("POST", path, body, headers);
    }

    @Override
    public void close() {
        server.close();
    }
}
