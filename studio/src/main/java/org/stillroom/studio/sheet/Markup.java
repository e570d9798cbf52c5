package org.stillroom.studio.sheet;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Pattern;

/** Writes elements so that the result is well-formed as HTML and as XML, whatever text a person typed. */
final class Markup {
    /** A sentence ends before a capital letter. */
    private static final Pattern FURTHER_SENTENCES = Pattern.compile("(?<=[.!?])\\s+(?=\\p{Lu}).*", Pattern.DOTALL);

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();
    private final Saying saying;

    /** Writes as the program says it. */
    Markup() {
        this(Saying.ENGLISH);
    }

    Markup(Saying saying) {
        this.saying = saying;
    }

    /** Opens an element; attributes come as name and value in turn. */
    Markup open(String element, String... attributes) {
        start(element, attributes).append('>');
        open.push(element);
        return this;
    }

    Markup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** Adds what the sheet says, in its language. */
    Markup text(String text) {
        return told(Saying.SHEET, text);
    }

    /** Adds what a rule says, in the language of the sheet. */
    Markup told(String rule, String text) {
        return typed(saying.said(rule, text));
    }

    /** Adds the first sentence of what a rule says. */
    Markup toldFirst(String rule, String text) {
        return typed(FURTHER_SENTENCES.matcher(saying.said(rule, text)).replaceFirst(""));
    }

    /** Adds what a person typed, as it is. */
    Markup typed(String text) {
        escape(text);
        return this;
    }

    /** Returns what the sheet says in its language, for where it is no text of its own. */
    String said(String text) {
        return saying.said(Saying.SHEET, text);
    }

    /** Adds an element that holds text alone. */
    Markup element(String element, String text, String... attributes) {
        return open(element, attributes).text(text).close();
    }

    /** Adds an element that never has content, such as {@code meta}. */
    Markup empty(String element, String... attributes) {
        start(element, attributes).append(" />");
        return this;
    }

    /** Adds a style sheet, which HTML reads as it stands; it must hold nothing that XML would read otherwise. */
    Markup style(String css, String... attributes) {
        if (css.indexOf('<') >= 0 || css.indexOf('&') >= 0) {
            throw new IllegalArgumentException("a style sheet in a page holds neither < nor &");
        }
        start("style", attributes).append(">\n").append(css).append("</style>");
        return this;
    }

    private StringBuilder start(String element, String... attributes) {
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1]);
            out.append('"');
        }
        return out;
    }

    private void escape(String text) {
        text.codePoints().forEach(c -> {
            switch (c) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(isAllowed(c) ? c : 0xFFFD);
            }
        });
    }

    /** Returns whether XML 1.0 has this character. */
    private static boolean isAllowed(int c) {
        boolean control = c < 0x20 && c != '\t' && c != '\n' && c != '\r';
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        return !control && !surrogate && c != 0xFFFE && c != 0xFFFF;
    }

    /** Returns the text; every element must have been closed. */
    @Override
    public String toString() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return out.toString();
    }
}
