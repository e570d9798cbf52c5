package org.stillroom.studio.usecase.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.Safety;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.MakersOunce;

/**
 * A recipe file as it leaves the studio: below the recipe stands, as remarks, what is said of its drink.
 *
 * <p>There is no way to hand one out without it. What an earlier handing out has left in the text is written anew.
 */
public final class HandOut {
    /** The line with which it begins; what follows it in remarks is written anew each time. */
    static final String START =
            "# ---- Said of this drink by Stillroom, written anew whenever the recipe is handed out ----";

    private static final String UNKNOWN =
            "What is in it, and what rules say of it, is not known: it cannot be worked out.";

    private final OunceMeaning ounce;
    private final StageShelf stages;
    private final Grounds grounds;

    /** Makes it for a studio as it is now. */
    public HandOut(Store store) {
        this.ounce = MakersOunce.of(store.settings());
        this.stages = new StageShelf(store.recipes(), ounce);
        this.grounds = MakersGrounds.of(store);
    }

    /** Returns the file of a recipe that is kept as this text. */
    public String file(String text) {
        StringBuilder file = new StringBuilder(bare(text));
        if (file.length() > 0 && file.charAt(file.length() - 1) != '\n') {
            file.append('\n');
        }
        file.append(START).append('\n');
        said(text).forEach(line -> file.append("# ").append(line).append('\n'));
        return file.toString();
    }

    /** Takes off what an earlier handing out has left at the end. */
    private static String bare(String text) {
        int start = text.lastIndexOf(START);
        boolean remarksOnly =
                start >= 0 && text.substring(start).lines().allMatch(line -> line.isBlank() || line.startsWith("#"));
        return remarksOnly ? text.substring(0, start) : text;
    }

    private List<String> said(String text) {
        List<String> said = new ArrayList<>();
        said.add(Safety.STANDING);
        @Nullable Making making = making(text);
        if (making != null
                && PlanRecipe.answer(making, null, grounds, Workings.NONE)
                        instanceof PlanRecipe.Outcome.Worked worked) {
            Safety.ofPublished(worked.plan().plan(), grounds).forEach(finding -> said.add(told(finding)));
            Slips.of(worked.plan().plan()).forEach(finding -> said.add(told(finding)));
        } else {
            said.add(UNKNOWN);
        }
        return said;
    }

    private @Nullable Making making(String text) {
        return new RecipeReader(ounce).read(text) instanceof RecipeReading.Understood understood
                ? stages.making(understood.recipe()).making()
                : null;
    }

    private static String told(Finding finding) {
        String weight = finding.severity() == Severity.NOTE
                ? finding.verdict()
                : finding.severity().name().toLowerCase(Locale.ROOT) + ", " + finding.verdict();
        String place = finding.where().isEmpty() ? "" : finding.where() + ": ";
        String whose = finding.jurisdiction().isEmpty() ? "" : " (" + finding.jurisdiction() + ")";
        String line = weight + whose + ": " + place + finding.message() + " " + finding.remedy();
        return line.replaceAll("\\s+", " ").strip();
    }
}
