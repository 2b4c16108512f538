package org.neckgeom.examples;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URLDecoder;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.neckgeom.examples.BenchFile.Answer;
import org.neckgeom.examples.BenchFile.Fate;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.examples.file.Trouble;
import org.neckgeom.examples.service.ServerOptions;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.text.Words;

/**
 * The bench page over HTTP: on the loopback address, or on another that was named; then only for the browser that opened the
 * printed address with its one-time word.
 */
final class BenchServer implements AutoCloseable {

    /** The largest form. */
    static final int MOST_BYTES = 8 * 1024;

    private static final int MOST_FIELDS = 24;
    private static final int MOST_ENTRIES = 1000;
    private static final int MOST_AT_ONCE = 40;
    private static final int A_SECOND = 20;
    private static final int THREADS = 4;
    private static final int WAITING = 16;
    private static final int GRACE_SECONDS = 1;

    private static final String COOKIE = "bench";
    private static final String WORD = "word";
    private static final SecureRandom RANDOM = new SecureRandom();

    /** What the page may do: show itself and send its own forms. */
    private static final String POLICY = "default-src 'none'; style-src 'sha256-" + digest(BenchPage.STYLE)
            + "'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private final BenchFile file;
    private final HttpServer server;
    private final ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    private final String origin;
    private final boolean isOpenToAll;
    private final String token = secret();
    private final String cookie = secret();
    private String word = secret();
    private Optional<Answer> last = Optional.empty();
    private double allowed = MOST_AT_ONCE;
    private long counted = System.nanoTime();

    private BenchServer(BenchFile file, InetSocketAddress address) throws IOException {
        this.file = file;
        this.server = HttpServer.create(address, WAITING);
        InetAddress host = address.getAddress();
        String name = host.getHostAddress();
        this.origin = "http://" + (name.contains(":") ? "[" + name + "]" : name) + ":"
                + server.getAddress().getPort();
        this.isOpenToAll = !host.isLoopbackAddress();
        server.createContext("/", this::handle);
        server.setExecutor(threads);
        server.start();
    }

    /**
     * {@return a server that runs until it is closed}
     *
     * @param file of the session
     * @param address to serve at, with or without a port; nothing for the loopback address
     * @throws Unwritable if it can't be served there
     */
    static BenchServer start(BenchFile file, Optional<String> address) throws Unwritable {
        ServerOptions.set();
        String named = address.orElse("127.0.0.1");
        InetSocketAddress at = address(named);
        try {
            return new BenchServer(file, at);
        } catch (IOException failed) {
            throw new Unwritable(named + " can't be served at: " + Trouble.inWords(failed));
        }
    }

    private static InetSocketAddress address(String named) throws Unwritable {
        int colon = named.lastIndexOf(':');
        boolean hasPort = colon > 0 && (named.indexOf(':') == colon || named.charAt(colon - 1) == ']');
        String host = hasPort ? named.substring(0, colon) : named;
        try {
            InetAddress at = InetAddress.getByName(host);
            if (at.isAnyLocalAddress()) {
                throw new Unwritable(named + " is every address of this machine: name one of them");
            }
            return new InetSocketAddress(at, hasPort ? Integer.parseInt(named.substring(colon + 1)) : 0);
        } catch (UnknownHostException unknown) {
            throw new Unwritable(host + " is no address of this machine");
        } catch (IllegalArgumentException noPort) {
            throw new Unwritable("the port must be from 0 to 65535, but was " + named.substring(colon + 1));
        }
    }

    /** What to open: with the one-time word where others could reach the page. */
    synchronized String address() {
        return origin + "/" + (isOpenToAll ? "?" + WORD + "=" + word : "");
    }

    /** Serves until the process is ended, as by Ctrl-C. */
    void work(PrintStream out) {
        out.println("BENCH  " + file.session().job().neck().name());
        out.println("OPEN   " + address());
        out.println(
                isOpenToAll
                        ? "       The word in it opens the page once, in one browser. What is sent is not encrypted."
                        : "       In a browser on this machine.");
        out.println("END    Ctrl-C");
        out.flush();
        Runnable ending = () -> {
            close();
            out.println(Bench.ended(file));
            out.flush();
        };
        Thread end = new Thread(ending);
        Runtime.getRuntime().addShutdownHook(end);
        try {
            new CountDownLatch(1).await();
        } catch (InterruptedException ended) {
            Runtime.getRuntime().removeShutdownHook(end);
            ending.run();
            Thread.currentThread().interrupt();
        }
    }

    /** Ends after what is being kept is kept. */
    @Override
    public void close() {
        server.stop(GRACE_SECONDS);
        threads.shutdown();
    }

    /** An answer over HTTP. */
    private record Page(int status, String html) {

        static Page sentence(int status, String words) {
            return new Page(status, BenchPage.sentence("At the bench", words));
        }
    }

    /** Why a request is refused. */
    private static final class Refused extends Exception {

        private static final long serialVersionUID = 1L;

        private final int status;

        Refused(int status, String sentence) {
            super(sentence);
            this.status = status;
        }
    }

    private void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            Page page;
            try {
                page = answered(exchange);
            } catch (Refused refused) {
                page = Page.sentence(refused.status, refused.getMessage());
            } catch (FileRefused | Unwritable sentence) {
                page = Page.sentence(409, Words.shown(sentence.getMessage()));
            } catch (RuntimeException broken) {
                page = Page.sentence(500, "This can't be shown: " + Words.shown(String.valueOf(broken.getMessage())));
            }
            send(exchange, page);
        }
    }

    private static void send(HttpExchange exchange, Page page) throws IOException {
        Headers headers = exchange.getResponseHeaders();
        headers.set("Content-Security-Policy", POLICY);
        headers.set("X-Content-Type-Options", "nosniff");
        // Not no-referrer: a browser would send forms with the origin "null".
        headers.set("Referrer-Policy", "same-origin");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cache-Control", "no-store");
        headers.set("Content-Type", "text/html; charset=utf-8");
        byte[] bytes = page.html().getBytes(StandardCharsets.UTF_8);
        exchange.sendResponseHeaders(page.status(), bytes.length == 0 ? -1 : bytes.length);
        if (bytes.length > 0) {
            exchange.getResponseBody().write(bytes);
        }
    }

    private Page answered(HttpExchange exchange) throws Refused, Unwritable, IOException {
        count();
        String method = exchange.getRequestMethod();
        if (!method.equals("GET") && !method.equals("POST")) {
            exchange.getResponseHeaders().set("Allow", "GET, POST");
            throw new Refused(405, "Only GET and POST are answered here.");
        }
        // A page of another name that resolves to this address has another host.
        if (!hosts().contains(first(exchange, "Host").orElse(""))) {
            throw new Refused(421, "This page is at " + origin + " alone.");
        }
        if (!exchange.getRequestURI().getPath().equals("/")) {
            throw new Refused(404, "There is no such page.");
        }
        if (isOpenToAll && !isKnown(exchange)) {
            return admitted(exchange);
        }
        return method.equals("GET") ? shown() : entered(exchange);
    }

    private List<String> hosts() {
        String host = origin.substring("http://".length());
        String port = host.substring(host.lastIndexOf(':'));
        return isOpenToAll ? List.of(host) : List.of(host, "localhost" + port);
    }

    private synchronized void count() throws Refused {
        long now = System.nanoTime();
        allowed = Math.min(MOST_AT_ONCE, allowed + (now - counted) / 1e9 * A_SECOND);
        counted = now;
        if (allowed < 1) {
            throw new Refused(429, "Too many requests: wait a second.");
        }
        allowed--;
    }

    private boolean isKnown(HttpExchange exchange) {
        return exchange.getRequestHeaders().getOrDefault("Cookie", List.of()).stream()
                .flatMap(line -> List.of(line.split(";")).stream())
                .map(String::strip)
                .filter(one -> one.startsWith(COOKIE + "="))
                .anyMatch(one -> isSame(cookie, one.substring(COOKIE.length() + 1)));
    }

    /** The browser with the word gets the cookie, and the word is used up. */
    private synchronized Page admitted(HttpExchange exchange) throws Refused {
        String query =
                Optional.ofNullable(exchange.getRequestURI().getRawQuery()).orElse("");
        boolean isAdmitted =
                exchange.getRequestMethod().equals("GET") && !word.isEmpty() && isSame(WORD + "=" + word, query);
        if (!isAdmitted) {
            throw new Refused(403, "Open the address that the terminal printed. Its word opens the page once.");
        }
        word = "";
        exchange.getResponseHeaders().set("Set-Cookie", COOKIE + "=" + cookie + "; Path=/; HttpOnly; SameSite=Strict");
        // A link, not a redirection: after one from another site a browser would keep the cookie back.
        return Page.sentence(200, "This browser may use the bench until the session ends.");
    }

    private synchronized Page shown() {
        Optional<Answer> changed = file.look();
        last = changed.isPresent() ? changed : last;
        return page(200, last, Map.of());
    }

    private Page page(int status, Optional<Answer> answer, Map<String, String> typed) {
        return new Page(status, BenchPage.of(file, token, answer, typed));
    }

    private Page entered(HttpExchange exchange) throws Refused, Unwritable, IOException {
        ownSite(exchange);
        Page page = kept(form(exchange));
        if (page.status() == 303) {
            exchange.getResponseHeaders().set("Location", "/");
        }
        return page;
    }

    /** One writer at a time; what a form of an earlier turn has is not saved. */
    private synchronized Page kept(Map<String, String> form) throws Refused, Unwritable {
        if (!isSame(token, form.getOrDefault(BenchPage.TOKEN, ""))) {
            throw new Refused(403, "This form is not of this session. Nothing was saved: open the bench again.");
        }
        if (file.kept() >= MOST_ENTRIES) {
            throw new Refused(429, "This session has " + MOST_ENTRIES + " entries: end it and start it again.");
        }
        boolean isOld = !form.getOrDefault(BenchPage.TURN, "").equals(Integer.toString(file.turn()));
        String button = form.getOrDefault(BenchPage.DO, BenchPage.KEEP);
        form.keySet().removeAll(List.of(BenchPage.TOKEN, BenchPage.TURN, BenchPage.DO));
        Map<String, String> typed = Map.copyOf(form);
        if (isOld) {
            return page(
                    409,
                    Optional.of(
                            asked("Nothing was saved: another entry was kept since this page was opened. Look at the"
                                    + " step at hand, and enter it again if it still holds.")),
                    typed);
        }
        Answer answer = entered(button, form);
        if (answer.fate() == Fate.KEPT || answer.fate() == Fate.NOTED) {
            last = Optional.of(answer);
            return new Page(303, "");
        }
        return page(answer.fate() == Fate.ASKED ? 422 : 409, Optional.of(answer), typed);
    }

    private Answer entered(String button, Map<String, String> form) throws Unwritable, Refused {
        String way = Optional.ofNullable(form.remove(BenchPage.WAY)).orElse("");
        switch (button) {
            case BenchPage.KEEP -> {
                form.computeIfPresent(BenchPage.MOVED, (code, size) -> size.isBlank() ? size : size + " " + way);
                return file.enter(form);
            }
            case BenchSession.DONE -> {
                boolean isTyped =
                        form.entrySet().stream().anyMatch(one -> !one.getValue().isBlank());
                return isTyped
                        ? asked("Keep the readings first, or empty their fields.")
                        : file.enter(BenchSession.DONE);
            }
            case BenchSession.UNDO -> {
                return file.enter(BenchSession.UNDO);
            }
            default -> throw new Refused(400, "There is no such button.");
        }
    }

    private static Answer asked(String sentence) {
        return new Answer(Fate.ASKED, sentence, "", List.of(), List.of(), List.of());
    }

    /** A form of another site is refused by what browsers state of it, before it is read. */
    private void ownSite(HttpExchange exchange) throws Refused {
        boolean isOther = first(exchange, "Sec-Fetch-Site")
                        .filter(site -> !site.equals("same-origin"))
                        .isPresent()
                || first(exchange, "Origin")
                        .filter(from -> hosts().stream().noneMatch(host -> from.equals("http://" + host)))
                        .isPresent();
        if (isOther) {
            throw new Refused(403, "A form of another page was refused. Nothing was saved.");
        }
    }

    private static Optional<String> first(HttpExchange exchange, String header) {
        return Optional.ofNullable(exchange.getRequestHeaders().getFirst(header));
    }

    private static Map<String, String> form(HttpExchange exchange) throws Refused, IOException {
        String type = first(exchange, "Content-Type").orElse("");
        if (!type.split(";", 2)[0].strip().equalsIgnoreCase("application/x-www-form-urlencoded")) {
            throw new Refused(415, "Only the page's own form is read.");
        }
        byte[] bytes;
        try (InputStream body = exchange.getRequestBody()) {
            bytes = body.readNBytes(MOST_BYTES + 1);
        }
        if (bytes.length > MOST_BYTES) {
            throw new Refused(413, "The form has more than " + MOST_BYTES + " bytes. Nothing was saved.");
        }
        Map<String, String> form = new LinkedHashMap<>();
        for (String field : new String(bytes, StandardCharsets.US_ASCII).split("&", -1)) {
            String[] parts = field.split("=", 2);
            if (parts.length == 2
                    && (form.put(decoded(parts[0]), decoded(parts[1])) != null || form.size() > MOST_FIELDS)) {
                throw new Refused(400, "The form has fields that the page has not. Nothing was saved.");
            }
        }
        return form;
    }

    private static String decoded(String text) throws Refused {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException broken) {
            throw new Refused(400, "The form can't be read. Nothing was saved.");
        }
    }

    private static boolean isSame(String expected, String given) {
        return MessageDigest.isEqual(expected.getBytes(StandardCharsets.UTF_8), given.getBytes(StandardCharsets.UTF_8));
    }

    /** 128 bits. */
    private static String secret() {
        byte[] bytes = new byte[16];
        RANDOM.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    private static String digest(String text) {
        try {
            return Base64.getEncoder()
                    .encodeToString(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new AssertionError(everyPlatformHasIt);
        }
    }
}
