package org.stillroom.studio.web.rest;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Births;
import org.stillroom.core.batch.BottleNumbers;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.batch.Event;
import org.stillroom.core.batch.Flow;
import org.stillroom.core.batch.Held;
import org.stillroom.core.batch.Outlay;
import org.stillroom.core.batch.Place;
import org.stillroom.core.batch.Portion;
import org.stillroom.core.batch.Wastage;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Correction;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.Assay;
import org.stillroom.core.safety.Keeping;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.batch.Forecasts;
import org.stillroom.studio.usecase.batch.Notes;
import org.stillroom.studio.usecase.batch.TellKeeping;
import org.stillroom.studio.usecase.batch.Waiting;
import org.stillroom.studio.usecase.batch.Waits;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.wording.Words;

/** A batch in the words of its reader; it looks things up and words them, and computes nothing. */
public final class BatchView {
    private final Book book;
    private final Batch batch;
    private final BatchSheet sheet;
    private final Words words;
    private final List<BatchForm> forms;
    private final List<Waiting> waits;
    private final List<Forecasts.Offer> offers;
    private final TellKeeping keeping;
    private final Instant now;

    BatchView(
            Book book,
            Batch batch,
            Words words,
            List<BatchForm> forms,
            List<Waiting> waits,
            List<Forecasts.Offer> offers,
            TellKeeping keeping,
            Instant now) {
        this.book = book;
        this.batch = batch;
        this.sheet = FinishMake.sheet(batch);
        this.words = words;
        this.forms = List.copyOf(forms);
        this.waits = List.copyOf(waits);
        this.offers = List.copyOf(offers);
        this.keeping = keeping;
        this.now = now;
    }

    /** Returns what it waits for, each with its day. */
    public List<String> waits() {
        return waits.stream()
                .map(waiting -> words.say("rest.waitsUntil", RestView.what(words, waiting), words.day(waiting.until())))
                .toList();
    }

    public List<Forecasts.Offer> offers() {
        return offers;
    }

    /** Returns a forecast as a sentence. */
    public String told(Forecasts.Offer offer) {
        return words.counted("rest.offer." + offer.kind().name(), days(offer), vessel(offer.of()));
    }

    /** Returns its days as they are taken, whole ones. */
    public long days(Forecasts.Offer offer) {
        return (long) Math.ceil(offer.days());
    }

    public Batch batch() {
        return batch;
    }

    public BatchSheet sheet() {
        return sheet;
    }

    public List<BatchForm> forms() {
        return forms;
    }

    /** Returns a form, or null when this batch has none of that kind now. */
    public @Nullable BatchForm form(String act) {
        return forms.stream().filter(form -> form.act().equals(act)).findFirst().orElse(null);
    }

    /**
     * A vessel that something is in.
     *
     * @param key what the log calls it
     * @param name in words
     * @param doubt half-widths of its figures, where they are known
     * @param keeps whether it keeps
     */
    public record Vessel(String key, String name, Held held, Map<Asked, Double> doubt, TellKeeping.Found keeps) {
        public Vessel {
            doubt = Map.copyOf(doubt);
        }
    }

    public List<Vessel> vessels() {
        List<Vessel> vessels = new ArrayList<>();
        book.cellar().vessels(batch.id()).forEach((place, held) -> {
            if (!held.isEmpty()) {
                vessels.add(new Vessel(
                        place.vessel(), vessel(place.vessel()), held, held.doubt(), keeping.of(batch, held)));
            }
        });
        return vessels;
    }

    /** Returns a figure of a vessel with its doubt and unit. */
    public String figure(Vessel vessel, Asked asked) {
        double value = Correction.of(asked, vessel.held().essentials());
        Double doubt = vessel.doubt().get(asked);
        int decimals = asked == Asked.SUGAR && (doubt == null || doubt >= 0.95) ? 0 : 1;
        String sure = doubt == null || doubt < 0.05 ? "" : " ± " + words.number(doubt, decimals);
        return words.number(value, decimals) + sure + "\u00a0" + words.say("rest.plainUnit." + asked.name());
    }

    /** Returns the doubt of the volume of a vessel, empty where it is not known. */
    public String volumeDoubt(Vessel vessel) {
        Double doubt = vessel.doubt().get(Asked.VOLUME);
        return doubt == null ? "" : "± " + words.number(doubt, doubt < 9.95 ? 1 : 0) + "\u00a0mL";
    }

    /** Returns where a vessel is gauged. */
    public String gauge(Vessel vessel) {
        return "/make/gauge?batch=" + batch.id() + "&vessel=" + URLEncoder.encode(vessel.key(), StandardCharsets.UTF_8);
    }

    private String vessel(String name) {
        return vessel(words, name);
    }

    /** Returns what a vessel is called; numbers alone are counted. */
    static String vessel(Words words, String name) {
        return name.matches("\\d+") ? words.say("rest.vessel", name) : name;
    }

    private String place(Place place) {
        if (place.batch().equals(batch.id())) {
            return vessel(place.vessel());
        }
        return book.batches().stream()
                .filter(each -> each.id().equals(place.batch()))
                .map(each -> words.say(
                        "rest.vesselOf",
                        vessel(place.vessel()),
                        "" + each.number(),
                        FinishMake.sheet(each).title()))
                .findFirst()
                .orElse(vessel(place.vessel()));
    }

    public String volume(Held held) {
        return words.amount(new Volume(held.essentials().millilitres()));
    }

    public String mass(Held held) {
        return words.amount(new Mass(held.grams()));
    }

    public String age(Held held) {
        Births births = held.births();
        if (births == null) {
            return "";
        }
        String mean = days(births.meanDays(now));
        String youngest = days(births.youngestDays(now));
        return mean.equals(youngest) ? mean : words.say("rest.ages", mean, youngest);
    }

    /** Returns days as days, from two years on as years. */
    private String days(double days) {
        return days < 730
                ? words.say("rest.days", "" + (long) Math.max(0, days))
                : words.say("rest.years", words.number(days / 365.25, 1));
    }

    public String cost(Outlay outlay) {
        return cost(words, outlay);
    }

    /** Returns money, and that it was more where a price is not known. */
    static String cost(Words words, Outlay outlay) {
        List<String> sums = new ArrayList<>();
        outlay.money().forEach((currency, amount) -> sums.add(words.number(amount, 2) + "\u00a0" + currency));
        if (sums.isEmpty()) {
            return outlay.complete() ? "" : words.say("rest.costNotKnown");
        }
        String sum = String.join(" + ", sums);
        return outlay.complete() ? sum : words.say("rest.costAtLeast", sum);
    }

    /** A note as it is listed. */
    public record Noted(String when, String score, String words, String photo) {}

    /** Returns the notes, latest first. */
    public List<Noted> notes() {
        List<Noted> notes = new ArrayList<>();
        for (Notes.Note note : Notes.of(book, batch.id())) {
            Double score = note.score();
            String photo = note.photo();
            notes.add(
                    0,
                    new Noted(
                            words.moment(note.at()),
                            score == null ? "" : words.say("rest.scored", words.plain(score)),
                            note.words(),
                            photo == null ? "" : "/rest/photo/" + photo));
        }
        return notes;
    }

    /** Bottles as they are listed. */
    public record Filled(
            String numbers,
            String each,
            String strength,
            String cost,
            String costNote,
            String day,
            String ph,
            String analysed,
            String pasteurised,
            String keeps,
            List<Finding> stops,
            List<Finding> findings,
            String labels) {}

    /** Returns the bottles, as they were filled. */
    public List<Filled> bottles() {
        return book.cellar().bottlings(batch.id()).stream().map(this::filled).toList();
    }

    private Filled filled(Bottling bottling) {
        TellKeeping.Found keeps = keeping.of(batch, bottling);
        String numbers = bottling.first() == bottling.last()
                ? "" + bottling.first()
                : words.say("rest.numbers", "" + bottling.first(), "" + bottling.last());
        return new Filled(
                numbers,
                words.amount(new Volume(bottling.fill().millilitres())),
                words.number(bottling.each().essentials().strength(), 1) + "\u00a0% vol",
                cost(bottling.each().outlay()),
                bottling.fill().bottle() == null ? words.say("rest.withoutBottle") : "",
                words.moment(bottling.at()),
                ph(bottling.each()),
                found(bottling.each().analysed()),
                bottling.pasteurised() == null ? "" : words.day(day(bottling.pasteurised())),
                keeps(keeps, bottling),
                keeps.stops(),
                keeps.besides(),
                "/rest/batch/" + batch.id() + "/labels/" + bottling.entry() + "-" + bottling.first() + ".pdf");
    }

    /** Returns the pH as it was measured; empty where nobody did. */
    public String ph(Held held) {
        Double ph = held.ph();
        return ph == null ? "" : words.number(ph, 1);
    }

    /** Returns where bottles keep until which day, in one phrase. */
    private String keeps(TellKeeping.Found found, Bottling bottling) {
        Keeping keeps = found.keeping();
        if (keeps == null) {
            return found.isKnown() ? "" : words.say("rest.keepsNotKnown");
        }
        String where = words.say("rest.keeps." + keeps.where().name());
        String until = keeps.days() == 0
                ? where
                : words.say(
                        "rest.keepsUntil", where, words.day(day(bottling.at()).plusDays(keeps.days())));
        return found.stops().isEmpty() ? until : words.say("rest.stopped", until);
    }

    private static LocalDate day(Instant moment) {
        return moment.atZone(ZoneId.systemDefault()).toLocalDate();
    }

    /** A row of what came in and went out. */
    public record Row(String what, String volume, String part) {}

    /** Returns what came into the batch and left it, each kind together, in mL at 20 °C. */
    public List<Row> balance() {
        Map<Flow.Kind, Double> sums = new EnumMap<>(Flow.Kind.class);
        Map<Wastage.Cause, Double> losses = new EnumMap<>(Wastage.Cause.class);
        for (Flow flow : book.cellar().flows(batch.id())) {
            double millilitres = millilitres(flow.in()) - millilitres(flow.out());
            Wastage.Cause cause = flow.cause();
            if (cause == null) {
                sums.merge(flow.kind(), millilitres, Double::sum);
            } else {
                losses.merge(cause, millilitres, Double::sum);
            }
        }
        double begun = cameIn(sums);
        List<Row> rows = new ArrayList<>();
        sums.forEach((kind, sum) -> rows.add(row("rest.flow." + kind.name(), sum, begun)));
        losses.forEach((cause, sum) -> rows.add(row("rest.cause." + cause.name(), sum, begun)));
        double there = book.cellar().vessels(batch.id()).values().stream()
                .mapToDouble(held -> held.essentials().millilitres())
                .sum();
        rows.add(row("rest.flow.there", there, begun));
        return rows;
    }

    private static double cameIn(Map<Flow.Kind, Double> sums) {
        return sums.getOrDefault(Flow.Kind.BEGUN, 0.0)
                + sums.getOrDefault(Flow.Kind.ADDED, 0.0)
                + sums.getOrDefault(Flow.Kind.RECEIVED, 0.0);
    }

    /** Returns what the parts of the balance are parts of. */
    public String partOf() {
        boolean more = book.cellar().flows(batch.id()).stream()
                .anyMatch(flow -> flow.kind() == Flow.Kind.ADDED || flow.kind() == Flow.Kind.RECEIVED);
        return words.say(more ? "rest.partOfAll" : "rest.partOfMade");
    }

    private Row row(String key, double millilitres, double begun) {
        String part = begun > 0.0 ? words.number(100.0 * millilitres / begun, 1) + "\u00a0%" : "";
        return new Row(
                words.say(key), words.number(millilitres, 0).replace('-', '−') + "\u00a0mL", part.replace('-', '−'));
    }

    private static double millilitres(Contents contents) {
        return contents.total() > 0.0 ? VolumeModel.atTwenty().millilitres(contents.toGrams()) : 0.0;
    }

    /** An entry of the log as it is shown. */
    public record Line(long id, String when, String told, String note, boolean undone, boolean undoable) {}

    /** Returns the log, latest first. */
    public List<Line> log() {
        List<Line> lines = new ArrayList<>();
        for (HistoryEntry entry : book.entries(batch.id())) {
            boolean undone = book.isUndone(entry);
            boolean own = entry.subject().equals("batch:" + batch.id());
            lines.add(
                    0,
                    new Line(
                            entry.id(),
                            words.moment(Book.at(entry)),
                            told(entry),
                            Book.note(entry),
                            undone,
                            !undone && own));
        }
        return lines;
    }

    private String told(HistoryEntry entry) {
        Event event = Book.event(entry);
        if (event instanceof Event.Measured measured) {
            return words.say("rest.told.measured", place(measured.place()), figures(measured));
        } else if (event instanceof Event.Added added) {
            String much = words.amount(new Mass(added.contents().total()));
            return words.say("rest.told.added", place(added.place()), much, kitchen(added.name()));
        } else if (event instanceof Event.Moved moved) {
            return words.say(
                            moved.isBlend() ? "rest.told.blended" : "rest.told.moved",
                            place(moved.from()),
                            place(moved.to()),
                            portion(moved.taken()))
                    + losses(moved.losses());
        } else if (event instanceof Event.Wasted wasted) {
            return words.say("rest.told.lost", place(wasted.place())) + losses(List.of(wasted.loss()));
        } else if (event instanceof Event.Evaporated evaporated) {
            Double strength = evaporated.strengthAfter();
            String then = strength == null ? "" : " " + words.say("rest.told.then", words.number(strength, 1));
            return words.say("rest.told.evaporated", place(evaporated.place()), words.amount(evaporated.lost())) + then;
        } else if (event instanceof Event.Bottled bottled) {
            return words.say("rest.told.bottled", place(bottled.place()), fills(bottled)) + losses(bottled.losses());
        } else if (event instanceof Event.PhMeasured measured) {
            String of = of(measured.of(), measured.place(), measured.bottles());
            return words.say("rest.told.ph", of, words.number(measured.ph(), 1));
        } else if (event instanceof Event.Analysed analysed) {
            String of = of(analysed.of(), analysed.place(), analysed.bottles());
            return words.say("rest.told.analysed", of, found(analysed.found()));
        } else if (event instanceof Event.Pasteurised pasteurised) {
            return words.say("rest.told.pasteurised", bottles(pasteurised.bottles()));
        } else if (event instanceof Event.Undone undo) {
            return words.say("rest.told.undone", told(book.entry(undo.entry())));
        }
        return ofNoVessel(entry);
    }

    private String ofNoVessel(HistoryEntry entry) {
        Long undoes = entry.undoes();
        if (undoes != null) {
            return words.say("rest.told.undone", told(book.entry(undoes)));
        }
        Waits.Said said = Waits.said(entry, book);
        if (said != null) {
            LocalDate until = said.until();
            return words.say(
                    "rest.told." + entry.kind(),
                    words.say("rest.what." + said.what().name()),
                    until == null ? "" : words.day(until));
        }
        Double score = Notes.score(entry);
        return score == null
                ? words.say("rest.told." + entry.kind())
                : words.say("rest.told.scored", words.say("rest.scored", words.plain(score)));
    }

    private String of(Event.Of of, Place place, @Nullable BottleNumbers bottles) {
        return of == Event.Of.VESSEL ? place(place) : bottles(bottles);
    }

    /** Returns what a laboratory found, in the words of its reader; empty where none looked. */
    public String found(Assay assay) {
        return assay.parts().stream()
                .map(part -> part.name() + (part.bounded() ? " < " : " ") + words.marked(part.told()) + "\u00a0"
                        + part.unit())
                .collect(Collectors.joining("; "));
    }

    private String bottles(@Nullable BottleNumbers numbers) {
        return numbers == null ? words.say("rest.allBottles") : bottles(words, numbers.first(), numbers.last());
    }

    /** Returns what bottles are called by their numbers. */
    static String bottles(Words words, int first, int last) {
        return first == last
                ? words.say("rest.bottleNumber", "" + first)
                : words.say("rest.bottleNumbers", "" + first, "" + last);
    }

    private String kitchen(String name) {
        return kitchen(words, name);
    }

    /** Returns what every kitchen has in the words of its reader; anything else as it is called. */
    static String kitchen(Words words, String name) {
        return switch (name) {
            case "water" -> words.say("rest.kitchen.water");
            case "white sugar" -> words.say("rest.kitchen.sugar");
            case "citric acid" -> words.say("rest.kitchen.acid");
            default -> name;
        };
    }

    private String portion(Portion portion) {
        return portion instanceof Portion.Some some ? words.amount(some.amount()) : words.say("rest.all");
    }

    private String losses(List<Wastage> losses) {
        StringBuilder told = new StringBuilder();
        for (Wastage loss : losses) {
            told.append("; ").append(words.say("rest.lostBy." + loss.cause().name(), words.amount(loss.amount())));
        }
        return told.toString();
    }

    private String fills(Event.Bottled bottled) {
        List<String> fills = new ArrayList<>();
        bottled.fills().forEach(fill -> fills.add(fill.count() + " × " + words.amount(new Volume(fill.millilitres()))));
        return String.join(", ", fills);
    }

    private String figures(Event.Measured measured) {
        List<String> figures = new ArrayList<>();
        for (Asked asked : Asked.values()) {
            Double value = measured.figures().get(asked);
            if (value != null) {
                Double doubt = measured.doubt().get(asked);
                String sure = doubt == null ? "" : " ± " + words.number(doubt, asked.decimals());
                figures.add(words.number(value, asked.decimals()) + sure + "\u00a0"
                        + words.say("rest.unit." + asked.name()));
            }
        }
        return String.join(", ", figures);
    }
}
