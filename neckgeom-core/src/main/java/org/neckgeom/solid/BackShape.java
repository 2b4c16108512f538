package org.neckgeom.solid;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Scale;
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
    private final Object widthKey;
    private final DoubleUnaryOperator halfWidth;
    private final double headPitch;
    private final double headThickness;
    private final BackTransitions transitions;
    private final SuperellipseArc bass;
    private final SuperellipseArc treble;

    private BackShape(
            BackProfile back,
            Scale scale,
            Object widthKey,
            DoubleUnaryOperator halfWidth,
            Optional<Head> head,
            LengthStyle style) {
        super(style);
        this.back = back;
        this.scale = Objects.requireNonNull(scale, "scale");
        this.widthKey = widthKey;
        this.halfWidth = Objects.requireNonNull(halfWidth, "half-width");
        this.headPitch = head.map(Head::angleRad).orElse(0.0);
        this.headThickness = head.map(Head::thicknessMm).orElse(Double.POSITIVE_INFINITY);
        this.transitions = BackTransitions.of(back);
        this.bass = new SuperellipseArc(back.bassPower());
        this.treble = back.bassPower() == back.treblePower() ? bass : new SuperellipseArc(back.treblePower());
    }

    private BackShape(BackShape from, BackTransitions transitions) {
        super(from.style());
        this.back = from.back;
        this.scale = from.scale;
        this.widthKey = from.widthKey;
        this.halfWidth = from.halfWidth;
        this.headPitch = from.headPitch;
        this.headThickness = from.headThickness;
        this.transitions = transitions;
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
        return new BackShape(neck.back(), neck.scale(), neck, neck::halfWidthAtMm, neck.head(), neck.style());
    }

    /**
     * {@return a back without a whole design and without its head}
     *
     * @param back the back
     * @param scale the scale its frets belong to
     * @param halfWidthMm half the neck's width in mm at a station in mm from the nut
     */
    public static BackShape of(BackProfile back, Scale scale, DoubleUnaryOperator halfWidthMm) {
        LengthStyle style = Objects.requireNonNull(back, "back").style();
        return new BackShape(back, scale, halfWidthMm, halfWidthMm, Optional.empty(), style);
    }

    /**
     * {@return a copy as it was carved: at a station the depth that was read there} Between two stations read the
     * difference from the drawing runs straight, beyond the first and the last it stays.
     *
     * @param station from the nut, in no reading before
     * @param depth from the glue face to the back, more than 0
     */
    public BackShape carved(Quantity<Length> station, Quantity<Length> depth) {
        double x = LibraryUnits.mm(station, "station");
        double mm = LibraryUnits.mmPositive(depth, "carved depth");
        return new BackShape(this, transitions.deeper(x, mm - drawnDepthMm(x)));
    }

    /**
     * {@return the back of another design, carved as much deeper or shallower than drawn as this}
     *
     * @param neck with scale, fingerboard and back given
     */
    public BackShape on(Neck neck) {
        return new BackShape(of(neck), transitions.on(neck.back()));
    }

    /** {@return the station in mm from which the back turns down into the heel; nothing where it does not} */
    public OptionalDouble heelStartMm() {
        double start = transitions.heelStart();
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
        double a = halfWidth.applyAsDouble(x);
        double b = depthMm(x);
        requireSection(x, a, b);
        return new BackCurve(x, bass, treble, a, b, style());
    }

    BackSection sectionMm(double x) {
        double a = halfWidth.applyAsDouble(x);
        double b = depthMm(x);
        requireSection(x, a, b);
        return new BackSection(bass, treble, a, b);
    }

    /**
     * {@return the depth of the wood on the centreline at a station, with volute, heel and carving; depth in mm; may be
     * 0 or less far outside the two frets}
     *
     * @param xMm station in mm from the nut
     */
    public double depthAtMm(double xMm) {
        return depthMm(LibraryUnits.stationMm(xMm));
    }

    /** A station without a section. */
    record Gap(double station, double halfWidth, double depth) {}

    Gap gapMm(double x) {
        return new Gap(x, halfWidth.applyAsDouble(x), depthMm(x));
    }

    private void requireSection(double x, double a, double b) {
        if (!(a > 0 && b > 0)) {
            throw NoAnswer.because("section", "no-section", Sentences.GAP.text(new Gap(x, a, b), style()));
        }
    }

    private double depthMm(double x) {
        return drawnDepthMm(x) + transitions.carvedAt(x);
    }

    private double drawnDepthMm(double x) {
        double deep = back.depthAtMm(x, scale) + transitions.extraAt(x);
        if (x < 0 && headThickness < Double.POSITIVE_INFINITY) {
            // The head's back lies t below its face, which falls away from the nut line by tan(pitch).
            double headBack = headThickness / StrictMath.cos(headPitch) - x * StrictMath.tan(headPitch);
            return Math.min(deep, headBack);
        }
        return deep;
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
                .fact("volute", Kind.MM, "extra depth at the nut line", s -> s.transitions.volute())
                .fact("voluteLength", Kind.MM, "over which it runs out, each way", s -> s.transitions.voluteLength())
                .fact("heelStart", Kind.MM, "where the turn into the heel begins", s -> s.transitions.heelStart())
                .fact("heelRadius", Kind.MM, "of that turn", s -> s.transitions.heelRadius())
                .fact(
                        "carved",
                        Kind.WHOLE,
                        "stations where the carved depth was read",
                        s -> s.transitions.carved().size())
                .phrase(
                        "voluted",
                        s -> s.transitions.volute() > 0,
                        ", volute {volute:brief} run out {voluteLength:brief} from the nut")
                .phrase("heeled", ", heel from {heelStart:brief} with radius {heelRadius:brief}")
                .phrase(
                        "read",
                        s -> s.transitions.carved().size() > 0,
                        ", carved depth read at {carved:of station/stations}")
                .finds("back", "{profile}{voluted}{heeled}{read}");
    }

    @Override
    public Form<BackShape> form() {
        return Sentences.FORM;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {back, scale, widthKey, transitions};
    }
}
