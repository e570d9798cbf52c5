package org.stillroom.studio.web.frame;

import io.javalin.Javalin;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.store.StoreTrouble;

/** Where the studio listens: the addresses under which it is reached, and why it cannot be opened there. */
final class Doorstep {
    private static final int FIRST_OPEN_TO_ALL = 1024;

    private final StudioServer.Settings settings;

    Doorstep(StudioServer.Settings settings) {
        this.settings = settings;
    }

    /**
     * Begins to listen.
     *
     * @throws StoreTrouble when the machine has no such address, or the port may not be had
     */
    void startThere(Javalin server) {
        if (!isOfThisMachine()) {
            throw new StoreTrouble(
                    "This machine has no address " + settings.address() + ".",
                    "Name one that it has, or 0.0.0.0 for all of them.",
                    null);
        }
        try {
            server.start(settings.address(), settings.port());
        } catch (RuntimeException failed) {
            if (!isBindFault(failed)) {
                throw failed;
            }
            throw new StoreTrouble(
                    "The port " + settings.port() + " of " + settings.address() + " cannot be had: "
                            + (settings.port() < FIRST_OPEN_TO_ALL
                                    ? "ports below 1024 belong to the system, or another program has it."
                                    : "another program has it."),
                    "Choose another one with --port, or 0 for any that is free.",
                    failed);
        }
    }

    private static boolean isBindFault(Throwable failed) {
        for (@Nullable Throwable cause = failed; cause != null; cause = cause.getCause()) {
            if (cause instanceof SocketException) {
                return true;
            }
        }
        return false;
    }

    private boolean isOfThisMachine() {
        try {
            InetAddress address = InetAddress.getByName(settings.address());
            return address.isAnyLocalAddress() || NetworkInterface.getByInetAddress(address) != null;
        } catch (UnknownHostException | SocketException unknown) {
            return false;
        }
    }

    private boolean isEverywhere() {
        return settings.address().equals("0.0.0.0") || settings.address().equals("::");
    }

    String url(int port) {
        return url(settings.isLoopback() || isEverywhere() ? "localhost" : settings.address(), port);
    }

    private static String url(String host, int port) {
        return "http://" + (host.contains(":") ? "[" + host + "]" : host) + ":" + port + "/";
    }

    List<String> urlsForOthers(int port) {
        if (settings.isLoopback()) {
            return List.of();
        }
        if (!isEverywhere()) {
            return List.of(url(port));
        }
        try {
            return NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(address -> address instanceof Inet4Address && !address.isLoopbackAddress())
                    .map(address -> url(address.getHostAddress(), port))
                    .toList();
        } catch (SocketException unknown) {
            return List.of();
        }
    }
}
