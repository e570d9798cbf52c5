package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** What steps and notes say goes in and no line brings: it is counted in no figure and held against no limit, which is said. */
final class InWords {
    /** Name of the rule. */
    static final String NAME = "in-words";

    /** Of these the cautions about light and medicines tell. */
    private static final String OF_CITRUS = "furocoumarins";

    private InWords() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Passages.Passage> goIn = Passages.of(drink.plan()).stream()
                .filter(passage -> !passage.goingIn().isBlank())
                .toList();
        if (goIn.isEmpty()) {
            return List.of();
        }
        Set<String> counted = new HashSet<>();
        drink.lines().forEach(line -> counted.addAll(named(line.words(), drink.knowledge())));
        Set<Knowledge.NamedCaution> ofLines = NamedCautions.ofLines(drink);
        List<Finding> findings = new ArrayList<>();
        for (Passages.Passage passage : goIn) {
            Set<String> uncounted = named(passage.goingIn(), drink.knowledge());
            uncounted.removeAll(counted);
            if (!uncounted.isEmpty()) {
                findings.add(finding(passage.where(), String.join(", ", uncounted)));
            }
            findings.addAll(NamedCautions.inWords(passage, ofLines, drink));
        }
        return findings;
    }

    private static Set<String> named(String text, Knowledge knowledge) {
        Set<String> named = new LinkedHashSet<>();
        plants(text, knowledge).forEach(plant -> named.add(plant.name()));
        substances(text, knowledge).forEach(watched -> named.add(watched.name()));
        return named;
    }

    /** Returns the plants that a text names of which something that is watched for with reason is expected. */
    private static List<Plant> plants(String text, Knowledge knowledge) {
        return Words.named(Words.withAndWithoutHyphens(text), knowledge.plants(), Plant::names).stream()
                .filter(plant -> knowledge.watched().stream()
                        .filter(Watched::isGrave)
                        .filter(watched -> !watched.name().equals(OF_CITRUS))
                        .anyMatch(watched -> plant.holds().stream().anyMatch(watched::covers)))
                .filter(plant -> !TextWords.isOnlySpokenOf(text, TextWords.phrases(plant.names())))
                .toList();
    }

    private static Set<Watched> substances(String text, Knowledge knowledge) {
        Set<Watched> found = new LinkedHashSet<>();
        String plain = Words.plain(text);
        for (Watched watched : knowledge.watched()) {
            boolean named = watched.names().stream().anyMatch(name -> Words.holds(plain, name));
            if (named && !TextWords.isOnlySpokenOf(text, TextWords.phrases(watched.names()))) {
                found.add(watched);
            }
        }
        for (String word : plain.strip().split(" ", -1)) {
            @Nullable Salt salt = Salt.find(word);
            @Nullable Constituent constituent = Constituents.find(word);
            knowledge.watched().stream()
                    .filter(watched -> (salt != null && salt.watched().equals(watched.name()))
                            || (constituent != null && watched.covers(constituent.name())))
                    .forEach(found::add);
        }
        return found;
    }

    private static Finding finding(String where, String named) {
        return Finding.of(
                NAME,
                Severity.CAUTION,
                where,
                "not counted",
                "These words name " + named
                        + ", and no line does: nothing of it is counted in any figure here, and no limit is"
                        + " asked of it.",
                "Give it a line with its amount, or take it out of the words.");
    }
}
