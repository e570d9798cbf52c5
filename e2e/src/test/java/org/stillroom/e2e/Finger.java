package org.stillroom.e2e;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;

/** A finger on the glass, as the device reports it to the browser: only so does it learn whether a touch scrolls. */
final class Finger {
    private static final int STEPS = 8;

    private final CDPSession device;

    Finger(Page page) {
        device = page.context().newCDPSession(page);
    }

    /** Puts the finger down, draws it in steps, and lifts it. */
    void draw(double fromX, double fromY, double toX, double toY) {
        touch("touchStart", fromX, fromY);
        for (int i = 1; i <= STEPS; i++) {
            touch("touchMove", fromX + i * (toX - fromX) / STEPS, fromY + i * (toY - fromY) / STEPS);
        }
        send("touchEnd", new JsonArray());
    }

    private void touch(String type, double x, double y) {
        JsonObject point = new JsonObject();
        point.addProperty("x", x);
        point.addProperty("y", y);
        JsonArray points = new JsonArray();
        points.add(point);
        send(type, points);
    }

    private void send(String type, JsonArray points) {
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", points);
        device.send("Input.dispatchTouchEvent", event);
    }
}
