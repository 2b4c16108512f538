package org.neckgeom.strength;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;

/**
 * What a pair of bonded bars does to a neck, such as {@code 1.9 times as stiff, relief 0.55 mm without and 0.29 mm with
 * them}. Immutable.
 *
 * <p>Estimate, with the assumptions of {@link Relief}; bars of carbon 130 GPa (110 to 180 occur, from memory), of steel
 * 200 GPa.
 */
public final class BarsAdded extends ValueAnswer {

    private static final Form<BarsAdded> FORM = Form.<BarsAdded>of("bars-added")
            .fact("neck", Kind.NAME, "its name", x -> x.without.name())
            .fact("stiffer", Kind.RATIO, "EI with the bars over EI without, 1 or more", BarsAdded::stifferRatio)
            .fact("stifferLower", Kind.RATIO, "lower end of its interval", x -> x.stiffer[1])
            .fact("stifferUpper", Kind.RATIO, "upper end of its interval", x -> x.stiffer[2])
            .finds("stiffer", "Bars in {neck}: {stiffer:2} times as stiff")
            .line("stiffer", "stiffer by", "{stifferLower:2} to {stifferUpper:2} times for 95 of 100 pairs of woods")
            .row("without", "relief without", Likely.KIND, "under the strings", x -> x.before.likely())
            .row("with", "relief with", Likely.KIND, "under the strings", x -> x.after.likely())
            .row("straightedge", "straightedge", StrungNeck.STRAIGHTEDGE, "where it lies", x -> x.without)
            .note(
                    "rod-both-ways",
                    x -> x.without.isTwoWay(),
                    "For another relief ask .rodForceFor(...): the rod works both ways.")
            .note(
                    "no-more-relief",
                    x -> x.without.hasRod() && !x.without.isTwoWay(),
                    "More relief than that cannot be had: a single-action rod only takes it away.")
            .note("estimate", "Estimate: bars bonded all along, flush with the glue face.");

    private final StrungNeck without;
    private final StrungNeck with;
    private final double[] stiffer;
    private final Bow before;
    private final Bow after;

    BarsAdded(StrungNeck without, StrungNeck with) {
        super(FORM, without.style());
        this.without = without;
        this.with = with;
        this.before = new Bow(without, 0);
        this.after = new Bow(with, 0);
        NeckBeam bare = without.beam();
        NeckBeam stiff = with.beam();
        double x = before.place().libraryValue();
        SectionMoments section = new SectionMoments();
        this.stiffer = NeckModel.spread(without.neck()).interval((back, board) -> {
            bare.stiffer(back, board).section(x, section);
            double soft = section.bendingStiffness();
            stiff.stiffer(back, board).section(x, section);
            return section.bendingStiffness() / soft;
        });
    }

    /** {@return how many times as stiff the bars make the neck where its relief is greatest; EI over EI, 1 or more} */
    public double stifferRatio() {
        return stiffer[0];
    }

    /** {@return the relief under the strings without the bars; the rod slack} */
    public Bow before() {
        return before;
    }

    /** {@return the relief under the strings with the bars; the rod slack} */
    public Bow after() {
        return after;
    }

    /**
     * {@return the rod force for a relief with the bars in, which says whether that relief can still be had}
     *
     * @param wanted relief, positive forward
     */
    public RodForce rodForceFor(Quantity<Length> wanted) {
        return RodForce.of(with, wanted);
    }

    /** {@return how much relief the bars take away, the rod slack; relief without less relief with them} */
    public Amount<Length> difference() {
        return without.style()
                .amount(before.relief().libraryValue() - after.relief().libraryValue());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {without, with};
    }
}
