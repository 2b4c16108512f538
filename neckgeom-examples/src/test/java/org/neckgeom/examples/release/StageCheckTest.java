package org.neckgeom.examples.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.examples.release.MadeUpStage.utf8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A stage with nothing wrong passes; each thing that a public repository refuses is found, and nothing else is said. */
class StageCheckTest {

    private static final StageCheck.Published API = StageCheck.PUBLISHED.get(0);
    private static final StageCheck.Published CORE = StageCheck.PUBLISHED.get(1);
    private static final ThrowAwayKey KEY = ThrowAwayKey.make();

    @TempDir
    Path folder;

    private MadeUpStage stage;

    @BeforeEach
    void make() throws IOException {
        stage = MadeUpStage.in(folder, KEY);
    }

    @Test
    void problems_areNoneOfAGoodStage() throws IOException {
        assertThat(problems()).isEmpty();
    }

    /** Breaks a stage. */
    @FunctionalInterface
    interface Breaking {
        void of(MadeUpStage stage) throws IOException;
    }

    static Stream<Arguments> breakings() {
        return Stream.of(
                breaking(" is missing", stage -> stage.delete(API, "-sources.jar.asc")),
                breaking("api-1.2.3.pom.md5 is missing", stage -> stage.delete(API, ".pom.md5")),
                breaking("cyclonedx.xml is missing", stage -> stage.delete(CORE, "-cyclonedx.xml")),
                breaking("api-1.2.3-tests.jar was not expected", stage -> stage.write(API, "-tests.jar", utf8("x"))),
                breaking(".jar.sha1 says 00, but the file has ", stage -> stage.write(API, ".jar.sha1", utf8("00"))),
                breaking("sources.jar.md5 is empty", stage -> stage.write(API, "-sources.jar.md5", utf8(""))),
                breaking("core-1.2.3.pom.asc: is no signature", stage -> stage.write(CORE, ".pom.asc", utf8("x"))),
                breaking(
                        "does not fit the file",
                        stage -> stage.write(CORE, "-javadoc.jar.asc", KEY.sign(utf8("something else")))),
                breaking(
                        "which is not the releasing one",
                        stage -> stage.write(
                                CORE,
                                ".jar.asc",
                                ThrowAwayKey.make().sign(Files.readAllBytes(stage.file(CORE, ".jar"))))),
                breaking(".pom: says no name", stage -> stage.changePom(API, "<name>A name</name>", "")),
                breaking("says no description", stage -> stage.changePom(API, "A description", " ")),
                breaking("says no url", stage -> stage.changePom(API, "<url>https://home/</url>", "")),
                breaking("says no licenses/license/url", stage -> stage.changePom(API, "https://licence/", "")),
                breaking("says no developers/developer/name", stage -> stage.changePom(API, "Somebody", "")),
                breaking("says no scm/connection", stage -> stage.changePom(API, "scm:git:https://scm/", "")),
                breaking(
                        "has a reserved address (.example)",
                        stage -> stage.changePom(API, "https://home/", "https://home.example/")),
                breaking("version must be 1.2.3, but was 1.2.4", stage -> stage.changePom(CORE, "1.2.3", "1.2.4")),
                breaking(
                        "has parent",
                        stage -> stage.changePom(CORE, "<project>", "<project><parent><groupId>g</groupId></parent>")),
                breaking("nobody resolved", stage -> stage.changePom(API, "A name", "${name}")),
                breaking(
                        "names a SNAPSHOT",
                        stage -> stage.changePom(API, "A description", "needs 2.2-SNAPSHOT of another")),
                breaking("brings javax.measure:other", stage -> {
                    stage.changePom(API, "unit-api", "other");
                    for (String bill : List.of("-cyclonedx.json", "-cyclonedx.xml")) {
                        String text = Files.readString(stage.file(API, bill));
                        stage.put(API, bill, utf8(text.replace("unit-api", "other")));
                    }
                }),
                breaking("scope test", stage -> stage.changePom(API, "<version>2.2</version>", """
                        <version>2.2</version><scope>test</scope>""")),
                breaking(
                        "cyclonedx.json does not name javax.measure/unit-api@2.2",
                        stage -> stage.put(
                                API, "-cyclonedx.json", utf8("pkg:maven/org.neckgeom/neckgeom-api@1.2.3?type=jar"))),
                breaking(
                        "has no module descriptor",
                        stage -> stage.changeJar(API, Map.of("module-info.class", utf8("")))),
                breaking(
                        "does not bring its licence",
                        stage -> stage.changeJar(API, Map.of("META-INF/LICENSE", utf8("")))),
                breaking(
                        "requires the module java.logging", stage -> stage.changeModule(API, "requires java.logging;")),
                breaking(
                        "must be the module org.neckgeom.api, but was org.neckgeom.core",
                        stage -> stage.changeJar(
                                API,
                                Map.of(
                                        "module-info.class",
                                        stage.classes(CORE, "").get("module-info.class")))),
                breaking(
                        "SomeTest.class has no source beside it",
                        stage -> stage.changeJar(
                                API,
                                Map.of(
                                        "org/neckgeom/some/SomeTest.class",
                                        stage.classes(API, "").get("org/neckgeom/some/Some.class")))),
                breaking(
                        "is a test: it uses org/junit/",
                        stage -> stage.changeJar(
                                API,
                                Map.of(
                                        "org/neckgeom/some/Some$Part.class",
                                        concatenated(
                                                stage.classes(API, "").get("org/neckgeom/some/Some$Part.class"),
                                                utf8("org/junit/jupiter"))))),
                breaking(
                        "must be of class file version 61, but was 69",
                        stage -> stage.changeJar(
                                API,
                                Map.of(
                                        "org/neckgeom/some/Some.class",
                                        withMajor(stage.classes(API, "").get("org/neckgeom/some/Some.class"), 69)))),
                breaking(
                        "has no documentation of org.neckgeom.some",
                        stage -> stage.put(API, "-javadoc.jar", MadeUpStage.zip(Map.of("index.html", utf8("x"))))),
                breaking(
                        "of the building machine",
                        stage ->
                                stage.changeJar(CORE, Map.of("notes.txt", utf8("built in " + stage.work() + "/out")))));
    }

    private static Arguments breaking(String found, Breaking breaking) {
        return Arguments.of(found, breaking);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("breakings")
    void problems_nameTheOneThingBroken(String found, Breaking breaking) throws IOException {
        breaking.of(stage);

        assertThat(problems()).singleElement().asString().contains(found);
    }

    @Test
    void problems_allowReservedAddressesInARehearsal() throws IOException {
        stage.changePom(API, "https://home/", "https://home.example/");

        assertThat(check(MadeUpStage.VERSION, true).problems()).isEmpty();
    }

    @Test
    void problems_areManyOfAnEmptyStage() throws IOException {
        Path nowhere = folder.resolve("nowhere");
        StageCheck check =
                new StageCheck(nowhere, MadeUpStage.VERSION, false, SignatureCheck.of(KEY.armoured()), stage.traces());

        assertThat(check.problems()).hasSize(48).allMatch(problem -> problem.endsWith(" is missing"));
    }

    @Test
    void problems_refuseAVersionThatWillChange() throws IOException {
        assertThat(check("1.2.3-SNAPSHOT", false).problems())
                .contains("version must be one for ever, but was 1.2.3-SNAPSHOT");
    }

    private List<String> problems() throws IOException {
        return check(MadeUpStage.VERSION, false).problems();
    }

    private StageCheck check(String version, boolean rehearsal) throws IOException {
        return new StageCheck(stage.root(), version, rehearsal, SignatureCheck.of(KEY.armoured()), stage.traces());
    }

    private static byte[] concatenated(byte[] first, byte[] second) {
        byte[] both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }

    private static byte[] withMajor(byte[] code, int major) {
        byte[] changed = code.clone();
        changed[7] = (byte) major;
        return changed;
    }
}
