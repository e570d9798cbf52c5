package org.stillroom.studio.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.LotAnalyses;
import org.stillroom.core.tasting.Note;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;

class TellNotesTest {
    /** 100 mL in a litre of what holds 12 mg/L brings 1.2 mg/L. */
    @Test
    @Tag("property")
    void aDistillateBringsTheConstituentsThatItsAnalysisNames() {
        TellNotes.Found found = notes("limonene 12 mg/L, linalool 30 mg/L", LotAnalyses.NONE);

        assertThat(note(found, "d-limonene").content().typical()).isCloseTo(1.2, within(1e-6));
        assertThat(note(found, "linalool").content().max()).isCloseTo(3.0, within(1e-6));
        assertThat(found.findings()).extracting(finding -> finding.rule()).doesNotContain("oil-not-known");
    }

    @Test
    @Tag("property")
    void anOilThatADistillateCarriesHasTheRangeOfThatOil() {
        Note pinene = note(notes("juniper 100 mg/L", LotAnalyses.NONE), "alpha-pinene");

        assertThat(pinene.content().min()).isLessThan(pinene.content().max());
        assertThat(pinene.content().max()).isBetween(pinene.content().typical(), 10.0);
    }

    /** The certificate of the lot is of the oil as a whole: what is named in it gives way. */
    @Test
    void theAnalysisOfTheLotTakesThePlaceOfWhatIsNamed() {
        TellNotes.Found found = notes(
                "juniper 100 mg/L", LotAnalyses.of(Map.of("juniper distillate", List.of(Map.of("78-70-6", 0.5)))));

        assertThat(found.notes()).extracting(Note::name).containsExactly("linalool");
        assertThat(note(found, "linalool").content().typical()).isCloseTo(5.0, within(1e-6));
        assertThat(found.analysed()).containsExactly("juniper distillate");
    }

    private static Note note(TellNotes.Found found, String name) {
        return found.notes().stream()
                .filter(note -> note.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(name + " is not among " + found.notes()));
    }

    private static TellNotes.Found notes(String aroma, LotAnalyses lots) {
        String text = """
                stillroom: 1
                title: Juniper and pear
                target: {volume: 1 L}
                ingredients:
                  - {name: juniper distillate, kind: distillate, strength: 72 %, aroma: "AROMA"}
                lines:
                  - {use: juniper distillate, amount: 100 ml}
                  - {use: spirit 40 %, amount: make up}
                """.replace("AROMA", aroma);
        RecipeReading reading = new RecipeReader(OunceMeaning.US_FLUID).read(text);
        assertThat(reading).isInstanceOf(RecipeReading.Understood.class);
        Making making = Making.alone(((RecipeReading.Understood) reading).recipe());
        PlanRecipe.Outcome plan = PlanRecipe.answer(making, null, Grounds.SHIPPED.with(lots), Workings.NONE);
        return TellNotes.answer(((PlanRecipe.Outcome.Worked) plan).plan(), Workings.NONE);
    }
}
