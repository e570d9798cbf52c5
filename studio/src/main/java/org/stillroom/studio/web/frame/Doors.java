package org.stillroom.studio.web.frame;

import io.javalin.config.RoutesConfig;

/** Where rooms register their pages; each visit reaches them with the words of its reader. */
public final class Doors {
    private final RoutesConfig routes;
    private final Frame frame;

    Doors(RoutesConfig routes, Frame frame) {
        this.routes = routes;
        this.frame = frame;
    }

    /** Answers a visit. */
    public interface Page {
        void answer(Visit visit) throws Exception;
    }

    /** Registers a page to look at. */
    public Doors get(String path, Page page) {
        routes.get(path, context -> page.answer(frame.visit(context)));
        return this;
    }

    /** Registers a change; the guard has checked where it comes from. */
    public Doors post(String path, Page page) {
        routes.post(path, context -> page.answer(frame.visit(context)));
        return this;
    }

    /** Registers a change that puts something in the place of what is there. */
    public Doors put(String path, Page page) {
        routes.put(path, context -> page.answer(frame.visit(context)));
        return this;
    }

    /** Registers a removal. */
    public Doors delete(String path, Page page) {
        routes.delete(path, context -> page.answer(frame.visit(context)));
        return this;
    }
}
