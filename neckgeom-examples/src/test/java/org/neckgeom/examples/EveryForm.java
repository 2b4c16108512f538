package org.neckgeom.examples;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.neckgeom.page.Document;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Outcome;
import org.neckgeom.template.Paper;

/** A plan written in every form, and what must hold of all of them: a fault in words, or nothing. */
public final class EveryForm {

    private static final int COLUMNS = 80;
    /** Templates for CAD have nine decimals of their unit, an inch at most: half of the last at both ends. */
    private static final double DRAWN_MM = 2.6e-8;

    private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|[Ii]nfinity)\\b");
    /** An end of a fret in a drawing exchange file, bass end first. */
    private static final Pattern DXF_FRET_END =
            Pattern.compile("  0\r\nVERTEX\r\n  8\r\nFRETS\r\n 10\r\n(.*)\r\n 20\r\n(.*)\r\n");

    private final Job plan;

    EveryForm(Job plan) {
        this.plan = plan;
    }

    /**
     * Writes a plan.
     *
     * @param plan any
     * @param alsoPdf whether to write the one form that takes longest too
     * @return the first fault, nothing where all is whole
     */
    public static Optional<String> fault(Job plan, boolean alsoPdf) {
        return new EveryForm(plan).faults(alsoPdf).stream().findFirst();
    }

    /**
     * Writes a plan as text and as data, and reads the data back.
     *
     * @param plan any
     * @return the first fault, nothing where all is whole
     */
    public static Optional<String> faultOfTextAndData(Job plan) {
        EveryForm form = new EveryForm(plan);
        List<String> faults = new ArrayList<>();
        form.textIsWhole(faults);
        form.dataReadsBack(Document.PLAN.json(plan), faults);
        return faults.stream().findFirst();
    }

    private void textIsWhole(List<String> faults) {
        String text = Sheet.of(plan).toText();
        refuseNoNumber("text", text, faults);
        text.lines()
                .filter(line -> line.codePointCount(0, line.length()) > COLUMNS)
                .forEach(line -> faults.add("the text has more than 80 columns in: " + line));
    }

    private Job dataReadsBack(String json, List<String> faults) {
        refuseNoNumber("data", json, faults);
        Job read = Document.PLAN.read(json);
        if (!read.equals(plan)) {
            faults.add("the JSON reads back to another plan");
        }
        return read;
    }

    private List<String> faults(boolean alsoPdf) {
        List<String> faults = new ArrayList<>();
        textIsWhole(faults);
        Output.Asked asked = new Output.Asked(plan, Paper.A4, false, Progress.none());
        for (Output output : Output.values()) {
            if (output == Output.STL) {
                output.files(Path.of("neck.stl"), asked).forEach((path, bytes) -> {
                    if (!path.toString().matches("neck(-[a-z]+)+(-[0-9]+)?\\.stl") || bytes.length <= STL_HEAD) {
                        faults.add(path + " has " + bytes.length + " bytes");
                    }
                });
            } else if (output == Output.PDF || output == Output.CARDS_PDF) {
                String head = alsoPdf ? new String(output.of(asked), 0, 5, StandardCharsets.US_ASCII) : "%PDF-";
                if (!head.equals("%PDF-")) {
                    faults.add("the PDF begins " + head);
                }
            } else {
                refuseNoNumber(output.toString(), output.text(asked), faults);
            }
        }
        String json = Output.JSON.text(asked);
        Job read = dataReadsBack(json, faults);
        if (!Document.PLAN.json(read).equals(json)) {
            faults.add("the JSON of the plan read back is another text");
        }
        woodIsThereOrItsLackIsStated(Output.STATIONS.text(asked), faults);
        fretsAreDrawnWhereTheTableHasThem(Output.DXF.text(asked), Output.FRETS.text(asked), faults);
        return faults;
    }

    /** Header and count of a binary STL. */
    private static final int STL_HEAD = 84;

    static void refuseNoNumber(String form, String text, List<String> faults) {
        if (!text.contains("NaN") && !text.contains("nfinity")) {
            return; // which a search for letters finds sooner than one for words
        }
        NO_NUMBER.matcher(text).results().findFirst().ifPresent(found -> {
            int from = Math.max(0, found.start() - 60);
            faults.add(form + " has " + found.group() + " in: "
                    + text.substring(from, Math.min(text.length(), found.end() + 20))
                            .replace('\n', ' '));
        });
    }

    void woodIsThereOrItsLackIsStated(String stations, List<String> faults) {
        boolean lacking = stations.lines()
                .skip(1)
                .map(line -> line.substring(line.lastIndexOf(',') + 1))
                .anyMatch(wood -> !wood.isEmpty() && Double.parseDouble(wood) < 0);
        boolean stated = plan.plan().checks().stream()
                .anyMatch(check -> check.code() == CheckCode.WOOD_LEFT && check.outcome() == Outcome.STOP);
        if (lacking && !stated) {
            faults.add("wood left is less than nothing, and no check stops for it");
        }
    }

    /** Between first and last fret, and in width, as far as frets are square. */
    void fretsAreDrawnWhereTheTableHasThem(String dxf, String table, List<String> faults) {
        if (plan.neck().fannedFrets().isPresent()) {
            return;
        }
        double unit = table.startsWith("fret,from nut in") ? 25.4 : 1;
        List<double[]> listed = table.lines()
                .skip(2)
                .map(line -> line.split(","))
                .map(cells -> new double[] {Double.parseDouble(cells[1]) * unit, Double.parseDouble(cells[3]) * unit})
                .toList();
        List<double[]> ends = DXF_FRET_END
                .matcher(dxf)
                .results()
                .map(end -> new double[] {Double.parseDouble(end.group(1)), Double.parseDouble(end.group(2))})
                .toList();
        List<double[]> drawn = IntStream.range(0, ends.size() / 2)
                .mapToObj(i -> new double[] {ends.get(2 * i)[0], ends.get(2 * i + 1)[1] - ends.get(2 * i)[1]})
                .sorted((a, b) -> Double.compare(a[0], b[0]))
                .toList();
        if (drawn.size() != listed.size()) {
            faults.add(listed.size() + " frets are listed, and " + drawn.size() + " drawn");
            return;
        }
        for (int i = 0; i < drawn.size(); i++) {
            double apart = drawn.get(i)[0] - drawn.get(0)[0] - (listed.get(i)[0] - listed.get(0)[0]);
            double wider = drawn.get(i)[1] - listed.get(i)[1];
            if (!(Math.abs(apart) <= DRAWN_MM && Math.abs(wider) <= DRAWN_MM)) {
                faults.add(
                        "fret " + (i + 1) + " is drawn " + apart + " mm off its place and " + wider + " mm too wide");
                return;
            }
        }
    }
}
