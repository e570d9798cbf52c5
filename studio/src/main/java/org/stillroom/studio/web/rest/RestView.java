package org.stillroom.studio.web.rest;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.batch.Waiting;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.wording.Words;

/** What waits, by day, in the words of its reader. */
public final class RestView {
    private final Book book;
    private final List<Waiting> open;
    private final Words words;
    private final LocalDate today;
    private final List<Finding> problems;
    private final long refused;

    /**
     * @param waits all that waits or has waited
     * @param problems why a wait was not postponed
     * @param refused number of that wait
     */
    RestView(Book book, List<Waiting> waits, Words words, LocalDate today, List<Finding> problems, long refused) {
        this.book = book;
        this.open = waits.stream().filter(waiting -> !waiting.done()).toList();
        this.words = words;
        this.today = today;
        this.problems = List.copyOf(problems);
        this.refused = refused;
    }

    public Book book() {
        return book;
    }

    public List<Waiting> open() {
        return open;
    }

    public Timeline timeline() {
        return new Timeline(open, today);
    }

    public List<Finding> problems(Waiting waiting) {
        return waiting.id() == refused ? problems : List.of();
    }

    public boolean isDue(Waiting waiting) {
        return !waiting.until().isAfter(today);
    }

    /** Returns how many are ready now. */
    static long due(List<Waiting> waits, LocalDate today) {
        return waits.stream()
                .filter(waiting -> !waiting.done() && !waiting.until().isAfter(today))
                .count();
    }

    public String what(Waiting waiting) {
        return what(words, waiting);
    }

    static String what(Words words, Waiting waiting) {
        String own = waiting.note();
        return waiting.what() == Waiting.What.OTHER && !own.isEmpty()
                ? own
                : words.say("rest.what." + waiting.what().name());
    }

    /** Returns what to do next. */
    public String next(Waiting waiting) {
        return words.say("rest.next." + waiting.what().name());
    }

    /** Returns when, such as "today", "since 3 days", "in 12 days". */
    public String when(Waiting waiting) {
        long days = ChronoUnit.DAYS.between(today, waiting.until());
        if (days == 0) {
            return words.say("rest.today");
        }
        String key = days < 0
                ? (days == -1 ? "rest.sinceDay" : "rest.sinceDays")
                : (days == 1 ? "rest.tomorrow" : "rest.inDays");
        return words.say(key, "" + Math.abs(days));
    }

    public String title(Waiting waiting) {
        return title(words, book, waiting);
    }

    static String title(Words words, Book book, Waiting waiting) {
        Waiting.Made make = waiting.make();
        return make == null ? title(words, book.batch(waiting.batch())) : words.say("rest.beingMade", make.title());
    }

    /** Returns the page of what waits. */
    public String page(Waiting waiting) {
        Waiting.Made make = waiting.make();
        return make == null ? "/rest/batch/" + waiting.batch() : "/make/" + make.id();
    }

    static String title(Words words, Batch batch) {
        return words.say(
                "make.batchTitle", "" + batch.number(), FinishMake.sheet(batch).title());
    }

    public String day(LocalDate day) {
        return words.day(day);
    }
}
