package org.stillroom.studio.usecase.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Lots.NewLot;

class ReadLotTest {
    @Test
    void allThatIsWrongComesBackAtOnceEachAtItsField() {
        assertThat(Bottles.problems(
                        "name",
                        "Quince syrup",
                        "kind",
                        "syrup",
                        "sugar",
                        "180",
                        "left",
                        "12 drops",
                        "opened",
                        "31.2.2026",
                        "tare",
                        "heavy",
                        "set aside",
                        "perhaps"))
                .extracting(SheetProblem::key)
                .containsExactlyInAnyOrder("sugar", "left", "opened", "tare", "set aside");
    }

    @Test
    void anExampleInARemedyIsWhatGoesIntoTheFieldNotALineOfARecipeFile() {
        assertThat(Bottles.problems("name", "Rye", "kind", "spirit", "strength", "strong"))
                .extracting(problem -> problem.finding().remedy())
                .containsExactly("Write it such as “40 %” or “80 proof”.");
        assertThat(Bottles.problems("name", "Feijoa", "kind", "fresh plant"))
                .extracting(problem -> problem.finding().remedy())
                .containsExactly("Write it, such as 82 %.");
    }

    @Test
    void anAnalysisInFractionsIsAskedAboutLineByLineUntilItIsConfirmed() {
        String fractions = "constituent;percent\nalpha-thujone;0.25\nbeta-thujone;0.05\ncamphor;0,18";
        assertThat(Bottles.problems("name", "Sage oil", "kind", "essential oil", "analysis", fractions))
                .allMatch(problem -> problem.key().equals("analysis"))
                .extracting(problem ->
                        problem.finding().message() + " " + problem.finding().remedy())
                .anyMatch(text -> text.contains("Are these fractions of 1?"))
                .anyMatch(text -> text.startsWith("Line 2, alpha-thujone: 0.250 % of the oil, 18.0 to 43.0 %")
                        && text.endsWith("Write 25.0 if it is a fraction of 1."))
                .anyMatch(text -> text.startsWith("Line 4, camphor: 0.180 %"));
        NewLot kept = Bottles.read("name", "Sage oil", "kind", "essential oil", "analysis", fractions + "\nconfirmed");
        assertThat(kept.sheet().analysis()).endsWith("confirmed");
    }

    @Test
    void whatIsLeftAloneIsTakenAsFull() {
        NewLot lot = Bottles.read("name", "Rye", "kind", "spirit", "strength", "43 %", "left", "0,7 L");
        assertThat(lot.left()).isEqualTo(700.0, within(1e-9));
        assertThat(lot.sheet().full()).isEqualTo(700.0, within(1e-9));
        assertThat(lot.sheet().unit()).isEqualTo("ml");
    }

    @Test
    void anAmountThatIsNotSaidIsNotKnownRatherThanNothing() {
        NewLot lot = Bottles.read("name", "Rye", "kind", "spirit", "strength", "43 %");
        assertThat(Stock.isKnown(new Lot("a", 1, lot.sheet(), lot.left()))).isFalse();
    }

    @Test
    void massAndVolumeOfOneJarAreNotMixed() {
        assertThat(Bottles.problems("name", "Honey", "kind", "honey", "left", "250 g", "full", "500 ml"))
                .extracting(SheetProblem::key)
                .containsExactly("full");
    }

    @Test
    void eggsAreCountedWithOrWithoutAWordForIt() {
        assertThat(Bottles.read("name", "Eggs", "kind", "egg", "left", "6")
                        .sheet()
                        .unit())
                .isEqualTo("pieces");
        assertThat(Bottles.read("name", "Vanilla", "kind", "dried plant", "left", "3 pieces")
                        .left())
                .isEqualTo(3.0);
    }

    @Test
    void emptyBottlesAreCountedAndSayWhatOneHolds() {
        NewLot bottles = Bottles.read(
                "name",
                "flat ones",
                "kind",
                "Empty bottles",
                "holds",
                "350 ml",
                "left",
                "7",
                "full",
                "12",
                "paid",
                "12 EUR");
        assertThat(bottles.sheet().kind()).isEqualTo("empty bottles");
        assertThat(bottles.sheet().unit()).isEqualTo("pieces");
        assertThat(bottles.left()).isEqualTo(7.0);
        assertThat(bottles.sheet().fields()).containsEntry("holds", "350 ml");
        Lot lot = new Lot("a", 1, bottles.sheet(), bottles.left());
        LotOnShelf onShelf = new ShelfLots(OunceMeaning.US_FLUID).of(lot);
        assertThat(onShelf.ingredient()).as("nobody pours it").isNull();
        assertThat(onShelf.problems()).isEmpty();
        assertThat(new ShelfLots(OunceMeaning.US_FLUID).of(List.of(lot))).isEmpty();
        assertThat(new LotPrices(OunceMeaning.US_FLUID).of(lot, 3.0).money().get("EUR"))
                .isEqualTo(3.0, within(1e-9));
        assertThat(Bottles.problems("name", "flat ones", "kind", "empty bottles", "left", "2 L", "brim", "full"))
                .extracting(SheetProblem::key)
                .containsExactlyInAnyOrder("holds", "left", "brim");
        assertThat(Bottles.read("name", "corks", "kind", "labels and stoppers", "left", "40")
                        .sheet()
                        .unit())
                .isEqualTo("pieces");
    }

    @Test
    void daysAreReadAsWrittenInEnglandAndInGermany() {
        assertThat(Bottles.read("name", "Sugar", "kind", "sugar", "opened", "2026-10-02")
                        .sheet()
                        .opened())
                .isEqualTo(LocalDate.of(2026, 10, 2));
        assertThat(Bottles.read("name", "Sugar", "kind", "sugar", "opened", "2.10.2026")
                        .sheet()
                        .opened())
                .isEqualTo(LocalDate.of(2026, 10, 2));
    }

    @Test
    void whatWasTypedComesBackAsTyped() {
        Lot lot = Bottles.lot(
                "a",
                "name",
                "Bay tincture",
                "kind",
                "tincture",
                "strength",
                "60,5 %",
                "ratio",
                "1:5",
                "drop",
                "0.024 g",
                "left",
                "86.4 ml",
                "full",
                "100 ml",
                "tare",
                "112 g",
                "paid",
                "4 EUR",
                "label",
                "lot 3",
                "note",
                "two\nlines",
                "set aside",
                "yes");
        assertThat(ReadLot.typed(lot))
                .containsEntry("strength", "60,5 %")
                .containsEntry("ratio", "1:5")
                .containsEntry("left", "86.4 ml")
                .containsEntry("note", "two\nlines")
                .containsEntry("set aside", "yes");
        assertThat(ReadLot.answer(ReadLot.typed(lot), org.stillroom.core.quantity.OunceMeaning.US_FLUID))
                .extracting("value")
                .isEqualTo(new NewLot(lot.sheet(), lot.left()));
    }
}
