package org.neckgeom.head;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
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
            .fact("angle", Kind.RAD, "of the head", l -> l.head.angleRad())
            .fact("widthAtBreakLine", Kind.MM, "of the outline", l -> l.head.widthAtBreakLineMm())
            .fact("widthAtTip", Kind.MM, "of the outline", l -> l.head.widthAtTipMm())
            .fact("posts", Kind.list(Kind.MM), "from the break line, bass to treble", HeadLayout::postsMm)
            .finds("head", "Head {length:brief} long at {angle:2}")
            .line("width", "wide", "{widthAtBreakLine:brief} at the break line, {widthAtTip:brief} at the tip")
            .fact("thickness", Kind.MM, "both veneers counted", HeadLayout::thicknessMm)
            .line("thickness", "thick with veneers", "{thickness:brief}")
            .line("posts", "posts", HeadLayout::hasPosts, "{posts:brief first 12}");

    private final Head head;

    private HeadLayout(Head head) {
        super(FORM, head.style());
        this.head = head;
    }

    /**
     * {@return the layout of a head behind a square nut}
     *
     * @param head the head, with its outline and its posts as far as they were given
     */
    public static HeadLayout of(Head head) {
        return new HeadLayout(Objects.requireNonNull(head, "head"));
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
        double atNut = neck.neckSet().map(set -> set.heights().atNutMm(0.5)).orElse(0.0);
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
        return hasPosts()
                || head.outline().size() > 2
                || head.widthAtBreakLineMm() != head.widthMm()
                || head.widthAtTipMm() != head.widthMm();
    }

    /** {@return whether the posts have been given; true when the strings have somewhere to go} */
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
     * {@return the width of each wing, equal on both sides, that widens a shaft's stock to the outline's widest place;
     * 0 when the stock is wide enough}
     *
     * @param stock width of the shaft's stock at the head, more than 0
     */
    public Amount<Length> wings(Quantity<Length> stock) {
        double w = LibraryUnits.mmPositive(stock, "width of the stock");
        double farthest = head.outline().stream()
                .mapToDouble(place -> Math.max(place.bassMm(), place.trebleMm()))
                .max()
                .orElse(0);
        return style().amount(Math.max(0, farthest - w / 2));
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

    @Override
    protected Object[] parts() {
        return new Object[] {head};
    }
}
