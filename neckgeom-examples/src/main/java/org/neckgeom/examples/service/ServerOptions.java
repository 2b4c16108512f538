package org.neckgeom.examples.service;

import java.util.Map;

/** What the JDK's HTTP server is started with here. */
public final class ServerOptions {

    /** A connection that sends nothing holds no thread for long, and an answer is sent without a delay of 40 ms. */
    private static final Map<String, String> ALL = Map.of(
            "sun.net.httpserver.maxReqTime", "15",
            "sun.net.httpserver.maxRspTime", "15",
            "sun.net.httpserver.nodelay", "true");

    private ServerOptions() {}

    /** Sets them before the first server is made; one that was given to the JVM stays. */
    public static void set() {
        ALL.forEach((name, value) -> System.setProperty(name, System.getProperty(name, value)));
    }
}
