package org.neckgeom.examples.service;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.neckgeom.channel.CentringRound;
import org.neckgeom.examples.file.Trouble;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.page.Document;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Plan;

/**
 * Plans of necks over HTTP on the loopback address: a trial cut in, the decision out; the plan as JSON and as a page.
 *
 * <pre>
 * GET /necks                  the names of all necks
 * PUT /necks/NAME             keeps a neck, JSON of format "neckgeom plan"; If-Match where it replaces another
 * GET /necks/NAME             its plan with all answers, JSON
 * GET /necks/NAME/page        its plan, HTML
 * GET /necks/NAME/cuts        its trial cuts, each by its id
 * PUT /necks/NAME/cuts/ID     keeps a trial cut, and answers with what to do next
 * </pre>
 *
 * <p>What is refused has one sentence; what the library refuses has its faults beside it, each with path and rule.
 */
public final class NeckService implements AutoCloseable {

    /** The largest neck that is read. */
    static final int MOST_BYTES = 1024 * 1024;

    /** The largest trial cut that is read. */
    static final int MOST_CUT_BYTES = 16 * 1024;

    private static final int PORT = 8420;
    private static final int THREADS = 4;
    private static final int WAITING = 64;
    private static final int GRACE_SECONDS = 1;
    private static final int LOWEST_PORT = 0;
    private static final int HIGHEST_PORT = 65_535;

    private static final String NECKS = "necks";
    private static final String CUTS = "cuts";
    private static final String PAGE = "page";
    private static final String NAME = "[a-z0-9][a-z0-9-]{0,59}";
    private static final String JSON = "application/json";

    private final NeckStore store;
    private final HttpServer server;
    private final ThreadPoolExecutor threads =
            new ThreadPoolExecutor(THREADS, THREADS, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(WAITING));

    private NeckService(NeckStore store, int port) throws IOException {
        this.store = store;
        this.server = HttpServer.create(
                new InetSocketAddress(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), port), WAITING);
        server.createContext("/", this::handle);
        server.setExecutor(threads);
        server.start();
    }

    /**
     * Serves until the process is ended, as by Ctrl-C.
     *
     * @param arguments the file that keeps the necks, and the port if it is not to be 8420; 0 for any that is free
     */
    public static void main(String[] arguments) {
        try {
            if (arguments.length < 1 || arguments.length > 2) {
                throw Refused.because(
                        400, "Give the file that keeps the necks, such as necks.db, and the port if you like.");
            }
            if (arguments[0].equals(Rehearsal.OPTION)) {
                Rehearsal.run();
                return;
            }
            NeckService service = start(Path.of(arguments[0]), arguments.length == 2 ? port(arguments[1]) : PORT);
            service.announce(System.out, arguments[0]);
            Runtime.getRuntime().addShutdownHook(new Thread(service::close));
        } catch (Refused sentence) {
            System.err.println(sentence.getMessage());
            System.exit(2);
        }
    }

    private static int port(String given) throws Refused {
        try {
            int port = Integer.parseInt(given);
            if (port >= LOWEST_PORT && port <= HIGHEST_PORT) {
                return port;
            }
        } catch (NumberFormatException noNumber) {
            // refused below
        }
        throw Refused.because(400, "The port must be from 0 to 65535, but was " + given + ".");
    }

    /**
     * {@return a service that runs until it is closed}
     *
     * @param file that keeps the necks
     * @param port 0 for any that is free
     * @throws Refused if the file or the port can't be used
     */
    static NeckService start(Path file, int port) throws Refused {
        ServerOptions.set();
        try {
            NeckStore store = NeckStore.open(file);
            try {
                return new NeckService(store, port);
            } catch (IOException failed) {
                store.close();
                throw Refused.because(503, "Port " + port + " can't be served at: " + Trouble.inWords(failed) + ".");
            }
        } catch (SQLException failed) {
            throw unusable(file.toString(), failed);
        }
    }

    private static Refused unusable(String what, SQLException failed) {
        return Refused.because(503, what + " can't be used: " + failed.getMessage());
    }

    private void announce(PrintStream out, String file) {
        out.println("NECKS  " + file);
        out.println("OPEN   " + address() + "/" + NECKS);
        out.println("END    Ctrl-C");
        out.flush();
    }

    /** Where it is served, without a path. */
    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    /** Ends after what is being kept is kept. */
    @Override
    public void close() {
        server.stop(GRACE_SECONDS);
        threads.shutdown();
        try {
            store.close();
        } catch (SQLException alreadyWritten) {
            System.err.println(unusable("The file", alreadyWritten).getMessage());
        }
    }

    /** An answer over HTTP; the tag of the job it is of, where it is of one. */
    private record Reply(int status, String type, String body, Optional<String> tag) {

        static Reply json(int status, Object body) {
            return new Reply(status, JSON, Json.of(body), Optional.empty());
        }

        static Reply of(Refused refused) {
            Map<String, Object> body = new LinkedHashMap<>();
            body.put("sentence", refused.getMessage());
            if (!refused.faults().isEmpty()) {
                body.put("faults", refused.faults().stream().map(Reply::plain).toList());
            }
            return json(refused.status(), body);
        }

        private static Map<String, Object> plain(Fault fault) {
            Map<String, Object> plain = new LinkedHashMap<>();
            plain.put("path", fault.path());
            plain.put("rule", fault.rule());
            plain.put("must", fault.must());
            plain.put("given", fault.given());
            return plain;
        }

        Reply tagged(Job job) {
            return new Reply(status, type, body, Optional.of(quoted(Document.hash(job))));
        }
    }

    private static String quoted(String hash) {
        return '"' + hash + '"';
    }

    private void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            Reply reply;
            try {
                reply = answered(exchange);
            } catch (Refused refused) {
                reply = Reply.of(refused);
            } catch (Refusal refusal) {
                reply = Reply.of(Refused.of(refusal));
            } catch (SQLException failed) {
                reply = Reply.of(unusable("The file of the necks", failed));
            } catch (RuntimeException broken) {
                reply = Reply.of(Refused.because(500, "This can't be answered: " + broken.getMessage()));
            }
            send(exchange, reply);
        }
    }

    private static void send(HttpExchange exchange, Reply reply) throws IOException {
        Headers headers = exchange.getResponseHeaders();
        headers.set("Content-Type", reply.type() + (reply.type().equals(JSON) ? "" : "; charset=utf-8"));
        headers.set("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Cache-Control", "no-store");
        reply.tag().ifPresent(tag -> headers.set("ETag", tag));
        byte[] bytes = reply.body().getBytes(StandardCharsets.UTF_8);
        exchange.sendResponseHeaders(reply.status(), bytes.length);
        exchange.getResponseBody().write(bytes);
    }

    private Reply answered(HttpExchange exchange) throws Refused, SQLException, IOException {
        // A page of another name that resolves to this address has another host.
        String host = Optional.ofNullable(exchange.getRequestHeaders().getFirst("Host"))
                .orElse("");
        String port = ":" + server.getAddress().getPort();
        if (!List.of("127.0.0.1" + port, "localhost" + port).contains(host)) {
            throw Refused.because(421, "This service is at " + address() + " alone.");
        }
        List<String> path = new ArrayList<>(
                Arrays.asList(exchange.getRequestURI().getPath().substring(1).split("/", -1)));
        if (!path.remove(0).equals(NECKS)
                || path.size() == 2 && !List.of(CUTS, PAGE).contains(path.get(1))) {
            throw noSuchPlace();
        }
        String method = exchange.getRequestMethod();
        switch (path.size()) {
            case 0:
                allow(exchange, method, "GET");
                return Reply.json(200, Map.of(NECKS, store.names()));
            case 1:
                allow(exchange, method, "GET, PUT");
                return method.equals("GET") ? plan(name(path.get(0))) : keepNeck(exchange, name(path.get(0)));
            case 2:
                allow(exchange, method, "GET");
                return path.get(1).equals(CUTS)
                        ? Reply.json(200, Map.of(CUTS, store.cuts(name(path.get(0)))))
                        : page(name(path.get(0)));
            case 3:
                if (!path.get(1).equals(CUTS)) {
                    throw noSuchPlace();
                }
                allow(exchange, method, "PUT");
                return keepCut(exchange, name(path.get(0)), name(path.get(2)));
            default:
                throw noSuchPlace();
        }
    }

    private static Refused noSuchPlace() {
        return Refused.because(404, "There is no such place: begin at /" + NECKS + ".");
    }

    private static void allow(HttpExchange exchange, String method, String allowed) throws Refused {
        if (!List.of(allowed.split(", ")).contains(method)) {
            exchange.getResponseHeaders().set("Allow", allowed);
            throw Refused.because(405, "Only " + allowed.replace(", ", " and ") + " may be asked here.");
        }
    }

    private static String name(String given) throws Refused {
        if (!given.matches(NAME)) {
            throw Refused.because(400, "A name or id must be 1 to 60 small letters, digits and hyphens.");
        }
        return given;
    }

    private Reply plan(String name) throws Refused, SQLException {
        Job job = store.job(name);
        return new Reply(200, JSON, Document.PLAN.json(job), Optional.empty()).tagged(job);
    }

    private Reply page(String name) throws Refused, SQLException {
        Job job = store.job(name);
        return new Reply(200, "text/html", Sheet.of(job).toHtml(), Optional.empty()).tagged(job);
    }

    private Reply keepNeck(HttpExchange exchange, String name) throws Refused, SQLException, IOException {
        Job given = Document.PLAN.read(body(exchange, MOST_BYTES));
        Optional<String> before = Optional.ofNullable(
                        exchange.getRequestHeaders().getFirst("If-Match"))
                .map(tag -> tag.replace("\"", ""));
        return decided(store.keep(name, given, before), name);
    }

    private Reply keepCut(HttpExchange exchange, String neck, String id) throws Refused, SQLException, IOException {
        CentringRound round = CentringRound.TABLE.read(Json.read(body(exchange, MOST_CUT_BYTES)));
        return decided(store.keep(neck, id, round), neck);
    }

    /** What to do next, and the status of the plan. */
    private static Reply decided(NeckStore.Kept kept, String name) {
        Plan plan = kept.job().plan();
        Map<String, Object> body = new LinkedHashMap<>();
        body.put("neck", name);
        body.put("status", plan.status());
        body.put("decision", plan.slot());
        return Reply.json(kept.isNew() ? 201 : 200, body).tagged(kept.job());
    }

    private static String body(HttpExchange exchange, int most) throws Refused, IOException {
        // A form of another site can't have this type.
        String type = Optional.ofNullable(exchange.getRequestHeaders().getFirst("Content-Type"))
                .orElse("");
        if (!type.split(";", 2)[0].strip().equalsIgnoreCase(JSON)) {
            throw Refused.because(415, "What is sent must be " + JSON + ".");
        }
        byte[] bytes;
        try (InputStream body = exchange.getRequestBody()) {
            bytes = body.readNBytes(most + 1);
        }
        if (bytes.length > most) {
            throw Refused.because(413, "What is sent must have at most " + most + " bytes.");
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException broken) {
            throw Refused.because(400, "What is sent must be UTF-8.");
        }
    }
}
