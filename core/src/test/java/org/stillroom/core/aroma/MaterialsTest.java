package org.stillroom.core.aroma;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.reference.Table;

class MaterialsTest {
    private static Material find(String name) {
        return Objects.requireNonNull(Materials.find(name), name);
    }

    private static Table table(String lines) {
        return Table.of("made up", List.of(lines.split("\n", -1)));
    }

    @Test
    void aMaterialIsFoundHoweverPeopleWriteIt() {
        assertThat(Materials.list()).hasSize(73);
        assertThat(find("Lemon oil")).isSameAs(find("lemon"));
        assertThat(find("oil of clove").botanical()).isEqualTo("Syzygium aromaticum");
        assertThat(Materials.find("moon dust")).isNull();
    }

    @Test
    void everyConstituentOfEveryMaterialFindsItsPartner() {
        List<String> without = new ArrayList<>();
        for (Material material : Materials.list()) {
            for (Material.Analysis analysis : material.analyses()) {
                for (String key : analysis.percent().keySet()) {
                    if (!key.equals(Materials.keyOf(key))) {
                        without.add(material.id() + ": " + key);
                    }
                }
            }
        }
        assertThat(without).isEmpty();
        assertThat(Materials.keyOf("geranial")).isEqualTo("141-27-5");
        assertThat(Materials.keyOf("Prussic acid")).isEqualTo("74-90-8");
        assertThat(Materials.keyOf("moon dust")).isNull();
    }

    @Test
    void groupsOfFiguresStayApartAndTheBestIsComputedWith() {
        Material lemon = find("lemon");
        assertThat(lemon.analyses()).hasSizeGreaterThan(2);
        Material.Analysis best = Objects.requireNonNull(lemon.analysis());
        assertThat(best.standing()).isEqualTo(Standing.READ);
        assertThat(best.group()).startsWith("Regulation (EU) 2022/1490");
        assertThat(Objects.requireNonNull(find("saffron").analysis()).middles()).isLessThan(50.0);
    }

    @Test
    void anOilWithoutATypicalCompositionIsTakenAtTheMiddleOfItsRange() {
        EssentialOil bergamot = Objects.requireNonNull(EssentialOils.find("bergamot oil"));
        assertThat(bergamot.source()).startsWith("middle of the range");
        assertThat(bergamot.shares().values().stream()
                        .mapToDouble(share -> share)
                        .sum())
                .isBetween(0.5, 1.0 + 1e-9);
    }

    @Test
    void atTheMiddleOfItsRangeNoOilHoldsMoreThanItself() {
        for (EssentialOil oil : EssentialOils.list()) {
            double sum =
                    oil.shares().values().stream().mapToDouble(share -> share).sum();
            assertThat(sum).as(oil.name()).isLessThanOrEqualTo(1.0 + 1e-9);
        }
    }

    @Test
    void aTableThatNamesWhatThereIsNotIsRefused() {
        String head = "material,group,status,key,name,min_percent,max_percent\n";
        Table none =
                table("id,name,aliases,kind,title,botanical,part,cas,standard,density_min,density_max,density_basis,"
                        + "n20_min,n20_max,density_status,note\n");
        assertThatThrownBy(() -> Materials.read(none, table(head + "moon,seen,read,1-2-3,dust,1,2")))
                .hasMessageContaining("is no constituent and no sum: 1-2-3");
        assertThatThrownBy(() -> Materials.read(none, table(head + "moon,seen,read,78-70-6,linalool,1,2")))
                .hasMessageContaining("does not list [moon]");
        assertThatThrownBy(() -> new Material.Range(2, 1)).hasMessageContaining("not from 2.0 to 1.0");
    }
}
