package org.stillroom.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makers who type into their recipes all at once, over loopback, into the packaged studio in a process of its own.
 *
 * <p>Arguments: the studio's jar, and the seconds that each round takes. Rounds of 1, 10 and 50 makers; each types five times a second.
 * Ends with 1 when any answer was wrong.
 */
public final class Load {
    private static final List<Integer> MAKERS = List.of(1, 10, 50);
    private static final Pattern URL = Pattern.compile("\"url\"\\s*:\\s*\"([^\"]+)\"");

    private Load() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("stillroom-load");
        long seconds = Long.parseLong(arguments[1]);
        Process studio = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-jar",
                        arguments[0],
                        "open",
                        "--no-browser",
                        "--json",
                        "--port",
                        "0",
                        "--data",
                        folder.toString())
                .redirectError(folder.resolve("said.txt").toFile())
                .start();
        long wrong = 0;
        try {
            URI address = address(studio);
            round(address, 5, 5); // warms the studio up; not told
            System.out.println("makers  answers  wrong  half within  95 % within  99 % within  slowest");
            for (int makers : MAKERS) {
                wrong += told(makers, round(address, makers, seconds));
            }
            System.out.println("memory of the studio in use by the machine: " + residentMebibytes(studio) + " MiB");
        } finally {
            studio.destroy();
            studio.waitFor(20, TimeUnit.SECONDS);
        }
        System.exit(wrong == 0 ? 0 : 1);
    }

    private static URI address(Process studio) throws IOException {
        BufferedReader lines = studio.inputReader(StandardCharsets.UTF_8);
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            Matcher found = URL.matcher(line);
            if (found.find()) {
                return URI.create(found.group(1));
            }
        }
        throw new IOException("the studio did not open");
    }

    private static List<LoadMaker.Typed> round(URI address, int makers, long seconds) throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(makers);
        try {
            List<LoadMaker> all = new ArrayList<>();
            for (int i = 0; i < makers; i++) {
                all.add(LoadMaker.at(address, i));
            }
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
            List<Future<List<LoadMaker.Typed>>> typing = new ArrayList<>();
            all.forEach(maker -> typing.add(hands.submit(() -> maker.typeUntil(end))));
            List<LoadMaker.Typed> typed = new ArrayList<>();
            for (Future<List<LoadMaker.Typed>> each : typing) {
                typed.addAll(each.get());
            }
            return typed;
        } finally {
            hands.shutdown();
        }
    }

    private static long told(int makers, List<LoadMaker.Typed> typed) {
        List<Double> milliseconds = new ArrayList<>();
        typed.forEach(each -> milliseconds.add(each.milliseconds()));
        Collections.sort(milliseconds);
        long wrong = typed.stream().filter(each -> !each.right()).count();
        System.out.printf(
                Locale.ROOT,
                "%6d %8d %6d %8.1f ms %9.1f ms %9.1f ms %5.1f ms%n",
                makers,
                typed.size(),
                wrong,
                part(milliseconds, 0.50),
                part(milliseconds, 0.95),
                part(milliseconds, 0.99),
                part(milliseconds, 1.00));
        return wrong;
    }

    private static double part(List<Double> sorted, double part) {
        return sorted.get((int) Math.ceil(part * sorted.size()) - 1);
    }

    private static long residentMebibytes(Process studio) throws IOException {
        Path status = Path.of("/proc/" + studio.pid() + "/status");
        return Files.readAllLines(status).stream()
                .filter(line -> line.startsWith("VmRSS:"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024)
                .findFirst()
                .orElse(-1);
    }
}
