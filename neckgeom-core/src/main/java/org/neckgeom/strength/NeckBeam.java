package org.neckgeom.strength;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.neck.Channel;

/**
 * A neck as a beam from the nut to the body joint: fingerboard on top, wood below, the rod's channel a void with a strip
 * over the rod, bonded bars. Library units.
 *
 * <p>A back with another shape on each side is taken to bend straight up and down all the same: its sections' product of
 * inertia is left out.
 *
 * @param length x of the body joint, where the neck is clamped
 * @param board the fingerboard
 * @param back the wood below the glue face
 * @param channel the rod's channel, or null
 * @param filling modulus of a bar bonded into the channel, 0 for an unbonded rod
 * @param bars bonded bars beside the channel
 * @param effect of what the section does not know on its stiffness
 */
record NeckBeam(
        double length,
        Board board,
        Back back,
        @Nullable Channel channel,
        double filling,
        List<BondedBar> bars,
        Effect effect) {

    /** Gives the bending stiffness at a station of a section that has a stiffness without it, N mm2. */
    interface Effect {
        Effect NONE = (x, stiffness) -> stiffness;

        double stiffness(double x, double ofTheSection);
    }

    NeckBeam(double length, Board board, Back back, @Nullable Channel channel, double filling, List<BondedBar> bars) {
        this(length, board, back, channel, filling, bars, Effect.NONE);
    }

    /**
     * The fingerboard.
     *
     * @param width across, mm
     * @param thickness in the middle, mm
     * @param radius of the crown, mm; null for a flat board
     * @param modulus along the grain, MPa
     */
    record Board(Taper width, Taper thickness, @Nullable Taper radius, double modulus) {}

    /**
     * The wood below the glue face, half a superellipse on each side.
     *
     * @param halfWidth at the glue face, mm
     * @param depth below the glue face, mm
     * @param bass shape of the bass side
     * @param treble shape of the treble side
     * @param modulus along the grain, MPa
     */
    record Back(
            Taper halfWidth, Taper depth, Superellipse bass, Superellipse treble, double modulus, List<Layer> layers) {

        private static final int SLICES = 50;

        Back {
            layers = List.copyOf(layers);
        }

        Back(Taper halfWidth, Taper depth, Superellipse bass, Superellipse treble, double modulus) {
            this(halfWidth, depth, bass, treble, modulus, List.of());
        }

        Back stiffer(double factor) {
            return new Back(halfWidth, depth, bass, treble, factor * modulus, layers);
        }

        /** Modulus of the wood between two distances from the middle: the mean of its strips. */
        double modulusOver(double from, double to) {
            double more = 0;
            for (Layer layer : layers) {
                double shared = Math.min(to, layer.to()) - Math.max(from, layer.from());
                more += Math.max(0, shared) * (layer.ratio() - 1);
            }
            return modulus * (1 + more / (to - from));
        }

        /** How many strips its wood has: 1 of one piece. */
        int strips() {
            return Math.max(1, layers.size());
        }

        double modulusOf(int strip) {
            return layers.isEmpty() ? modulus : modulus * layers.get(strip).ratio();
        }

        /** How deep a strip reaches below the glue face, where it is nearest the middle; 0 where the neck does not reach it. */
        double depthOf(int strip, double x) {
            if (layers.isEmpty()) {
                return depth.at(x);
            }
            double from = layers.get(strip).from();
            double to = layers.get(strip).to();
            Superellipse side = from < 0 ? bass : treble;
            double near = Math.max(0, Math.max(from, -to)) / halfWidth.at(x);
            return near < 1 ? depth.at(x) * side.depthAt(near) : 0;
        }

        /** Modulus of a blank of this back's wood that is so wide: no wider than its strips. */
        double modulusOfBlank(double width) {
            double half = layers.isEmpty()
                    ? width / 2
                    : Math.min(width / 2, layers.get(layers.size() - 1).to());
            return modulusOver(-half, half);
        }

        /** What the strips of a laminated shaft are stiffer, or less stiff, than the wood all is summed with. */
        void addLayers(double x, SectionMoments into) {
            double half = halfWidth.at(x);
            for (Layer layer : layers) {
                double more = modulus * (layer.ratio() - 1);
                if (more != 0) {
                    addSide(more, layer.from(), Math.min(layer.to(), 0), bass, half, depth.at(x), into);
                    addSide(more, Math.max(layer.from(), 0), layer.to(), treble, half, depth.at(x), into);
                }
            }
        }

        private static void addSide(
                double modulus,
                double from,
                double to,
                Superellipse side,
                double half,
                double deep,
                SectionMoments into) {
            double near = Math.max(-half, from);
            double far = Math.min(half, to);
            if (far > near) {
                into.strip(modulus, near, far, half, deep, side);
            }
        }

        /** About the middle: of the wood as if all one, and of what its strips are stiffer or less stiff. */
        double sidewaysStiffness(double x) {
            double half = halfWidth.at(x);
            double deep = depth.at(x);
            double second = (bass.second() + treble.second()) / 2;
            double sum = modulus * second * half * half * half * deep;
            for (Layer layer : layers) {
                double more = modulus * (layer.ratio() - 1) * half * deep;
                sum += more * secondOfArea(layer.from(), Math.min(layer.to(), 0), bass, half);
                sum += more * secondOfArea(Math.max(layer.from(), 0), layer.to(), treble, half);
            }
            return sum;
        }

        /** About the middle of what lies between two distances, over its depth: by slices whose areas are exact. */
        private static double secondOfArea(double from, double to, Superellipse side, double half) {
            double near = Math.max(-half, from);
            double step = (Math.min(half, to) - near) / SLICES;
            double sum = 0;
            for (int i = 0; step > 0 && i < SLICES; i++) {
                double first = near + i * step;
                double middle = first + step / 2;
                double area = side.strips().outTo((first + step) / half)[0]
                        - side.strips().outTo(first / half)[0];
                sum += area * (middle * middle + step * step / 12);
            }
            return sum;
        }

        boolean isEven() {
            return bass.exponent() == treble.exponent();
        }

        boolean holds(double y, double below, double x) {
            Superellipse side = y < 0 ? bass : treble;
            return side.holds(y, below, halfWidth.at(x), depth.at(x));
        }
    }

    /**
     * A strip of a laminated shaft.
     *
     * @param from its bass face, from the middle, mm
     * @param to its treble face, mm
     * @param ratio its modulus over that of the back
     */
    record Layer(double from, double to, double ratio) {}

    NeckBeam {
        bars = List.copyOf(bars);
    }

    /** With multiples of the two moduli. */
    NeckBeam stiffer(double backFactor, double boardFactor) {
        return new NeckBeam(
                length,
                new Board(board.width, board.thickness, board.radius, boardFactor * board.modulus),
                back.stiffer(backFactor),
                channel,
                filling,
                bars,
                effect);
    }

    NeckBeam withBars(List<BondedBar> others) {
        List<BondedBar> all = Stream.concat(bars.stream(), others.stream()).toList();
        return new NeckBeam(length, board, back, channel, filling, all, effect);
    }

    /** Its wood alone. */
    NeckBeam withoutBars() {
        return new NeckBeam(length, board, back, channel, 0, List.of(), effect);
    }

    NeckBeam with(Effect other) {
        return new NeckBeam(length, board, back, channel, filling, bars, other);
    }

    /** With a thicker board and a deeper back. */
    NeckBeam thicker(double boardMm, double backMm) {
        return new NeckBeam(
                length,
                new Board(board.width, board.thickness.plus(boardMm), board.radius, board.modulus),
                new Back(back.halfWidth, back.depth.plus(backMm), back.bass, back.treble, back.modulus, back.layers),
                channel,
                filling,
                bars,
                effect);
    }

    /** Bending stiffness about the vertical axis of board, wood and bars beside the middle, N mm2; the channel, near that axis, left out. */
    double sidewaysStiffness(double x) {
        double wide = board.width.at(x);
        double sum = back.sidewaysStiffness(x) + board.modulus * board.thickness.at(x) * wide * wide * wide / 12;
        for (BondedBar bar : bars) {
            if (bar.covers(x)) {
                double y = bar.middle(x);
                double half = bar.width() / 2;
                double more = bar.modulus() - back.modulusOver(y - half, y + half);
                sum += more * bar.width() * bar.height() * (y * y + bar.width() * bar.width() / 12);
            }
        }
        return sum;
    }

    /** Its board alone: one of the two parts that a glue line joins. */
    void board(double x, SectionMoments into) {
        into.clear();
        double radius = board.radius == null ? Double.POSITIVE_INFINITY : board.radius.at(x);
        into.board(board.modulus, board.width.at(x), board.thickness.at(x), radius);
    }

    /** Curvature for one N mm of moment, where the section has been summed. */
    double flexibility(double x, SectionMoments section) {
        return 1 / effect.stiffness(x, section.bendingStiffness());
    }

    /**
     * Sums the section at a station.
     *
     * @throws ArithmeticException if the channel or a bar breaks through the back there
     */
    void section(double x, SectionMoments into) {
        board(x, into);
        double halfWidth = back.halfWidth.at(x);
        double depth = back.depth.at(x);
        if (back.isEven()) {
            into.superellipse(back.modulus, halfWidth, depth, back.bass);
        } else {
            into.superellipse(back.modulus / 2, halfWidth, depth, back.bass);
            into.superellipse(back.modulus / 2, halfWidth, depth, back.treble);
        }
        back.addLayers(x, into);
        if (channel != null && x >= channel.startMm() && x <= channel.endMm()) {
            channelAt(channel, x, into);
        }
        for (BondedBar bar : bars) {
            if (bar.covers(x)) {
                double y = bar.middle(x);
                double edge = y + Math.copySign(bar.width() / 2, y);
                if (!back.holds(edge, bar.bottom(), x)) {
                    throw brokenThrough("a bar", x);
                }
                double half = bar.width() / 2;
                double wood = back.modulusOver(y - half, y + half);
                into.rectangle(bar.modulus() - wood, bar.width(), -bar.bottom(), -bar.top());
            }
        }
    }

    private void channelAt(Channel cut, double x, SectionMoments into) {
        double width = cut.widthAtMm(x);
        double depth = cut.depthAtMm(x);
        if (!back.holds(width / 2, depth, x) || (!back.isEven() && !back.holds(-width / 2, depth, x))) {
            throw brokenThrough("the rod channel", x);
        }
        double wood = back.modulusOver(-width / 2, width / 2);
        into.rectangle(-wood, width, -depth, 0);
        if (cut.filletMm() > 0 && width == cut.widthMm()) {
            double top = -cut.depthClearanceMm();
            into.rectangle(wood, width, top - cut.filletMm(), top);
        }
        if (filling > 0) {
            double floor = -cut.floorDepthAtMm(x);
            into.rectangle(
                    filling,
                    cut.reinforcement().widthMm(),
                    floor,
                    floor + cut.reinforcement().heightMm());
        }
    }

    private static ArithmeticException brokenThrough(String what, double x) {
        return NoAnswer.because(
                "stiffness",
                "through-the-back",
                String.format(
                        Locale.ROOT,
                        "%s breaks through the back at %.1f mm from the nut, so the section there has no bending stiffness",
                        what,
                        x));
    }

    /** Places where the section jumps, with 0 and the length, in order. */
    double[] breaks(double... more) {
        DoubleStream own = channel == null
                ? DoubleStream.empty()
                : DoubleStream.of(
                        channel.startMm(),
                        channel.endMm(),
                        channel.adjusterPocketStartMm(),
                        channel.adjusterPocketStartMm() + channel.adjusterPocketLengthMm());
        DoubleStream ofBars = bars.stream().flatMapToDouble(b -> DoubleStream.of(b.start(), b.end()));
        return Stream.of(own, ofBars, Arrays.stream(more), DoubleStream.of(0, length))
                .flatMapToDouble(stream -> stream)
                .filter(x -> x >= 0 && x <= length)
                .sorted()
                .distinct()
                .toArray();
    }
}
