package org.stillroom.studio.web.frame;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.net.URI;
import org.jspecify.annotations.Nullable;

/** Stands at the door of every request: whom it is addressed to, where a change comes from, what a page may load. */
final class Guard {
    private static final String POLICY =
            "default-src 'self'; object-src 'none'; base-uri 'none'; frame-ancestors 'none';" + " form-action 'self'";

    private final boolean loopbackOnly;

    Guard(boolean loopbackOnly) {
        this.loopbackOnly = loopbackOnly;
    }

    /** Looks at a request before anything answers it. */
    void look(Context context) {
        context.header("Content-Security-Policy", POLICY)
                .header("X-Content-Type-Options", "nosniff")
                .header("Referrer-Policy", "same-origin")
                .header("Cross-Origin-Opener-Policy", "same-origin")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                .header("Link", "</api/v1/openapi.json>; rel=\"service-desc\"")
                .header("Cache-Control", "no-store");
        if (loopbackOnly && !isLoopbackName(context.host())) {
            throw new ForbiddenResponse("This studio answers to localhost alone.");
        }
        if (!isReading(context)) {
            refuseFromElsewhere(context);
        }
    }

    private static boolean isReading(Context context) {
        return switch (context.method().name()) {
            case "GET", "HEAD", "OPTIONS" -> true;
            default -> false;
        };
    }

    /** A name that somebody pointed at this machine (DNS rebinding) is not ours. */
    private static boolean isLoopbackName(@Nullable String host) {
        if (host == null) {
            return false;
        }
        String name = host.startsWith("[") ? host.substring(0, host.indexOf(']') + 1) : host.split(":", -1)[0];
        return name.equals("localhost") || name.equals("127.0.0.1") || name.equals("[::1]");
    }

    /** Browsers say where a change comes from; one of another site is refused, and every change carries the token. */
    private static void refuseFromElsewhere(Context context) {
        String site = context.header("Sec-Fetch-Site");
        String origin = context.header("Origin");
        boolean elsewhere = (site != null && !site.equals("same-origin") && !site.equals("none"))
                || (origin != null && !isOwn(origin, context.host()));
        boolean byProgram = context.path().startsWith("/api/") && !FormToken.isBrowser(context);
        if (elsewhere || !(byProgram || FormToken.isCarriedBy(context))) {
            throw new ForbiddenResponse(
                    "This change does not come from a page of this studio. Load the page again, then repeat it.");
        }
    }

    private static boolean isOwn(String origin, @Nullable String host) {
        try {
            return host != null && host.equals(URI.create(origin).getAuthority());
        } catch (IllegalArgumentException noOrigin) {
            return false;
        }
    }
}
