package org.stillroom.bench;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** One maker with a page of Compose of their own: types a strength five times a second and waits for what comes of it. */
final class LoadMaker {
    private static final long PAUSE_MILLISECONDS = 200;
    private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" content=\"([^\"]+)\"");
    private static final Pattern FIELD =
            Pattern.compile("<input class=\"write[^\"]*\" id=\"f-[^\"]*\" name=\"([^\"]+)\" value=\"([^\"]*)\"");

    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    private final URI page;
    private final String token;
    private final Map<String, String> fields = new LinkedHashMap<>();
    private final Random random;

    /** How long an answer took, and whether it was the right one. */
    record Typed(double milliseconds, boolean right) {}

    private LoadMaker(URI address, int seed) throws IOException, InterruptedException {
        random = new Random(seed);
        String start = read(address.resolve("/compose/new"));
        token = found(TOKEN, start);
        HttpResponse<String> begun =
                post(address.resolve("/compose/new"), Map.of("generic", "spirit 96 %", "title", "Load " + seed));
        page = address.resolve(begun.headers().firstValue("Location").orElseThrow());
        Matcher field = FIELD.matcher(read(page));
        while (field.find()) {
            fields.put(field.group(1), field.group(2));
        }
        fields.put("based-on", "0");
    }

    static LoadMaker at(URI address, int seed) throws IOException, InterruptedException {
        return new LoadMaker(address, seed);
    }

    /** Types until a moment of {@link System#nanoTime()}. */
    List<Typed> typeUntil(long end) throws IOException, InterruptedException {
        List<Typed> all = new ArrayList<>();
        TimeUnit.MILLISECONDS.sleep(random.nextInt((int) PAUSE_MILLISECONDS));
        while (System.nanoTime() < end) {
            String strength = (15 + random.nextInt(30)) + "." + random.nextInt(10);
            fields.put("target.strength", strength + " %");
            long before = System.nanoTime();
            HttpResponse<String> answer = post(URI.create(page + "/live"), fields);
            double milliseconds = (System.nanoTime() - before) / 1e6;
            boolean right = answer.statusCode() == 200
                    && answer.body().contains("data-said=\"strength\" data-places=\"1\">" + strength + "<");
            all.add(new Typed(milliseconds, right));
            TimeUnit.MILLISECONDS.sleep(Math.max(0, PAUSE_MILLISECONDS - (long) milliseconds));
        }
        return all;
    }

    private String read(URI address) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString())
                .body();
    }

    private HttpResponse<String> post(URI address, Map<String, String> values)
            throws IOException, InterruptedException {
        String body = values.entrySet().stream()
                .map(each -> each.getKey() + "=" + URLEncoder.encode(each.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        HttpRequest request = HttpRequest.newBuilder(address)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("X-Form-Token", token)
                .POST(HttpRequest.BodyPublishers.ofString(body + "&request=" + UUID.randomUUID()))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    private static String found(Pattern pattern, String text) throws IOException {
        Matcher matcher = pattern.matcher(text);
        if (!matcher.find()) {
            throw new IOException("the page is not as it was: " + pattern);
        }
        return matcher.group(1);
    }
}
