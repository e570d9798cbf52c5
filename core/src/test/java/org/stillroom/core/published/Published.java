package org.stillroom.core.published;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.stillroom.core.reference.Table;

/** Opens the printed tables that figures are held against; none of them is computed with. */
public final class Published {
    private Published() {}

    public static List<Table.Row> rows(String name) {
        try (InputStream in = Published.class.getResourceAsStream(name)) {
            String text = new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
            return Table.of(name, List.of(text.split("\n", -1))).rows();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
