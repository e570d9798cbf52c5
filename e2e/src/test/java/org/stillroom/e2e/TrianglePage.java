package org.stillroom.e2e;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.recipe.Making;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.web.triangle.TriangleView;
import org.stillroom.studio.wording.Language;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/** A page with nothing but the triangle of a recipe, its amounts and its targets, on a server of its own. */
final class TrianglePage implements AutoCloseable {
    private static final String OWN = "/org/stillroom/studio/web/assets/";

    private final HttpServer server;
    private final Plan plan;

    TrianglePage(String recipe) {
        plan = plan(recipe);
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException noPort) {
            throw new UncheckedIOException(noPort);
        }
        server.createContext("/", this::answer);
        server.start();
    }

    URI address() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/");
    }

    Plan plan() {
        return plan;
    }

    @Override
    public void close() {
        server.stop(0);
    }

    /** Returns the plan of a recipe that can be planned. */
    static Plan plan(String recipe) {
        RecipeReading reading = new RecipeReader(OunceMeaning.US_FLUID).read(recipe);
        if (!(reading instanceof RecipeReading.Understood understood)) {
            throw new AssertionError(reading.toString());
        }
        Planning planning = Planner.plan(Making.alone(understood.recipe()));
        if (!(planning instanceof Planning.Planned planned)) {
            throw new AssertionError(planning.toString());
        }
        return planned.plan();
    }

    private void answer(HttpExchange exchange) throws IOException {
        String name = exchange.getRequestURI().getPath().substring(1);
        byte[] body = name.isEmpty() ? page().getBytes(StandardCharsets.UTF_8) : asset(name);
        String type = name.endsWith(".js") ? "text/javascript" : name.endsWith(".css") ? "text/css" : "text/html";
        exchange.getResponseHeaders().set("Content-Type", type + "; charset=utf-8");
        exchange.getResponseHeaders().set("Content-Security-Policy", "default-src 'self'");
        exchange.sendResponseHeaders(body.length == 0 ? 204 : 200, body.length == 0 ? -1 : body.length);
        exchange.getResponseBody().write(body);
        exchange.close();
    }

    private static byte[] asset(String name) throws IOException {
        if (name.equals("core.js")) {
            return BrowserCore.module();
        }
        try (InputStream in = TriangleView.class.getResourceAsStream(OWN + name)) {
            return in == null ? new byte[0] : in.readAllBytes();
        }
    }

    private String page() {
        StringOutput triangle = new StringOutput();
        TemplateEngine.createPrecompiled(
                        null, ContentType.Html, getClass().getClassLoader(), "org.stillroom.studio.web.pages")
                .render(
                        "compose/triangle.jte",
                        Map.of("triangle", TriangleView.of(plan, new Words(Language.ENGLISH, UnitSystem.METRIC))),
                        triangle);
        return "<!doctype html><html lang='en'><head><meta charset='utf-8'><title>Triangle</title>"
                + "<meta name='viewport' content='width=device-width, initial-scale=1'>"
                + "<link rel='icon' href='none.svg'><link rel='stylesheet' href='tokens.css'><link rel='stylesheet' href='face.css'>"
                + "<script type='module' src='triangle.js'></script></head><body><main><h1>Triangle</h1>"
                + field("strength", "28 %") + field("sugar", "180 g/L") + triangle + table() + "</main></body></html>";
    }

    private static String field(String target, String text) {
        return "<p><label>" + target + " <input data-target='" + target + "' value='" + text + "'></label></p>";
    }

    private String table() {
        StringBuilder table = new StringBuilder("<table class='amounts'><caption>Amounts</caption><tbody>");
        for (int i = 0; i < plan.lines().size(); i++) {
            table.append("<tr><th scope='row'>")
                    .append(plan.lines().get(i).name())
                    .append("</th>");
            cell(
                    table,
                    i + "' data-unit='g",
                    QuantityWords.fixed(plan.lines().get(i).grams(), 1));
            cell(table, i + "' data-unit='ml", plan.lines().get(i).millilitres().isPresent() ? "0.0" : "–");
            cell(table, i + "' data-unit='oz", "0.00");
            cell(
                    table,
                    i + "' data-unit='floz",
                    plan.lines().get(i).millilitres().isPresent() ? "0.00" : "–");
            table.append("<td data-dose='").append(i).append("' data-grams='0.05'></td></tr>");
        }
        cell(table.append("<tr><th scope='row'>Liqueur</th>"), "total' data-unit='g", "0");
        cell(table, "total' data-unit='ml", "0");
        return table.append("</tr></tbody></table>").toString();
    }

    private static void cell(StringBuilder table, String line, String text) {
        table.append("<td data-line='").append(line).append("'>").append(text).append("</td>");
    }
}
