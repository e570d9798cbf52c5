package org.stillroom.studio.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What documents may name: the files, packages, types and commands of this tree.
 *
 * <p>Looked at are links and what stands in backticks; blocks of code are passed over. What stands in backticks and is
 * none of these, such as a key of an answer or a unit, is let be.
 */
public final class Names {
    private static final Pattern BACKTICKS = Pattern.compile("`([^`]+)`");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#\\s]+)[^)]*\\)");
    private static final Pattern PACKAGE = Pattern.compile("org\\.stillroom(\\.[a-z0-9]+)*");
    private static final Pattern TYPE =
            Pattern.compile("(?:org\\.stillroom\\.[a-z0-9.]+\\.)?([A-Z][a-z][A-Za-z0-9]*)(?:[.#]([A-Za-z_]\\w*).*)?");
    private static final Pattern FILE_NAME =
            Pattern.compile("[\\w-][\\w.-]*\\.(md|java|yaml|json|csv|xml|html|css|sh)");
    private static final Pattern WORDLIKE = Pattern.compile("[\\w.*-]{4,}");
    private static final Set<String> MADE_BY_THE_BUILD = Set.of("target", ".build");

    private final Path root;
    private final Set<String> commands;
    private final Map<String, Path> sources = new HashMap<>();
    private final Set<String> fileNames = new HashSet<>();

    Names(Path root, Set<String> commands) {
        this.root = root;
        this.commands = commands;
        try (Stream<Path> files = Files.walk(root)) {
            files.filter(file -> !madeByTheBuild(root.relativize(file))).forEach(this::remember);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private void remember(Path file) {
        String name = file.getFileName().toString();
        fileNames.add(name);
        if (name.endsWith(".java")) {
            sources.put(name.substring(0, name.length() - ".java".length()), file);
        }
    }

    private static boolean madeByTheBuild(Path path) {
        for (Path part : path) {
            if (MADE_BY_THE_BUILD.contains(part.toString()) || part.toString().equals(".git")) {
                return true;
            }
        }
        return false;
    }

    /** Returns the root of the source tree: the first directory upwards that holds the build's settings. */
    public static Path findRoot() {
        return Stream.iterate(Path.of("").toAbsolutePath(), Objects::nonNull, Path::getParent)
                .filter(directory -> Files.isDirectory(directory.resolve(".mvn")))
                .findFirst()
                .orElseThrow();
    }

    /** Returns the documents of the tree whose names are held to account. */
    static List<Path> documents(Path root) throws IOException {
        List<Path> documents = new ArrayList<>();
        for (String name : List.of("README.md", "CONTRIBUTING.md")) {
            documents.add(root.resolve(name));
        }
        if (Files.isDirectory(root.resolve("docs"))) {
            try (Stream<Path> files = Files.walk(root.resolve("docs"))) {
                files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(documents::add);
            }
        }
        documents.removeIf(file -> !Files.exists(file));
        return documents;
    }

    /** Returns what a document names that is not there, each with its line. */
    List<String> wrong(Path document, String text) {
        List<String> wrong = new ArrayList<>();
        boolean block = false;
        int number = 0;
        for (String line : text.split("\n", -1)) {
            number++;
            if (line.strip().startsWith("```")) {
                block = !block;
            } else if (!block) {
                String place = root.relativize(document) + ":" + number + " ";
                wrongIn(document, line).forEach(problem -> wrong.add(place + problem));
            }
        }
        return wrong;
    }

    private List<String> wrongIn(Path document, String line) {
        List<String> wrong = new ArrayList<>();
        Matcher ticks = BACKTICKS.matcher(line);
        while (ticks.find()) {
            trouble(ticks.group(1)).ifPresent(wrong::add);
        }
        Matcher link = LINK.matcher(ticks.reset().replaceAll("code"));
        while (link.find()) {
            String to = link.group(1);
            if (!to.contains(":") && !Files.exists(document.resolveSibling(to))) {
                wrong.add("links to " + to + ", which is not there");
            }
        }
        return wrong;
    }

    private Optional<String> trouble(String named) {
        String[] words = named.split(" ", -1);
        if (words[0].equals("stillroom") || words[0].equals("./stillroom")) {
            return words.length > 1 ? command(words[1]) : Optional.empty();
        }
        if (words[0].startsWith("./")) {
            return path(words[0].substring(2));
        }
        if (words.length > 1) {
            return Optional.empty();
        }
        if (PACKAGE.matcher(named).matches()) {
            return aPackage(named);
        }
        Matcher type = TYPE.matcher(named);
        if (type.matches() && !FILE_NAME.matcher(named).matches()) {
            return type(type.group(1), Optional.ofNullable(type.group(2)));
        }
        return looksLikeAPath(named) ? path(named) : Optional.empty();
    }

    private Optional<String> command(String name) {
        boolean known = name.startsWith("-") || name.equals("COMMAND") || commands.contains(name);
        return known ? Optional.empty() : Optional.of("names the command " + name + ", which is not there");
    }

    private Optional<String> aPackage(String name) {
        String directory = name.replace('.', '/');
        boolean known = Stream.of("core", "planner", "studio", "e2e", "bench")
                .flatMap(
                        module -> Stream.of("main", "test").map(side -> module + "/src/" + side + "/java/" + directory))
                .anyMatch(path -> Files.isDirectory(root.resolve(path)));
        return known ? Optional.empty() : Optional.of("names the package " + name + ", which is not there");
    }

    private Optional<String> type(String name, Optional<String> member) {
        Path source = sources.get(name);
        if (source == null) {
            return isOfTheJdk(name) ? Optional.empty() : Optional.of("names the type " + name + ", which is not there");
        }
        boolean known = member.isEmpty() || hasWord(source, member.get());
        return known ? Optional.empty() : Optional.of("names " + name + "." + member.get() + ", which is not there");
    }

    private static boolean hasWord(Path source, String word) {
        try {
            return Pattern.compile("\\b" + word + "\\b")
                    .matcher(Files.readString(source))
                    .find();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static boolean isOfTheJdk(String name) {
        return Stream.of("java.lang.", "java.util.", "java.time.").anyMatch(prefix -> {
            try {
                Class.forName(prefix + name);
                return true;
            } catch (ClassNotFoundException none) {
                return false;
            }
        });
    }

    /** A path has an ending we know, starts at the root, or is made of words; a unit such as g/L is none of these. */
    private boolean looksLikeAPath(String named) {
        if (named.startsWith("/") || named.startsWith("~") || named.contains("://")) {
            return false;
        }
        if (FILE_NAME.matcher(named).matches()) {
            return true;
        }
        int slash = named.indexOf('/');
        return slash > 0
                && (Files.exists(root.resolve(named.substring(0, slash)))
                        || Stream.of(named.split("/", -1))
                                .anyMatch(part -> WORDLIKE.matcher(part).matches()));
    }

    private Optional<String> path(String named) {
        if (!named.contains("/") && fileNames.contains(named)) {
            return Optional.empty();
        }
        int star = named.indexOf('*');
        String plain = star < 0 ? named : named.substring(0, named.lastIndexOf('/', star) + 1);
        boolean known = madeByTheBuild(Path.of(plain)) || Files.exists(root.resolve(plain));
        return known ? Optional.empty() : Optional.of("names the path " + named + ", which is not there");
    }
}
