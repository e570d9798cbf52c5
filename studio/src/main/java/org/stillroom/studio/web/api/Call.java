package org.stillroom.studio.web.api;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.web.frame.Visit;

/** One call of another program. */
final class Call {
    /** The largest body, bytes: that of the largest recipe file. */
    static final int MOST_BYTES = 1_000_000;

    private static final int LONGEST_REQUEST_NAME = 80;

    private final Visit visit;

    Call(Visit visit) {
        this.visit = visit;
    }

    /** Returns a part of the path. */
    String part(String name) {
        return visit.part(name);
    }

    /** Returns a whole number of the path. */
    long number(String name) {
        String text = part(name);
        if (!text.matches("\\d{1,18}")) {
            throw Refused.notFound("\"" + text + "\" is no number of a " + name + ".");
        }
        return Long.parseLong(text);
    }

    /** Returns a parameter of the query; empty when it was left out. */
    String query(String name) {
        String text = visit.context().queryParam(name);
        return text == null ? "" : text;
    }

    /** Returns the name of this wish, so that sending it twice does it once. */
    String request() {
        String name = visit.request();
        if (name.length() > LONGEST_REQUEST_NAME) {
            throw new Refused(
                    Refused.UNREADABLE,
                    "idempotency-key",
                    "Idempotency-Key",
                    "The name of the request has more than " + LONGEST_REQUEST_NAME + " characters.",
                    "Send a shorter one, such as a UUID.");
        }
        return name;
    }

    /** Returns the number that the change is based on: from If-Match, else from the body; refuses a change that says none. */
    int basedOn(Body body, String key) {
        Long said = body.number(key);
        body.refuseIfAnyWrong();
        String tag = visit.context().header("If-Match");
        if (tag != null && tag.strip().matches("\"\\d{1,9}\"")) {
            return Integer.parseInt(tag.strip().replace("\"", ""));
        }
        if (tag == null && said != null && said >= 0 && said <= Integer.MAX_VALUE) {
            return said.intValue();
        }
        throw new Refused(
                Refused.NO_STARTING_POINT,
                "based-on",
                key,
                "It is not said what the change is based on.",
                "Send the ETag that you read as If-Match, such as \"3\", or \"" + key + "\": 3.");
    }

    /** Reads the JSON that it brings. */
    Body body() throws IOException {
        String type = visit.context().contentType();
        if (type == null || !isJson(type)) {
            throw new Refused(
                    Refused.OTHER_TYPE,
                    "content-type",
                    "Content-Type",
                    "The body is to be JSON.",
                    "Send Content-Type: application/json.");
        }
        try (InputStream in = input()) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new Refused(
                        Refused.TOO_LARGE, "too-large", "", "The body has more than 1 MB.", "Send less at once.");
            }
            return Body.of(text(bytes));
        }
    }

    private InputStream input() {
        @Nullable InputStream in = visit.context().bodyInputStream();
        return in == null ? new ByteArrayInputStream(new byte[0]) : in;
    }

    private static boolean isJson(String type) {
        String plain = type.toLowerCase(Locale.ROOT);
        String kind = plain.contains(";") ? plain.substring(0, plain.indexOf(';')) : plain;
        return kind.strip().equals("application/json");
    }

    private static String text(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException noText) {
            throw new Refused(Refused.UNREADABLE, "encoding", "", "The body is not UTF-8 text.", "Send it as UTF-8.");
        }
    }
}
