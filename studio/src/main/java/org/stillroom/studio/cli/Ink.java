package org.stillroom.studio.cli;

/** What a piece of text means, shown as colour or weight where the terminal can. */
public enum Ink {
    PLAIN(""),
    STRONG("1"),
    FAINT("2"),
    CAUTION("33"),
    STOP("31");

    private final String code;

    Ink(String code) {
        this.code = code;
    }

    String around(String text) {
        return code.isEmpty() ? text : "\u001b[" + code + "m" + text + "\u001b[0m";
    }
}
