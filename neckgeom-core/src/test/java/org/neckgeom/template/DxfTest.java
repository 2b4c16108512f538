package org.neckgeom.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.neckgeom.drawing.RandomPlans;
import org.neckgeom.page.Necks;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.template.Mark.Stroke;
import org.neckgeom.template.Mark.Words;

/** Drawing exchange files read back by a strict reader of release 12, and a sample of another writer with it. */
class DxfTest {

    private static final Template OCTAVE = Template.of(Necks.octavePlan());

    private static String sample() {
        try (InputStream in = Objects.requireNonNull(DxfTest.class.getResourceAsStream("/solid/solid-plan.dxf"))) {
            return new String(in.readAllBytes(), StandardCharsets.US_ASCII);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Written by a script of its own (solid.py); the channel is 240 mm between two half circles of 3 mm. */
    @Test
    void reader_readsTheSample() {
        DxfFile dxf = new DxfFile(sample());

        assertThat(dxf.closed(Layer.CHANNEL).get(0).areaMm2()).isCloseTo(240 * 6 + Math.PI * 9, within(1e-9));
        assertThat(dxf.closed(Layer.CHANNEL).get(0).extentsMm())
                .containsExactly(new double[] {57, -3, 303, 3}, within(1e-9));
        // The board's corners, as the file has them, in JTS.
        Coordinate[] corners = {
            new Coordinate(-9.030388, -24.323973),
            new Coordinate(490.27079, -34.056745),
            new Coordinate(490.27079, 34.056745),
            new Coordinate(9.162042, 24.678594),
            new Coordinate(-9.030388, -24.323973)
        };
        assertThat(dxf.closed(Layer.OUTLINE).get(0).areaMm2())
                .isCloseTo(new GeometryFactory().createPolygon(corners).getArea(), within(1e-8));
        assertThat(dxf.words(Layer.TEXT)).containsExactly("100 mm", "BASS", "TREBLE");
        assertThat(dxf.lines(Layer.SCALE).get(0).length()).isEqualTo(100);
        assertThat(dxf.lineTypes).contains(new DxfFile.LineType("CENTER", List.of(10.0, -2.0, 2.0, -2.0)));
    }

    /** What release 12 does not have, or what is broken: each is refused, so that the reader is one to be trusted. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "AC1009 | AC1015 | version",
                "'  0;POLYLINE' | '  0;LWPOLYLINE' | entity LWPOLYLINE",
                "'  0;TEXT;  8' | '  0;MTEXT;  8' | entity MTEXT",
                "'  0;VERTEX;  8;CHANNEL' | '  0;VERTEX;  5;1F;  8;CHANNEL' | group code 5",
                "'  0;VERTEX;  8;CHANNEL' | '  0;VERTEX;100;AcDbEntity;  8;CHANNEL' | group code 100",
                "'  0;VERTEX;  8;CHANNEL' | '  0;VERTEX;  8;OUTLINE' | a vertex on another layer",
                "'  0;SEQEND;  8;CHANNEL' | '' | vertices without SEQEND",
                "'  8;SCALE' | '  8;BARS' | layer BARS",
                "' 73;4' | ' 73;3' | dashes of CENTER",
                "' 40;16.0' | ' 40;12.0' | length of CENTER",
                "'  6;CENTER' | '  6;DOTS' | line type of CENTRE",
                "' 66;1' | ' 66;0' | vertices do not follow",
                "'500.270790; 20;34.056745; 30' | '400.0; 20;34.056745; 30' | a line outside the extents",
                "'  1;BASS' | '  1;BA\u00DF' | not ASCII",
                "' 42;1.000000000' | ' 42;one' | real 42 one",
                "'  0;EOF;' | '' | ends too early",
            })
    void reader_refusesWhatReleaseTwelveDoesNotAllow(String from, String to, String why) {
        String text = sample();
        String old = from.replace(";", "\r\n");
        assertThat(text).contains(old);
        int at = text.indexOf(old);
        boolean gone = to == null || to.isEmpty();
        String broken = text.substring(0, at)
                + (gone ? "" : to.replace(";", "\r\n"))
                + text.substring(at + old.length() + (gone && !old.endsWith("\r\n") ? 2 : 0));

        assertThatThrownBy(() -> new DxfFile(broken)).hasMessageContaining("no release 12: " + why);
    }

    @Test
    void reader_refusesLineFeedsAlone() {
        assertThatThrownBy(() -> new DxfFile(sample().replace("\r\n", "\n"))).hasMessageContaining("CR LF");
    }

    @Test
    void toDxf_hasALayerForEachMeaningWithItsLineType() {
        DxfFile dxf = new DxfFile(OCTAVE.toDxf());

        assertThat(dxf.layers.stream().map(DxfFile.LayerRow::name))
                .containsExactly(Arrays.stream(Layer.values()).map(Layer::name).toArray(String[]::new));
        assertThat(dxf.layers)
                .contains(
                        new DxfFile.LayerRow("OUTLINE", 7, "CONTINUOUS"),
                        new DxfFile.LayerRow("CENTRE", 8, "CENTER"),
                        new DxfFile.LayerRow("CUT", 6, "HIDDEN"));
        assertThat(dxf.lineTypes)
                .contains(
                        new DxfFile.LineType("CONTINUOUS", List.of()),
                        new DxfFile.LineType("CENTER", List.of(6.0, -1.5, 1.0, -1.5)));
        assertThat(dxf.words(Layer.SCALE)).contains("100 mm", "4 in");
        assertThat(dxf.closed(Layer.BACK)).hasSize(4).allMatch(section -> section.areaMm2() > 0);
        assertThat(dxf.closed(Layer.OUTLINE)).allMatch(outline -> outline.areaMm2() > 0);
        assertThat(dxf.closed(Layer.CHANNEL)).hasSizeGreaterThanOrEqualTo(2);
    }

    @Test
    void toDxf_namesItsSides() {
        assertThat(new DxfFile(OCTAVE.only(TemplatePart.PLAN).toDxf()).words(Layer.TEXT))
                .contains("BASS", "TREBLE");
        assertThat(new DxfFile(OCTAVE.only(TemplatePart.HEAD).toDxf()).words(Layer.TEXT))
                .anyMatch(words -> words.startsWith("FACE"));
        assertThat(new DxfFile(OCTAVE.only(TemplatePart.SECTIONS).toDxf())
                        .words(Layer.TEXT).stream().filter(words -> words.matches("x [\\d.]+ mm from the nut")))
                .hasSize(4);
    }

    /** Any outline: its spots come back to 1e-9 mm, its area to 1e-6 mm2 of some 1e4. */
    @Test
    void of_keepsAreasAndArcs() {
        SplittableRandom random = new SplittableRandom(51);
        for (int i = 0; i < 100; i++) {
            List<Mark> marks = new ArrayList<>();
            double[] areas = new double[5];
            for (int k = 0; k < areas.length; k++) {
                int n = random.nextInt(3, 9);
                List<Spot> spots = new ArrayList<>();
                double[] bulges = new double[n];
                for (int v = 0; v < n; v++) {
                    spots.add(new Spot(random.nextDouble(-90, 90), random.nextDouble(-90, 90)));
                    bulges[v] = random.nextBoolean() ? 0 : random.nextDouble(-1.5, 1.5);
                }
                Polyline line = Polyline.closed(spots, bulges);
                areas[k] = line.areaMm2();
                marks.add(new Stroke(Layer.OUTLINE, line));
            }
            marks.add(new Words(new Spot(200, 10), 3, false, "sixth \u00E9"));
            DxfFile dxf = new DxfFile(Dxf.of(marks));

            assertThat(dxf.outlines).hasSize(5);
            for (int k = 0; k < areas.length; k++) {
                assertThat(dxf.closed(Layer.OUTLINE).get(k).areaMm2()).isCloseTo(areas[k], within(1e-6));
            }
            assertThat(dxf.extent("$EXTMAX")[0]).isGreaterThan(200 + 3 * 4);
            assertThat(dxf.words(Layer.TEXT)).containsExactly("sixth ?");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void toDxf_ofAnyPlanIsOfReleaseTwelve(int seed) {
        DxfFile dxf = new DxfFile(Template.of(RandomPlans.of(seed)).toDxf());

        assertThat(dxf.outlines(Layer.FRETS)).isNotEmpty();
        assertThat(dxf.words(Layer.SCALE)).contains("100 mm");
    }

    /**
     * Read by ezdxf, a general library in Python, where a python3 with it is found: no fault in its audit, the same
     * count of entities, and layers with their line types.
     */
    @Test
    void toDxf_isReadByAnotherLibrary(@TempDir Path folder) throws IOException, InterruptedException {
        Path file = folder.resolve("templates.dxf");
        Files.writeString(file, OCTAVE.toDxf(), StandardCharsets.US_ASCII);
        String script = "import sys, ezdxf\n"
                + "d = ezdxf.readfile(sys.argv[1])\n"
                + "m = list(d.modelspace())\n"
                + "print(d.dxfversion, len(d.audit().errors), len(m), sum(e.dxftype() == 'POLYLINE' for e in m),\n"
                + "      d.layers.get('CENTRE').dxf.linetype,\n"
                + "      sum(e.is_closed for e in m if e.dxftype() == 'POLYLINE'))\n";
        String python = Arrays.stream(new String[] {"python3", "/usr/bin/python3"})
                .filter(DxfTest::hasEzdxf)
                .findFirst()
                .orElse("");
        assumeTrue(!python.isEmpty(), "skipped: no python3 with ezdxf here (apt-get install python3-ezdxf)");
        DxfFile ours = new DxfFile(OCTAVE.toDxf());
        long closed = ours.outlines.stream().filter(o -> o.line().isClosed()).count();

        assertThat(run(python, "-c", script, file.toString()).strip())
                .isEqualTo("AC1009 0 " + (ours.outlines.size() + ours.texts.size()) + " " + ours.outlines.size()
                        + " CENTER " + closed);
    }

    private static boolean hasEzdxf(String python) {
        try {
            return run(python, "-c", "import ezdxf; print('yes')").strip().equals("yes");
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static String run(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor(60, TimeUnit.SECONDS);
        return out;
    }
}
