package org.stillroom.studio.web.frame;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;

/**
 * A token that every change carries, so that a page of somewhere else cannot make a browser send one.
 *
 * <p>It stands in a cookie that other sites cannot make the browser send (SameSite=Strict) and in every form; both have to be
 * the same.
 */
final class FormToken {
    static final String FIELD = "token";
    static final String HEADER = "X-Form-Token";
    private static final String COOKIE = "stillroom-form";
    private static final String ATTRIBUTE = "stillroom.form-token";
    private static final int YEAR = 365 * 24 * 3600;

    private FormToken() {}

    /** Returns the token of this browser, giving it one where it has none. */
    static String of(Context context) {
        String given = context.attribute(ATTRIBUTE);
        if (given != null) {
            return given;
        }
        String token = context.cookie(COOKIE);
        if (token == null || token.length() < 20) {
            token = Tokens.random();
            Cookie cookie =
                    new Cookie(COOKIE, token, "/", YEAR, context.scheme().equals("https"), true);
            cookie.setSameSite(SameSite.STRICT);
            context.cookie(cookie);
        }
        context.attribute(ATTRIBUTE, token);
        return token;
    }

    /** Returns whether a change carries the token of its browser. */
    static boolean isCarriedBy(Context context) {
        String cookie = context.cookie(COOKIE);
        String header = context.header(HEADER);
        String sent = header == null ? context.formParam(FIELD) : header;
        return cookie != null && sent != null && Tokens.same(cookie, sent);
    }

    /** Returns whether the request comes from a browser that has been here: other programs have no cookie of ours. */
    static boolean isBrowser(Context context) {
        return context.cookie(COOKIE) != null
                || context.header("Sec-Fetch-Site") != null
                || context.header("Origin") != null;
    }
}
