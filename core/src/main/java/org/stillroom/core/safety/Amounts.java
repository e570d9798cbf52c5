package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.aroma.Materials;

/**
 * Adds up one watched substance over all portions.
 *
 * <p>Constituents are added within a source group and never across groups; the most is that of the most adverse group, the least
 * that of the mildest. Of a plant any part from nothing to all can come over. A constituent that is expected and in no table is
 * not known.
 */
final class Amounts {
    private final Grounds grounds;
    private final Knowledge knowledge;
    private final LotAnalyses analyses;
    private final Watched watched;
    private final Map<String, Map<Drawn.Bottle, Amounts>> bottles = new LinkedHashMap<>();
    private final Set<String> notKnownFrom = new LinkedHashSet<>();
    private final Set<String> from = new LinkedHashSet<>();
    private final Set<String> basis = new LinkedHashSet<>();
    private Range grams = Range.NOTHING;
    private RowStatus status = RowStatus.READ;

    private Amounts(Grounds grounds, Watched watched) {
        this.grounds = grounds;
        this.knowledge = grounds.knowledge();
        this.analyses = grounds.analyses();
        this.watched = watched;
    }

    /** Returns how much there is of it, or null where nothing brings any or is expected to. */
    static @Nullable Amount of(Watched watched, Portions portions, double kilograms, double litres, Grounds grounds) {
        Amounts sum = new Amounts(grounds, watched);
        portions.found().forEach(found -> sum.of(found.bottle()).add(found));
        portions.list().stream()
                .filter(portion -> !portion.settled().contains(watched))
                .forEach(portion -> sum.of(portion.bottle()).add(portion));
        sum.bottles.values().forEach(sum::addOneOf);
        if (sum.from.isEmpty() && sum.notKnownFrom.isEmpty()) {
            return null;
        }
        return new Amount(
                watched,
                sum.grams.times(1000.0 / kilograms),
                sum.grams.times(1000.0 / litres),
                List.copyOf(sum.notKnownFrom),
                List.copyOf(sum.from),
                sum.status,
                List.copyOf(sum.basis));
    }

    private Amounts of(Drawn.@Nullable Bottle bottle) {
        return bottle == null
                ? this
                : bottles.computeIfAbsent(bottle.line(), line -> new LinkedHashMap<>())
                        .computeIfAbsent(bottle, each -> new Amounts(grounds, watched));
    }

    /** Takes the greater of what the bottles of a line bring, and the least; one that is not among them brings nothing. */
    private void addOneOf(Map<Drawn.Bottle, Amounts> each) {
        Range any = each.values().stream()
                .map(bottle -> bottle.grams)
                .reduce(FarAnalysis::hull)
                .orElseThrow();
        boolean all = each.keySet().stream().allMatch(bottle -> bottle.of() == each.size());
        grams = grams.plus(all ? any : FarAnalysis.hull(any, Range.NOTHING));
        for (Amounts bottle : each.values()) {
            notKnownFrom.addAll(bottle.notKnownFrom);
            from.addAll(bottle.from);
            basis.addAll(bottle.basis);
            status = status.and(bottle.status);
        }
    }

    private void add(Found found) {
        @Nullable Range told = found.grams().get(watched);
        if (told != null) {
            grams = grams.plus(told);
            from.add(found.where());
            basis.add(LotAnalyses.BASIS);
        }
    }

    private void add(Portion portion) {
        Watched substance = portion.substance();
        if (substance != null) {
            boolean counts = watched.equals(substance) || watched.members().contains(substance.name());
            if (counts && portion.form() == Portion.Form.AMOUNT_NOT_KNOWN) {
                notKnownFrom.add(portion.where());
            } else if (counts) {
                @Nullable Salt salt = Salt.find(portion.name());
                take(
                        portion,
                        portion.grams(),
                        salt == null ? RowStatus.DERIVED : RowStatus.MEMORY,
                        salt == null ? "the substance itself" : salt.told());
            }
            return;
        }
        boolean known = portion.form() == Portion.Form.OIL || !portion.stated().isEmpty();
        Set<String> settled = known ? analysed(portion) : Set.of();
        for (Plant plant : portion.plants()) {
            add(portion, plant, settled);
        }
    }

    /** Takes what the maker states or the analysis of the lot lists, whatever the plant is, and returns the names of it. */
    private Set<String> analysed(Portion portion) {
        Set<String> settled = new LinkedHashSet<>();
        Range own = Range.NOTHING;
        Map<String, Range> stated = LotAnalyses.counted(portion);
        for (String member : watched.members()) {
            String key = Materials.keyOf(member);
            if (settled.stream().anyMatch(whole -> isPartOf(key, whole))) {
                settled.add(member); // counted with the whole: citral is geranial and neral
                continue;
            }
            @Nullable Range said = key == null ? null : stated.get(key);
            @Nullable Range part = said == null ? analyses.part(portion.name(), member) : said;
            if (part != null) {
                settled.add(member);
                own = own.plus(part);
            }
        }
        watched.members().stream().filter(whole -> isWholeOf(whole, settled)).forEach(settled::add);
        if (!settled.isEmpty()) {
            take(portion, portion.grams().times(own), RowStatus.READ, LotAnalyses.BASIS);
        }
        return settled;
    }

    /** Returns whether all parts of something are settled, and it with them. */
    private static boolean isWholeOf(String whole, Set<String> settled) {
        List<String> parts = Constituents.WHOLES.getOrDefault(String.valueOf(Materials.keyOf(whole)), List.of());
        return !parts.isEmpty()
                && parts.stream()
                        .allMatch(part -> settled.stream().anyMatch(each -> part.equals(Materials.keyOf(each))));
    }

    private static boolean isPartOf(@Nullable String key, String whole) {
        return key != null
                && Constituents.WHOLES
                        .getOrDefault(String.valueOf(Materials.keyOf(whole)), List.of())
                        .contains(key);
    }

    /** @param settled what an analysis of the lot has said already; of the rest the tables speak */
    private void add(Portion portion, Plant plant, Set<String> settled) {
        List<String> expected = plant.holds().stream()
                .filter(watched::covers)
                .filter(held -> !isSettled(held, settled))
                .toList();
        if (expected.isEmpty()) {
            return; // a test holds the tables to it that what is composed is also expected
        }
        if (portion.form() == Portion.Form.AMOUNT_NOT_KNOWN) {
            notKnownFrom.add(portion.where());
            return;
        }
        List<Group> groups = portion.form() == Portion.Form.OIL ? groups(plant.oilMaterials()) : ofPlant(plant);
        if (isMissing(expected, groups)) {
            notKnownFrom.add(portion.where());
        }
        List<Group> rest = settled.isEmpty() ? groups : groups(plant.oilMaterials(), settled);
        if (!rest.isEmpty()) {
            boolean alone = portion.plants().size() == 1;
            Group worst = worst(rest);
            double least = alone ? rest.stream().mapToDouble(Group::least).min().orElse(0.0) : 0.0;
            Range share = new Range(Math.min(least, worst.most()), worst.most()).times(0.01);
            take(portion, portion.grams().times(share), worst.status(), worst.basis());
        }
    }

    /** A family is settled when each of its single members is. */
    private boolean isSettled(String held, Set<String> settled) {
        return settled.contains(held)
                || (held.equals(watched.name())
                        && watched.members().stream().allMatch(member -> settled.contains(member) || isSum(member)));
    }

    private static boolean isSum(String constituent) {
        return constituent.endsWith("(sum)");
    }

    private void take(Portion portion, Range more, RowStatus standing, String group) {
        grams = grams.plus(more);
        status = status.and(portion.isTaken() ? RowStatus.MEMORY : standing);
        from.add(portion.where());
        basis.add(group);
    }

    private boolean isMissing(List<String> expected, List<Group> groups) {
        for (String held : expected) {
            boolean known = groups.stream().anyMatch(group -> isKnownBy(held, group));
            if (!known) {
                return true;
            }
        }
        return false;
    }

    /** Of a family any member speaks for it, unless there are rows for the sum: bergapten alone is not all furocoumarins. */
    private boolean isKnownBy(String held, Group group) {
        if (held.equals(watched.name()) && !watched.members().contains(held)) {
            String sum = held + " (sum)";
            return !watched.members().contains(sum) || group.constituents().contains(sum);
        }
        return group.constituents().contains(held) || covering(held, group);
    }

    /** A row that gives the sum with something else, such as methyleugenol with elemicin, bounds each of both. */
    private static boolean covering(String held, Group group) {
        return group.constituents().stream().anyMatch(each -> holds(each, held));
    }

    private static Group worst(List<Group> groups) {
        Group worst = groups.get(0);
        for (Group group : groups) {
            worst = group.most() > worst.most() ? group : worst;
        }
        return worst;
    }

    /** Of a plant: what it holds itself, and what its oil brings; anything from none to all of it comes over. */
    private List<Group> ofPlant(Plant plant) {
        List<Group> groups = new ArrayList<>();
        for (Group group : groups(plant.plantMaterials())) {
            groups.add(new Group(group.basis(), 0.0, group.most(), group.status(), group.constituents()));
        }
        if (plant.oilMost() > 0.0) {
            for (Group oil : groups(plant.oilMaterials())) {
                double most = oil.most() * plant.oilMost() / 100.0;
                groups.add(new Group(oil.basis() + ", in the plant", 0.0, most, RowStatus.MEMORY, oil.constituents()));
            }
        }
        return groups;
    }

    /** What one source group says: the sum of its members of the watched substance, per cent. */
    private record Group(String basis, double least, double most, RowStatus status, Set<String> constituents) {}

    private List<Group> groups(List<String> materials) {
        return groups(materials, Set.of());
    }

    /** @param settled members that are left out, with the sums that hold them */
    private List<Group> groups(List<String> materials, Set<String> settled) {
        Map<String, Group> groups = new HashMap<>();
        List<String> order = new ArrayList<>();
        for (Composed row : knowledge.compositions()) {
            String constituent = row.constituent();
            boolean asked = watched.members().contains(constituent)
                    && settled.stream().noneMatch(said -> constituent.equals(said) || holds(constituent, said));
            if (asked && materials.contains(row.material())) {
                String key = row.material() + ": " + row.basis();
                if (!groups.containsKey(key)) {
                    order.add(key);
                }
                groups.merge(key, group(row), Amounts::together);
            }
        }
        return order.stream().map(groups::get).toList();
    }

    private static boolean holds(String sum, String constituent) {
        return isSum(sum) && sum.contains(constituent);
    }

    private static Group group(Composed row) {
        return new Group(row.basis(), row.least(), row.most(), row.status(), Set.of(row.constituent()));
    }

    private static Group together(Group one, Group other) {
        Set<String> both = new LinkedHashSet<>(one.constituents());
        both.addAll(other.constituents());
        return new Group(
                one.basis(),
                one.least() + other.least(),
                one.most() + other.most(),
                one.status().and(other.status()),
                both);
    }
}
