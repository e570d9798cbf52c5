package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** The desk commands as they are typed, with wrong input: which option, what is wrong, what to write. */
class DeskRefusalsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "liquid|nothing in this liquid|600 g of water",
                "liquid --ethanol 300|--ethanol: \"300\": the unit is missing|300 g; 300 ml",
                "liquid --ethanol 1,500g|--ethanol: \"1,500g\": the comma|1.5g; 1500g",
                "liquid --ethanol 10drops|--ethanol: \"10drops\"|not drops; write for instance 300 g",
                "liquid --sucrose 20ml|--sucrose: \"20ml\"|a mass is wanted, such as 300 g",
                "liquid --sucrose -5g|--sucrose: \"-5g\"|300 g",
                "liquid --water 1g --oil 3g|--oil: \"3g\" does not say which oil|limonene=0.4g",
                "liquid --water 1g --oil a=3ml|--oil: \"3ml\"|a mass is wanted",
                "liquid --water 1g --oil a=3g --oil a=3g|--oil: a is given twice|whole amount",
                "liquid --water 1g --temperature 60C|--temperature: densities of spirits are known|−20 to 40 °C",
                "liquid --water 1g --temperature 20|--temperature: \"20\": the temperature has no scale|20 °C; 20 °F",
                "strength --temperature 20C|nothing was measured|--density, --hydrometer, or --mass with --flask",
                "strength --density 948.05kg/m3|--temperature: the temperature of the liquid is missing|--temperature 20C",
                "strength --density 948.05 --temperature 20C|--density: \"948.05\"|948.05 kg/m3",
                "strength --density 700kg/m3 --temperature 20C|--density: with 0.0 g/L|from 789.24",
                "strength --density 1g/ml --hydrometer 40% --temperature 20C|more than one measurement|Give one",
                "strength --hydrometer 80proof --reference 20C --temperature 68F|--reference: a scale such as|for 60 °F",
                "strength --density 1g/ml --reference 20C --temperature 20C|--reference: only a hydrometer|out",
                "strength --mass 474g --temperature 20C|--flask: a weight needs its volume|--mass 474g --flask 500ml",
                "strength --flask 474ml --temperature 20C|--mass: a weight needs its volume|--mass 474g --flask 500ml",
                "strength --mass 474g --flask 0ml --temperature 20C|--mass: a weighed volume|above 0 mL",
                "strength --density 1g/ml --in-air --temperature 20C|--in-air: only a weight|out",
                "density --strength 40|--strength: \"40\": the strength has no unit|40 % vol",
                "density --strength 140%|--strength: \"140%\"|from 0 to 100 % vol",
                "density|Missing required option: '--strength|--help",
                "density --strength 40% --sugar 180..200g/L|--sugar: \"180..200g/L\"|180 g/L",
                "density --strength 40% --sugar 18%|--sugar: \"18%\"|180 g/L",
                "density --strength 60% --sugar 800g/L|--sugar: there is no room for water|less sugar",
                "density --strength 80proof --sugar 10g/L|--strength: the strength of a sweetened|28 %",
                "reduce --from 40% --to 50% --volume 1L|--to: water only lowers strength|give a lower strength",
                "reduce --from 40% --to 40% --volume 1L|--to: water only lowers strength|give a lower strength",
                "reduce --from 40% --to 0% --volume 1L|--to: no amount of water|above 0 % vol",
                "reduce --from 95% --to 40% --volume 500g|--volume: \"500g\"|a volume is wanted",
                "reduce --from 95% --to 40% --volume 0ml|--volume: there is no spirit|volume",
                "reduce --from 95% --to 40% --volume 1L --reference 25C|--reference: \"25C\"|20C, 15C or 60F",
                "blend --add 500ml|--add: \"500ml\" does not say how strong|500ml@40%",
                "blend --add 500ml@40% --to 50%|--to: what is there has 40.00 % vol|between the two",
                "blend --add 500ml@40% --with 50%|--with: it is not said how far|--to",
                "blend --add 0ml@40%|--add: there is nothing to blend|above zero",
                "blend --add 9drops@40%|--add: spirits are blended by volume or by mass|mL or g",
                "fortify --volume 1L --from 30% --with 40% --to 50%|--to: what is there has 30.00 % vol|between",
                "syrup --sugar 500g|said in one way|--brix 66",
                "syrup --sugar 0g --water 0g|--sugar: there is neither|above zero",
                "syrup --brix 120|--brix: \"120\"|from 0 to 100",
                "syrup --sugar 1900g --make-up-to 1L|--sugar: there is no room for water: what goes in takes|Take less sugar",
                "syrup --parts 2|--parts: \"2\"|1:5",
                "syrup --brix 66 --by volume|--by: only parts|--parts 2:1",
                "syrup --parts 2:1 --by weight|--by: \"weight\"|mass, volume",
                "syrup --brix 66 --kind honey|--kind: \"honey\"|sucrose, invert, glucose",
                "acid --acid benzoic --percent 5% --make 1g|--acid: \"benzoic\"|citric, malic",
                "acid --make 1g|the strength is missing|--percent 5%; --concentration 50g/L",
                "acid --percent 5%|how much is missing|--make 250g; --have 12.5g",
                "acid --percent 5% --concentration 5g/L --make 1g|--concentration: the strength is given twice|one of",
                "acid --percent 5g/L --make 1g|--percent: \"5g/L\" is per litre|--concentration",
                "acid --concentration 5% --make 1L|--concentration: \"5%\" is by mass|--percent",
                "acid --percent 5% --make 1L|--make: a solution in per cent by mass|250 g",
                "acid --concentration 5g/L --make 1g|--make: a solution of 5 g/L|1 L",
                "acid --percent 0% --have 1g|--percent: a solution of 0 %|above 0 %",
                "acid --concentration 0g/L --have 1g|--concentration: a solution of 0 g/L|above 0 g/L",
                "acid --percent 5% --make 0g|--make: there is nothing to make|above zero",
                "acid --percent 95% --make 100g --form monohydrate|--percent: this acid brings water|weaker",
                "acid --acid malic --form monohydrate --percent 5% --make 1g|--form: only citric acid|out"
            })
    void whatIsWrongIsSaidWithWhatToWrite(String line, String wrong, String remedy) {
        Desk.Run run = Desk.type(line);
        assertThat(run.exit()).as(run.err()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        String complaint = run.err().replaceAll("\\s+", " ");
        assertThat(complaint).startsWith("Stop: ").contains(wrong, remedy);
    }

    @Test
    void everythingWrongComesBackTogether() {
        assertThat(Desk.type("liquid --ethanol 300 --sucrose 20ml --temperature 20")
                        .err())
                .contains("--ethanol", "--sucrose", "--temperature");
    }

    @Test
    void scriptsReadARefusalAsFindings() {
        Desk.Run run = Desk.type("reduce --from 40% --to 50% --volume 1L --json");
        assertThat(run.exit()).isEqualTo(2);
        JsonNode finding = run.json().get("findings").get(0);
        assertThat(finding.get("where").asString()).isEqualTo("--to");
        assertThat(finding.get("severity").asString()).isEqualTo("stop");
        for (String key : new String[] {"rule", "jurisdiction", "verdict", "message", "how_sure", "remedy", "status"}) {
            assertThat(finding.get(key).isString()).as(key).isTrue();
        }
        assertThat(finding.has("limit") && finding.has("source")).isTrue();
    }

    static Stream<String> names() {
        return Commands.all().stream().map(Entry::name);
    }

    @ParameterizedTest
    @MethodSource("names")
    void helpOfEachCommandShowsItsMeaningAndExample(String name) {
        Entry entry = Commands.all().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
        assertThat(entry.summary().length()).isLessThanOrEqualTo(Page.WIDTH);
        assertThat(Desk.type(name + " --help").out())
                .contains(entry.summary(), "--json", "--explain")
                .endsWith("  " + entry.example() + "\n");
    }
}
