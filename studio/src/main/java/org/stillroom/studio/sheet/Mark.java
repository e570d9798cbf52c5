package org.stillroom.studio.sheet;

import org.stillroom.core.reference.Severity;

/** The shape before a finding; the word beside it says the same. */
enum Mark {
    /** A dash: no judgement. */
    PLAIN("Note", "M2 9h16v2H2z"),
    /** A half-filled square: think before going on. */
    NEAR("Caution", "M.5.5h19v19H.5zM2.5 2.5v13.7L16.2 2.5z"),
    /** A full square with a bar: refused. */
    OVER("Stop", "M.5.5h19v19H.5zM4 8.6v2.8h12V8.6z");

    private final String word;
    private final String shape;

    Mark(String word, String shape) {
        this.word = word;
        this.shape = shape;
    }

    static Mark of(Severity severity) {
        return switch (severity) {
            case NOTE -> PLAIN;
            case CAUTION -> NEAR;
            case STOP -> OVER;
        };
    }

    String word() {
        return word;
    }

    void draw(Markup page) {
        page.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "mark",
                "width",
                "14",
                "height",
                "14",
                "viewBox",
                "0 0 20 20",
                "alt",
                "",
                "aria-hidden",
                "true");
        page.open("path", "d", shape, "fill", "#000000", "fill-rule", "evenodd").close();
        page.close();
    }
}
