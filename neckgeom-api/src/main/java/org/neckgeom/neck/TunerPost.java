package org.neckgeom.neck;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * A tuner post (peg, {@index "string post"}): the place where a string leaves its post, such as 60 mm from the break line, 25
 * mm toward the bass, 8 mm over the head's face. Immutable.
 *
 * <p>{@code along} counts on the axis of the head from the break line; {@code aside} from that axis, positive toward the
 * treble side; {@code above} over the visible face of the head, veneer included.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class TunerPost extends ValueAnswer {

    static final Form<TunerPost> FORM = Form.<TunerPost>of("head-post")
            .fact("along", Kind.MM, "the head's face from the break line", TunerPost::alongMm)
            .fact("aside", Kind.MM, "of the head's axis; positive: toward the treble side", TunerPost::asideMm)
            .fact("above", Kind.MM, "height of the string over the head's face", TunerPost::aboveMm)
            .finds(
                    "post",
                    "post {along:brief} from the break line, {aside:brief} from the centreline, string {above:brief} over the face");

    private final double along;
    private final double aside;
    private final double above;

    private TunerPost(double along, double aside, double above, LengthStyle style) {
        super(FORM, style);
        this.along = along;
        this.aside = aside;
        this.above = above;
    }

    /**
     * {@return a post on the centreline with the string on the head's face}
     *
     * @param along distance along the head's face from the break line, more than 0
     */
    public static TunerPost at(Quantity<Length> along) {
        return new TunerPost(
                LibraryUnits.mmPositive(along, "post's distance from the break line"), 0, 0, LengthStyle.of(along));
    }

    /**
     * {@return a copy whose string leaves it to one side of the centreline}
     *
     * @param offset positive toward the treble side
     */
    public TunerPost aside(Quantity<Length> offset) {
        return new TunerPost(along, LibraryUnits.mm(offset, "post's distance from the centreline"), above, style());
    }

    /**
     * {@return a copy whose string leaves it over the head's face}
     *
     * @param height of the string over the face; negative under it, as in a slotted head
     */
    public TunerPost above(Quantity<Length> height) {
        return new TunerPost(along, aside, LibraryUnits.mm(height, "string's height at the post"), style());
    }

    /** {@return the distance along the head's face from the break line; more than 0} */
    public Amount<Length> along() {
        return style().amount(along);
    }

    /** {@return where the string leaves the post, from the head's own axis, positive toward the treble side} */
    public Amount<Length> aside() {
        return style().amount(aside);
    }

    /** {@return the string's height over the head's face at the post; negative under the face} */
    public Amount<Length> above() {
        return style().amount(above);
    }

    /** {@return the distance along the head's face from the break line, in mm; more than 0} */
    public double alongMm() {
        return along;
    }

    /** {@return where the string leaves the post, from the head's own axis, in mm, positive toward the treble side} */
    public double asideMm() {
        return aside;
    }

    /** {@return the string's height over the head's face at the post, in mm; negative under the face} */
    public double aboveMm() {
        return above;
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {along, aside, above};
    }
}
