package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.mm;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.SlotStep;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.plan.Job;
import org.neckgeom.shop.TrialCut;

/**
 * The bench page over HTTP. Readings by hand: walls and slot add up to the piece, e = (near - far)/2. What is refused: RFC 9110
 * (405, 413, 415, 421), Fetch Metadata and Origin as browsers send them.
 */
class BenchServerTest {

    @TempDir
    Path folder;

    private final HttpClient client = HttpClient.newHttpClient();
    private Path file;
    private String shipped;
    private BenchServer server;

    @BeforeEach
    void start() throws IOException {
        shipped = ShippedNecks.text("octave-mandolin.yaml");
        file = Files.writeString(folder.resolve("my-neck.yaml"), shipped);
        server = BenchServer.start(BenchFile.at(file), Optional.empty());
    }

    @AfterEach
    void end() {
        server.close();
    }

    private HttpResponse<String> get() throws Exception {
        return send(HttpRequest.newBuilder(URI.create(server.address())).GET());
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpRequest.Builder form(Map<String, String> fields) {
        String body = fields.entrySet().stream()
                .map(one -> one.getKey() + "=" + URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return HttpRequest.newBuilder(URI.create(server.address()))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body));
    }

    /** The hidden fields of the page, and what is entered. */
    private Map<String, String> fields(String page, String... more) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String name : List.of(BenchPage.TOKEN, BenchPage.TURN)) {
            Matcher hidden =
                    Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(page);
            assertThat(hidden.find()).as(name).isTrue();
            fields.put(name, hidden.group(1));
        }
        fields.put(BenchPage.DO, BenchPage.KEEP);
        for (int i = 0; i < more.length; i += 2) {
            fields.put(more[i], more[i + 1]);
        }
        return fields;
    }

    /** What the page answers to an entry: after one that is kept the page that it leads to. */
    private HttpResponse<String> enter(String... more) throws Exception {
        HttpResponse<String> answer = send(form(fields(get().body(), more)));
        if (answer.statusCode() != 303) {
            return answer;
        }
        assertThat(answer.headers().firstValue("Location")).contains("/");
        return get();
    }

    private HttpResponse<String> cut(String near, String far) throws Exception {
        return enter("near-wall", near, "far-wall", far, "slot", "6.02", "piece", "61.02");
    }

    @Test
    void page_leadsThroughTheChannel_threeRoundsOneMisreadOneUndo() throws Exception {
        assertThat(get().body()).contains("Make a trial cut in a test piece", "usually 22.5 to 32.5 mm", "27.5 mm");
        assertThat(cut("26.79", "28.21").body())
                .contains("OK: near wall 26.79 mm", "before: open, not measured", "0.709 mm nearer the fence");
        assertThat(get().body()).contains("Move the fence", "AWAY from the cutter");
        assertThat(enter("moved", "0.71", BenchPage.WAY, "away").body()).contains("OK: fence moved by 0.71 mm away");

        HttpResponse<String> misread = cut("28.49", "27.51");
        assertThat(misread.statusCode()).isEqualTo(422);
        assertThat(misread.body())
                .contains("Read the same cut again: readings do not close: 1.000 mm too long")
                .contains("value=\"28.49\"", "value=\"27.51\"");
        assertThat(cut("27.10", "27.90").body()).contains("readings and moves contradict each other");
        assertThat(enter(BenchPage.DO, "undo").body()).contains("OK: taken back: near wall 27.1 mm");

        String ready = cut("27.50", "27.50").body();
        assertThat(ready).contains("Cut the rod channel", "1.45, 2.9, 4.35, 5.8, 7.25, 8.7, 9.2 mm");
        Job kept = NeckFile.read(file);
        assertThat(kept)
                .isEqualTo(NeckFile.read("octave-mandolin.yaml")
                        .trialCut(TrialCut.walls(mm(26.79), mm(28.21))
                                .slot(mm(6.02))
                                .piece(mm(61.02)))
                        .fenceMoved(FenceMove.away(mm(0.71)))
                        .trialCut(TrialCut.walls(mm(27.5), mm(27.5))
                                .slot(mm(6.02))
                                .piece(mm(61.02))));
        assertThat(kept.plan().slot().step()).isEqualTo(SlotStep.CUT);

        assertThat(enter("channel-depth", "9.21", "channel-end", "303.5").body())
                .contains("channel depth 9.21 mm", "Near wall at the head end", "Done: cut rod channel");
        assertThat(enter(BenchPage.DO, "done").body()).contains("OK: done: cut rod channel", "Cut scarf");
    }

    @Test
    void page_savesNothingOfAReadingThatCannotBe_andKeepsItInItsField() throws Exception {
        HttpResponse<String> never = cut("-5", "28.21");
        assertThat(never.statusCode()).isEqualTo(422);
        assertThat(never.body())
                .contains("The near wall cannot be -5 mm. Read it again.")
                .contains("value=\"-5\"", "value=\"28.21\"", "aria-invalid=\"true\"");
        assertThat(cut("wide", "28.21").body()).contains("value=\"wide\"");
        assertThat(cut("26.79", "").body()).contains("The far wall is needed. Nothing was kept.");
        assertThat(enter().body()).contains("Enter a reading first.");
        assertThat(enter(BenchPage.DO, "done", "near-wall", "26").body()).contains("Keep the readings first");
        assertThat(file).hasContent(shipped);

        assertThat(cut("21.9", "33.1").statusCode())
                .as("out of the usual, once")
                .isEqualTo(422);
        assertThat(file).hasContent(shipped);
        assertThat(cut("21.9", "33.1").statusCode()).as("near again, far once").isEqualTo(422);
        assertThat(cut("21.9", "33.1").statusCode()).as("both again").isEqualTo(200);
        assertThat(NeckFile.read(file).steps()).hasSize(1);
    }

    @Test
    void page_escapesWhatWasTyped() throws Exception {
        assertThat(cut("\"><script>alert(1)</script>", "28").body())
                .doesNotContain("<script")
                .contains("&lt;script&gt;");
    }

    @Test
    void server_refusesWhatIsNotOfItsPage() throws Exception {
        Map<String, String> good = fields(get().body(), "near-wall", "26.79", "far-wall", "28.21");

        assertThat(send(form(good).header("Origin", "http://example.com")).statusCode())
                .isEqualTo(403);
        assertThat(send(form(good).header("Origin", "null")).statusCode()).isEqualTo(403);
        assertThat(send(form(good).header("Sec-Fetch-Site", "cross-site")).statusCode())
                .isEqualTo(403);
        assertThat(send(form(good).header("Sec-Fetch-Site", "same-site")).statusCode())
                .isEqualTo(403);
        Map<String, String> wrong = new LinkedHashMap<>(good);
        wrong.put(BenchPage.TOKEN, "0".repeat(32));
        assertThat(send(form(wrong)).statusCode()).isEqualTo(403);
        wrong.remove(BenchPage.TOKEN);
        assertThat(send(form(wrong)).statusCode()).isEqualTo(403);
        Map<String, String> large = new LinkedHashMap<>(good);
        large.put("near-wall", "9".repeat(BenchServer.MOST_BYTES));
        assertThat(send(form(large)).statusCode()).isEqualTo(413);
        Map<String, String> many = new LinkedHashMap<>(good);
        for (int i = 0; i < 30; i++) {
            many.put("reading" + i, "1");
        }
        assertThat(send(form(many)).statusCode()).isEqualTo(400);
        assertThat(send(HttpRequest.newBuilder(URI.create(server.address()))
                                .header("Content-Type", "text/plain")
                                .POST(HttpRequest.BodyPublishers.ofString("a=b")))
                        .statusCode())
                .isEqualTo(415);
        assertThat(send(HttpRequest.newBuilder(URI.create(server.address())).DELETE())
                        .statusCode())
                .isEqualTo(405);
        assertThat(send(HttpRequest.newBuilder(URI.create(server.address() + "other")))
                        .statusCode())
                .isEqualTo(404);
        assertThat(asHost("rebound.example")).startsWith("HTTP/1.1 421");
        assertThat(file).hasContent(shipped);

        String origin = server.address().substring(0, server.address().length() - 1);
        assertThat(send(form(good).header("Origin", origin).header("Sec-Fetch-Site", "same-origin"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(NeckFile.read(file).steps()).hasSize(1);
    }

    /** The first line of the answer to a request for another host, which HttpClient does not send. */
    private String asHost(String host) throws IOException {
        URI at = URI.create(server.address());
        try (Socket socket = new Socket(at.getHost(), at.getPort())) {
            socket.getOutputStream()
                    .write(("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            return new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8))
                    .readLine();
        }
    }

    @Test
    void server_limitsTheRate() throws Exception {
        List<Integer> statuses = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            statuses.add(send(HttpRequest.newBuilder(URI.create(server.address() + "none")))
                    .statusCode());
        }
        assertThat(statuses).contains(404, 429);
    }

    @Test
    void page_allowsNoScript_andStatesItsPolicy() throws Exception {
        HttpResponse<String> page = get();
        assertThat(page.headers().firstValue("Content-Security-Policy"))
                .hasValueSatisfying(policy -> assertThat(policy)
                        .contains("default-src 'none'", "form-action 'self'", "frame-ancestors 'none'")
                        .doesNotContain("unsafe"));
        assertThat(page.headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(page.body()).doesNotContain("<script", " style=", " src=", "url(", "@import");
    }

    @Test
    void server_hasOneWriterAtATime() throws Exception {
        String page = get().body();
        List<CompletableFuture<HttpResponse<String>>> both = new ArrayList<>();
        for (String near : List.of("26.79", "26.80")) {
            both.add(client.sendAsync(
                    form(fields(page, "near-wall", near, "far-wall", "28.21")).build(),
                    HttpResponse.BodyHandlers.ofString()));
        }
        List<HttpResponse<String>> answers =
                both.stream().map(CompletableFuture::join).toList();

        assertThat(answers).extracting(HttpResponse::statusCode).containsExactlyInAnyOrder(303, 409);
        assertThat(answers)
                .filteredOn(answer -> answer.statusCode() == 409)
                .allSatisfy(answer -> assertThat(answer.body()).contains("Nothing was saved: another entry was kept"));
        assertThat(NeckFile.read(file).steps()).hasSize(1);
    }

    @Test
    void page_noticesAFileChangedMeanwhile_showsTheDifference_andNeverOverwritesIt() throws Exception {
        String page = get().body();
        String other = shipped.replace("frets: 20 ", "frets: 21 ");
        Files.writeString(file, other);

        HttpResponse<String> answer = send(form(fields(page, "near-wall", "26.79", "far-wall", "28.21")));
        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body())
                .contains("was changed by someone else meanwhile", "- frets: 20 ", "+ frets: 21 ")
                .contains("value=\"26.79\"");
        assertThat(file).hasContent(other);

        Files.writeString(file, shipped);
        assertThat(get().body()).contains("- frets: 21 ", "+ frets: 20 ");
        Files.writeString(file, "name: Mine\n");
        assertThat(get().statusCode()).isEqualTo(409);
        assertThat(file).hasContent("name: Mine\n");
    }

    /** On another address than the loopback address, where this machine has one. */
    @Test
    void server_opensToOthersByAWordOnce_thenByACookie() throws Exception {
        Optional<InetAddress> other = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(address -> address.getAddress().length == 4 && !address.isLoopbackAddress())
                .findFirst();
        Assumptions.assumeTrue(other.isPresent(), "this machine has no address but the loopback address");
        try (BenchServer open =
                BenchServer.start(BenchFile.at(file), Optional.of(other.get().getHostAddress()))) {
            String printed = open.address();
            URI page = URI.create(printed.substring(0, printed.indexOf('?')));
            assertThat(printed).matches("http://[0-9.]+:[0-9]+/\\?word=[0-9a-f]{32}");
            assertThat(send(HttpRequest.newBuilder(page)).statusCode()).isEqualTo(403);
            assertThat(send(HttpRequest.newBuilder(page.resolve("/?word=" + "0".repeat(32))))
                            .statusCode())
                    .isEqualTo(403);

            HttpResponse<String> door = send(HttpRequest.newBuilder(URI.create(printed)));
            String cookie = door.headers().firstValue("Set-Cookie").orElseThrow();
            assertThat(cookie).matches("bench=[0-9a-f]{32}; Path=/; HttpOnly; SameSite=Strict");
            assertThat(send(HttpRequest.newBuilder(page).header("Cookie", cookie.split(";")[0]))
                            .body())
                    .contains("Octave mandolin");
            assertThat(send(HttpRequest.newBuilder(URI.create(printed))).statusCode())
                    .as("the word a second time")
                    .isEqualTo(403);
            assertThat(send(HttpRequest.newBuilder(page).header("Cookie", "bench=" + "0".repeat(32)))
                            .statusCode())
                    .isEqualTo(403);
        }
    }

    @Test
    void server_refusesAddressesThatCannotBeServed() {
        BenchFile bench = BenchFile.at(file);
        assertThatThrownBy(() -> BenchServer.start(bench, Optional.of("0.0.0.0")))
                .hasMessage("0.0.0.0 is every address of this machine: name one of them");
        assertThatThrownBy(() -> BenchServer.start(bench, Optional.of("127.0.0.1:70000")))
                .hasMessage("the port must be from 0 to 65535, but was 70000");
        assertThatThrownBy(() -> BenchServer.start(bench, Optional.of("127.0.0.1:x")))
                .hasMessage("the port must be from 0 to 65535, but was x");
        assertThatThrownBy(() -> BenchServer.start(bench, Optional.of("192.0.2.7")))
                .isInstanceOf(Unwritable.class)
                .hasMessageStartingWith("192.0.2.7 can't be served at: ");
    }

    @Test
    void orders_takeAnAddressWithServeAlone() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(new ByteArrayOutputStream());
        PrintStream to = new PrintStream(err, true, StandardCharsets.UTF_8);
        assertThat(PlanANeck.run(List.of("--serve"), out, to, Progress.none())).isEqualTo(2);
        assertThat(PlanANeck.run(List.of("--address", "127.0.0.1"), out, to, Progress.none()))
                .isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("--serve must be followed by the neck file", "--address goes with --serve");
    }

    /** As Ctrl-C does: the process is asked to end. */
    @Test
    void serve_endsInWords_whenItIsAskedTo() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        PlanANeck.class.getName(),
                        "--serve",
                        file.toString())
                .redirectErrorStream(true)
                .start();
        try (BufferedReader printed = process.inputReader(StandardCharsets.UTF_8)) {
            assertThat(printed.readLine()).isEqualTo("BENCH  Octave mandolin, walnut");
            String open = printed.readLine();
            assertThat(open).matches("OPEN   http://127\\.0\\.0\\.1:[0-9]+/");
            assertThat(send(HttpRequest.newBuilder(URI.create(open.substring(7))))
                            .statusCode())
                    .isEqualTo(200);
            process.toHandle().destroy();
            assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
            assertThat(printed.lines())
                    .last()
                    .isEqualTo("ENDED  0 entries kept in " + file + "; the next session goes on from here.");
        } finally {
            process.destroyForcibly();
        }
    }
}
