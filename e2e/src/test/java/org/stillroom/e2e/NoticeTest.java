package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** NOTICE names every library that Stillroom is packaged with, and no other. */
class NoticeTest {
    @Test
    void everyPackagedLibraryIsNamed() throws IOException {
        assertThat(unnamed(packaged(), named())).isEmpty();
    }

    @Test
    void everyNamedLibraryIsPackaged() throws IOException {
        List<String> libraries = packaged();
        assertThat(named()).allMatch(name -> libraries.stream().anyMatch(library -> library.startsWith(name)));
    }

    @Test
    void aLibraryWithoutANoticeIsNoticed() throws IOException {
        assertThat(unnamed(List.of("picocli-4.7.7.jar", "surprise-1.0.jar"), named()))
                .containsExactly("surprise-1.0.jar");
    }

    private static List<String> unnamed(List<String> libraries, List<String> names) {
        List<String> left = new ArrayList<>(libraries);
        left.removeIf(library -> names.stream().anyMatch(library::startsWith));
        return left;
    }

    private static List<String> packaged() throws IOException {
        try (Stream<Path> files = Files.list(Program.jar().resolveSibling("lib"))) {
            List<String> libraries = files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith("stillroom-"))
                    .sorted()
                    .toList();
            assertThat(libraries).isNotEmpty();
            return libraries;
        }
    }

    /** Returns the beginnings of file names in the first column of the table. */
    private static List<String> named() throws IOException {
        List<String> names = new ArrayList<>();
        for (String line : Files.readAllLines(Program.root().resolve("NOTICE"))) {
            int star = line.indexOf("-* ");
            if (star > 0) {
                names.add(line.substring(0, star + 1));
            }
        }
        return names;
    }
}
