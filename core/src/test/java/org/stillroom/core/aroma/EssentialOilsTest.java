package org.stillroom.core.aroma;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.stillroom.core.reference.Table;

class EssentialOilsTest {
    private static final String OILS = "name,aliases,density_g_per_ml,status,source\n";
    private static final String PARTS = "oil,constituent,name,percent_by_mass\n";

    private static EssentialOil find(String name) {
        return Objects.requireNonNull(EssentialOils.find(name), name);
    }

    private static Table table(String lines) {
        return Table.of("made up", List.of(lines.split("\n", -1)));
    }

    @Test
    void anOilIsFoundHoweverPeopleWriteIt() {
        assertThat(find("Lemon oil")).isSameAs(find("lemon")).isSameAs(find("essential oil of lemon"));
        assertThat(find("sweet orange essence")).isSameAs(find("orange"));
        assertThat(EssentialOils.find("moon dust")).isNull();
    }

    @Test
    void everyConstituentOfEveryOilFindsItsPartner() {
        List<String> without = new ArrayList<>();
        for (EssentialOil oil : EssentialOils.list()) {
            for (String key : oil.shares().keySet()) {
                Constituent constituent = Constituents.find(key);
                boolean byNumber = constituent != null && constituent.cas().equals(key);
                if (!byNumber && ConstituentGroup.named(key) == null) {
                    without.add(oil.name() + ": " + key);
                }
            }
        }
        assertThat(without).isEmpty();
    }

    @Test
    void sharesAddUpToTheWholeOrLess() {
        for (EssentialOil oil : EssentialOils.list()) {
            double sum =
                    oil.shares().values().stream().mapToDouble(share -> share).sum();
            assertThat(sum).as(oil.name()).isBetween(oil.source().startsWith("middle") ? 0.01 : 0.75, 1.0 + 1e-9);
        }
    }

    @Test
    void aTableThatNamesWhatThereIsNotIsRefused() {
        assertThatThrownBy(() -> EssentialOils.read(
                        table(OILS + "moon,,0.9,from memory,"), table(PARTS + "moon,1-2-3,dust,100")))
                .hasMessageContaining("is no constituent of the table: 1-2-3");
        assertThatThrownBy(() -> EssentialOils.read(
                        table(OILS + "moon,,0.9,from memory,"), table(PARTS + "sun,5989-27-5,limonene,100")))
                .hasMessageContaining("moon");
        assertThatThrownBy(() -> EssentialOils.read(table(OILS), table(PARTS + "sun,5989-27-5,limonene,100")))
                .hasMessageContaining("does not list [sun]");
    }

    @Test
    void anUnknownConstituentIsGuessedByTheEndingOfItsName() {
        assertThat(ConstituentGroup.guessed("zingerene")).isEqualTo(ConstituentGroup.MONOTERPENES);
        assertThat(ConstituentGroup.guessed("isocaryophyllene")).isEqualTo(ConstituentGroup.SESQUITERPENES);
        assertThat(ConstituentGroup.guessed("Isoeugenol")).isEqualTo(ConstituentGroup.PHENOLS);
        assertThat(ConstituentGroup.guessed("neryl acetate")).isEqualTo(ConstituentGroup.ESTERS);
        assertThat(ConstituentGroup.guessed("nerolidol")).isEqualTo(ConstituentGroup.ALCOHOLS);
        assertThat(ConstituentGroup.guessed("piperitone")).isEqualTo(ConstituentGroup.CARBONYLS);
        assertThat(ConstituentGroup.guessed("moon dust")).isEqualTo(ConstituentGroup.UNKNOWN);
    }
}
