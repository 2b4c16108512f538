package org.neckgeom.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.neckgeom.fault.Refusal;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Bars;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Reinforcement;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.Strip;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.LengthStyle;

/** Turns a design into a beam and its loads, and refuses what cannot be one. */
final class NeckModel {

    /** Modulus of steel, MPa: 200 to 210 GPa in general texts. */
    static final double STEEL_MPA = 200_000;

    /** Modulus of a bar of carbon fibre along the fibre, MPa: 110 to 180 GPa for bars with standard fibre, from memory. */
    static final double CARBON_MPA = 130_000;

    private NeckModel() {}

    static Wood boardWood(Neck neck) {
        return needed(neck.fingerboard().wood(), neck, "fingerboard's wood", "add .wood(...) to the fingerboard");
    }

    static Wood wood(Neck neck) {
        return needed(neck.wood(), neck, "wood", "add .wood(...)");
    }

    static StringSet strings(Neck neck) {
        return needed(neck.strings(), neck, "strings", "add .strings(...)");
    }

    private static <T> T needed(Optional<T> part, Neck neck, String what, String remedy) {
        return part.orElseThrow(() -> Refusal.because(
                what, "missing", "\"" + neck.name() + "\" needs its " + what + " for this, but has none: " + remedy));
    }

    static NeckBeam beam(Neck neck) {
        double length = neck.bodyJointMm();
        Taper halfWidth = Taper.through(0, neck.halfWidthAtMm(0), length, neck.halfWidthAtMm(length));
        Taper thickness = Taper.through(0, neck.boardThicknessAtMm(0), length, neck.boardThicknessAtMm(length));
        Taper depth = Taper.through(0, neck.backDepthAtMm(0), length, neck.backDepthAtMm(length));
        boolean flat = neck.fingerboard().crown() == Fingerboard.Crown.FLAT;
        Taper radius = flat ? null : Taper.through(0, neck.crownRadiusAtMm(0), length, neck.crownRadiusAtMm(length));
        for (double x : new double[] {0, length}) {
            requirePositive(halfWidth.at(x), "half-width", x, neck.style());
            requirePositive(depth.at(x), "depth of the back", x, neck.style());
            if (radius != null) {
                requirePositive(radius.at(x) - halfWidth.at(x), "crown's radius less the half-width", x, neck.style());
            }
            double drop = radius == null ? 0 : NeckSetKernel.drop(radius.at(x), halfWidth.at(x));
            requirePositive(thickness.at(x) - drop, "fingerboard's thickness at its edge", x, neck.style());
        }
        BackProfile back = neck.back();
        Superellipse bass = Superellipse.of(back.bassPower());
        Superellipse treble = back.bassPower() == back.treblePower() ? bass : Superellipse.of(back.treblePower());
        Channel channel = neck.channel().orElse(null);
        return new NeckBeam(
                length,
                new NeckBeam.Board(
                        new Taper(2 * halfWidth.atZero(), 2 * halfWidth.slope()),
                        thickness,
                        radius,
                        boardWood(neck).modulusMPa()),
                new NeckBeam.Back(halfWidth, depth, bass, treble, wood(neck).modulusMPa(), layers(neck)),
                channel,
                channel == null ? 0 : modulus(channel.reinforcement()),
                neck.bars().map(bars -> designed(bars, length)).orElse(List.of()));
    }

    private static List<NeckBeam.Layer> layers(Neck neck) {
        List<Strip> strips = neck.strips();
        List<Double> edges = neck.stripEdgesMm();
        List<NeckBeam.Layer> layers = new ArrayList<>();
        for (int i = 0; i < strips.size(); i++) {
            double ratio = strips.get(i).wood().modulusMPa() / wood(neck).modulusMPa();
            layers.add(new NeckBeam.Layer(edges.get(i), edges.get(i + 1), ratio));
        }
        return layers;
    }

    /** Of the moduli of neck and fingerboard. */
    static ModulusSpread spread(Neck neck) {
        return ModulusSpread.of(
                ofShaft(neck, Wood::modulusVariation), boardWood(neck).modulusVariation());
    }

    /** A figure of the shaft's wood; of strips their mean, each with its share of width times modulus half way to the body. */
    static double ofShaft(Neck neck, ToDoubleFunction<Wood> figure) {
        if (neck.strips().isEmpty()) {
            return figure.applyAsDouble(wood(neck));
        }
        double half = neck.halfWidthAtMm(neck.bodyJointMm() / 2);
        List<Double> edges = neck.stripEdgesMm();
        double sum = 0;
        double all = 0;
        for (int i = 0; i < neck.strips().size(); i++) {
            Wood wood = neck.strips().get(i).wood();
            double width = Math.min(half, edges.get(i + 1)) - Math.max(-half, edges.get(i));
            double share = Math.max(0, width) * wood.modulusMPa();
            sum += share * figure.applyAsDouble(wood);
            all += share;
        }
        return sum / all;
    }

    private static void requirePositive(double mm, String what, double x, LengthStyle style) {
        if (!(mm > 0)) {
            throw Refusal.of(
                    what,
                    "more-than",
                    "be more than " + style.brief(0) + " along the neck",
                    style.brief(mm) + " at " + style.brief(x) + " from the nut");
        }
    }

    /** Modulus of a bonded bar, 0 for a rod, which is not bonded. */
    static double modulus(Reinforcement reinforcement) {
        return reinforcement instanceof Bar bar ? modulus(bar) : 0;
    }

    private static double modulus(Bar bar) {
        return switch (Objects.requireNonNull(bar, "bar").material()) {
            case STEEL -> STEEL_MPA;
            case CARBON -> CARBON_MPA;
        };
    }

    /** The two bars of a design, as they lie in it. */
    private static List<BondedBar> designed(Bars bars, double bodyJoint) {
        double near = bars.asideMm(0, bodyJoint);
        double fan = (bars.asideMm(bodyJoint, bodyJoint) - near) / bodyJoint;
        Channel cut = bars.channel();
        return IntStream.of(-1, 1)
                .mapToObj(side -> new BondedBar(
                        side * near,
                        side * fan,
                        cut.startMm(),
                        cut.endMm(),
                        bars.bar().widthMm(),
                        0,
                        bars.bar().heightMm(),
                        modulus(bars.bar())))
                .toList();
    }

    /** A bar on each side of the centreline, its top at the glue face, from the nut on. */
    static List<BondedBar> pair(Bar bar, double offCentre) {
        double modulus = modulus(bar);
        List<BondedBar> bars = new ArrayList<>();
        for (int side = -1; side <= 1; side += 2) {
            bars.add(new BondedBar(side * offCentre, 0, bar.lengthMm(), bar.widthMm(), 0, bar.heightMm(), modulus));
        }
        return bars;
    }

    /**
     * Tension of a string from its pitch, N: Mersenne's law as Taylor derived it, {@code T = mu (2 L f)^2}. Exact for an ideal flexible string.
     *
     * @param kgPerM mu, mass per length in kg/m
     * @param scaleMm L, speaking length in mm
     * @param hertz f, frequency in Hz
     */
    static double newton(double kgPerM, double scaleMm, double hertz) {
        double speed = 2 * scaleMm / 1000 * hertz;
        return kgPerM * speed * speed;
    }
}
