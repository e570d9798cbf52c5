package org.stillroom.studio.cli;

/** How a run ended, as the code that scripts see. */
public enum Exit {
    /** What was asked is done. */
    DONE(0),
    /** The target cannot be reached, or a rule forbids it. */
    OUT_OF_REACH(1),
    /** What was typed cannot be understood or is impossible. */
    WRONG_INPUT(2),
    /** A file or a name that was asked for is not there. */
    NOT_FOUND(3),
    /** Stillroom itself failed; the log has the details under the id that was shown. */
    FAULT(70);

    private final int code;

    Exit(int code) {
        this.code = code;
    }

    public int code() {
        return code;
    }
}
