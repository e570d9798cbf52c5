package org.stillroom.studio.architecture.canary.page;

import io.javalin.http.Context;

/** Breaks the rule that the module for browsers knows no server. */
record UsesAServer(Context context) {}
