package org.stillroom.studio.usecase.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.core.safety.LotAnalyses;
import org.stillroom.studio.store.Lot;

/** Which lots of the shelf have their say when a drink is judged. */
class MakersGroundsTest {
    private static final String ANALYSIS = "constituent;percent\nalpha-thujone;18,5\nbeta-thujone;4,5\n";

    private static Lot lot(String id, String... more) {
        String[] fields = new String[6 + more.length];
        System.arraycopy(new String[] {"name", "Sage oil", "kind", "essential oil", "left", "10 ml"}, 0, fields, 0, 6);
        System.arraycopy(more, 0, fields, 6, more.length);
        return Bottles.onShelf(id, fields).lot();
    }

    private static LotAnalyses of(Lot... lots) {
        return MakersGrounds.analyses(List.of(lots));
    }

    @Test
    void theOnlyBottleSpeaksByItsAnalysis() {
        assertThat(of(lot("a", "analysis", ANALYSIS)).lists("sage oil", "alpha-thujone"))
                .isTrue();
        assertThat(of(lot("a", "analysis", ANALYSIS)).lists("sage oil", "camphor"))
                .isFalse();
    }

    /** Either could be poured. */
    @Test
    void aBottleWithoutAnalysisLetsTheRangeStand() {
        assertThat(of(lot("a", "analysis", ANALYSIS), lot("b")).lists("sage oil", "alpha-thujone"))
                .isFalse();
    }

    @Test
    void aBottleThatIsEmptyOrSetAsideHasNoSay() {
        Lot aside = lot("b", "set aside", "yes");
        assertThat(of(lot("a", "analysis", ANALYSIS), aside).lists("sage oil", "alpha-thujone"))
                .isTrue();
        assertThat(of(lot("c", "analysis", ANALYSIS, "set aside", "yes")).lists("sage oil", "alpha-thujone"))
                .isFalse();
    }

    /** What is listed twice, or comes to more than a whole, is a slip somewhere. */
    @Test
    void anAnalysisThatDoesNotHoldTogetherSpeaksForNothing() {
        assertThat(of(lot("a", "analysis", "alpha-thujone;18\nalpha-thujone;2\n"))
                        .lists("sage oil", "alpha-thujone"))
                .isFalse();
        assertThat(of(lot("a", "analysis", "alpha-thujone;18\ncamphor;98\n")).lists("sage oil", "alpha-thujone"))
                .isFalse();
    }

    @Test
    void whatNobodyKnowsInAnAnalysisDoesNotSilenceTheRest() {
        assertThat(of(lot("a", "analysis", "alpha-thujone;18\nmoonshine ketone;2\n"))
                        .lists("sage oil", "alpha-thujone"))
                .isTrue();
    }
}
