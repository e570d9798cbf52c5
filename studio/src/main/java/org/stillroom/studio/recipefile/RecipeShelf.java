package org.stillroom.studio.recipefile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;

/**
 * Opens a recipe file together with the recipes that its ingredients come from.
 *
 * <p>A "from" names a file in the folder of the recipe that names it, or below; nothing outside that folder is opened.
 */
public final class RecipeShelf {
    /** The longest chain of recipes that come from each other. */
    static final int LONGEST_CHAIN = 12;

    /** The most files of one recipe. */
    static final int MOST_FILES = 50;

    private final RecipeReader reader;

    public RecipeShelf(RecipeReader reader) {
        this.reader = reader;
    }

    /** Opens a file and all that it names. */
    public ShelfReading open(Path file) {
        return new Opening(file).all();
    }

    /** One opening: what was read so far, and the chain of files that leads to the one being read. */
    private final class Opening {
        private final Path asked;
        private final Map<Path, @Nullable StagedRecipe> read = new HashMap<>();
        private final List<Path> chain = new ArrayList<>();
        private final Map<Path, Problems> told = new LinkedHashMap<>();

        Opening(Path asked) {
            this.asked = asked;
        }

        ShelfReading all() {
            if (!Files.exists(asked)) {
                Problems none = new Problems();
                none.add(
                        "file-not-found",
                        Place.WHOLE_FILE,
                        asked.toString(),
                        "not found",
                        "There is no file " + Shown.quoted(asked.toString()) + "." + alike(asked),
                        "Check the name and the folder.");
                return new ShelfReading.Refused(ShelfReading.Found.NO_FILE, none.findings());
            }
            StagedRecipe root = stage(asked);
            List<Finding> problems = all(Problems::findings);
            return root == null || !problems.isEmpty()
                    ? new ShelfReading.Refused(ShelfReading.Found.FILE, problems)
                    : new ShelfReading.Opened(root, all(Problems::notes));
        }

        /** Returns the recipe of a file with its sources, or null when a problem was noted. */
        private @Nullable StagedRecipe stage(Path file) {
            RecipeReader.Draft draft = reader.draft(() -> FileText.of(bytes(file)));
            Problems own = draft.problems();
            told.put(file, own);
            Map<String, StagedRecipe> sources = new LinkedHashMap<>();
            chain.add(file);
            for (RecipeReader.SourceName name : draft.sources()) {
                StagedRecipe source = source(file, name, own);
                if (source != null) {
                    sources.put(name.from(), source);
                }
            }
            chain.remove(chain.size() - 1);
            return draft.recipe() == null ? null : new StagedRecipe(file, draft.recipe(), sources);
        }

        private @Nullable StagedRecipe source(Path file, RecipeReader.SourceName name, Problems own) {
            Path path = sourcePath(file, name, own);
            if (path == null) {
                return null;
            }
            int again = chain.stream().map(RecipeShelf::real).toList().indexOf(real(path));
            if (again >= 0) {
                refuse(
                        name,
                        own,
                        "recipe-circle",
                        "a circle",
                        circle(again, path),
                        "Take one of the “from” out of the circle.");
                return null;
            }
            if (read.containsKey(real(path))) {
                return read.get(real(path));
            }
            if (chain.size() >= LONGEST_CHAIN || read.size() >= MOST_FILES) {
                refuse(
                        name,
                        own,
                        "recipe-chain",
                        "too many stages",
                        "More than " + LONGEST_CHAIN + " recipes come from each other here, or more than " + MOST_FILES
                                + " in all.",
                        "Give early stages as ingredients with their figures instead of with “from”.");
                return null;
            }
            StagedRecipe staged = stage(path);
            read.put(real(path), staged);
            return staged;
        }

        private String circle(int from, Path back) {
            List<String> names = new ArrayList<>();
            chain.subList(from, chain.size()).forEach(file -> names.add(name(file)));
            names.add(name(back));
            return "Recipes come from each other in a circle: " + String.join(" → ", names) + ".";
        }

        /** Returns the findings of all files, those of the file asked for first. */
        private List<Finding> all(Function<Problems, List<Finding>> which) {
            List<Finding> all = new ArrayList<>();
            told.forEach((file, problems) -> {
                for (Finding finding : which.apply(problems)) {
                    all.add(file.equals(asked) ? finding : in(file, finding));
                }
            });
            return all;
        }
    }

    private static Finding in(Path file, Finding finding) {
        String where = finding.where().isEmpty() ? name(file) : name(file) + ", " + finding.where();
        return Finding.of(
                finding.rule(), finding.severity(), where, finding.verdict(), finding.message(), finding.remedy());
    }

    /** Returns the file that a name means, or null, noted, when it may not be opened or is not there. */
    private static @Nullable Path sourcePath(Path file, RecipeReader.SourceName name, Problems own) {
        String from = name.from();
        Path folder = Objects.requireNonNullElse(file.toAbsolutePath().getParent(), file.toAbsolutePath());
        Path path = relative(from);
        if (path == null || !real(folder.resolve(path)).startsWith(real(folder))) {
            refuse(
                    name,
                    own,
                    "recipe-outside",
                    "outside the folder",
                    Shown.quoted(from) + " does not name a file in the folder of this recipe or below.",
                    "Put the file beside this one and write its name alone, such as “from: bay-tincture.yaml”.");
            return null;
        }
        Path wanted = folder.resolve(path);
        if (!Files.isRegularFile(wanted)) {
            refuse(
                    name,
                    own,
                    "recipe-not-found",
                    "not found",
                    "There is no file " + Shown.quoted(from) + " in the folder of this recipe." + alike(wanted),
                    "Check the name, or give the ingredient's own figures instead of “from”.");
            return null;
        }
        return wanted;
    }

    private static void refuse(
            RecipeReader.SourceName name, Problems own, String rule, String verdict, String message, String remedy) {
        own.add(rule, name.place(), name.ingredient() + ", from", verdict, message, remedy);
    }

    /** Returns the path below a folder that a text means, or null when it leads elsewhere. */
    private static @Nullable Path relative(String from) {
        boolean elsewhere = from.contains("\\") || from.contains(":") || from.isBlank();
        try {
            Path path = Path.of(from);
            boolean up = Stream.iterate(0, i -> i < path.getNameCount(), i -> i + 1)
                    .anyMatch(i -> path.getName(i).toString().equals(".."));
            return elsewhere || up || path.isAbsolute() ? null : path;
        } catch (InvalidPathException noPath) {
            return null;
        }
    }

    private static byte[] bytes(Path file) throws Unreadable {
        if (Files.isDirectory(file)) {
            throw new Unreadable(
                    "file-not-readable",
                    Place.WHOLE_FILE,
                    Shown.quoted(name(file)) + " is a folder; a file is wanted.",
                    "Name a file in it.");
        }
        try (InputStream in = Files.newInputStream(file)) {
            FileText.refuseLarge(Files.size(file));
            byte[] bytes = in.readNBytes(FileText.MOST_BYTES + 1);
            FileText.refuseLarge(bytes.length);
            return bytes;
        } catch (IOException e) {
            throw new Unreadable(
                    "file-not-readable",
                    Place.WHOLE_FILE,
                    Shown.quoted(name(file)) + " cannot be read ("
                            + e.getClass().getSimpleName() + ").",
                    "Check that it is a file and that you may read it.");
        }
    }

    private static String alike(Path wanted) {
        Path folder = wanted.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            return "";
        }
        try (Stream<Path> files = Files.list(folder)) {
            String near = Nearest.of(
                    name(wanted), files.limit(1000).map(RecipeShelf::name).toList());
            return near == null ? "" : " There is “" + near + "”.";
        } catch (IOException notListed) {
            return "";
        }
    }

    /** Returns the path without links and detours; what is not there keeps its own path. */
    private static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException notThere) {
            return path.toAbsolutePath().normalize();
        }
    }

    private static String name(Path file) {
        Path name = file.getFileName();
        return name == null ? file.toString() : name.toString();
    }
}
