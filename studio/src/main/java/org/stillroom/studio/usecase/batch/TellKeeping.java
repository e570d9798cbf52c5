package org.stillroom.studio.usecase.batch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.batch.Held;
import org.stillroom.core.recipe.Condition;
import org.stillroom.core.recipe.Treatment;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.Keeping;
import org.stillroom.core.safety.Rules;
import org.stillroom.core.safety.Safety;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Store;

/**
 * Tells what rules say of what is in vessels and bottles, and whether it keeps, where and until when, by what really went in and what the
 * log says was measured of it and done with it.
 */
public final class TellKeeping {
    private final DrinkInVessel drinks;

    public TellKeeping(Store store, Book book) {
        this.drinks = new DrinkInVessel(store, book);
    }

    /**
     * What is told.
     *
     * @param isKnown whether what is in it is known
     * @param keeping where and until when; null where it is not known, and of an essence, which is no drink
     * @param findings stops first: what rules say of it as of a plan, what can grow in it, and why it keeps or does not
     */
    public record Found(boolean isKnown, @Nullable Keeping keeping, List<Finding> findings) {
        /** Nobody knows what is in it. */
        static final Found NOT_KNOWN = new Found(false, null, List.of());

        public Found {
            findings = List.copyOf(findings);
        }

        /** Returns what stops it, which stands before all figures. */
        public List<Finding> stops() {
            return findings.stream()
                    .filter(finding -> finding.severity() == Severity.STOP)
                    .toList();
        }

        /** Returns what has to be known where it is filled. */
        public List<Finding> atTheFilling() {
            return findings.stream().filter(Safety::isOfFilling).toList();
        }

        /** Returns the rest of it. */
        public List<Finding> besides() {
            return findings.stream()
                    .filter(finding -> finding.severity() != Severity.STOP)
                    .toList();
        }
    }

    /** Returns what is known of bottles besides what is in them; only what the log says of these very bottles counts. */
    static Condition condition(Bottling bottling) {
        Treatment treatment = bottling.pasteurised() == null ? Treatment.NONE : Treatment.PASTEURISED;
        return new Condition(bottling.each().ph(), treatment);
    }

    /** Returns how a vessel keeps. */
    public Found of(Batch batch, Held held) {
        return of(batch, held, new Condition(held.ph(), Treatment.NONE));
    }

    /** Returns how bottles keep. */
    public Found of(Batch batch, Bottling bottling) {
        return of(batch, bottling.each(), condition(bottling));
    }

    /** Returns what stops or cautions of anything that is left of a batch, in vessels and bottles, each once. */
    public List<Finding> warnings(Book book, Batch batch) {
        List<Found> all = new ArrayList<>();
        book.cellar().vessels(batch.id()).values().forEach(held -> all.add(of(batch, held)));
        book.cellar().bottlings(batch.id()).forEach(bottling -> all.add(of(batch, bottling)));
        return all.stream()
                .flatMap(found -> found.findings().stream())
                .filter(finding -> finding.severity() != Severity.NOTE && !Rules.isOfFigures(finding))
                .distinct()
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
    }

    private Found of(Batch batch, Held held, Condition condition) {
        if (held.isEmpty()) {
            return Found.NOT_KNOWN;
        }
        try {
            DrinkInVessel.Drunk drunk = drinks.of(batch, held);
            Grounds grounds = drunk.grounds().with(condition);
            Safety safety = Safety.of(drunk.plan(), grounds.serving(), grounds);
            return new Found(true, safety.keeping(), safety.ofStock());
        } catch (NoSuchElementException gone) {
            return Found.NOT_KNOWN; // the page says so
        }
    }
}
