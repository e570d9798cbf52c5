package org.stillroom.core.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Opens the tables that ship with the program; the one place in the core that reads a resource. */
public final class Tables {
    private Tables() {}

    /**
     * Reads one shipped table.
     *
     * @param name its path below this package, such as "liquid/freezing_depression.csv"
     */
    public static Table open(String name) {
        try (InputStream in = Tables.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program was built without its table " + name);
            }
            return Table.of(name, List.of(new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)));
        } catch (IOException e) {
            throw new UncheckedIOException("the shipped table " + name + " cannot be read", e);
        }
    }
}
