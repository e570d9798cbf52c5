package org.stillroom.studio.usecase;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.label.BottleSizes;
import org.stillroom.core.label.Contained;
import org.stillroom.core.label.Duty;
import org.stillroom.core.label.GoneIn;
import org.stillroom.core.label.LegalClass;
import org.stillroom.core.label.LegalClasses;
import org.stillroom.core.label.Market;
import org.stillroom.core.label.StatedStrength;
import org.stillroom.core.label.Statements;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.TableSet;
import org.stillroom.core.safety.Counted;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.HouseRule;
import org.stillroom.core.safety.Keeping;
import org.stillroom.core.safety.Knowledge;
import org.stillroom.core.safety.Place;
import org.stillroom.core.safety.Range;
import org.stillroom.core.safety.Rules;
import org.stillroom.core.safety.Safety;
import org.stillroom.core.safety.Serving;
import org.stillroom.core.safety.WentIn;
import org.stillroom.planner.shopping.Money;

/** Tells what a liqueur may be called and what its label says. */
public final class TellLabel {
    /** Said on every label of a home. */
    public static final String NOT_FOR_SALE = "Homemade – not for sale";

    /** Rules whose findings belong on a label. */
    private static final Set<String> SAID_ON_LABELS = Set.of("eu-statement", "honey", "energy-factor");

    private TellLabel() {}

    /**
     * What is told.
     *
     * @param title of the recipe
     * @param market where the label is read
     * @param ingredients what went in, most by mass first
     * @param figures of the finished drink
     * @param counted how far its energy and its sugar are counted
     * @param strength as it is stated
     * @param classes lawful names, with what is missed
     * @param called those of them that were asked for; empty where none was
     * @param servingMillilitres one serving
     * @param bottleMillilitres one bottle
     * @param lawfulInEu whether spirits may be sold in this size
     * @param lawfulInUs the same in the USA
     * @param drinks standard drinks by country
     * @param statements what the label says whatever is in it
     * @param duty on paper
     * @param findings statements and allergens that follow from what is in it
     * @param borne the duty that counts into what a bottle costs its maker, or null where none does
     * @param cost what goes into a bottle costs
     * @param link address that the label leads to, or null
     * @param tables in force
     * @param keeping where it keeps until when, or null where it is no drink
     * @param against what stops it as a drink, house rules that are not shown to be kept, poisons that its words name, doses
     *     that nobody said are meant, and a name of the law in its title that it misses
     * @param doses the doses of oil that nobody said are meant, by the names of their lines
     */
    public record Found(
            String title,
            Market market,
            List<String> ingredients,
            Figures figures,
            Counted counted,
            StatedStrength strength,
            List<LegalClass> classes,
            List<LegalClass> called,
            double servingMillilitres,
            double bottleMillilitres,
            boolean lawfulInEu,
            boolean lawfulInUs,
            List<Knowledge.StandardDrink> drinks,
            List<Statements.Statement> statements,
            List<Duty> duty,
            @Nullable Duty borne,
            List<Finding> findings,
            IngredientCost cost,
            @Nullable String link,
            TableSet tables,
            @Nullable Keeping keeping,
            List<Finding> against,
            List<String> doses) {
        public Found {
            against = List.copyOf(against);
            doses = List.copyOf(doses);
            ingredients = List.copyOf(ingredients);
            classes = List.copyOf(classes);
            called = List.copyOf(called);
            drinks = List.copyOf(drinks);
            statements = List.copyOf(statements);
            duty = List.copyOf(duty);
            findings = List.copyOf(findings);
        }

        /** Returns what means that nobody is to drink it. */
        public List<Finding> notForDrinking() {
            return against.stream().filter(Rules::isNotForDrinking).toList();
        }

        /** Returns whether a rule forbids it. */
        public boolean isStopped() {
            return against.stream().anyMatch(finding -> finding.severity() == Severity.STOP);
        }

        /** Returns the same with an address that it leads to. */
        public Found leadingTo(String address) {
            return with(borne, address, called, classes, statements);
        }

        /**
         * Returns the same with the lawful names that a text means, in any letters.
         *
         * @throws Impossible when it means none
         */
        public Found calling(String name) {
            List<LegalClass> meant =
                    classes.stream().filter(each -> each.isCalled(name)).toList();
            if (meant.isEmpty()) {
                throw new Impossible(
                        "called",
                        "\"" + name.strip() + "\" is no lawful name that is known here.",
                        "Write one of: "
                                + String.join(
                                        "; ",
                                        classes.stream()
                                                .map(LegalClass::name)
                                                .distinct()
                                                .toList())
                                + ".");
            }
            return with(borne, link, meant, classes, statements);
        }

        /**
         * Returns the same with the duty of a country counted into what a bottle costs.
         *
         * @throws Impossible when the table holds no rate of it for this strength
         */
        public Found bearing(String country) {
            String meant = Duty.country(tables, country)
                    .orElseThrow(() -> new Impossible(
                            "duty",
                            "\"" + country.strip() + "\" is no country of the table of duty.",
                            "Write one of: " + String.join(", ", Duty.countries(tables)) + "."));
            Duty rate = duty.stream()
                    .filter(each -> each.country().equals(meant))
                    .findFirst()
                    .orElseThrow(() -> new Impossible(
                            "duty",
                            "the table of duty has no rate of " + meant + " for "
                                    + QuantityWords.fixed(strength.percent(), 1) + " % vol.",
                            "Leave it out, or take a table that has one."));
            return with(rate, link, called, classes, statements);
        }

        /** Returns what a bottle costs its maker, with the duty that it bears where one counts. */
        public List<Money> together() {
            return borne == null ? cost.perBottle() : cost.with(borne);
        }

        /** Returns the same with the names and statements of the law of one place alone. */
        public Found only(Market place) {
            return with(
                    borne,
                    link,
                    called.stream().filter(each -> each.market() == place).toList(),
                    classes.stream().filter(each -> each.market() == place).toList(),
                    statements.stream().filter(each -> each.market() == place).toList());
        }

        /** Returns the lawful name that its title bears and that it may have, if there is one. */
        public Optional<LegalClass> titled() {
            return TitleName.met(title, market, classes);
        }

        /** Returns the names that it may have, as far as is seen. */
        public List<LegalClass> open() {
            return classes.stream().filter(each -> !each.isMissed()).toList();
        }

        /** Returns the names that it misses by so little that somebody can be after them. */
        public List<LegalClass> near() {
            return classes.stream().filter(LegalClass::isMissedNearly).toList();
        }

        /** Returns the names that are out of its reach: it is far too weak, or something that they ask for is surely not in it. */
        public List<LegalClass> far() {
            return classes.stream()
                    .filter(each -> each.isMissed() && !each.isMissedNearly())
                    .toList();
        }

        /** Returns the countries whose rates of duty are for other strengths; whether any is due there, the table does not say. */
        public List<String> withoutDuty() {
            return Duty.countries(tables).stream()
                    .filter(country ->
                            duty.stream().noneMatch(each -> each.country().equals(country)))
                    .toList();
        }

        private Found with(
                @Nullable Duty duty,
                @Nullable String address,
                List<LegalClass> names,
                List<LegalClass> classes,
                List<Statements.Statement> statements) {
            return new Found(
                    title,
                    market,
                    ingredients,
                    figures,
                    counted,
                    strength,
                    classes,
                    names,
                    servingMillilitres,
                    bottleMillilitres,
                    lawfulInEu,
                    lawfulInUs,
                    drinks,
                    statements,
                    this.duty,
                    duty,
                    findings,
                    cost,
                    address,
                    tables,
                    keeping,
                    against,
                    doses);
        }

        /** Returns grams of ethanol in a serving. */
        public double ethanolPerServing() {
            return ethanol() * servingMillilitres;
        }

        /** Returns grams of ethanol in a bottle. */
        public double ethanolPerBottle() {
            return ethanol() * bottleMillilitres;
        }

        private double ethanol() {
            return figures.contents().grams(Substance.ETHANOL) / figures.value(Figure.VOLUME_20C);
        }
    }

    /**
     * Which label is asked for.
     *
     * @param market where it is read
     * @param laws whose law can speak against it
     * @param leftIn what stays in the bottle
     */
    public record Asking(
            Market market,
            Set<Place> laws,
            StatedStrength.LeftIn leftIn,
            double servingMillilitres,
            double bottleMillilitres) {
        /** A label that is read in one place, whose law alone counts; what the EU wants said is worth saying in the USA too. */
        public Asking(
                Market market, StatedStrength.LeftIn leftIn, double servingMillilitres, double bottleMillilitres) {
            this(market, places(market), leftIn, servingMillilitres, bottleMillilitres);
        }

        public Asking {
            laws = Set.copyOf(laws);
        }

        /** Returns the same where nobody said in which place it is read: both laws can speak against it. */
        public Asking byBothLaws() {
            return new Asking(market, EnumSet.allOf(Place.class), leftIn, servingMillilitres, bottleMillilitres);
        }

        private static Set<Place> places(Market market) {
            return market == Market.US ? EnumSet.of(Place.EU, Place.US) : EnumSet.of(Place.EU);
        }
    }

    /**
     * Returns the label of what a recipe makes.
     *
     * @param grounds what it is judged on, with what is known of the finished drink
     * @throws Impossible when it makes nothing
     */
    public static Found answer(WorkedPlan worked, Asking asking, Grounds grounds) {
        Plan plan = worked.plan();
        if (plan.liquid().total() == 0.0) {
            throw nothing();
        }
        IngredientCost cost =
                IngredientCost.of(plan, worked.figures().value(Figure.VOLUME_20C) / asking.bottleMillilitres());
        return answer(plan, grounds, asking, cost);
    }

    /**
     * Returns the label of what is in a bottle.
     *
     * @param plan what it is made of
     * @param grounds what it is judged on, with what is known of it besides
     * @param cost of what is in the bottle
     * @throws Impossible when there is nothing
     */
    public static Found answer(Plan plan, Grounds grounds, Asking asking, IngredientCost cost) {
        Figures figures = Liquid.figures(plan.liquid(), Temperature.TWENTY_CELSIUS);
        if (!figures.has(Figure.STRENGTH)) {
            throw nothing();
        }
        TableSet tables = grounds.knowledge().tables();
        double bottle = asking.bottleMillilitres();
        StatedStrength strength =
                StatedStrength.of(tables, figures.value(Figure.STRENGTH), asking.leftIn(), asking.market());
        Serving serving = new Serving(asking.servingMillilitres(), 1.0, 70.0, asking.laws());
        Safety safety = Safety.of(plan, serving, grounds);
        List<LegalClass> classes = LegalClasses.of(tables, figures, contained(safety));
        List<Slips.Asked> asked = Slips.asked(plan);
        List<Finding> against = Stream.of(
                        safety.findings().stream().filter(TellLabel::isAgainst),
                        asked.stream().map(Slips.Asked::finding),
                        TitleName.missed(plan.recipe().title(), asking.market(), classes).stream())
                .flatMap(each -> each)
                .toList();
        List<Finding> said =
                safety.findings().stream().filter(TellLabel::isSaidOnLabels).toList();
        return new Found(
                plan.recipe().title(),
                asking.market(),
                ingredients(plan),
                figures,
                Counted.of(safety.drink()),
                strength,
                classes,
                List.of(),
                asking.servingMillilitres(),
                bottle,
                BottleSizes.isLawful(tables, Market.EU, bottle),
                BottleSizes.isLawful(tables, Market.US, bottle),
                grounds.knowledge().standardDrinks(),
                Statements.of(strength),
                Duty.of(tables, strength.percent(), bottle),
                null,
                said,
                cost,
                null,
                tables,
                safety.keeping(),
                against,
                asked.stream().map(Slips.Asked::name).distinct().toList());
    }

    private static List<String> ingredients(Plan plan) {
        Map<String, Double> grams = new LinkedHashMap<>();
        plan.lines().forEach(line -> grams.merge(line.name(), line.grams(), Double::sum));
        return grams.entrySet().stream()
                .filter(each -> each.getValue() > 0.0)
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .map(Map.Entry::getKey)
                .toList();
    }

    private static Impossible nothing() {
        return new Impossible("recipe", "it makes nothing.", "Give its lines amounts.");
    }

    private static Contained contained(Safety safety) {
        Map<String, Contained.Part> parts = new HashMap<>();
        safety.held()
                .forEach((what, held) -> parts.put(
                        what,
                        new Contained.Part(
                                held.gramsPerLitre().least(),
                                held.isKnown() ? held.gramsPerLitre().most() : Double.POSITIVE_INFINITY)));
        return new Contained(
                parts, safety.wentIn().stream().map(TellLabel::goneIn).toList());
    }

    private static GoneIn goneIn(WentIn went) {
        Set<GoneIn.Tells> tells = EnumSet.noneOf(GoneIn.Tells.class);
        if (went.tellsPlants()) {
            tells.add(GoneIn.Tells.PLANTS);
        }
        if (went.tellsAlcohol()) {
            tells.add(GoneIn.Tells.ALCOHOL);
        }
        if (went.isWithoutFlavour()) {
            tells.add(GoneIn.Tells.NO_FLAVOUR);
        }
        return new GoneIn(
                went.name(),
                went.kind(),
                part(went.alcohol()),
                part(went.volume()),
                tells,
                went::isNamed,
                went::plantsBeside);
    }

    private static Contained.Part part(Range range) {
        return new Contained.Part(range.least(), range.most());
    }

    private static boolean isAgainst(Finding finding) {
        boolean asks = finding.jurisdiction().equals(HouseRule.JURISDICTION) || Rules.isOfPoison(finding);
        return finding.severity() == Severity.STOP || (asks && finding.severity() == Severity.CAUTION);
    }

    private static boolean isSaidOnLabels(Finding finding) {
        return SAID_ON_LABELS.contains(finding.rule()) || Rules.isOfAllergens(finding);
    }
}
