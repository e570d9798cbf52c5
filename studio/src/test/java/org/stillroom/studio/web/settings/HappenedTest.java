package org.stillroom.studio.web.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.wording.Language;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/** The history in words. */
class HappenedTest {
    private static final Pattern KIND = Pattern.compile("\"((?:recipe|lot|instrument|photo|make)\\.[a-z-]+)\"");

    @TempDir
    Path dir;

    /** Returns every kind of entry that the store writes, by its source. */
    private static Set<String> kinds() throws IOException {
        Set<String> kinds = new TreeSet<>();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/org/stillroom/studio/store"))) {
            for (Path file : files.toList()) {
                Matcher found = KIND.matcher(Files.readString(file));
                while (found.find()) {
                    kinds.add(found.group(1));
                }
            }
        }
        return kinds;
    }

    @Test
    void everyKindThatTheStoreWritesIsSaidInWords() throws IOException {
        Words words = new Words(Language.ENGLISH, UnitSystem.METRIC);
        assertThat(kinds()).hasSizeGreaterThan(15);
        try (Store store = Store.open(new DataFolder(dir))) {
            for (String kind : kinds()) {
                String subject = kind.substring(0, kind.indexOf('.')) + ":none";
                Happened told =
                        Happened.of(new HistoryEntry(1, Instant.EPOCH, subject, kind, "{}", null), store, words);
                assertThat(told.what()).as(kind).isNotEqualTo(kind);
            }
        }
    }

    @Test
    void anEntryNamesWhatItIsOfAndLeadsThere() {
        Words words = new Words(Language.GERMAN, UnitSystem.METRIC);
        try (Store store = Store.open(new DataFolder(dir))) {
            String recipe = store.recipes().create("Quitte", "a wish");
            HistoryEntry entry = store.history().latest(Long.MAX_VALUE, 1).get(0);
            Happened told = Happened.of(entry, store, words);
            assertThat(told.what()).isEqualTo("Rezept begonnen");
            assertThat(told.name()).isEqualTo("Quitte");
            assertThat(told.path()).isEqualTo("/compose/" + recipe);
        }
    }
}
