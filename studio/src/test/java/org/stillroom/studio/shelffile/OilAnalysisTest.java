package org.stillroom.studio.shelffile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

class OilAnalysisTest {
    @Test
    void namesAndNumbersOfTheTableAreKnownAndTracesAreNone() {
        OilAnalysis analysis = OilAnalysis.read("Bestandteil;CAS;Anteil\nlimonene;5989-27-5;92,5\nlinalool;;tr\n");
        assertThat(analysis.problems()).isEmpty();
        assertThat(analysis.parts()).hasSize(2).allMatch(part -> part.constituent() != null);
        assertThat(analysis.percent()).isEqualTo(92.5, within(1e-9));
    }

    @Test
    void aListWithoutHeadingsIsReadByWhatStandsInIt() {
        OilAnalysis analysis = OilAnalysis.read("limonene\t92.5 %\n78-70-6\t3\n");
        assertThat(analysis.problems()).isEmpty();
        assertThat(analysis.parts()).extracting(OilAnalysis.Part::percent).containsExactly(92.5, 3.0);
    }

    @Test
    void unknownNamesDoublesSlipsAndWrongSumsAreToldLineByLineAllAtOnce() {
        OilAnalysis analysis = OilAnalysis.read(
                "name;percent\nlimonene;70\nlimonnen;2\nd-limonene;20\nlinalool;much\nlinalyl acetate;80\n");
        assertThat(analysis.problems())
                .extracting(problem -> problem.line() + " " + problem.finding().rule())
                .containsExactly(
                        "3 constituent-not-known", "4 analysis-twice", "5 analysis-share", "0 analysis-beyond-whole");
    }

    @Test
    void constituentsAreKnownInGermanAndACommaOfANamePartsNoColumns() {
        OilAnalysis german = OilAnalysis.read("Bestandteil;Anteil\nLimonen;30\nβ-Pinen;5\nZimtaldehyd;1\nKampfer;2\n");
        assertThat(german.problems()).isEmpty();
        assertThat(german.shares()).containsOnlyKeys("5989-27-5", "127-91-3", "14371-10-9", "76-22-2");
        for (String table : new String[] {"constituent,percent\n1,8-cineole,45\n", "1,8-Cineol,45 %\n"}) {
            OilAnalysis cineole = OilAnalysis.read(table);
            assertThat(cineole.problems()).isEmpty();
            assertThat(cineole.shares()).isEqualTo(Map.of("470-82-6", 0.45));
        }
    }

    @Test
    void aLineOfTheSumIsNoConstituentAndIsHeldToTheParts() {
        for (String sum : new String[] {"Total;100", "Summe;100,3 %", "Sum:;99.8", "Gesamt (%);100", "TOTAL;100.0"}) {
            OilAnalysis whole = OilAnalysis.read("limonene;60\nlinalool;40\n" + sum + "\n");
            assertThat(whole.problems()).as(sum).isEmpty();
            assertThat(whole.parts()).hasSize(2);
            assertThat(whole.percent()).isEqualTo(100.0, within(1e-9));
        }
        assertThat(OilAnalysis.read("limonene;60\nneral;<2\nlinalool;30\nTotal;92\n")
                        .problems())
                .isEmpty();
        assertThat(OilAnalysis.read("limonene;60\nlinalool;4.0\nTotal;100\n").problems())
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.line()).isEqualTo(3);
                    assertThat(problem.finding().rule()).isEqualTo("analysis-sum");
                    assertThat(problem.finding().message()).contains("100.0 % together; they make 64.0 %");
                });
        assertThat(OilAnalysis.read("name;percent\nlimonene;60\nTotal;all\n").problems())
                .extracting(problem -> problem.finding().rule())
                .containsExactly("analysis-share");
    }

    @Test
    void aLineAloneConfirmsIt() {
        OilAnalysis confirmed = OilAnalysis.read("constituent,percent\nlinalool,31\nBestätigt\n");
        assertThat(confirmed.problems()).isEmpty();
        assertThat(confirmed.confirmed()).isTrue();
        assertThat(OilAnalysis.read("confirmed;;\nlinalool;31\n").shares()).isEqualTo(Map.of("78-70-6", 0.31));
        assertThat(OilAnalysis.read("linalool;31\n").confirmed()).isFalse();
    }

    @Test
    void aBoundIsAnythingFromNoneToIt() {
        OilAnalysis bound = OilAnalysis.read("constituent;percent\nlimonene;<0.5\nlinalool;31\n");
        assertThat(bound.problems()).isEmpty();
        assertThat(bound.ends())
                .containsExactly(
                        Map.of("5989-27-5", 0.0, "78-70-6", 0.31), Map.of("5989-27-5", 0.005, "78-70-6", 0.31));
        assertThat(bound.shares()).isEqualTo(Map.of("5989-27-5", 0.0025, "78-70-6", 0.31));
        assertThat(OilAnalysis.read("limonene;60\nlinalool;40\nneral;<1\n").problems())
                .isEmpty();
    }

    @Test
    void aWholeBesideItsPartsAddsUpOnce() {
        assertThat(OilAnalysis.read("citral;75\ngeranial;43\nneral;32\nlimonene;20\n")
                        .problems())
                .isEmpty();
    }

    @Test
    void headingsThatSayNothingAreToldOnceWithTheirLine() {
        assertThat(OilAnalysis.read("what;how much\nlinalool;31\n").problems())
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.line()).isEqualTo(1);
                    assertThat(problem.finding().message()).contains("what, how much");
                    assertThat(problem.finding().remedy()).contains("constituent;cas;percent");
                });
        assertThat(OilAnalysis.read("constituent;amount\nlinalool;31\n").problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.finding().message()).contains("how much there is"));
        assertThat(OilAnalysis.read("Component;Area %\nlinalool;31\n").problems())
                .isEmpty();
    }

    @Test
    void aNumberThatIsOfAnotherSubstanceIsTold() {
        assertThat(OilAnalysis.read("name;cas;%\nlinalool;5989-27-5;3\n").problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.finding().rule()).isEqualTo("analysis-cas"));
    }

    @Test
    void aCertificateWithRemarksCommasAndSumsIsReadToItsShares() {
        OilAnalysis commas =
                OilAnalysis.read("# lot 12\nconstituent,percent\nlinalool,31.5\n# checked\n\"1,8-cineole\",2\n\n");
        assertThat(commas.problems()).isEmpty();
        assertThat(commas.shares()).isEqualTo(Map.of("78-70-6", 0.315, "470-82-6", 0.02));
        assertThat(commas.parts()).extracting(OilAnalysis.Part::line).containsExactly(3, 5);
        OilAnalysis sum = OilAnalysis.read("linalool;31,5 %\nfurocoumarins (sum);0,3\n");
        assertThat(sum.problems()).isEmpty();
        assertThat(sum.shares()).isEqualTo(Map.of("78-70-6", 0.315, "furocoumarins (sum)", 0.003));
    }
}
