package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Opening the packaged studio: twice, at a port that is taken, for the network. */
class StudioStartTest {
    @TempDir
    Path dir;

    private Program.Run open(String... more) throws Exception {
        List<String> typed = new ArrayList<>(List.of("open", "--no-browser"));
        typed.addAll(List.of(more));
        return Program.stillroom(dir, typed.toArray(String[]::new));
    }

    @Test
    void whoOpensItASecondTimeIsToldWhereItIs() throws Exception {
        Path data = dir.resolve("data");
        try (OpenStudio studio = OpenStudio.on(data)) {
            Program.Run second = open("--port", "0", "--data", data.toString());

            assertThat(second.exit()).isEqualTo(2);
            assertThat(second.err())
                    .contains("is open already", studio.page("/").toString())
                    .doesNotContain("Exception");
            assertThat(studio.complaints()).isEmpty();
        }
        try (OpenStudio again = OpenStudio.on(data)) {
            assertThat(again.complaints()).isEmpty();
        }
    }

    @Test
    void aPortThatIsTakenIsNamed() throws Exception {
        try (OpenStudio studio = OpenStudio.on(dir.resolve("one"))) {
            Program.Run other = open(
                    "--port", "" + studio.port(), "--data", dir.resolve("other").toString());

            assertThat(other.exit()).isEqualTo(2);
            assertThat(other.err()).contains("The port " + studio.port(), "another program has it", "--port");
        }
    }

    @Test
    void anAddressOfAnotherMachineIsNamed() throws Exception {
        // 192.0.2.0/24 is kept for documents (RFC 5737), so no machine has it
        passphrase();
        Program.Run run =
                open("--listen", "192.0.2.7", "--data", dir.resolve("data").toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("This machine has no address 192.0.2.7.");
    }

    @Test
    void theNetworkIsNotLetInWithoutAPassphrase() throws Exception {
        Program.Run run = open(
                "--port",
                "0",
                "--listen",
                "0.0.0.0",
                "--data",
                dir.resolve("data").toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("only with a passphrase", "--set-passphrase");
    }

    @Test
    void whoKnowsThePassphraseComesInAndLeaves() throws Exception {
        passphrase();
        try (OpenStudio studio = OpenStudio.on(dir.resolve("data"), "--listen", "0.0.0.0");
                RealBrowser browser = new RealBrowser()) {
            Page page = browser.open(studio.page("/settings"), RealBrowser.Device.PHONE);
            assertThat(page.url()).endsWith("/sign-in");
            assertThat(RealBrowser.barriers(page)).isEmpty();

            page.locator("#passphrase").fill("eleven damsons in gin");
            page.locator("main button").tap();
            page.waitForURL(url -> !url.endsWith("/sign-in"));
            page.navigate(studio.page("/settings").toString());
            assertThat(page.locator("h1").textContent()).isEqualTo("Settings");

            page.locator(".colophon button").tap();
            page.waitForURL("**/sign-in");
            page.navigate(studio.page("/settings").toString());
            assertThat(page.url()).endsWith("/sign-in");
        }
    }

    private void passphrase() throws Exception {
        Program.Run set = Program.run(
                dir,
                Map.of("XDG_STATE_HOME", dir.toString(), "STILLROOM_PASSPHRASE", "eleven damsons in gin"),
                List.of(
                        Program.java().toString(),
                        "-jar",
                        Program.jar().toString(),
                        "open",
                        "--set-passphrase",
                        "--data",
                        dir.resolve("data").toString()));
        assertThat(set.exit()).isZero();
        assertThat(set.out()).contains("The passphrase is set.");
    }
}
