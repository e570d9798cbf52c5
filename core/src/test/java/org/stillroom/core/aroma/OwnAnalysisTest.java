package org.stillroom.core.aroma;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.stillroom.core.reference.Finding;

class OwnAnalysisTest {
    @Test
    void aCertificateIsReadWithCommasOrSemicolons() {
        OwnAnalysis commas = OwnAnalysis.read("constituent,percent\n# lot 12\nlinalool,31.5\nlinalyl acetate,36\n\n");
        assertThat(commas.problems()).isEmpty();
        assertThat(commas.parts()).isEqualTo(Map.of("78-70-6", 0.315, "115-95-7", 0.36));
        assertThat(OwnAnalysis.read("linalool;31,5 %\n\"1,8-cineole\";2").parts())
                .isEqualTo(Map.of("78-70-6", 0.315, "470-82-6", 0.02));
        assertThat(OwnAnalysis.read("\"1,8-cineole\",2").parts()).isEqualTo(Map.of("470-82-6", 0.02));
    }

    @Test
    void whatIsWrongIsToldByLineAllAtOnce() {
        OwnAnalysis wrong = OwnAnalysis.read("linalool,31\nmoon dust,3\nLinalool,2\nlimonene,lots\nnothing");
        assertThat(wrong.parts()).isNull();
        assertThat(wrong.problems()).extracting(Finding::where).containsExactly("line 2", "line 3", "line 4", "line 5");
        assertThat(wrong.problems().get(1).message()).isEqualTo("linalool stands there twice.");
    }

    @Test
    void aSumThatCannotBeIsRefused() {
        assertThat(OwnAnalysis.read("linalool,80\nlimonene,30")
                        .problems()
                        .get(0)
                        .message())
                .contains("110.0 %");
        assertThat(OwnAnalysis.read("").problems()).hasSize(1);
    }
}
