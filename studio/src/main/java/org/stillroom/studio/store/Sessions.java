package org.stillroom.studio.store;

import java.time.Instant;
import org.jdbi.v3.core.Jdbi;

/** Who is signed in: a random token in the browser, its hash here. */
public final class Sessions {
    private final Jdbi jdbi;

    Sessions(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /**
     * Begins a session.
     *
     * @param tokenHash of the token; the token itself is never kept
     */
    public void begin(String tokenHash, Instant until) {
        jdbi.useTransaction(handle -> {
            handle.createUpdate("DELETE FROM session WHERE until < :now")
                    .bind("now", Instant.now().toString())
                    .execute();
            handle.createUpdate("INSERT INTO session (token, until) VALUES (:token, :until)")
                    .bind("token", tokenHash)
                    .bind("until", until.toString())
                    .execute();
        });
    }

    public boolean isOn(String tokenHash, Instant now) {
        return jdbi.withHandle(
                handle -> handle.createQuery("SELECT count(*) FROM session WHERE token = :token AND until > :now")
                                .bind("token", tokenHash)
                                .bind("now", now.toString())
                                .mapTo(Long.class)
                                .one()
                        > 0);
    }

    public void end(String tokenHash) {
        jdbi.useHandle(handle -> handle.createUpdate("DELETE FROM session WHERE token = :token")
                .bind("token", tokenHash)
                .execute());
    }

    /** Ends all sessions, as after a new passphrase. */
    public void endAll() {
        jdbi.useHandle(handle -> handle.execute("DELETE FROM session"));
    }
}
