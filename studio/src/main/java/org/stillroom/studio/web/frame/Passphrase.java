package org.stillroom.studio.web.frame;

import org.stillroom.studio.store.Store;

/** The passphrase that lets others of the network in. */
public final class Passphrase {
    private Passphrase() {}

    /** Sets it and ends all sessions. */
    public static void set(Store store, String passphrase) {
        store.settings().put("passphrase", Entrance.hashed(passphrase));
        store.sessions().endAll();
    }
}
