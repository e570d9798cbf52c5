package org.stillroom.studio.web.compose;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.usecase.FollowDose;
import org.stillroom.studio.usecase.compose.CompareRecipes;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
import org.stillroom.studio.web.frame.FieldNames;
import org.stillroom.studio.wording.Words;

/**
 * Another ingredient in a line, as its page shows it.
 *
 * @param line its place in the form
 * @param with id of the lot or name of the built-in ingredient that was chosen; empty as long as none was
 * @param then where it goes on: "make", or empty for back to the recipe
 * @param shelf lots that can be chosen, by id and in words
 * @param builtIn ingredients that can be chosen by name
 * @param typed what the maker says of how strong both are, by the parts of the question
 * @param problems what is wrong with that
 * @param both constituents that the analyses of both lots list, in words; empty where there are none
 * @param swapped the recipe with the other ingredient in the same dose
 * @param offers the doses that follow
 * @param chosen the one that is looked at, or null
 * @param following the recipe with that dose, or null
 */
public record SwapView(
        WorkOnRecipe.Work work,
        int line,
        String with,
        String then,
        Map<String, String> shelf,
        List<String> builtIn,
        Map<String, List<String>> typed,
        List<Finding> problems,
        String both,
        RecipeForm swapped,
        List<FollowDose.Offer> offers,
        FollowDose.@Nullable Offer chosen,
        @Nullable RecipeForm following,
        CompareRecipes.Compared compared,
        Words words) {
    public SwapView {
        problems = List.copyOf(problems);
        offers = List.copyOf(offers);
    }

    public String use() {
        return work.form().typed("lines." + line + ".use");
    }

    /** Returns what is typed in a field; several texts stand apart by semicolons. */
    public String typed(String part) {
        return String.join("; ", typed.getOrDefault(part, List.of()));
    }

    public List<Finding> problemsAt(String part) {
        return problems.stream()
                .filter(each -> each.where().equals(FieldNames.PLAIN.name(part)))
                .toList();
    }

    /** Returns a dose that follows, in a sentence. */
    public String says(FollowDose.Offer offer) {
        String basis = words.say("compose.by." + offer.basis().name());
        String times = words.number(offer.found().times().value(), 2);
        return offer.isSame()
                ? words.say("compose.followSame", basis, times, words.marked(offer.before()))
                : words.say("compose.follow", basis, times, words.marked(offer.before()), words.marked(offer.after()));
    }

    /** Returns whether the dose that is looked at is another one. */
    public boolean isFollowing() {
        return chosen != null && !chosen.isSame();
    }

    public boolean goesOnMaking() {
        return then.equals("make");
    }
}
