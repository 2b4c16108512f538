package org.neckgeom.strength;

import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.neckgeom.kernel.FretKernel;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.stock.Wood;
import org.neckgeom.stock.WoodFigure;

/**
 * A neck as a beam with its load, and the same with one unit of a {@link Cause} more: what turns a cause into a change of an
 * answer.
 *
 * @param neck the neck
 * @param beam its beam
 * @param pull its strings
 */
record MadeNeck(Neck neck, NeckBeam beam, StringPull pull) {

    /** Shear modulus of a soft glue line, MPa, and its thickness, mm. */
    private static final double GLUE_MPA = 20;

    private static final double GLUE_MM = 0.1;

    /** Turn of joint and body, N mm/rad: an estimate. */
    private static final double JOINT_STIFFNESS = 5e6;

    private static final double CLAMPED_BEFORE_MM = 20;
    private static final double RIGID = 1e6;

    /** Modulus of wood with grain at 1:15 over that along the grain (Hankinson). */
    static final double RUN_OUT = 0.937;

    /** Modulus in pure bending over that of a bending table, which contains shear. */
    static final double TABLE = 1.08;

    /** Modulus at one standard deviation of moisture. */
    static final double MOISTURE = 0.98;

    /** A board of next to no stiffness. */
    private static final double NO_BOARD = 1e-9;

    private static final double DEPTH_MM = 0.25;
    private static final double BOARD_MM = 0.15;
    private static final double TENSION = 1.02;
    private static final double ACTION_MM = 0.1;

    /** Board under a fret slot, mm; common practice. */
    private static final double UNDER_SLOT_MM = 3;

    /** Step of ln E for a sensitivity. */
    private static final double STEP = 0.02;

    /**
     * An answer of the beam, and what each cause changes of its logarithm.
     *
     * @param value for the causes at 0
     * @param effects for one unit of each
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package and is never compared
    record Effects(double value, double[] effects) {}

    /** What each cause changes of the logarithm of an answer, for one unit of its size. */
    static double[] effects(MadeNeck base, ToDoubleFunction<MadeNeck> answer) {
        return worked(base, answer).effects();
    }

    /** The same with the answer itself. */
    static Effects worked(MadeNeck base, ToDoubleFunction<MadeNeck> answer) {
        double[] effects = new double[Cause.COUNT];
        double value = answer.applyAsDouble(base);
        for (Cause cause : Cause.values()) {
            if (cause.part() != Cause.Part.ROD && cause.part() != Cause.Part.READING) {
                double change = StrictMath.log(answer.applyAsDouble(base.with(cause)) / value);
                double per = cause.part() == Cause.Part.WOOD ? base.logDeviation(cause) / STEP : 1;
                effects[cause.column()] = Double.isFinite(change) ? change * per : 0;
            }
        }
        return new Effects(value, effects);
    }

    /** Standard deviation of ln E of one of the woods. */
    double logDeviation(Cause wood) {
        ModulusSpread spread = NeckModel.spread(neck);
        return wood == Cause.NECK_WOOD ? spread.back() : spread.board();
    }

    /** The greatest gap of a scan for few digits. */
    double relief(double from, double to) {
        Bend bend = BeamScan.of(beam, pull, null, BeamScan.FEW_PANELS).strings();
        return bend.gapAt(bend.deepest(from, to), from, to);
    }

    /** The bend by another load for one of its newtons, without strings. */
    Bend under(RodPull load) {
        return Objects.requireNonNull(
                BeamScan.of(beam, StringPull.NONE, load, BeamScan.FEW_PANELS).rod());
    }

    /** The bare shaft, before its fingerboard is glued on. */
    MadeNeck withoutBoard() {
        return with(beam.stiffer(1, NO_BOARD));
    }

    /** With one unit more of a cause; of a wood, a step of its modulus. */
    MadeNeck with(Cause cause) {
        return switch (cause) {
            case NECK_WOOD -> with(beam.stiffer(StrictMath.exp(STEP), 1));
            case BOARD_WOOD -> with(beam.stiffer(1, StrictMath.exp(STEP)));
            case SLOTS -> with(beam.with(openSlots()));
            case ROD -> with(beam.with(rodInTouch()));
            case GLUE -> with(beam.with((x, stiffness) -> softGlue() * stiffness));
            case JOINT -> new MadeNeck(neck, beam, onATurningJoint());
            case CLAMP ->
                with(beam.with(
                        (x, stiffness) -> x > beam.length() - CLAMPED_BEFORE_MM ? RIGID * stiffness : stiffness));
            case RUN_OUT -> with(beam.stiffer(RUN_OUT, 1));
            case TABLE ->
                with(beam.stiffer(
                        NeckModel.ofShaft(neck, MadeNeck::pureBending), pureBending(NeckModel.boardWood(neck))));
            case MOISTURE -> with(beam.stiffer(MOISTURE, MOISTURE));
            case DEPTH -> with(beam.thicker(0, DEPTH_MM));
            case BOARD -> new MadeNeck(neck, beam.thicker(BOARD_MM, 0), pull.higher(BOARD_MM));
            case TENSION -> new MadeNeck(neck, beam, pull.times(TENSION));
            case HEIGHTS -> new MadeNeck(neck, beam, pull.steeper(2 * ACTION_MM * pull.overSaddle()));
            case ARM, BLANK, TAP, PLACE, WEIGHT -> this;
        };
    }

    private MadeNeck with(NeckBeam other) {
        return new MadeNeck(neck, other, pull);
    }

    /** 1.08 for a modulus of a bending table, 1 for one of the maker's own. */
    static double pureBending(Wood wood) {
        return wood.figure(WoodFigure.Kind.MODULUS).standing() == WoodFigure.Standing.OWN ? 1 : TABLE;
    }

    /**
     * A slot acts like a piece of neck of length l more: l = 4.1 mm (depth/2 mm)^1.8, the finite elements of slots.csv (4.1 at
     * 2 mm, 8.6 at 3 mm, 14.4 at 4 mm) to 2 %.
     */
    private NeckBeam.Effect openSlots() {
        double deep = Math.max(1, neck.boardThicknessAtMm(0) - UNDER_SLOT_MM);
        double scale = neck.scale().lengthMm();
        double perFret = FretKernel.share(1, neck.scale().divisions());
        return (x, stiffness) -> stiffness * slotted(deep, (scale - x) * perFret);
    }

    /** Stiffness with open slots of a depth at a pitch, both in mm, over that without. */
    static double slotted(double depth, double pitch) {
        return 1 / (1 + 4.1 * StrictMath.pow(depth / 2, 1.8) / pitch);
    }

    /** A two-way rod's bars locked at their ends, a single-action rod's own stiffness. */
    private NeckBeam.Effect rodInTouch() {
        TrussRod rod = neck.channel().flatMap(Channel::rod).orElse(null);
        if (rod == null) {
            return NeckBeam.Effect.NONE;
        }
        boolean isTwoWay = rod.kind() == TrussRod.Kind.TWO_WAY;
        double d = isTwoWay ? Math.min(rod.widthMm(), rod.heightMm() / 2) : rod.heightMm();
        double area = Math.PI * d * d / 4;
        double own = area * d * d / 16;
        double apart = rod.heightMm() / 2;
        double added = NeckModel.STEEL_MPA * (isTwoWay ? 2 * own + area * apart * apart / 2 : own);
        double start = neck.channel().orElseThrow().startMm();
        return (x, stiffness) -> x >= start && x <= start + rod.lengthMm() ? stiffness + added : stiffness;
    }

    /** Partial interaction, gamma of the smaller part as in EN 1995-1-1 annex B, at the middle of the neck. */
    private double softGlue() {
        double x = beam.length() / 2;
        SectionMoments whole = new SectionMoments();
        beam.section(x, whole);
        SectionMoments top = new SectionMoments();
        beam.board(x, top);
        double board = top.stretchStiffness();
        double back = whole.stretchStiffness() - board;
        double backAxis = (whole.stretchStiffness() * whole.neutralAxis() - board * top.neutralAxis()) / back;
        double joined = board * back / (board + back);
        double apart = top.neutralAxis() - backAxis;
        double composite = joined * apart * apart;
        double width =
                2 * neck.halfWidthAtMm(x) - neck.channel().map(Channel::widthMm).orElse(0.0);
        double line = GLUE_MPA * width / GLUE_MM;
        double gamma = 1 / (1 + Math.PI * Math.PI * joined / (line * beam.length() * beam.length()));
        return 1 - (1 - gamma) * composite / whole.bendingStiffness();
    }

    /** The strings' line over a neck that has turned about its joint by their own moment. */
    private StringPull onATurningJoint() {
        SectionMoments section = new SectionMoments();
        beam.section(beam.length(), section);
        double turn = pull.moment(beam.length(), section.neutralAxis()) / JOINT_STIFFNESS;
        return pull.steeper(turn * (pull.pull() - beam.length() * pull.overSaddle()));
    }
}
