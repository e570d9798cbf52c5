package org.stillroom.studio;

/** Starts Stillroom. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.out.println("stillroom");
    }
}
