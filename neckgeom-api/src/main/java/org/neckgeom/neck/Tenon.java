package org.neckgeom.neck;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;

/**
 * A tenon: glued into a pocket of the body (a set neck), or bolted ({@index bolt-on}). Of a bolted one the places of its barrels or inserts, and the wood left around them, such as two 10 mm
 * barrels 28.5 and 57.5 mm below the glue face. Immutable.
 *
 * <p>Depths run from the glue face down the mating face to the centre of each hole. The holes lie across the tenon, set back
 * from its shoulder. Edge distances count from the wall of a hole, not from its centre. Exact. Lengths are more than 0.
 */
public final class Tenon extends Noun<Tenon> implements HeelJoint {

    private static final int MOST = 6;

    /** Its keys. */
    public static final Table<Tenon> TABLE =
            Table.of("tenon", "a bolted tenon", Tenon::new).printedBy(Tenon::sentences);

    private static final Key<Tenon, Amount<Length>> HEIGHT =
            TABLE.needed("height", Types.SIZE, "height from the glue face to the lower end of the tenon");
    private static final Key<Tenon, Amount<Length>> LENGTH =
            TABLE.needed("length", Types.SIZE, "length of the tenon past the shoulder");
    private static final Key<Tenon, Amount<Length>> DIAMETER = TABLE.optional(
                    "hole diameter",
                    Types.SIZE,
                    "diameter of the holes for barrels or inserts. Default: glued, without holes")
            .called("hole diameter");
    private static final Key<Tenon, Amount<Length>> SET_BACK = TABLE.optional(
                    "set back", Types.SIZE_OR_NOTHING, "distance from the shoulder to each hole's wall")
            .called("set-back of the hole");
    /** Less is no hole that a tool drills. */
    private static final double LEAST_HOLE_MM = 0.1;

    private static final Key<Tenon, List<Amount<Length>>> HOLES = TABLE.optional(
                    "holes at", Types.list(Types.SIZE, 1, MOST), "depth of the hole centres below the glue face")
            .called("hole depth");

    private static final Key<Tenon, Amount<Length>> WIDTH = TABLE.optional(
                    "width", Types.SIZE, "width of the tenon across the neck. Default: no mesh of the tenon")
            .called("tenon width");

    private static final Key<Tenon, Amount<Length>> POCKET_WIDTH = TABLE.optional(
                    "pocket width",
                    Types.SIZE,
                    "width of the body's pocket that a tenon is glued into. Default: not checked")
            .called("pocket width");
    private static final Key<Tenon, Amount<Length>> POCKET_DEPTH = TABLE.optional(
                    "pocket depth",
                    Types.SIZE,
                    "depth of the body's pocket that a tenon is glued into. Default: not checked")
            .called("pocket depth");

    static {
        TABLE.together(DIAMETER, SET_BACK, HOLES);
    }

    private record Hole(double diameter, double depth) {}

    private Tenon(Values<Tenon> values) {
        super(values);
        if (!isBolted()) {
            return;
        }
        double behind = values.libraryValue(LENGTH) - values.libraryValue(SET_BACK);
        if (!(values.libraryValue(DIAMETER) >= LEAST_HOLE_MM)) {
            throw values.refused(
                    DIAMETER, "at-least", "be " + style().brief(LEAST_HOLE_MM) + " or more", values.at(DIAMETER));
        }
        if (!(values.libraryValue(DIAMETER) < behind)) {
            throw values.refused(
                    DIAMETER,
                    "less-than",
                    "be less than the " + style().brief(behind) + " of tenon behind its set-back",
                    values.at(DIAMETER));
        }
        requireApart(values);
    }

    /** Two holes that meet are one slot, which no bolt holds in. */
    private static void requireApart(Values<Tenon> values) {
        List<Amount<Length>> depths = values.find(HOLES).orElse(List.of()).stream()
                .sorted(Comparator.comparingDouble(Amount::libraryValue))
                .toList();
        for (int i = 1; i < depths.size(); i++) {
            double apart = depths.get(i).libraryValue() - depths.get(i - 1).libraryValue();
            if (!(apart > values.libraryValue(DIAMETER))) {
                throw values.refused(
                        HOLES,
                        "apart",
                        "be more than " + values.at(DIAMETER) + " apart, the diameter of a hole",
                        depths.get(i - 1) + " and " + depths.get(i));
            }
        }
    }

    /**
     * Begins a tenon with its size.
     *
     * @param height from the glue face down to its lower end, more than 0
     * @param length how far it reaches past the shoulder, more than 0
     * @return the size, to be followed by {@code holes}
     */
    public static NeedsHoles of(Quantity<Length> height, Quantity<Length> length) {
        return new NeedsHoles(TABLE.values().amount(HEIGHT, height).amount(LENGTH, length));
    }

    /**
     * {@return a tenon that is glued into a pocket of the body, without holes: a set neck's}
     *
     * @param height from the glue face down to its lower end, more than 0
     * @param length how far it reaches past the shoulder, more than 0
     */
    public static Tenon glued(Quantity<Length> height, Quantity<Length> length) {
        return new Tenon(TABLE.values().amount(HEIGHT, height).amount(LENGTH, length));
    }

    /**
     * {@return this tenon with the pocket of the body that it is glued into}
     *
     * @param across width of the pocket, more than 0
     * @param deep depth of the pocket, more than 0
     */
    public Tenon pocket(Quantity<Length> across, Quantity<Length> deep) {
        return new Tenon(values().amount(POCKET_WIDTH, across).amount(POCKET_DEPTH, deep));
    }

    /** {@return whether it is bolted: it has holes for barrels or inserts; else it is glued} */
    public boolean isBolted() {
        return values().has(HOLES);
    }

    /** {@return the width of the pocket that it is glued into; nothing where it was not given} */
    public Optional<Amount<Length>> pocketWidth() {
        return values().find(POCKET_WIDTH);
    }

    /** {@return the depth of the pocket that it is glued into; nothing where it was not given} */
    public Optional<Amount<Length>> pocketDepth() {
        return values().find(POCKET_DEPTH);
    }

    /** A tenon without its holes yet. Immutable. */
    public static final class NeedsHoles extends Unfinished<Tenon> {

        private NeedsHoles(Values<Tenon> values) {
            super(values, "Tenon, holes not given yet");
        }

        /**
         * Adds the holes for barrels or inserts.
         *
         * @param diameter of each hole, more than 0
         * @param setBack of the hole's wall from the shoulder, 0 or more
         * @return the holes, to be followed by {@code at}
         */
        public NeedsDepths holes(Quantity<Length> diameter, Quantity<Length> setBack) {
            return new NeedsDepths(values().amount(DIAMETER, diameter).amount(SET_BACK, setBack));
        }
    }

    /** A tenon whose holes have no place yet. Immutable. */
    public static final class NeedsDepths extends Unfinished<Tenon> {

        private NeedsDepths(Values<Tenon> values) {
            super(values, "Tenon, depths of its holes not given yet");
        }

        /**
         * Adds where the holes are.
         *
         * @param depths of their centres below the glue face, 1 to 6, each more than 0
         * @return the tenon
         */
        @SafeVarargs
        @SuppressWarnings("varargs") // only read
        public final Tenon at(Quantity<Length>... depths) {
            return new Tenon(values().amounts(HOLES, Arrays.asList(Objects.requireNonNull(depths, "depths"))));
        }
    }

    /**
     * {@return this tenon with its width}
     *
     * @param across from cheek to cheek of the tenon, more than 0
     */
    public Tenon width(Quantity<Length> across) {
        return new Tenon(values().amount(WIDTH, across));
    }

    /** {@return the width of the tenon across the neck; more than 0; nothing where it was not given} */
    public Optional<Amount<Length>> width() {
        return values().find(WIDTH);
    }

    /** {@return the height of the tenon; from the glue face down to its lower end} */
    public Amount<Length> height() {
        return values().at(HEIGHT);
    }

    /** {@return the length of the tenon; how far it reaches past the shoulder} */
    public Amount<Length> length() {
        return values().at(LENGTH);
    }

    /** {@return the diameter of the holes; 0 where it is glued} */
    public Amount<Length> holeDiameter() {
        return values().find(DIAMETER).orElseGet(() -> style().amount(0));
    }

    /** {@return the holes' depths in order, from the top; the depths of their centres} */
    public List<Amount<Length>> depths() {
        return values().find(HOLES).orElse(List.of()).stream()
                .sorted(Comparator.comparingDouble(Amount::libraryValue))
                .toList();
    }

    @Override
    public Optional<Amount<Length>> pastShoulder() {
        return Optional.of(length());
    }

    @Override
    public Optional<Amount<Length>> below() {
        return Optional.of(height());
    }

    /** {@return the distance of a hole's centre from the shoulder; set-back and half the diameter} */
    public Amount<Length> centreFromShoulder() {
        return style().amount(centreFromShoulderMm());
    }

    private double centreFromShoulderMm() {
        return values().libraryValue(SET_BACK, 0) + values().libraryValue(DIAMETER, 0) / 2;
    }

    /**
     * {@return the least wood around any hole: to the glue face, the lower end, the shoulder, the tenon's far end, and
     * to the next hole; the distance from the hole's wall, negative when it breaks out}
     */
    public Amount<Length> leastWood() {
        return style().amount(leastMm());
    }

    private double leastMm() {
        double height = values().libraryValue(HEIGHT);
        double diameter = values().libraryValue(DIAMETER, 0);
        double setBack = values().libraryValue(SET_BACK, 0);
        double r = diameter / 2;
        double[] depths = depths().stream().mapToDouble(Amount::libraryValue).toArray();
        double least = Math.min(setBack, values().libraryValue(LENGTH) - setBack - diameter);
        for (int i = 0; i < depths.length; i++) {
            least = Math.min(least, Math.min(depths[i] - r, height - depths[i] - r));
            if (i > 0) {
                least = Math.min(least, depths[i] - depths[i - 1] - diameter);
            }
        }
        return least;
    }

    private List<Hole> holes() {
        double diameter = values().libraryValue(DIAMETER, 0);
        return depths().stream()
                .map(depth -> new Hole(diameter, depth.libraryValue()))
                .toList();
    }

    private static Form<Tenon> sentences() {
        Form<Hole> hole = Form.<Hole>of("tenon-hole")
                .fact("diameter", Kind.MM, "of the hole", Hole::diameter)
                .fact("depth", Kind.MM, "of its centre below the glue face", Hole::depth);
        return TABLE.facts("tenon-bolts")
                .fact("holes", Kind.table(hole), "from the top down", Tenon::holes)
                .finds("tenon", "Tenon {height:brief} high, {length:brief} long")
                .each("holes", "hole {diameter:brief}", "{depth:text} below the glue face")
                .fact("centreFromShoulder", Kind.MM, "of the holes", Tenon::centreFromShoulderMm)
                .line("centreFromShoulder", "centres", Tenon::isBolted, "{centreFromShoulder:text} from the shoulder")
                .fact("leastWood", Kind.MM, "around any hole; negative: breaks out", Tenon::leastMm)
                .line("leastWood", "least wood", Tenon::isBolted, "{leastWood:text} around a hole");
    }
}
