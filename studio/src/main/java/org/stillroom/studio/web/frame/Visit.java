package org.stillroom.studio.web.frame;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.stillroom.studio.wording.Words;

/** One request to a page, with the words of its reader. */
public final class Visit {
    private final Context context;
    private final Frame frame;
    private final Words words;

    Visit(Context context, Frame frame, Words words) {
        this.context = context;
        this.frame = frame;
        this.words = words;
    }

    public Context context() {
        return context;
    }

    public Words words() {
        return words;
    }

    /** Returns a field of a form or of the address; empty when it was not sent. */
    public String field(String name) {
        String typed = context.formParam(name);
        String asked = typed == null ? context.queryParam(name) : typed;
        return asked == null ? "" : asked;
    }

    /** Returns a part of the path. */
    public String part(String name) {
        return context.pathParam(name);
    }

    /** Returns the name that whoever asks gave to this change, so that sending it twice does it once. */
    public String request() {
        String header = context.header("Idempotency-Key");
        String name = header == null ? field("request") : header;
        return name.isBlank() ? UUID.randomUUID().toString() : name;
    }

    /** Returns whether a script asks for a part of a page. */
    public boolean wantsPart() {
        return context.header(Doors.PART) != null;
    }

    /**
     * Begins a page.
     *
     * @param title as a reader sees it
     * @param room key of the room it belongs to
     */
    public Shown page(String title, String room) {
        return new Shown(title, room);
    }

    /** Shows a part of a page. */
    public void part(String template, Map<String, Object> model) {
        Map<String, Object> all = new HashMap<>(model);
        all.put("words", words);
        html(Templates.html(template, all));
    }

    /** Answers with a page as it stands; the charset is said, so that nobody has to guess it. */
    public void html(String page) {
        context.contentType("text/html; charset=utf-8").result(page);
    }

    /** Goes on to another page after a change; a script that wants a part loads its own page again. */
    public void goOn(String path) {
        if (wantsPart()) {
            context.status(HttpStatus.NO_CONTENT);
        } else {
            acknowledge();
            context.redirect(path, HttpStatus.SEE_OTHER);
        }
    }

    /** Tells the next page which change was done, so that it lets go of what it kept of it. */
    private void acknowledge() {
        String name = field("request");
        if (name.matches("[\\w-]{1,64}")) {
            Cookie done = new Cookie("stillroom-done", name, "/", 60, false, false);
            done.setSameSite(SameSite.STRICT);
            context.cookie(done);
        }
    }

    /** Refuses with a page that says why and what to do. */
    public void refuse(HttpStatus status, String message, String remedy) {
        context.status(status);
        page(words.say("frame.refused"), "").show("frame/refused.jte", Map.of("message", message, "remedy", remedy));
    }

    public void notFound() {
        refuse(HttpStatus.NOT_FOUND, words.say("frame.status.404"), words.say("frame.status.404.remedy"));
    }

    /** A page on its way to be shown. */
    public final class Shown {
        private final String title;
        private final String room;
        private final List<String> styles = new ArrayList<>();
        private final List<String> scripts = new ArrayList<>();

        private Shown(String title, String room) {
            this.title = title;
            this.room = room;
        }

        public Shown style(String sheet) {
            styles.add(sheet);
            return this;
        }

        public Shown script(String module) {
            scripts.add(module);
            return this;
        }

        /** Shows the page; the template's parameters are {@code frame} and those of the model. */
        public void show(String template, Map<String, Object> model) {
            Map<String, Object> all = new HashMap<>(model);
            all.put("frame", frame.of(context, words, title, room, styles, scripts));
            html(Templates.html(template, all));
        }
    }
}
