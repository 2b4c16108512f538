package org.neckgeom.template;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;

/**
 * Reads a drawing exchange file back by the rules of its release 12 (from memory), and refuses what that does not allow:
 * pairs of a group code line and a value line parted by CR LF, sections between SECTION and ENDSEC, tables between TABLE
 * and ENDTAB, an entity from one code 0 to the next. Written for the tests, apart from the writer.
 */
final class DxfFile {

    record Group(int code, String value) {}

    /** A line type: its dashes as lengths, its gaps as lengths less than nothing. */
    record LineType(String name, List<Double> dashes) {}

    record LayerRow(String name, int colour, String lineType) {}

    /** A polyline as it stands: which layer, closed or not, spots and bulges. */
    record Outline(String layer, Polyline line) {}

    record Text(String layer, Spot at, double size, boolean centred, String words) {}

    /** One line of a polyline, straight or an arc, by the numbers that LINE and ARC would have: ends, centre, radius, angles. */
    record Edge(Spot from, Spot to, double bulge) {

        double length() {
            return Math.hypot(to.uMm() - from.uMm(), to.vMm() - from.vMm());
        }

        boolean isHorizontal() {
            return from.vMm() == to.vMm();
        }

        double number(int code) {
            return switch (code) {
                case 10 -> from.uMm();
                case 20 -> from.vMm();
                case 11 -> to.uMm();
                case 21 -> to.vMm();
                default -> throw new IllegalArgumentException("no number " + code);
            };
        }

        /** By the chord's half and the half angle. */
        double radius() {
            return length() / 2 / Math.sin(2 * Math.atan(Math.abs(bulge)));
        }

        double angle() {
            return 4 * Math.atan(bulge);
        }

        Spot centre() {
            double off = length() / 2 / Math.tan(angle() / 2);
            double nu = -(to.vMm() - from.vMm()) / length();
            double nv = (to.uMm() - from.uMm()) / length();
            return new Spot((from.uMm() + to.uMm()) / 2 + off * nu, (from.vMm() + to.vMm()) / 2 + off * nv);
        }
    }

    /** Group codes of release 12 that an entity of these kinds may have besides its layer, colour, line type and thickness. */
    private static final Map<String, Set<Integer>> ENTITIES = Map.of(
            "POLYLINE", Set.of(66, 10, 20, 30, 70, 40, 41, 71, 72, 73, 74, 75),
            "VERTEX", Set.of(10, 20, 30, 40, 41, 42, 50, 70, 71, 72, 73, 74),
            "SEQEND", Set.of(),
            "TEXT", Set.of(10, 20, 30, 40, 1, 50, 41, 51, 7, 71, 72, 73, 11, 21, 31));

    private static final Set<Integer> OF_ALL = Set.of(8, 6, 62, 38, 39);

    final List<LineType> lineTypes = new ArrayList<>();
    final List<LayerRow> layers = new ArrayList<>();
    final List<Outline> outlines = new ArrayList<>();
    final List<Text> texts = new ArrayList<>();
    final Map<String, List<Group>> header = new HashMap<>();

    private final List<Group> groups = new ArrayList<>();
    private int at;

    DxfFile(String file) {
        pairs(file);
        List<String> sections = new ArrayList<>();
        while (!is(0, "EOF")) {
            take(0, "SECTION");
            String name = take(2);
            sections.add(name);
            switch (name) {
                case "HEADER" -> header();
                case "TABLES" -> tables();
                case "ENTITIES" -> entities();
                default -> throw refused("section " + name);
            }
            take(0, "ENDSEC");
        }
        at++;
        check(at == groups.size(), "something after EOF");
        check(sections.equals(List.of("HEADER", "TABLES", "ENTITIES")), "sections " + sections);
        checkWhole();
    }

    private static IllegalStateException refused(String why) {
        return new IllegalStateException("no release 12: " + why);
    }

    private static void check(boolean holds, String why) {
        if (!holds) {
            throw refused(why);
        }
    }

    private void pairs(String file) {
        check(file.endsWith("\r\n"), "the last line is not ended by CR LF");
        check(
                !file.replace("\r\n", "").contains("\n")
                        && !file.replace("\r\n", "").contains("\r"),
                "lines without CR LF");
        check(file.chars().allMatch(c -> c == '\r' || c == '\n' || c >= 0x20 && c < 0x7F), "not ASCII");
        String[] lines = file.split("\r\n", -1);
        check(lines.length % 2 == 1, "an odd count of lines");
        for (int i = 0; i + 1 < lines.length; i += 2) {
            check(lines[i].strip().matches("\\d{1,4}"), "group code " + lines[i]);
            check(lines[i + 1].length() <= 255, "a line of more than 255");
            Group group = new Group(Integer.parseInt(lines[i].strip()), lines[i + 1]);
            if (group.code() != 999) {
                groups.add(typed(group));
            }
        }
    }

    /** Release 12 has strings, reals and whole numbers by their codes; handles and subclasses (5, 100 to 105, 330) we don't write. */
    private static Group typed(Group group) {
        int code = group.code();
        if (code >= 10 && code <= 59) {
            check(group.value().matches("-?\\d+(\\.\\d+)?"), "real " + code + " " + group.value());
        } else if (code >= 60 && code <= 79) {
            check(group.value().matches("-?\\d+"), "whole number " + code + " " + group.value());
        } else {
            check(code >= 0 && code <= 9 && code != 5, "group code " + code);
        }
        return group;
    }

    private Group now() {
        check(at < groups.size(), "ends too early");
        return groups.get(at);
    }

    private boolean is(int code, String value) {
        return now().equals(new Group(code, value));
    }

    private void take(int code, String value) {
        check(is(code, value), "expected " + code + " " + value + ", but found " + now());
        at++;
    }

    private String take(int code) {
        check(now().code() == code, "expected " + code + ", but found " + now());
        return groups.get(at++).value();
    }

    private double real(int code) {
        return Double.parseDouble(take(code));
    }

    private int whole(int code) {
        return Integer.parseInt(take(code));
    }

    private void header() {
        while (now().code() == 9) {
            String name = take(9);
            List<Group> values = new ArrayList<>();
            while (now().code() != 9 && now().code() != 0) {
                values.add(groups.get(at++));
            }
            check(name.matches("\\$[A-Z0-9]+") && !values.isEmpty(), "variable " + name);
            check(header.put(name, values) == null, "variable " + name + " twice");
        }
        check(List.of(new Group(1, "AC1009")).equals(header.get("$ACADVER")), "version");
        extent("$EXTMIN");
        extent("$EXTMAX");
    }

    double[] extent(String name) {
        List<Group> values = header.getOrDefault(name, List.of());
        check(values.stream().map(Group::code).toList().equals(List.of(10, 20, 30)), name);
        return values.stream()
                .mapToDouble(value -> Double.parseDouble(value.value()))
                .toArray();
    }

    private void tables() {
        while (is(0, "TABLE")) {
            at++;
            String table = take(2);
            int most = whole(70);
            int count = 0;
            while (!is(0, "ENDTAB")) {
                take(0, table);
                count++;
                switch (table) {
                    case "LTYPE" -> lineType();
                    case "LAYER" -> layer();
                    case "STYLE" -> style();
                    default -> throw refused("table " + table);
                }
            }
            at++;
            check(count <= most, table + " has more rows than it states");
        }
    }

    private String symbol() {
        String name = take(2);
        check(name.matches("[A-Z0-9$_-]{1,31}"), "name " + name);
        return name;
    }

    private void lineType() {
        String name = symbol();
        whole(70);
        take(3);
        check(whole(72) == 65, "alignment of " + name);
        int count = whole(73);
        double length = real(40);
        List<Double> dashes = new ArrayList<>();
        while (now().code() == 49) {
            dashes.add(real(49));
        }
        check(dashes.size() == count, "dashes of " + name);
        double sum = dashes.stream().mapToDouble(Math::abs).sum();
        check(Math.abs(sum - length) < 1e-9, "length of " + name);
        check(dashes.isEmpty() || dashes.get(0) > 0 && dashes.stream().anyMatch(d -> d < 0), "pattern of " + name);
        lineTypes.add(new LineType(name, dashes));
    }

    private void layer() {
        String name = symbol();
        whole(70);
        int colour = whole(62);
        check(colour >= 1 && colour <= 255, "colour of " + name);
        String type = take(6);
        check(lineTypes.stream().anyMatch(known -> known.name().equals(type)), "line type of " + name);
        check(layers.stream().noneMatch(known -> known.name().equals(name)), "layer " + name + " twice");
        layers.add(new LayerRow(name, colour, type));
    }

    private void style() {
        symbol();
        while (now().code() != 0) {
            check(Set.of(70, 40, 41, 50, 71, 42, 3, 4).contains(now().code()), "style " + now());
            at++;
        }
    }

    private void entities() {
        while (!is(0, "ENDSEC")) {
            String kind = now().value();
            Map<Integer, String> own = entity();
            switch (kind) {
                case "POLYLINE" -> polyline(own);
                case "TEXT" -> text(own);
                default -> throw refused("entity " + kind);
            }
        }
    }

    private Map<Integer, String> entity() {
        String kind = take(0);
        check(ENTITIES.containsKey(kind), "entity " + kind);
        Map<Integer, String> own = new HashMap<>();
        while (now().code() != 0) {
            Group group = groups.get(at++);
            check(OF_ALL.contains(group.code()) || ENTITIES.get(kind).contains(group.code()), kind + " with " + group);
            check(own.put(group.code(), group.value()) == null, kind + " with two of " + group.code());
        }
        String layer = own.get(8);
        check(layer != null && layers.stream().anyMatch(known -> known.name().equals(layer)), "layer " + layer);
        return own;
    }

    private static double number(Map<Integer, String> own, int code) {
        check(own.containsKey(code), "no " + code);
        return Double.parseDouble(own.get(code));
    }

    private void polyline(Map<Integer, String> own) {
        check("1".equals(own.get(66)), "vertices do not follow");
        check(number(own, 10) == 0 && number(own, 20) == 0 && number(own, 30) == 0, "a polyline's own point");
        String flags = own.getOrDefault(70, "0");
        check(flags.equals("0") || flags.equals("1"), "flags " + flags);
        List<Spot> spots = new ArrayList<>();
        List<Double> bulges = new ArrayList<>();
        while (is(0, "VERTEX")) {
            Map<Integer, String> vertex = entity();
            check(vertex.get(8).equals(own.get(8)), "a vertex on another layer");
            check(number(vertex, 30) == 0, "a vertex out of the plane");
            spots.add(new Spot(number(vertex, 10), number(vertex, 20)));
            bulges.add(vertex.containsKey(42) ? number(vertex, 42) : 0);
        }
        check(is(0, "SEQEND"), "vertices without SEQEND");
        check(entity().get(8).equals(own.get(8)), "SEQEND on another layer");
        check(spots.size() >= 2, "a polyline of " + spots.size());
        double[] all = bulges.stream().mapToDouble(bulge -> bulge).toArray();
        outlines.add(new Outline(
                own.get(8),
                flags.equals("1")
                        ? Polyline.closed(spots, all)
                        : Polyline.open(spots).bulged(all)));
    }

    private void text(Map<Integer, String> own) {
        boolean centred = "1".equals(own.get(72));
        Spot spot = new Spot(number(own, 10), number(own, 20));
        if (centred) {
            check(number(own, 11) == spot.uMm() && number(own, 21) == spot.vMm() && number(own, 31) == 0, "middle");
        }
        check(number(own, 40) > 0 && !own.getOrDefault(1, "").isEmpty(), "text without size or words");
        texts.add(new Text(own.get(8), spot, number(own, 40), centred, own.get(1)));
    }

    /** Extents hold all that is drawn, the bellies of arcs too, and are no larger than that and its words. */
    private void checkWhole() {
        double[] low = extent("$EXTMIN");
        double[] high = extent("$EXTMAX");
        for (Outline outline : outlines) {
            double[] box = outline.line().extentsMm();
            check(
                    box[0] >= low[0] - 1e-8
                            && box[1] >= low[1] - 1e-8
                            && box[2] <= high[0] + 1e-8
                            && box[3] <= high[1] + 1e-8,
                    "a line outside the extents");
        }
        for (Text text : texts) {
            check(
                    text.at().uMm() >= low[0]
                            && text.at().uMm() <= high[0]
                            && text.at().vMm() >= low[1]
                            && text.at().vMm() + text.size() <= high[1] + 1e-8,
                    "words outside the extents");
        }
    }

    private List<Edge> edges(Layer layer) {
        List<Edge> edges = new ArrayList<>();
        for (Outline outline : outlines(layer)) {
            List<Spot> spots = outline.line().spots();
            double[] bulges = outline.line().bulges();
            for (int i = 0; i + 1 < spots.size() || outline.line().isClosed() && i < spots.size(); i++) {
                edges.add(new Edge(spots.get(i), spots.get((i + 1) % spots.size()), bulges[i]));
            }
        }
        return edges;
    }

    /** The straight lines of a layer, those of outlines among them. */
    List<Edge> lines(Layer layer) {
        return edges(layer).stream().filter(edge -> edge.bulge() == 0).toList();
    }

    /** The arcs of a layer. */
    List<Edge> arcs(Layer layer) {
        return edges(layer).stream().filter(edge -> edge.bulge() != 0).toList();
    }

    List<Outline> outlines(Layer layer) {
        return outlines.stream()
                .filter(outline -> outline.layer().equals(layer.name()))
                .toList();
    }

    /** The closed ones of a layer. */
    List<Polyline> closed(Layer layer) {
        return outlines(layer).stream()
                .map(Outline::line)
                .filter(Polyline::isClosed)
                .toList();
    }

    List<String> words(Layer layer) {
        return texts.stream()
                .filter(text -> text.layer().equals(layer.name()))
                .map(Text::words)
                .toList();
    }
}
