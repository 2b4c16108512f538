package org.neckgeom.state;

import static org.neckgeom.units.ShopUnits.mm;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.validation.Rows;

/**
 * The three necks of {@code state/*.csv}, with their readings: computed by an independent script in numpy and scipy, which
 * stands beside the tables' design. All spreads are given, so that every scale counts as known.
 */
final class ReferenceStates {

    /** A neck of the tables. */
    record Reference(String name, NeckErrors errors, double joint) {

        @Override
        public String toString() {
            return name;
        }

        NeckState state(int count) {
            NeckState state = errors.state();
            for (NeckReading reading : readings().subList(0, count)) {
                state = state.read(reading);
            }
            return state;
        }

        Map<String, Requirement> quantities() {
            Map<String, Requirement> all = new LinkedHashMap<>();
            put(all, "string line at bridge", line(), 1.0);
            put(all, "board on neck at joint", errors.boardOnNeck(mm(joint)), 0.30);
            put(all, "wood each side near nut", errors.woodEachSide(mm(0.05 * joint)), 0.20);
            put(all, "projection at bridge", errors.projection(), 0.40);
            put(all, "string length", errors.stringLength(), 0.40);
            return all;
        }

        List<NeckReading> readings() {
            Deviation z = errors.calliperZero();
            double xj = joint;
            return List.of(
                    reading(
                            "board to channel at 0.9 xj",
                            board(0.9 * xj).minus(channel(0.9 * xj)).plus(z),
                            0.02,
                            0.06),
                    reading(
                            "taper to channel at 0.1 xj",
                            taper(0.1 * xj).minus(channel(0.1 * xj)).plus(z),
                            0.02,
                            -0.03),
                    reading(
                            "taper to channel at 0.9 xj",
                            taper(0.9 * xj).minus(channel(0.9 * xj)).plus(z),
                            0.02,
                            0.02),
                    reading(
                            "heel to channel at xj",
                            errors.heel(mm(xj)).minus(channel(xj)).plus(z),
                            0.02,
                            0.05),
                    reading("thread at bridge", line(), 0.15, 0.20),
                    reading(
                            "board to channel at 0.1 xj",
                            board(0.1 * xj).minus(channel(0.1 * xj)).plus(z),
                            0.02,
                            -0.02),
                    reading("width at near", errors.width(mm(0.05 * xj)).plus(z), 0.02, 0.08),
                    reading("width at far", errors.width(mm(0.95 * xj)).plus(z), 0.02, 0.05),
                    reading("channel off middle at 0.1 xj", channel(0.1 * xj), 0.014, 0.03),
                    reading("straightedge height at bridge", errors.projection(), 0.10, 0.12),
                    reading("nut to bridge", errors.stringLength(), 0.10, 0.10),
                    reading("feeler at heel foot", Deviation.of("gap at the foot of the heel"), 0.02, 0.03));
        }

        /** The tables count the body's line against the fingerboard's, the other way round. */
        Deviation line() {
            return errors.stringLine().times(-1.0);
        }

        Deviation board(double x) {
            return errors.fingerboard(mm(x));
        }

        Deviation channel(double x) {
            return errors.channel(mm(x));
        }

        Deviation taper(double x) {
            return errors.sideTaper(mm(x));
        }
    }

    private ReferenceStates() {}

    static List<Reference> all() {
        return List.of(
                reference("octave mandolin, from channel", 560, 14, 78, 6, NeckErrors.Located.CHANNEL),
                reference(
                        "guitar, from the edge the channel was cut along",
                        647.7,
                        16,
                        90,
                        6.35,
                        NeckErrors.Located.SAME_EDGE),
                reference("bass, from the opposite edge", 762, 16, 90, 6.35, NeckErrors.Located.OPPOSITE_EDGE));
    }

    static Workmanship given() {
        Workmanship usual = Workmanship.withDefaults();
        return usual.centring(usual.centring())
                .edge(usual.edge())
                .locating(usual.locating())
                .cutting(usual.cutting())
                .gluing(usual.gluing())
                .fitting(usual.fitting())
                .stopping(usual.stopping());
    }

    static Neck neck(String name, double scale, int joint, double heel, double board) {
        return Neck.named(name)
                .scale(mm(scale))
                .fingerboard(
                        Fingerboard.tapered(mm(43), mm(57)).thickness(mm(board)).fretHeight(mm(1)))
                .back(BackProfile.between(mm(20), mm(22)))
                .frets(20)
                .bodyAtFret(joint)
                .heel(Heel.of(mm(heel), mm(54)));
    }

    private static Reference reference(
            String name, double scale, int joint, double heel, double board, NeckErrors.Located located) {
        Neck neck = neck("reference", scale, joint, heel, board);
        NeckErrors errors =
                NeckErrors.of(neck).with(given()).locatedOn(located).calliperZero(ErrorDistribution.normal(mm(0.01)));
        return new Reference(name, errors, neck.bodyJointMm());
    }

    private static NeckReading reading(String name, Deviation of, double u, double value) {
        return new NeckReading(name, of, Estimate.of(mm(value), mm(u)));
    }

    private static void put(Map<String, Requirement> all, String name, Deviation of, double limit) {
        all.put(name, Requirement.of(name, of, Limits.within(mm(limit))));
    }

    /** Name of a cause in the tables, in this project's words. */
    static String cause(String name) {
        return switch (name) {
            case "fence" -> "centring of the channel";
            case "width near" -> "blank width near the nut";
            case "width far" -> "blank width near the body joint";
            case "heel near" -> "heel near the nut";
            case "heel far" -> "heel near the body joint";
            case "heel cut" -> "heel cut";
            case "taper near" -> "side taper near the nut";
            case "taper far" -> "side taper near the body joint";
            case "taper cut" -> "side taper cut";
            case "board near" -> "fingerboard near the nut";
            case "board far" -> "fingerboard near the body joint";
            case "cheek front" -> "front of the cheeks";
            case "cheek back" -> "back of the cheeks";
            case "board height near" -> "fingerboard height near the nut";
            case "board height far" -> "fingerboard height near the body joint";
            case "face top" -> "gap at the top of the heel";
            case "face foot" -> "gap at the foot of the heel";
            case "seat height" -> "height of the seat";
            case "nut stop" -> "stop at the nut";
            case "joint stop" -> "stop at the body joint";
            case "bridge stop" -> "stop at the bridge";
            default -> throw new IllegalArgumentException(name);
        };
    }

    /** Rows of a table, cells in the order of its columns. */
    static List<List<String>> rows(String table) {
        return Rows.of("/state/" + table).stream()
                .map(row -> List.copyOf(row.values()))
                .toList();
    }
}
