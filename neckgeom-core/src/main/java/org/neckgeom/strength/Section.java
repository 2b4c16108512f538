package org.neckgeom.strength;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The section of the neck at one station: its neutral axis and its bending stiffness (EI), such as {@code EI 198 N m2
 * (95 %: 132 to 289)}. Immutable.
 *
 * <p>Transformed section of fingerboard, wood less channel, strip and bonded bars: {@code zN = EQ/EA},
 * {@code EI = EJ - EQ^2/EA}. Exact for the moduli given; an estimate with an interval because pieces of wood differ.
 */
public final class Section extends ValueAnswer {

    private static final double NMM2_PER_NM2 = 1e6;

    /** Modulus of a part that is left out, over its own. */
    private static final double NEXT_TO_NOTHING = 1e-9;

    static final Kind<Section> STIFFNESS = Kind.own(
            (section, style) -> section.stiffnessText(),
            (section, style) -> Likely.data(
                    section.stiffnessNm2(), section.leastStiffnessNm2(), section.mostStiffnessNm2(), "N m2", "N.m2"),
            Likely.SCHEMA);

    /** In a row of another answer. */
    static final Kind<Section> IN_ROW = Kind.answer(Form.<Section>of("section-in-row")
            .fact("station", Kind.MM, "from the nut", x -> x.x)
            .fact("stiffness", STIFFNESS, "EI", x -> x)
            .finds("stiffness", "{stiffness} at {station:0|1} from the nut"));

    private static final Form<Section> FORM = Form.<Section>of("section")
            .fact("station", Kind.MM, "from the nut", x -> x.x)
            .fact("neutralAxis", Likely.KIND, "over the glue face; negative in the neck's wood", x -> x.axis)
            .finds("section", "Section {station:0|1} from the nut")
            .row("stiffness", "bending stiffness EI", STIFFNESS, "in bending", x -> x)
            .line("neutralAxis", "neutral axis", "{neutralAxis} over the glue face")
            .note("estimate", "Estimate: transformed section; 95 % interval over pairs of woods.");

    private final double x;
    private final Likely<Length> axis;
    private final double[] stiffness;
    private final double perBackBow;

    private Section(double x, Likely<Length> axis, double[] stiffness, double perBackBow, LengthStyle style) {
        super(FORM, style);
        this.perBackBow = perBackBow;
        this.x = x;
        this.axis = axis;
        this.stiffness = stiffness;
    }

    static Section of(double x, NeckBeam beam, ModulusSpread spread, LengthStyle style) {
        SectionMoments section = new SectionMoments();
        double[] axis = spread.interval((back, board) -> {
            beam.stiffer(back, board).section(x, section);
            return section.neutralAxis();
        });
        double[] stiffness = spread.interval((back, board) -> {
            beam.stiffer(back, board).section(x, section);
            return section.bendingStiffness();
        });
        return new Section(x, Likely.of(axis, style.unit()), stiffness, perBackBow(x, beam), style);
    }

    /** The shaft's own stiffness, bonded bars among it, over that which the glue line adds to it and the board's. */
    private static double perBackBow(double x, NeckBeam beam) {
        double shaft = stiffness(x, beam.stiffer(1, NEXT_TO_NOTHING));
        SectionMoments board = new SectionMoments();
        beam.board(x, board);
        return shaft / (stiffness(x, beam) - shaft - board.bendingStiffness());
    }

    private static double stiffness(double x, NeckBeam beam) {
        SectionMoments section = new SectionMoments();
        beam.section(x, section);
        return section.bendingStiffness();
    }

    /** {@return the station; distance from the nut} */
    public Amount<Length> station() {
        return style().amount(x);
    }

    /** {@return the height of the neutral axis over the glue face, negative in the neck's wood} */
    public Amount<Length> neutralAxis() {
        return axis.amount();
    }

    /** {@return the 95 % interval of the neutral axis over pairs of woods} */
    public Interval<Length> neutralAxisInterval() {
        return axis.interval();
    }

    /** {@return the bending stiffness EI; EI in N m2, more than 0} */
    public double stiffnessNm2() {
        return stiffness[0] / NMM2_PER_NM2;
    }

    /** {@return the lower end of the 95 % interval of the bending stiffness; EI in N m2} */
    public double leastStiffnessNm2() {
        return stiffness[1] / NMM2_PER_NM2;
    }

    /** {@return the upper end of the 95 % interval of the bending stiffness; EI in N m2} */
    public double mostStiffnessNm2() {
        return stiffness[2] / NMM2_PER_NM2;
    }

    /**
     * {@return how far forward of straight a caul must hold a shaft while its flat board is glued on, so that it ends
     * straight: {@code b EI_shaft/(EI_joined - EI_shaft - EI_board)}; estimate}
     *
     * <p>Glued straight, the shaft would bend the board with it. The glue line locks in the bend it set at, which must undo the
     * shaft's own.
     *
     * @param backBow of the shaft, b, before the board is on; negative where it bows forward, and so is the answer
     */
    public Amount<Length> forwardInTheCaul(Quantity<Length> backBow) {
        return style().amount(perBackBow * LibraryUnits.mm(backBow, "back-bow"));
    }

    String stiffnessText() {
        return Numbers.fixed(stiffnessNm2(), 0) + " N m2 (95 %: " + Numbers.fixed(leastStiffnessNm2(), 0) + " to "
                + Numbers.fixed(mostStiffnessNm2(), 0) + ")";
    }

    @Override
    protected Object[] parts() {
        return new Object[] {x, axis.in(ShopUnit.MILLIMETRE), stiffness, perBackBow};
    }
}
