package org.neckgeom.solid;

import java.util.Collections;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.Volute;
import org.neckgeom.shape.Curve;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The back (neck profile, neck shape) along the whole neck: the profile between its two frets, the volute at the head
 * and the turn into the heel. Immutable.
 *
 * <p>The profile's depth runs straight through its two frets and beyond. A volute adds depth about the nut, a heel from
 * its start on. In front of the nut (x under 0), with a head, the wood ends at the head's back if that comes first, and
 * is otherwise taken as the neck's back carried straight on: an estimate on the safe side.
 */
public final class BackShape extends LeanAnswer {

    private final BackProfile back;
    private final Scale scale;
    private final Curve halfWidth;
    private final DepthCurve drawn;
    private final NavigableMap<Double, Double> carved;
    private final Curve depth;
    private final Optional<Heel> heel;
    private final double joint;
    private final SuperellipseArc bass;
    private final SuperellipseArc treble;

    private BackShape(
            BackProfile back,
            Scale scale,
            Curve halfWidth,
            DepthCurve drawn,
            Optional<Heel> heel,
            double joint,
            LengthStyle style) {
        super(style);
        this.back = back;
        this.scale = Objects.requireNonNull(scale, "scale");
        this.halfWidth = Objects.requireNonNull(halfWidth, "half-width");
        this.drawn = drawn;
        this.carved = Collections.emptyNavigableMap();
        this.depth = drawn.curve();
        this.heel = heel;
        this.joint = joint;
        this.bass = new SuperellipseArc(back.bassPower());
        this.treble = back.bassPower() == back.treblePower() ? bass : new SuperellipseArc(back.treblePower());
    }

    private BackShape(BackShape from, NavigableMap<Double, Double> carved) {
        super(from.style());
        this.back = from.back;
        this.scale = from.scale;
        this.halfWidth = from.halfWidth;
        this.drawn = from.drawn;
        this.carved = carved;
        this.heel = from.heel;
        this.joint = from.joint;
        NavigableMap<Double, Double> places = runOut(carved, Math.min(drawn.heelStart(), joint));
        this.depth = carved.isEmpty()
                ? drawn.curve()
                : drawn.curve()
                        .plus(
                                places.keySet().stream().mapToDouble(x -> x).toArray(),
                                places.values().stream().mapToDouble(x -> x).toArray());
        this.bass = from.bass;
        this.treble = from.treble;
    }

    /**
     * {@return the back of a design, with its volute and its turn into the heel}
     *
     * @param neck with scale, fingerboard and back; its head is used if it has one
     * @throws IllegalArgumentException if a part that is needed is missing
     */
    public static BackShape of(Neck neck) {
        Objects.requireNonNull(neck, "neck").fingerboard();
        double joint = neck.bodyJointMm();
        DepthCurve drawn = DepthCurve.of(
                neck.back(),
                neck.scale(),
                neck.heel(),
                joint,
                neck.head().map(head -> HeadSolid.planes(neck, head).backDepth()));
        return new BackShape(neck.back(), neck.scale(), halfWidth(neck), drawn, neck.heel(), joint, neck.style());
    }

    /**
     * {@return a back without a whole design, without its head and its heel}
     *
     * @param back the back
     * @param scale the scale its frets belong to
     * @param halfWidth half the neck's width over x, in mm
     */
    public static BackShape of(BackProfile back, Scale scale, Curve halfWidth) {
        LengthStyle style = Objects.requireNonNull(back, "back").style();
        Objects.requireNonNull(scale, "scale");
        DepthCurve drawn = DepthCurve.of(back, scale, Optional.empty(), Double.POSITIVE_INFINITY, Optional.empty());
        return new BackShape(back, scale, halfWidth, drawn, Optional.empty(), Double.POSITIVE_INFINITY, style);
    }

    /** The neck's edges run straight: those of the fingerboard. */
    private static Curve halfWidth(Neck neck) {
        double scale = neck.scale().lengthMm();
        double atNut = neck.halfWidthAtMm(0);
        return Curve.straight(0, atNut, (neck.halfWidthAtMm(scale) - atNut) / scale);
    }

    /** Half the width over x, in mm. */
    Curve halfWidth() {
        return halfWidth;
    }

    /** What a reading found ends where the carving does: at the nut, and where heel or body joint begins. */
    private static NavigableMap<Double, Double> runOut(NavigableMap<Double, Double> carved, double end) {
        NavigableMap<Double, Double> places = new TreeMap<>(carved);
        if (!carved.isEmpty() && carved.firstKey() > 0) {
            places.put(0.0, 0.0);
        }
        if (!carved.isEmpty() && carved.lastKey() < end && end < Double.POSITIVE_INFINITY) {
            places.put(end, 0.0);
        }
        return places;
    }

    /**
     * {@return a copy as it was carved: at a station the depth that was read there} A thin place is a thin place: between
     * two stations read the difference from the drawing runs straight, and from the first and the last it runs out to
     * nothing at the nut and where the heel, or else the body joint, begins; it stays where there is neither, and beyond a
     * reading outside them.
     *
     * @param station from the nut, in no reading before
     * @param depth from the glue face to the back, more than 0
     */
    public BackShape carved(Quantity<Length> station, Quantity<Length> depth) {
        double x = LibraryUnits.mm(station, "station");
        double mm = LibraryUnits.mmPositive(depth, "carved depth");
        NavigableMap<Double, Double> more = new TreeMap<>(carved);
        more.put(x, mm - drawn.curve().valueAt(x));
        return new BackShape(this, more);
    }

    /**
     * {@return the back of another design, carved as much deeper or shallower than drawn as this}
     *
     * @param neck with scale, fingerboard and back given
     */
    public BackShape on(Neck neck) {
        return new BackShape(of(neck), carved);
    }

    /** {@return the station in mm from which the back turns down into the heel; nothing where it does not} */
    public OptionalDouble heelStartMm() {
        double start = drawn.heelStart();
        return Double.isInfinite(start) ? OptionalDouble.empty() : OptionalDouble.of(start);
    }

    /**
     * {@return the curve across at a station}
     *
     * @param station from the nut, negative in the head
     * @throws ArithmeticException where width or depth is 0 or less
     */
    public BackCurve at(Quantity<Length> station) {
        double x = LibraryUnits.mm(station, "station");
        return new BackCurve(x, sectionMm(x), style());
    }

    BackSection sectionMm(double x) {
        double a = halfWidth.valueAt(x);
        double b = depth.valueAt(x);
        requireSection(x, a, b);
        double share = heelShare(x);
        if (share == 0) {
            return BackSection.ofShaft(bass, treble, a, b);
        }
        Heel there = heel.orElseThrow();
        double top = a + there.widthMm() / 2 - halfWidth.valueAt(joint);
        double narrowing = (top - there.capWidthMm() / 2) / there.heightMm();
        return new BackSection(bass, treble, a, b, share, top, narrowing);
    }

    /**
     * Share of the mating face's trapezoid in a section: it grows smoothly from the start of the turn to the body joint,
     * {@code u^2 (3 - 2u)}; none where the turn starts past the joint. How the heel
     * is blended is a choice of this library; makers carve it by eye.
     */
    private double heelShare(double x) {
        if (heel.isEmpty() || !(x > drawn.heelStart()) || !(drawn.heelStart() < joint)) {
            return 0;
        }
        double u = Math.min(1, (x - drawn.heelStart()) / (joint - drawn.heelStart()));
        return u * u * (3 - 2 * u);
    }

    /**
     * How width and depth change at a station.
     *
     * @param offset of the station from the point whose distance is sought
     */
    AlongNeck alongAt(double x, double offset) {
        double wide = halfWidth.slopeAt(x);
        double deep = depth.slopeAt(x);
        return new AlongNeck(offset, wide, bend(halfWidth, x, wide), deep, bend(depth, x, deep));
    }

    private static double bend(Curve curve, double x, double slope) {
        double one = Math.sqrt(1 + slope * slope);
        return curve.curvatureAt(x) * one * one * one;
    }

    /** Upper bounds of how fast, and how fast faster, a point of the back moves across and down along a stretch. */
    double[] boundsIn(double from, double to) {
        double[] wide = halfWidth.boundsIn(from, to);
        double[] deep = depth.boundsIn(from, to);
        double speed = wide[0] + deep[0];
        double bend = wide[1] + deep[1];
        if (heel.isPresent() && to > drawn.heelStart() && drawn.heelStart() < joint) {
            double run = joint - drawn.heelStart();
            double far = Math.max(halfWidth.valueAt(joint), heel.get().widthMm() / 2);
            double narrowing = Math.abs(
                    sectionMm(Math.max(from, drawn.heelStart() + run / 2)).narrowing());
            // The share u^2 (3 - 2u) grows by 3/2 and bends by 6 at most, over its run.
            double grown = 1.5 / run;
            double across = far + narrowing * heel.get().heightMm();
            speed += grown * across + narrowing * deep[0];
            bend += 6 / (run * run) * across + 2 * grown * (wide[0] + narrowing * deep[0]) + narrowing * deep[1];
        }
        return new double[] {speed, bend};
    }

    /** {@return the depth of the shaft's back as drawn over x, carried on before the nut without regard to the head; in mm} */
    public Curve carriedOn() {
        return drawn.shaft();
    }

    /** {@return the depth on the centreline over x, with its knots; in mm} */
    public Curve depth() {
        return depth;
    }

    /**
     * {@return the depth of the wood on the centreline at a station, with volute, heel and carving; depth in mm; may be
     * 0 or less far outside the two frets}
     *
     * @param xMm station in mm from the nut
     */
    public double depthAtMm(double xMm) {
        return depth.valueAt(LibraryUnits.stationMm(xMm));
    }

    /** A station without a section. */
    record Gap(double station, double halfWidth, double depth) {}

    Gap gapMm(double x) {
        return new Gap(x, halfWidth.valueAt(x), depth.valueAt(x));
    }

    private void requireSection(double x, double a, double b) {
        if (!(a > 0 && b > 0)) {
            throw NoAnswer.because("section", "no-section", Sentences.GAP.text(new Gap(x, a, b), style()));
        }
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<Gap> GAP = Form.<Gap>of("no-section")
                .fact("station", Kind.MM, "from the nut", Gap::station)
                .fact("halfWidth", Kind.MM, "there", Gap::halfWidth)
                .fact("depth", Kind.MM, "there", Gap::depth)
                .finds(
                        "no-section",
                        "the neck has no section at {station:brief} from the nut: half-width {halfWidth:brief}, depth {depth:brief}");

        static final Form<BackShape> FORM = Form.<BackShape>of("back-shape")
                .fact("profile", Kind.ANSWER, "of the back", s -> s.back)
                .fact(
                        "volute",
                        Kind.MM,
                        "extra depth at the nut line",
                        s -> s.back.volute().map(Volute::extraDepthMm).orElse(0.0))
                .fact(
                        "voluteLength",
                        Kind.MM,
                        "over which it runs out, each way",
                        s -> s.back.volute().map(Volute::lengthMm).orElse(1.0))
                .fact("heelStart", Kind.MM, "where the turn into the heel begins", s -> s.drawn.heelStart())
                .fact(
                        "heelRadius",
                        Kind.MM,
                        "of that turn",
                        s -> s.back.heelTransition()
                                .map(HeelTransition::radiusMm)
                                .orElse(1.0))
                .fact("carved", Kind.WHOLE, "stations where the carved depth was read", s -> s.carved.size())
                .phrase(
                        "voluted",
                        s -> s.back.volute().isPresent(),
                        ", volute {volute:brief} run out {voluteLength:brief} from the nut")
                .phrase("heeled", ", heel from {heelStart:brief} with radius {heelRadius:brief}")
                .phrase("read", s -> s.carved.size() > 0, ", carved depth read at {carved:of station/stations}")
                .finds("back", "{profile}{voluted}{heeled}{read}");
    }

    @Override
    public Form<BackShape> form() {
        return Sentences.FORM;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {back, scale, halfWidth, drawn, carved, heel, joint};
    }
}
