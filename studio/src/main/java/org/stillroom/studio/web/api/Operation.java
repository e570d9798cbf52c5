package org.stillroom.studio.web.api;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Something that other programs can ask for: how it is answered and how it is described are one. */
final class Operation {
    private static final Pattern PART_OF_PATH = Pattern.compile("\\{(\\w+)}");

    private final Method method;
    private final String path;
    private final String id;
    private final String summary;
    private final Handler handler;
    private Map<String, Object> takes = Map.of();
    private Map<String, Object> answers = Map.of();
    private String answerType = Reply.JSON;
    private String example = "";
    private @Nullable String versionKey;
    private final List<Query> queries = new ArrayList<>();

    /** The methods in use. */
    enum Method {
        GET,
        POST,
        PUT,
        DELETE
    }

    /** A parameter of the query. */
    record Query(String name, String description) {}

    /** Answers a call. */
    interface Handler {
        Reply answer(Call call) throws Exception;
    }

    private Operation(Method method, String path, String id, String summary, Handler handler) {
        this.method = method;
        this.path = path;
        this.id = id;
        this.summary = summary;
        this.handler = handler;
    }

    /**
     * Makes an operation.
     *
     * @param path below /api/v1, with its variable parts in braces
     * @param id a name for it, in one word
     */
    static Operation of(Method method, String path, String id, String summary, Handler handler) {
        return new Operation(method, path, id, summary, handler);
    }

    /** Says what body it takes, and shows one. */
    Operation takes(Map<String, Object> schema, String shown) {
        takes = schema;
        example = shown;
        return this;
    }

    Operation answers(Map<String, Object> schema) {
        answers = schema;
        return this;
    }

    /** Says that it answers with another type than JSON. */
    Operation answersText(String type) {
        answerType = type;
        answers = Schemas.text("");
        return this;
    }

    /** Says that it changes something of which there are versions. */
    Operation basedOn(String key) {
        versionKey = key;
        return this;
    }

    Operation query(String name, String description) {
        queries.add(new Query(name, description));
        return this;
    }

    Method method() {
        return method;
    }

    String path() {
        return path;
    }

    String id() {
        return id;
    }

    /** Returns the part of the studio that it belongs to. */
    String tag() {
        return Arrays.asList(path.split("/", -1)).get(1);
    }

    String summary() {
        return summary;
    }

    Handler handler() {
        return handler;
    }

    Map<String, Object> takes() {
        return takes;
    }

    Map<String, Object> answers() {
        return answers;
    }

    String answerType() {
        return answerType;
    }

    String example() {
        return example;
    }

    @Nullable
    String versionKey() {
        return versionKey;
    }

    List<Query> queries() {
        return Collections.unmodifiableList(queries);
    }

    List<String> partsOfPath() {
        List<String> parts = new ArrayList<>();
        Matcher matcher = PART_OF_PATH.matcher(path);
        while (matcher.find()) {
            parts.add(matcher.group(1));
        }
        return parts;
    }

    /** Returns whether it changes what is kept; a question does not, also when it is sent by POST. */
    boolean changes() {
        return method != Method.GET && !takes.containsKey("x-question");
    }
}
