package org.stillroom.studio.web.frame;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Style sheets, scripts, fonts and drawings that ship with the program; browsers ask again and are told when nothing changed. */
final class Assets {
    private static final String OWN = "/org/stillroom/studio/web/assets/";
    private static final String CORE = "/org/stillroom/page/module/";
    private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.8/dist/htmx.min.js";

    private static final Map<String, String> TYPES = Map.of(
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml",
            "png", "image/png",
            "woff2", "font/woff2",
            "webmanifest", "application/manifest+json",
            "txt", "text/plain; charset=utf-8");

    private final Map<String, Optional<Asset>> known = new ConcurrentHashMap<>();

    @SuppressWarnings("ArrayRecordComponent") // bytes of a file, never compared
    private record Asset(byte[] bytes, String type, String tag) {}

    /** Answers with an asset, or with 404. */
    void answer(Context context) {
        Optional<Asset> found = known.computeIfAbsent(context.pathParam("name"), Assets::read);
        if (found.isEmpty()) {
            context.status(HttpStatus.NOT_FOUND).result("");
            return;
        }
        Asset asset = found.orElseThrow();
        context.header("Cache-Control", "no-cache").header("ETag", asset.tag());
        if (asset.tag().equals(context.header("If-None-Match"))) {
            context.status(HttpStatus.NOT_MODIFIED);
        } else {
            context.contentType(asset.type()).result(asset.bytes());
        }
    }

    private static Optional<Asset> read(String name) {
        String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
        if (type == null || name.contains("..")) {
            return Optional.empty();
        }
        try (InputStream in = Assets.class.getResourceAsStream(place(name))) {
            if (in == null) {
                return Optional.empty();
            }
            byte[] bytes = in.readAllBytes();
            return Optional.of(new Asset(bytes, type, "\"" + Tokens.hash(bytes).substring(0, 20) + "\""));
        } catch (IOException e) {
            throw new UncheckedIOException("the shipped " + name + " cannot be read", e);
        }
    }

    private static String place(String name) {
        return switch (name) {
            case "core.js" -> CORE + name;
            case "htmx.js" -> HTMX;
            default -> OWN + name;
        };
    }
}
