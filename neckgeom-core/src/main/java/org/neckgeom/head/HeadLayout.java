package org.neckgeom.head;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The layout of a head (headstock): its outline, {@index wings} ({@index ears}) and tuner posts. Immutable.
 *
 * <p>The outline runs straight from its width at the break line to its width at the tip; unless given it is as wide all
 * along as the head. A swung head carries its posts with it, as they are placed by its own axis. Wings are glued on
 * where the head is wider than the shaft's stock. Distances run along the head's face from the break line. Exact.
 */
public final class HeadLayout extends ValueAnswer {

    private static final Form<HeadLayout> FORM = Form.<HeadLayout>of("head-layout")
            .fact("length", Kind.MM, "along the face from the break line", l -> l.head.lengthMm())
            .fact("pitch", Kind.RAD, "of the head", l -> l.head.angleRad())
            .fact("widthAtBreakLine", Kind.MM, "of the outline", l -> l.head.widthAtBreakLineMm())
            .fact("widthAtTip", Kind.MM, "of the outline", l -> l.head.widthAtTipMm())
            .fact("posts", Kind.list(Kind.MM), "from the break line, bass to treble", HeadLayout::postsMm)
            .finds("head", "Head {length:brief} long at {pitch:2}")
            .line("width", "wide", "{widthAtBreakLine:brief} at the break line, {widthAtTip:brief} at the tip")
            .fact("thickness", Kind.MM, "both veneers counted", HeadLayout::thicknessMm)
            .line("thickness", "thick with veneers", "{thickness:brief}")
            .line("posts", "posts", HeadLayout::hasPosts, "{posts:brief first 12}");

    private final Head head;
    private final double slant;

    private HeadLayout(Head head, double slant) {
        super(FORM, head.style());
        this.head = head;
        this.slant = slant;
    }

    /**
     * {@return the layout of a head behind a square nut}
     *
     * @param head the head, with its outline and its posts as far as they were given
     */
    public static HeadLayout of(Head head) {
        return new HeadLayout(Objects.requireNonNull(head, "head"), 0);
    }

    /**
     * {@return a copy behind a slanted nut, as fanned frets have it: the head turns back about the slanted line, its
     * pitch being that along the centreline, and each string's slot lies on that line} The posts stay where they are.
     *
     * @param fromSquare under 30 deg either way; positive when the nut's treble end lies nearer the body
     */
    public HeadLayout nutSlanted(Quantity<Angle> fromSquare) {
        double rad = LibraryUnits.radBetween(fromSquare, -30, 30, "nut slant");
        return new HeadLayout(head, rad);
    }

    /**
     * {@return the height of the nut slots' floor over the glue face: board and frets, and the strings' height over the
     * frets at the nut; 0 or more}
     *
     * @param neck a fret height or a neck set that it lacks counts as 0
     */
    public static Amount<Length> slotHeight(Neck neck) {
        Fingerboard board = Objects.requireNonNull(neck, "neck").fingerboard();
        double frets = board.fretHeight().map(Amount::libraryValue).orElse(0.0);
        double atNut = neck.neckSet().map(set -> set.atNut().libraryValue()).orElse(0.0);
        return neck.style().amount(board.nutThicknessMm() + frets + atNut);
    }

    /** {@return the posts; in the order of the strings, from bass to treble; empty when they have not been given} */
    public List<TunerPost> posts() {
        return head.posts();
    }

    /**
     * {@return whether the outline is the head's own: where neither a taper nor posts have been given there is only the
     * room that the head's length and greatest width leave it; true when it is worth sawing to}
     */
    public boolean hasOutline() {
        return hasPosts() || head.widthAtBreakLineMm() != head.widthMm() || head.widthAtTipMm() != head.widthMm();
    }

    /** {@return whether the posts have been given; true when {@link #breaks} has an answer} */
    public boolean hasPosts() {
        return !posts().isEmpty();
    }

    /** {@return the head that is laid out} */
    public Head head() {
        return head;
    }

    /** {@return the width of the outline at the break line; more than 0} */
    public Amount<Length> widthAtBreakLine() {
        return style().amount(head.widthAtBreakLineMm());
    }

    /** {@return the width of the outline at the tip; more than 0} */
    public Amount<Length> widthAtTip() {
        return style().amount(head.widthAtTipMm());
    }

    /**
     * {@return the width of the outline; more than 0}
     *
     * @param along distance from the break line along the face, 0 to the head's length
     */
    public Amount<Length> width(Quantity<Length> along) {
        double d = LibraryUnits.mmNotNegative(along, "distance along the head");
        if (!(d <= head.lengthMm())) {
            throw LibraryUnits.refused(
                    "distance along the head",
                    "at-most",
                    "no more than its length of " + style().brief(head.lengthMm()),
                    along);
        }
        double atBreak = head.widthAtBreakLineMm();
        return style().amount(atBreak + (head.widthAtTipMm() - atBreak) * d / head.lengthMm());
    }

    /**
     * {@return the nut line's angle from square in the head's own face: {@code asin(cos a sin s)}, a the head angle and s
     * the slant in plan; with the slant's sign, 0 for a square nut}
     */
    public Amount<Angle> nutLine() {
        return Amount.ofLibrary(
                head.angleRad() == 0 ? slant : ScarfKernel.headMitre(head.angleRad(), slant), ShopUnit.DEGREE);
    }

    /**
     * {@return how far the outline reaches from the break line along the neck's centreline in the head's face; the head's
     * length, and a little more at a corner of a swung head} The swing is measured in plan.
     */
    public Amount<Length> reach() {
        double along = StrictMath.cos(swingInFace());
        double aside = Math.abs(StrictMath.sin(swingInFace())) / 2;
        return style().amount(Math.max(
                head.lengthMm() * along + head.widthAtTipMm() * aside, head.widthAtBreakLineMm() * aside));
    }

    /** {@return twice the distance of the outline's farthest corner from the neck's centreline; more than 0} */
    public Amount<Length> across() {
        double along = StrictMath.cos(swingInFace());
        double aside = Math.abs(StrictMath.sin(swingInFace()));
        return style().amount(Math.max(
                2 * head.lengthMm() * aside + head.widthAtTipMm() * along, head.widthAtBreakLineMm() * along));
    }

    private double swingInFace() {
        return ScarfKernel.swingInFace(head.angleRad(), slant, head.swingRad());
    }

    /**
     * {@return the width of each wing, equal on both sides, that widens a shaft's stock to the outline's widest place;
     * 0 when the stock is wide enough}
     *
     * @param stock width of the shaft's stock at the head, more than 0
     */
    public Amount<Length> wings(Quantity<Length> stock) {
        double w = LibraryUnits.mmPositive(stock, "width of the stock");
        double widest = Math.max(head.widthAtBreakLineMm(), head.widthAtTipMm());
        return style().amount(Math.max(0, (widest - w) / 2));
    }

    /** {@return the head's thickness with both veneers, what the tuners must fit; more than 0} */
    public Amount<Length> thickness() {
        return style().amount(thicknessMm());
    }

    private double thicknessMm() {
        return head.thicknessMm() + head.veneerMm() + head.backVeneerMm();
    }

    private List<Double> postsMm() {
        return posts().stream().map(TunerPost::alongMm).toList();
    }

    /**
     * {@return how thick the head's wood may be so that the tuners fit with both veneers on; the limits of the wood}
     *
     * @param tuners least and greatest thickness the tuners take, veneers included
     */
    public Limits<Length> woodFor(Limits<Length> tuners) {
        double veneers = head.veneerMm() + head.backVeneerMm();
        double low = Math.max(Objects.requireNonNull(tuners, "tuners").libraryLower(), veneers) - veneers;
        double high = tuners.libraryUpper() - veneers;
        if (!(high > low)) {
            throw Refusal.of(
                    "tuners", "more-than", "take more than the veneers of " + style().brief(veneers), "take", tuners);
        }
        return Double.isInfinite(high)
                ? Limits.atLeast(style().amount(low))
                : Limits.between(style().amount(low), style().amount(high));
    }

    /**
     * {@return how each string runs over the nut to its own post; one to a string, from bass to treble}
     *
     * @param nut the strings' places at the nut, as many as there are posts
     * @param slot height of the slots' floor over the glue face, 0 or more
     */
    public List<BreakAngle> breaks(StringPlaces nut, Quantity<Length> slot) {
        double height = LibraryUnits.mmNotNegative(slot, "nut slot's height");
        List<TunerPost> posts = posts();
        double[] slots = Objects.requireNonNull(nut, "nut").centresMm();
        if (slots.length != posts.size()) {
            throw Refusal.of(
                    "posts",
                    "as-many",
                    "be as many as the strings at the nut",
                    "were",
                    posts.size() + " for " + slots.length);
        }
        double sin = StrictMath.sin(head.swingRad());
        double cos = StrictMath.cos(head.swingRad());
        List<BreakAngle> all = new ArrayList<>();
        for (int i = 0; i < posts.size(); i++) {
            TunerPost post = posts.get(i);
            // A swung head turns its own axis, and the posts with it, about the break line's middle.
            double along = post.alongMm() * cos - post.asideMm() * sin;
            double aside = post.alongMm() * sin + post.asideMm() * cos;
            all.add(
                    slant == 0
                            ? BreakAngle.ofMm(head.angleRad(), along, post.aboveMm(), height, aside - slots[i], style())
                            : overSlantedNut(along, aside, post.aboveMm(), height, slots[i]));
        }
        return List.copyOf(all);
    }

    /**
     * The same over a slot on the slanted line: the face holds that line and the head's axis, so across the axis it
     * rises or falls; its post is placed anew relative to a square nut through the slot.
     */
    private BreakAngle overSlantedNut(double along, double aside, double above, double height, double slot) {
        double sin = StrictMath.sin(head.angleRad());
        double cos = StrictMath.cos(head.angleRad());
        double lag = StrictMath.tan(slant);
        // Axis d = (-cos, 0, -sin); across it in the face e, from the line's (lag, 1, 0) less its part along d; normal
        // n.
        double size = StrictMath.sqrt(1 + sin * sin * lag * lag);
        double[] e = {sin * sin * lag / size, 1 / size, -sin * cos * lag / size};
        double[] n = {-sin * e[1], cos * e[2] * -1 + sin * e[0], cos * e[1]};
        double x = -along * cos + aside * e[0] + above * n[0];
        double y = aside * e[1] + above * n[1];
        double z = -along * sin + aside * e[2] + above * n[2];
        double run = lag * slot - x;
        double square = run * cos - z * sin;
        double over = run * sin + z * cos;
        return BreakAngle.ofMm(head.angleRad(), square, over, height, y - slot, style());
    }

    /**
     * {@return the force of each string on the nut, square to the glue face} Estimate: no friction in the slots, the
     * speaking side level.
     *
     * @param nut the strings' places at the nut
     * @param slot height of the slots' floor over the glue face, 0 or more
     * @param tensions of each single string, one for all or one to a string from bass to treble, each 0 or more
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read
    public final NutForces nutForces(StringPlaces nut, Quantity<Length> slot, Quantity<Force>... tensions) {
        List<BreakAngle> strings = breaks(nut, slot);
        if (Objects.requireNonNull(tensions, "tensions").length != 1 && tensions.length != strings.size()) {
            throw Refusal.of(
                    "tensions",
                    "as-many",
                    "be one value or one per string (" + strings.size() + ")",
                    "were",
                    Integer.toString(tensions.length));
        }
        double[] forces = new double[strings.size()];
        for (int i = 0; i < forces.length; i++) {
            forces[i] = strings.get(i)
                    .nutForce(tensions[tensions.length == 1 ? 0 : i])
                    .libraryValue();
        }
        return NutForces.ofNewton(forces);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {head, slant};
    }
}
