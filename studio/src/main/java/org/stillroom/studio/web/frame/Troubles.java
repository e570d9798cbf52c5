package org.stillroom.studio.web.frame;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.ThreadLocalRandom;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.SettledException;

/** Turns what goes wrong into pages that say what to do; the details of a fault go to the log, under an id that is shown. */
final class Troubles {
    private static final Set<HttpStatus> WORDED = EnumSet.of(
            HttpStatus.BAD_REQUEST,
            HttpStatus.UNAUTHORIZED,
            HttpStatus.FORBIDDEN,
            HttpStatus.NOT_FOUND,
            HttpStatus.METHOD_NOT_ALLOWED,
            HttpStatus.CONFLICT,
            HttpStatus.CONTENT_TOO_LARGE);

    private final Frame frame;
    private final FaultLog log;

    Troubles(Frame frame, FaultLog log) {
        this.frame = frame;
        this.log = log;
    }

    void routes(RoutesConfig routes) {
        routes.exception(HttpResponseException.class, this::refused);
        routes.exception(MissingException.class, (none, context) -> tell(context, HttpStatus.NOT_FOUND, ""));
        routes.exception(SettledException.class, (late, context) -> tell(context, HttpStatus.CONFLICT, ""));
        routes.exception(Exception.class, this::failed);
        routes.error(404, "*", context -> {
            if (context.contentType() == null || "".equals(context.result())) {
                tell(context, HttpStatus.NOT_FOUND, "");
            }
        });
    }

    private void refused(HttpResponseException refusal, Context context) {
        String message = refusal.getMessage() == null ? "" : refusal.getMessage();
        tell(context, HttpStatus.forStatus(refusal.getStatus()), message);
    }

    /** Tells readers in their language what a status means, and programs what was said with it. */
    private void tell(Context context, HttpStatus status, String said) {
        Visit visit = frame.visit(context);
        String key = "frame.status." + (WORDED.contains(status) ? status : HttpStatus.BAD_REQUEST).getCode();
        String message = visit.words().say(key);
        if (context.path().startsWith("/api/")) {
            context.status(status)
                    .contentType("application/json")
                    .result(FaultAnswer.of(said.isEmpty() ? message : said, status));
        } else {
            visit.refuse(status, message, visit.words().say(key + ".remedy"));
        }
    }

    private void failed(Exception fault, Context context) {
        String id =
                String.format(Locale.ROOT, "%08x", ThreadLocalRandom.current().nextInt());
        try {
            log.write(id, "studio", List.of(context.method().name(), context.path()), fault);
        } catch (IOException | RuntimeException unwritten) {
            fault.addSuppressed(unwritten);
            System.err.println(FaultLog.details(fault));
        }
        Visit visit = frame.visit(context);
        String message = visit.words().say("frame.fault", id);
        if (context.path().startsWith("/api/")) {
            context.status(500)
                    .contentType("application/json")
                    .result(FaultAnswer.of(message, HttpStatus.INTERNAL_SERVER_ERROR));
        } else {
            visit.refuse(
                    HttpStatus.INTERNAL_SERVER_ERROR,
                    message,
                    visit.words().say("frame.faultRemedy", log.file().toString()));
        }
    }
}
