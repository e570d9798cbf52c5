package org.stillroom.studio.web.frame;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.concurrent.ThreadLocalRandom;
import org.stillroom.studio.faults.FaultLog;

/** Turns what goes wrong into pages that say what to do; the details of a fault go to the log, under an id that is shown. */
final class Troubles {
    private final Frame frame;
    private final FaultLog log;

    Troubles(Frame frame, FaultLog log) {
        this.frame = frame;
        this.log = log;
    }

    void routes(RoutesConfig routes) {
        routes.exception(HttpResponseException.class, this::refused);
        routes.exception(NoSuchElementException.class, (none, context) -> tell(context, HttpStatus.NOT_FOUND, none));
        routes.exception(IllegalStateException.class, (late, context) -> tell(context, HttpStatus.CONFLICT, late));
        routes.exception(Exception.class, this::failed);
        routes.error(404, "*", context -> {
            if (context.contentType() == null || "".equals(context.result())) {
                frame.visit(context).notFound();
            }
        });
    }

    private void refused(HttpResponseException refusal, Context context) {
        context.status(refusal.getStatus());
        Visit visit = frame.visit(context);
        if (refusal.getStatus() == HttpStatus.NOT_FOUND.getCode()) {
            visit.notFound();
        } else {
            tell(context, HttpStatus.forStatus(refusal.getStatus()), refusal);
        }
    }

    private void tell(Context context, HttpStatus status, Exception why) {
        String message = why.getMessage() == null ? status.getMessage() : why.getMessage();
        Visit visit = frame.visit(context);
        if (context.path().startsWith("/api/")) {
            context.status(status).contentType("application/json").result(FaultAnswer.of(message, status));
        } else {
            visit.refuse(status, message, visit.words().say("frame.goBack"));
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
