package org.stillroom.studio.web.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.label.Duty;
import org.stillroom.core.safety.HouseRule;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.web.frame.Guest;

/** The pages of rules over real HTTP, without a script. */
class RulesPagesTest {
    @TempDir
    private Path dir;

    private Guest guest;
    private Store store;

    @BeforeEach
    void open() throws Exception {
        guest = new Guest(dir, kept -> new SettingsRoom(kept, new DataFolder(dir.resolve("data"))));
        store = guest.store();
        guest.page("/settings/house-rules");
    }

    @AfterEach
    void close() {
        guest.close();
    }

    private HttpResponse<String> write(String rules, int version) throws IOException, InterruptedException {
        return guest.goOn("/settings/house-rules", "version", String.valueOf(version), "rules", rules);
    }

    @Test
    void whatIsWrittenHoldsTheDrinksOfTheStudio() throws Exception {
        HttpResponse<String> kept = write("# ours\r\nno tonka\r\nat most 0,6 g/L oil", 0);

        assertThat(kept.statusCode()).isEqualTo(200);
        assertThat(kept.body()).contains("The house rules are in force.", "at most 0,6 g/L oil");
        assertThat(MakersGrounds.of(store).house().rules())
                .extracting(HouseRule::written)
                .containsExactly("no tonka", "at most 0,6 g/L oil");
        assertThat(guest.get("/history").body()).contains("House rules written");
    }

    @Test
    void aSlipComesBackWithItsLineAndWhatWasTypedAndChangesNothing() throws Exception {
        write("no tonka", 0);
        HttpResponse<String> refused = write("no tonka\nat most 3 <b>lots</b>", 1);

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("line 2:", "at most 3 &lt;b&gt;lots");
        assertThat(store.rules().house().text()).isEqualTo("no tonka");
    }

    @Test
    void whoWritesSecondSeesBoth() throws Exception {
        write("no tonka", 0);
        HttpResponse<String> late = write("no sage", 0);

        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("no tonka", "no sage");
        assertThat(store.rules().house().text()).isEqualTo("no tonka");
    }

    private static String duty(String rate) {
        return """
                # Table: duty
                # Signed off by: T. Ester
                # As of: 2026-10-31
                # Source: made up
                country,above_pct_vol,up_to_pct_vol,per_litre_of_pure_alcohol,currency,as_of,note,status
                EU minimum,1.2,100,RATE,EUR,2026,made up,read
                """.replace("RATE", rate);
    }

    private double dutyOf(String country) {
        return Duty.of(MakersGrounds.of(store).knowledge().tables(), 40.0, 1000.0).stream()
                .filter(duty -> duty.country().equals(country))
                .mapToDouble(Duty::perLitreOfAlcohol)
                .findFirst()
                .orElse(-1.0);
    }

    @Test
    void aTableIsLookedAtThenTakenThenTakenBack() throws Exception {
        HttpResponse<String> look = guest.goOn("/settings/rules", "file", duty("6.60"));
        assertThat(look.statusCode()).isEqualTo(200);
        assertThat(look.body()).contains("<del>5.50</del>", "<ins>6.60</ins>", "removed", "signed off by T. Ester");
        assertThat(dutyOf("EU minimum")).isEqualTo(5.5);

        HttpResponse<String> taken = guest.goOn("/settings/rules/take", "file", duty("6.60"), "version", "0");
        assertThat(taken.body()).contains("duty as of 2026-10-31, signed off by T. Ester", "Take back");
        assertThat(dutyOf("EU minimum")).isEqualTo(6.6);
        assertThat(dutyOf("Canada")).isEqualTo(-1.0);

        long entry = store.rules().tables().files().get(0).entry();
        guest.goOn("/settings/rules/take-back", "entry", String.valueOf(entry));
        assertThat(dutyOf("EU minimum")).isEqualTo(5.5);
        assertThat(guest.get("/history").body()).contains("Table of rules taken", "Table of rules taken back");
    }

    @Test
    void whatChangedSinceThePreviewIsShownAgainAndNothingIsTaken() throws Exception {
        guest.goOn("/settings/rules/take", "file", duty("6.60"), "version", "0");
        HttpResponse<String> late = guest.goOn("/settings/rules/take", "file", duty("7.70"), "version", "0");
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("<del>6.60</del>", "<ins>7.70</ins>");
        assertThat(dutyOf("EU minimum")).isEqualTo(6.6);
    }

    @Test
    void aFileWithSlipsIsToldByLineAndComesBackAsTyped() throws Exception {
        HttpResponse<String> refused = guest.goOn("/settings/rules", "file", duty("much"));
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("line 6:", "holds no number: much", "EU minimum,1.2,100,much");
    }

    @Test
    void aStopThatAFileLeavesOutIsSaidLoudAndStays() throws Exception {
        String none = """
                # Table: not_for_ingestion
                # Signed off by: T. Ester
                # As of: 2026-10-31
                # Source: made up
                material,reason,program_action,status,names,stops
                wintergreen oil,made up,block,read,wintergreen,no
                """;
        assertThat(guest.goOn("/settings/rules", "file", none).body())
                .contains("Stays in force: wintergreen oil", "Stays in force: sassafras oil");
        guest.goOn("/settings/rules/take", "file", none, "version", "0");
        assertThat(MakersGrounds.of(store).knowledge().blocked())
                .anyMatch(row -> row.material().equals("wintergreen oil") && row.stops());
    }
}
