package org.neckgeom.examples.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.form.Json;
import org.neckgeom.page.Document;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;

/** The service over HTTP, as its users meet it. */
class NeckServiceTest {

    private static final Job OCTAVE = NeckFile.read(ShippedNecks.DEFAULT);
    private static final String JSON = "application/json";
    private static final HttpClient HTTP = HttpClient.newHttpClient();

    @TempDir
    Path folder;

    private Path file;
    private NeckService service;

    @BeforeEach
    void start() throws Exception {
        file = folder.resolve("necks.db");
        service = NeckService.start(file, 0);
    }

    @AfterEach
    void stop() {
        service.close();
    }

    @Test
    void neck_isKept_andPlannedAsJsonAndAsPage() throws Exception {
        HttpResponse<String> kept = put("necks/octave", Document.PLAN.json(OCTAVE));
        HttpResponse<String> plan = get("necks/octave");
        HttpResponse<String> page = get("necks/octave/page");

        assertThat(kept.statusCode()).isEqualTo(201);
        assertThat(get("necks").body()).isEqualTo("{ \"necks\": [ \"octave\" ] }\n");
        assertThat(Document.PLAN.read(plan.body())).isEqualTo(OCTAVE);
        assertThat(plan.body()).isEqualTo(Document.PLAN.json(OCTAVE));
        assertThat(plan.headers().firstValue("ETag")).contains("\"" + Document.hash(OCTAVE) + "\"");
        assertThat(page.body()).isEqualTo(Sheet.of(OCTAVE).toHtml());
        assertThat(page.headers().firstValue("Content-Type")).contains("text/html; charset=utf-8");
    }

    /** The walls differ by 1.42 mm, so the slot is off by 0.71 mm; a blank of 0.06 mm taper takes less than 0.01 mm of it. */
    @Test
    void trialCut_isAnsweredByTheDecision() throws Exception {
        put("necks/octave", Document.PLAN.json(OCTAVE));

        HttpResponse<String> answer = put("necks/octave/cuts/first", cut(26.79, 28.21));
        Map<?, ?> decision = (Map<?, ?>) plain(answer).get("decision");
        Map<?, ?> move = (Map<?, ?>) decision.get("move");

        assertThat(answer.statusCode()).isEqualTo(201);
        assertThat(decision.get("answer")).isEqualTo("slot-verdict");
        assertThat((double) ((Map<?, ?>) move.get("move")).get("value")).isCloseTo(-0.71, within(0.01));
        assertThat(move.get("finding")).isEqualTo("away-from-the-cutter");
    }

    /** A writer that got no answer sends again. */
    @Test
    void sameCutSentAgain_isKeptOnce() throws Exception {
        put("necks/octave", Document.PLAN.json(OCTAVE));
        HttpResponse<String> first = put("necks/octave/cuts/first", cut(26.79, 28.21));
        HttpResponse<String> again = put("necks/octave/cuts/first", cut(26.79, 28.21));
        HttpResponse<String> other = put("necks/octave/cuts/first", cut(26.79, 28.22));

        assertThat(again.statusCode()).isEqualTo(200);
        assertThat(again.body()).isEqualTo(first.body());
        assertThat(sentence(other, 409)).isEqualTo("A cut with id first is kept, and its readings are others.");
        assertThat(cuts("octave")).containsOnlyKeys("first");
    }

    /** The first three by what the table of keys asks; the last by JSON's grammar, RFC 8259. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"nearWall\": \"-3 mm\", \"farWall\": \"28 mm\"} | nearWall | more-than",
                "{\"nearWall\": \"27 mm\"} | farWall | missing",
                "{\"nearWall\": \"27 N\", \"farWall\": \"28 mm\", \"colour\": \"red\"} | colour | unknown",
                "{\"nearWall\": \"27 N\", \"farWall\": \"28 mm\", \"colour\": \"red\"} | nearWall | kind",
                "{\"nearWall\" | JSON | syntax"
            })
    void faults_areGivenWithPathAndRule(String sent, String path, String rule) throws Exception {
        put("necks/octave", Document.PLAN.json(OCTAVE));

        HttpResponse<String> answer = put("necks/octave/cuts/first", sent);
        List<String> faults = ((List<?>) plain(answer).get("faults"))
                .stream()
                        .map(fault -> ((Map<?, ?>) fault).get("path") + " " + ((Map<?, ?>) fault).get("rule"))
                        .toList();

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(faults).contains(path + " " + rule);
        assertThat(cuts("octave")).isEmpty();
    }

    @Test
    void everyFaultOfANeck_isGivenAtOnce() throws Exception {
        Map<Object, Object> broken = document(OCTAVE);
        broken.remove("blank");
        broken.put("frets", 20.5);

        HttpResponse<String> answer = put("necks/octave", Json.of(broken));

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat((List<?>) plain(answer).get("faults")).hasSize(2);
        assertThat(get("necks").body()).isEqualTo("{ \"necks\": [] }\n");
    }

    @Test
    void whatIsRefused_hasOneSentence() throws Exception {
        put("necks/octave", Document.PLAN.json(OCTAVE));
        String cut = cut(26.79, 28.21);

        assertThat(sentence(put("necks/bass/cuts/first", cut), 404)).isEqualTo("No neck named bass is kept.");
        assertThat(sentence(get("necks/bass"), 404)).isEqualTo("No neck named bass is kept.");
        assertThat(sentence(get("elsewhere"), 404)).isEqualTo("There is no such place: begin at /necks.");
        assertThat(sentence(get("necks/octave/cuts/first/again"), 404))
                .isEqualTo("There is no such place: begin at /necks.");
        assertThat(sentence(put("necks/Octave%20two", cut), 400))
                .isEqualTo("A name or id must be 1 to 60 small letters, digits and hyphens.");
        assertThat(sentence(put("necks/octave'--/cuts/first", cut), 400))
                .isEqualTo("A name or id must be 1 to 60 small letters, digits and hyphens.");
        assertThat(sentence(put("necks/octave/cuts/first", " ".repeat(NeckService.MOST_CUT_BYTES + 1)), 413))
                .isEqualTo("What is sent must have at most 16384 bytes.");
        assertThat(sentence(put("necks/octave", " ".repeat(NeckService.MOST_BYTES + 1)), 413))
                .isEqualTo("What is sent must have at most 1048576 bytes.");
        assertThat(sentence(send(request("necks/octave/cuts/first").PUT(BodyPublishers.ofString(cut))), 415))
                .isEqualTo("What is sent must be application/json.");
        assertThat(sentence(
                        send(request("necks/octave/cuts/first")
                                .header("Content-Type", JSON)
                                .PUT(BodyPublishers.ofByteArray(new byte[] {(byte) 0xff}))),
                        400))
                .isEqualTo("What is sent must be UTF-8.");
        HttpResponse<String> deleted = send(request("necks/octave").DELETE());
        assertThat(sentence(deleted, 405)).isEqualTo("Only GET and PUT may be asked here.");
        assertThat(deleted.headers().firstValue("Allow")).contains("GET, PUT");
    }

    /** A page of another name that resolves to the loopback address sends that name. */
    @Test
    void anotherHost_isRefused() throws Exception {
        String port = URI.create(service.address()).getPort() + "";
        try (var socket = new Socket("127.0.0.1", Integer.parseInt(port))) {
            socket.getOutputStream()
                    .write("GET /necks HTTP/1.1\r\nHost: other.example\r\nConnection: close\r\n\r\n"
                            .getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

            assertThat(answer).startsWith("HTTP/1.1 421").contains("This service is at " + service.address());
        }
    }

    /** Two who read the same neck and change it: the second is not let write over the first. */
    @Test
    void neck_isReplacedOnlyByOneWhoHasReadIt() throws Exception {
        put("necks/octave", Document.PLAN.json(OCTAVE));
        String read = get("necks/octave").headers().firstValue("ETag").orElseThrow();
        String changed = Document.PLAN.json(OCTAVE.relief(mm(0.25)));
        String otherwise = Document.PLAN.json(OCTAVE.relief(mm(0.3)));

        assertThat(sentence(put("necks/octave", changed), 412))
                .isEqualTo("Another neck named octave is kept: read it, and give its ETag as If-Match.");
        assertThat(replace("necks/octave", changed, read).statusCode()).isEqualTo(200);
        assertThat(sentence(replace("necks/octave", otherwise, read), 412)).startsWith("Another neck");
        assertThat(put("necks/octave", changed).statusCode()).isEqualTo(200);
        assertThat(sentence(replace("necks/new", changed, read), 412))
                .isEqualTo("No neck named new is kept: leave out If-Match.");
        assertThat(Document.PLAN.read(get("necks/octave").body())).isEqualTo(Document.PLAN.read(changed));
    }

    /** The plan that was read has the cuts; sent back with a change it keeps them, and with other cuts it is refused. */
    @Test
    void neckThatIsReplaced_keepsItsCuts() throws Exception {
        put("necks/octave", Document.PLAN.json(OCTAVE));
        put("necks/octave/cuts/first", cut(26.79, 28.21));
        HttpResponse<String> plan = get("necks/octave");
        String read = plan.headers().firstValue("ETag").orElseThrow();
        Job changed = Document.PLAN.read(plan.body()).relief(mm(0.25));
        Job other = changed.fenceMoved(FenceMove.away(mm(0.7)));

        assertThat(replace("necks/octave", Document.PLAN.json(changed), read).statusCode())
                .isEqualTo(200);
        assertThat(Document.PLAN.read(get("necks/octave").body())).isEqualTo(changed);
        assertThat(sentence(replace("necks/octave", Document.PLAN.json(other), read), 409))
                .isEqualTo("The trial cuts are not those kept: give each by itself, or none here.");
    }

    /** Eight writers, two services on one file, each cut sent to both: every cut is there once, as it was sent. */
    @Test
    void writersAtOnce_loseNothing() throws Exception {
        NeckService second = NeckService.start(file, 0);
        ExecutorService writers = Executors.newFixedThreadPool(8);
        try {
            for (String neck : List.of("one", "two")) {
                put("necks/" + neck, Document.PLAN.json(OCTAVE));
            }
            List<Future<List<Integer>>> sent = new ArrayList<>();
            for (int i = 0; i < 48; i++) {
                String path = "necks/" + (i % 2 == 0 ? "one" : "two") + "/cuts/c" + i;
                String cut = cut(27 + i * 0.001, 28);
                sent.add(writers.submit(() -> List.of(
                        put(service, path, cut).statusCode(),
                        put(second, path, cut).statusCode())));
            }
            for (Future<List<Integer>> statuses : sent) {
                assertThat(statuses.get()).containsExactly(201, 200);
            }
        } finally {
            writers.shutdownNow();
            second.close();
        }

        for (int neck = 0; neck < 2; neck++) {
            Map<String, Object> kept = cuts(neck == 0 ? "one" : "two");
            int odd = neck;
            assertThat(kept).hasSize(24);
            assertThat(kept.keySet())
                    .containsExactlyInAnyOrderElementsOf(IntStream.range(0, 48)
                            .filter(i -> i % 2 == odd)
                            .mapToObj(i -> "c" + i)
                            .toList());
            kept.forEach((id, cut) -> assertThat((double) ((Map<?, ?>) ((Map<?, ?>) cut).get("nearWall")).get("value"))
                    .isEqualTo(27 + Integer.parseInt(id.substring(1)) * 0.001, within(1e-12)));
        }
    }

    @Test
    void restart_keepsAll() throws Exception {
        put("necks/octave", Document.PLAN.json(OCTAVE));
        put("necks/octave/cuts/first", cut(26.79, 28.21));
        String plan = get("necks/octave").body();
        String cuts = get("necks/octave/cuts").body();

        service.close();
        service = NeckService.start(file, 0);

        assertThat(get("necks/octave").body()).isEqualTo(plan);
        assertThat(get("necks/octave/cuts").body()).isEqualTo(cuts);
    }

    @Test
    void fileOfAnotherProgram_isRefused() throws Exception {
        Path other = folder.resolve("other.db");
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + other);
                var statement = connection.createStatement()) {
            statement.execute("create table neck(name text)");
        }
        Path text = Files.writeString(
                folder.resolve("text.db"), "no database, but long enough to be read as one\n".repeat(50));

        assertThatThrownBy(() -> NeckService.start(other, 0))
                .hasMessage(other + " must be a file of this service, version 1, but was another program's");
        assertThatThrownBy(() -> NeckService.start(text, 0))
                .hasMessageStartingWith(text + " can't be used: ")
                .hasMessageContaining("not a database");
    }

    @Test
    void portInUse_isRefused() {
        int port = URI.create(service.address()).getPort();

        assertThatThrownBy(() -> NeckService.start(folder.resolve("second.db"), port))
                .hasMessage("Port " + port + " can't be served at: address already in use.");
    }

    private static String cut(double near, double far) {
        return String.format(
                Locale.ROOT,
                "{\"nearWall\": \"%s mm\", \"farWall\": \"%s mm\", \"slot\": \"6 mm\", \"piece\": \"61 mm\"}",
                near,
                far);
    }

    private static Map<Object, Object> document(Job job) {
        return new LinkedHashMap<>(
                (Map<?, ?>) Json.read(Document.PLAN.json(job)).plain());
    }

    private Map<String, Object> cuts(String neck) throws Exception {
        Map<String, Object> cuts = new LinkedHashMap<>();
        ((Map<?, ?>) plain(get("necks/" + neck + "/cuts")).get("cuts"))
                .forEach((id, cut) -> cuts.put(id.toString(), cut));
        return cuts;
    }

    private static Map<?, ?> plain(HttpResponse<String> answer) {
        return (Map<?, ?>) Json.read(answer.body()).plain();
    }

    private static String sentence(HttpResponse<String> answer, int status) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        return plain(answer).get("sentence").toString();
    }

    private HttpResponse<String> get(String path) throws Exception {
        return send(request(path).GET());
    }

    private HttpResponse<String> put(String path, String json) throws Exception {
        return put(service, path, json);
    }

    private static HttpResponse<String> put(NeckService to, String path, String json) throws Exception {
        return send(request(to, path).header("Content-Type", JSON).PUT(BodyPublishers.ofString(json)));
    }

    private HttpResponse<String> replace(String path, String json, String tag) throws Exception {
        return send(request(path)
                .header("Content-Type", JSON)
                .header("If-Match", tag)
                .PUT(BodyPublishers.ofString(json)));
    }

    private HttpRequest.Builder request(String path) {
        return request(service, path);
    }

    private static HttpRequest.Builder request(NeckService to, String path) {
        return HttpRequest.newBuilder(URI.create(to.address() + "/" + path));
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return HTTP.send(request.build(), BodyHandlers.ofString());
    }
}
