package org.stillroom.studio.usecase.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.BottleNumbers;
import org.stillroom.core.batch.Event;
import org.stillroom.core.batch.Place;
import org.stillroom.core.batch.Portion;
import org.stillroom.core.batch.Wastage;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;

/** What an entry of the log of a batch says, in a sentence for the command line and for other programs. */
final class EntryWords {
    private final Book book;
    private final Batch batch;

    private EntryWords(Book book, Batch batch) {
        this.book = book;
        this.batch = batch;
    }

    static String of(Book book, Batch batch, HistoryEntry entry) {
        return new EntryWords(book, batch).told(entry);
    }

    private String told(HistoryEntry entry) {
        Event event = EventBodies.event(entry);
        if (event instanceof Event.Measured measured) {
            return "measured in " + place(measured.place()) + ": " + figures(measured);
        } else if (event instanceof Event.Added added) {
            return "added to " + place(added.place()) + ": "
                    + amount(new Mass(added.contents().total())) + " of " + added.name();
        } else if (event instanceof Event.Moved moved) {
            return (moved.isBlend() ? "blended: from " : "moved from ") + place(moved.from()) + " to "
                    + place(moved.to()) + ": "
                    + (moved.taken() instanceof Portion.Some some ? amount(some.amount()) : "all of it")
                    + losses(moved.losses());
        } else if (event instanceof Event.Wasted wasted) {
            return "lost from " + place(wasted.place()) + losses(List.of(wasted.loss()));
        } else if (event instanceof Event.Evaporated evaporated) {
            Double strength = evaporated.strengthAfter();
            return "evaporated from " + place(evaporated.place()) + ": " + amount(evaporated.lost())
                    + (strength == null ? "" : "; " + QuantityWords.fixed(strength, 1) + " % vol afterwards");
        } else if (event instanceof Event.Bottled bottled) {
            return "bottled from " + place(bottled.place()) + ": "
                    + bottled.fills().stream()
                            .map(fill -> fill.count() + " x " + amount(new Volume(fill.millilitres())))
                            .collect(Collectors.joining(", "))
                    + losses(bottled.losses());
        } else if (event instanceof Event.PhMeasured measured) {
            return "pH of " + of(measured.of(), measured.place(), measured.bottles()) + ": "
                    + QuantityWords.plain(measured.ph());
        } else if (event instanceof Event.Analysed analysed) {
            return "found by analysis in " + of(analysed.of(), analysed.place(), analysed.bottles()) + ": "
                    + analysed.found().told();
        } else if (event instanceof Event.Pasteurised pasteurised) {
            return "pasteurised: " + bottles(pasteurised.bottles());
        } else if (event instanceof Event.Undone undo) {
            return "taken back: " + told(book.entry(undo.entry()));
        }
        return ofNoVessel(entry);
    }

    private String ofNoVessel(HistoryEntry entry) {
        Long undoes = entry.undoes();
        if (undoes != null) {
            return "taken back: " + told(book.entry(undoes));
        }
        Waits.Said said = Waits.said(entry, book);
        if (said != null) {
            String what = said.what().name().toLowerCase(Locale.ROOT);
            return switch (entry.kind()) {
                case Waits.WAITS -> "waits: " + what + ", until " + said.until();
                case Waits.POSTPONED -> "postponed: " + what + ", until " + said.until();
                default -> "seen to: " + what;
            };
        }
        Double score = Notes.score(entry);
        return "noted" + (score == null ? "" : ": " + QuantityWords.plain(score) + " of 10");
    }

    private String of(Event.Of of, Place place, @Nullable BottleNumbers bottles) {
        return of == Event.Of.VESSEL ? place(place) : bottles(bottles);
    }

    private static String bottles(@Nullable BottleNumbers bottles) {
        if (bottles == null) {
            return "all bottles";
        }
        return bottles.count() == 1
                ? "bottle " + bottles.first()
                : "bottles " + bottles.first() + " to " + bottles.last();
    }

    private String place(Place place) {
        return place.batch().equals(batch.id())
                ? place.vessel()
                : place.vessel() + " of batch " + book.batch(place.batch()).number();
    }

    private static String amount(Amount amount) {
        return amount instanceof Mass mass ? QuantityWords.metric(mass) : QuantityWords.metric((Volume) amount);
    }

    private static String losses(List<Wastage> losses) {
        return losses.stream()
                .map(loss -> "; " + amount(loss.amount())
                        + switch (loss.cause()) {
                            case FILTER -> " held by the filter";
                            case SEDIMENT -> " left above the sediment";
                            case SAMPLE -> " as sample";
                            case OTHER -> " spilt, drunk or other";
                        })
                .collect(Collectors.joining());
    }

    private static String figures(Event.Measured measured) {
        List<String> figures = new ArrayList<>();
        for (Asked asked : Asked.values()) {
            Double value = measured.figures().get(asked);
            Double doubt = measured.doubt().get(asked);
            if (value != null) {
                figures.add(asked.label() + " " + QuantityWords.fixed(value, asked.decimals())
                        + (doubt == null ? "" : " ± " + QuantityWords.fixed(doubt, asked.decimals())) + " "
                        + asked.unit());
            }
        }
        return String.join(", ", figures);
    }
}
