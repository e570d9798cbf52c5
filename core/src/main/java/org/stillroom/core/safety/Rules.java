package org.stillroom.core.safety;

import java.util.List;

/** The rules in force, in the order in which they are asked; what passes a limit in law comes before guidance. */
public final class Rules {
    /** Every rule. */
    public static final List<Rule> ALL = List.of(
            new Rule("not-for-drinking", "Oils that are not for drinking stop the recipe.", NotForDrinking::judge),
            new Rule("plant", "Poisonous plants stop the recipe; others ask for care.", PoisonousPlants::judge),
            new Rule("named", "Names and steps that call for a caution.", NamedCautions::judge),
            new Rule("eu-not-as-such", "EU: fifteen substances must not be added as such.", EuLaw::notAsSuch),
            new Rule("eu-restricted-plant", "EU: plants that are banned or restricted.", EuLaw::restrictedPlants),
            new Rule("eu-maximum", "EU: the most of a substance in the drink as consumed.", EuMaxima::judge),
            new Rule("eu-use-limit", "EU: the most of quinine, camphor, glycyrrhizic acid.", EuLaw::useLimits),
            new Rule("eu-statement", "EU: statements on liquorice, caffeine, quinine.", EuLaw::statements),
            new Rule("us-prohibited", "US: calamus, coumarin, tonka, safrole.", UsLaw::prohibited),
            new Rule("us-limit", "US: thujone free, quinine, glycyrrhizin, prussic acid.", UsLaw::limits),
            new Rule("us-listed", "US: whether oils and plants are listed, and how.", UsListing::judge),
            new Rule("intake", "What a day's servings come to beside intake guidance.", IntakeGuidance::judge),
            new Rule("not-known", "What is not known is said.", NotKnown::judge),
            new Rule("neat-oil", "Essential oil per serving and per batch.", Handling::neatOil),
            new Rule("growth", "Whether strength and sugar keep it.", Growth::judge),
            new Rule("flash-point", "How easily its liquids catch fire.", Handling::flashPoint),
            new Rule("alcohol", "The alcohol itself.", AlcoholItself::judge));

    private Rules() {}
}
