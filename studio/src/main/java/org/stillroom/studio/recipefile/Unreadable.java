package org.stillroom.studio.recipefile;

/** Something after which the rest of a file cannot be made out. */
final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private final String rule;
    private final transient Place place;
    private final String remedy;

    Unreadable(String rule, Place place, String message, String remedy) {
        super(message, null, false, false);
        this.rule = rule;
        this.place = place;
        this.remedy = remedy;
    }

    void tell(Problems problems) {
        problems.add(rule, place, "", "cannot be read", String.valueOf(getMessage()), remedy);
    }
}
