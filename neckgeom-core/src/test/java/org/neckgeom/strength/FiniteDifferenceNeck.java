package org.neckgeom.strength;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.TrussRod;

/**
 * A neck solved another way: sections summed from thin layers of the design's own outlines, and the bent line as the
 * unknowns of one linear system (central differences, the strings' pull on the bent neck in the matrix), solved by
 * Hipparchus. Uses nothing of the package under test.
 */
final class FiniteDifferenceNeck {

    private static final int STEPS = 600;
    private static final int LAYERS = 2400;

    private final Neck neck;
    private final double h;
    private final double[] strings;
    private final double[] rod;

    /** Strings 1.5 mm over the board at the nut and 3.1 mm at the 12th fret; a two-way rod's bars half its height apart. */
    FiniteDifferenceNeck(Neck neck) {
        this(neck, layers -> layers, new double[0], new double[0]);
    }

    /**
     * With slots, each an extra length of neck that bends at its place, and stiffnesses of its own.
     *
     * @param stiffness of the section from that of its layers, N mm2
     * @param at places of the slots, mm
     * @param extra what each adds, mm of neck
     */
    FiniteDifferenceNeck(Neck neck, DoubleUnaryOperator stiffness, double[] at, double[] extra) {
        this.neck = neck;
        double length = neck.bodyJointMm();
        h = length / STEPS;
        double scale = neck.scale().lengthMm();
        RealMatrix matrix = MatrixUtils.createRealMatrix(STEPS + 1, STEPS + 1);
        RealMatrix loads = MatrixUtils.createRealMatrix(STEPS + 1, 2);
        double[] tensions = tensions(neck);
        double[] atNut = new double[tensions.length];
        double[] slope = new double[tensions.length];
        double along = 0;
        for (int i = 0; i < tensions.length; i++) {
            atNut[i] = overGlueFace(neck, 0, i, 1.5);
            slope[i] = (overGlueFace(neck, scale / 2, i, 3.1) - atNut[i]) / (scale / 2);
            along += neck.strings().orElseThrow().inCourse() * tensions[i] * Math.cos(Math.atan(slope[i]));
        }
        for (int i = 1; i <= STEPS; i++) {
            double x = i * h;
            double[] layers = layers(neck, x);
            double longer = 1;
            for (int s = 0; s < at.length; s++) {
                // Shared by the two nodes beside it.
                longer += extra[s] / h * Math.max(0, 1 - Math.abs(at[s] - x) / h);
            }
            double f = h * h / stiffness.applyAsDouble(layers[1]) * longer;
            // Row i - 1 is w'' at node i; beyond the clamp w mirrors itself.
            matrix.addToEntry(i - 1, i - 1, i == STEPS ? 2 : 1);
            matrix.addToEntry(i - 1, i, -2 + f * along);
            if (i < STEPS) {
                matrix.addToEntry(i - 1, i + 1, 1);
            }
            matrix.addToEntry(i - 1, 0, -f * along * (1 - x / scale));
            double moment = 0;
            for (int s = 0; s < tensions.length; s++) {
                double pull = neck.strings().orElseThrow().inCourse() * tensions[s] * Math.cos(Math.atan(slope[s]));
                moment += pull * (atNut[s] + slope[s] * x - layers[0]);
            }
            loads.setEntry(i - 1, 0, f * moment);
            loads.setEntry(i - 1, 1, f * rodMoment(neck.channel().orElseThrow(), x, layers[0]));
        }
        matrix.setEntry(STEPS, STEPS, 1);
        RealMatrix w = new QRDecomposition(matrix).getSolver().solve(loads);
        strings = w.getColumn(0);
        rod = w.getColumn(1);
    }

    private static double[] tensions(Neck neck) {
        double[] told = neck.strings().orElseThrow().tensionsN();
        if (told.length > 0) {
            return told;
        }
        double[] pull = new double[neck.strings().orElseThrow().courses()];
        for (int i = 0; i < pull.length; i++) {
            double speed = 2
                    * neck.scale().lengthMm()
                    / 1000
                    * neck.strings().orElseThrow().pitchesHz()[i];
            pull[i] = neck.strings().orElseThrow().linearDensitiesGramPerMetre()[i] / 1000 * speed * speed;
        }
        return pull;
    }

    private static double overGlueFace(Neck neck, double x, int course, double overBoard) {
        int n = neck.strings().orElseThrow().courses();
        double edge = neck.halfWidthAtMm(x) - 3;
        double y = -edge + 2 * edge * course / (n - 1);
        double r = neck.crownRadiusAtMm(x);
        return neck.boardThicknessAtMm(x) + overBoard - (r - Math.sqrt(r * r - y * y));
    }

    private static double rodMoment(Channel channel, double x, double axis) {
        TrussRod rod = channel.rod().orElseThrow();
        if (x < channel.startMm() || x > channel.startMm() + rod.lengthMm()) {
            return 0;
        }
        return rod.kind() == TrussRod.Kind.TWO_WAY
                ? -rod.heightMm() / 2
                : -(axis + channel.floorDepthAtMm(x) - rod.heightMm() / 2);
    }

    /** Neutral axis and EI of a neck at a station, summed from layers. */
    static double[] layers(Neck neck, double x) {
        double depth = neck.backDepthAtMm(x);
        double half = neck.halfWidthAtMm(x);
        double top = neck.boardThicknessAtMm(x);
        double r = neck.crownRadiusAtMm(x);
        double bass = neck.back().bassPower();
        double treble = neck.back().treblePower();
        double back = neck.wood().orElseThrow().modulusMPa();
        double board = neck.fingerboard().wood().orElseThrow().modulusMPa();
        Optional<Channel> channel = neck.channel();
        DoubleUnaryOperator slot = below -> channel.filter(c -> below < c.depthAtMm(x)
                        && !(c.filletMm() > 0
                                && below > c.depthClearanceMm()
                                && below < c.depthClearanceMm() + c.filletMm()))
                .map(c -> c.widthAtMm(x))
                .orElse(0.0);
        double ea = 0;
        double eq = 0;
        double ej = 0;
        for (int i = 0; i < LAYERS; i++) {
            double dz = (depth + top) / LAYERS;
            double z = -depth + (i + 0.5) * dz;
            double e;
            if (z < 0) {
                double u = -z / depth;
                double breadth = half
                        * (Math.pow(1 - Math.pow(u, bass), 1 / bass) + Math.pow(1 - Math.pow(u, treble), 1 / treble));
                e = back * (breadth - slot.applyAsDouble(-z));
            } else {
                double centre = r - (top - z);
                double crown = Double.isInfinite(r) ? half : Math.sqrt(Math.max(0, r * r - centre * centre));
                e = board * 2 * Math.min(half, crown);
            }
            ea += e * dz;
            eq += e * dz * z;
            ej += e * dz * (z * z + dz * dz / 12);
        }
        return new double[] {eq / ea, ej - eq * eq / ea};
    }

    private double rise(double x, double force) {
        int i = (int) Math.min(STEPS - 1, x / h);
        double t = x / h - i;
        return (1 - t) * (strings[i] + force * rod[i]) + t * (strings[i + 1] + force * rod[i + 1]);
    }

    /** Moment of the strings about a point on the bent neck: each string's straight line from lifted nut to saddle. */
    double moment(double x, double axis) {
        double scale = neck.scale().lengthMm();
        double[] tensions = tensions(neck);
        double sum = 0;
        for (int i = 0; i < tensions.length; i++) {
            double atNut = overGlueFace(neck, 0, i, 1.5);
            double atSaddle = 2 * overGlueFace(neck, scale / 2, i, 3.1) - atNut;
            double lifted = atNut + strings[0];
            double height = lifted + (atSaddle - lifted) * x / scale;
            double along = Math.cos(Math.atan((atSaddle - atNut) / scale));
            sum += neck.strings().orElseThrow().inCourse() * tensions[i] * along * (height - axis - rise(x, 0));
        }
        return sum;
    }

    /** How far the nut is lifted. */
    double lift() {
        return strings[0];
    }

    /** Greatest gap less greatest rise under a straightedge from a to b. */
    double bow(double a, double b, double force) {
        double gap = 0;
        double hump = 0;
        for (int i = 0; i <= 2000; i++) {
            double x = a + (b - a) * i / 2000;
            double line = rise(a, force) + (rise(b, force) - rise(a, force)) * (x - a) / (b - a);
            gap = Math.max(gap, line - rise(x, force));
            hump = Math.max(hump, rise(x, force) - line);
        }
        return gap - hump;
    }
}
