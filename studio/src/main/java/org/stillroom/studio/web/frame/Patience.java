package org.stillroom.studio.web.frame;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Slows guessing down: from the fifth wrong passphrase of one address on, each costs twice the wait of the one before. */
final class Patience {
    private static final int FREE = 4;
    private static final int MOST_DOUBLINGS = 10; // 2^10 s: a good quarter of an hour
    private static final int MOST_ADDRESSES = 1000;

    private final Clock clock;
    private final Map<String, Misses> misses = new ConcurrentHashMap<>();

    private record Misses(int count, Instant last) {}

    Patience(Clock clock) {
        this.clock = clock;
    }

    /** Returns how long an address still has to wait; zero when it may try. */
    Duration wait(String address) {
        Misses missed = misses.get(address);
        if (missed == null || missed.count() <= FREE) {
            return Duration.ZERO;
        }
        Duration whole = Duration.ofSeconds(1L << Math.min(MOST_DOUBLINGS, missed.count() - FREE));
        Duration left = Duration.between(clock.instant(), missed.last().plus(whole));
        return left.isNegative() ? Duration.ZERO : left;
    }

    void missed(String address) {
        if (misses.size() >= MOST_ADDRESSES) {
            misses.entrySet()
                    .removeIf(entry ->
                            entry.getValue().last().isBefore(clock.instant().minus(Duration.ofHours(1))));
        }
        misses.merge(
                address,
                new Misses(1, clock.instant()),
                (before, one) -> new Misses(before.count() + 1, clock.instant()));
    }

    void forget(String address) {
        misses.remove(address);
    }
}
