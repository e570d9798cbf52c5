package org.stillroom.studio.web.frame;

import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import io.javalin.http.UnauthorizedResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import org.stillroom.studio.store.Store;

/**
 * Who may come in: on loopback everybody, since only this machine can knock; on a network whoever knows the passphrase.
 *
 * <p>The passphrase is kept as an argon2id hash (19 MiB, 2 passes, 1 lane: OWASP Password Storage Cheat Sheet, 2024), the
 * session as the hash of a random token.
 */
final class Entrance {
    private static final String COOKIE = "stillroom-session";
    private static final Duration SESSION = Duration.ofDays(30);
    private static final Argon2Function ARGON2 = Argon2Function.getInstance(19_456, 2, 1, 32, Argon2.ID);

    private final Store store;
    private final boolean locked;
    private final Patience patience = new Patience(Clock.systemUTC());

    /**
     * Makes the entrance.
     *
     * @param locked whether the passphrase is asked for
     */
    Entrance(Store store, boolean locked) {
        this.store = store;
        this.locked = locked;
    }

    /** Returns what is kept of a passphrase. */
    static String hashed(String passphrase) {
        return Password.hash(passphrase).addRandomSalt(16).with(ARGON2).getResult();
    }

    /** Lets a request pass, or sends it to the page where the passphrase is asked for. */
    void look(Context context) {
        boolean open = context.path().equals("/sign-in")
                || context.path().startsWith("/assets/")
                || context.path().startsWith("/calendar/") // its address holds a token of its own
                || context.path().equals("/health");
        if (!locked || open || hasSession(context)) {
            return;
        }
        if (context.path().startsWith("/api/")) {
            throw new UnauthorizedResponse(
                    "Sign in on the page /sign-in first; the answer sets a cookie to send along.");
        }
        if (context.header(Doors.PART) != null) { // a script would take the page for the answer to what it sent
            throw new UnauthorizedResponse();
        }
        context.redirect("/sign-in", HttpStatus.SEE_OTHER);
        context.skipRemainingHandlers();
    }

    boolean hasSession(Context context) {
        String token = context.cookie(COOKIE);
        return locked && token != null && store.sessions().isOn(Tokens.hash(token), Instant.now());
    }

    /** Registers the page where the passphrase is asked for. */
    void routes(Doors doors) {
        doors.get("/sign-in", visit -> show(visit, ""))
                .post("/sign-in", this::signIn)
                .post("/sign-out", this::signOut);
    }

    private static void show(Visit visit, String message) {
        visit.page(visit.words().say("frame.signIn"), "").show("frame/signin.jte", Map.of("message", message));
    }

    private void signIn(Visit visit) {
        String from = visit.context().ip();
        Duration wait = patience.wait(from);
        if (!wait.isZero()) {
            visit.context().status(HttpStatus.TOO_MANY_REQUESTS).header("Retry-After", "" + wait.toSeconds());
            show(visit, visit.words().say("frame.signInWait", "" + wait.toSeconds()));
            return;
        }
        String hash = store.settings().value("passphrase").orElse("");
        boolean right = !hash.isEmpty()
                && Password.check(visit.field("passphrase"), hash).with(Argon2Function.getInstanceFromHash(hash));
        if (!right) {
            patience.missed(from);
            visit.context().status(HttpStatus.UNAUTHORIZED);
            show(visit, visit.words().say("frame.signInWrong"));
            return;
        }
        patience.forget(from);
        begin(visit.context());
        visit.goOn("/");
    }

    private void begin(Context context) {
        String token = Tokens.random();
        store.sessions().begin(Tokens.hash(token), Instant.now().plus(SESSION));
        Cookie cookie = new Cookie(
                COOKIE, token, "/", (int) SESSION.toSeconds(), context.scheme().equals("https"), true);
        cookie.setSameSite(SameSite.STRICT);
        context.cookie(cookie);
    }

    private void signOut(Visit visit) {
        String token = visit.context().cookie(COOKIE);
        if (token != null) {
            store.sessions().end(Tokens.hash(token));
            visit.context().removeCookie(COOKIE, "/");
        }
        visit.goOn("/sign-in");
    }
}
