package org.stillroom.e2e;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The packaged Stillroom, or any other program, run in a process of its own. */
final class Program {
    private static final long SECONDS_AT_MOST = 60;

    private Program() {}

    /** What a run left: exit code and both streams. */
    record Run(int exit, String out, String err) {}

    /** Runs Stillroom as packaged, with a home of its own, so that the person's log stays as it is. */
    static Run stillroom(Path directory, String... typed) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(java().toString(), "-jar", jar().toString()));
        command.addAll(List.of(typed));
        return run(directory, Map.of("XDG_STATE_HOME", directory.toString()), command);
    }

    /** Runs a command in a directory with more environment. */
    static Run run(Path directory, Map<String, String> environment, List<String> command)
            throws IOException, InterruptedException {
        Path out = Files.createTempFile("out", ".txt");
        Path err = Files.createTempFile("err", ".txt");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(directory.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        if (!process.waitFor(SECONDS_AT_MOST, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException("still running after " + SECONDS_AT_MOST + " s: " + command);
        }
        Run run = new Run(process.exitValue(), read(out), read(err));
        Files.delete(out);
        Files.delete(err);
        return run;
    }

    private static String read(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    static Path java() {
        return Path.of(System.getProperty("java.home"), "bin", "java");
    }

    /** Returns the root of the source tree. */
    static Path root() {
        return Path.of(System.getProperty("stillroom.root")).toAbsolutePath().normalize();
    }

    static Path jar() {
        Path jar = Path.of(System.getProperty("stillroom.jar")).toAbsolutePath().normalize();
        if (!Files.isRegularFile(jar)) {
            throw new IllegalStateException(jar + " is missing: run ./check, or mvn verify at the root");
        }
        return jar;
    }
}
