package org.neckgeom.design;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;

/** The heel, such as {@code heel 78 mm high, 54 mm wide at the top}. Immutable. */
public final class Heel extends Noun<Heel> {

    /** Its keys. */
    public static final Table<Heel> TABLE = Table.of("heel", "the heel", Heel::new);

    private static final Key<Heel, Amount<Length>> HEIGHT =
            TABLE.needed("height", Types.SIZE, "of the mating face, glue face to cap");
    private static final Key<Heel, Amount<Length>> WIDTH =
            TABLE.needed("width", Types.SIZE, "of the mating face, cheek to cheek");
    private static final Key<Heel, Amount<Length>> BLOCKS = TABLE.optional(
                    "blocks", Types.SIZE, "thickness of the blocks it is stacked of; as the blank when left out")
            .called("heel block thickness");

    private Heel(Values<Heel> values) {
        super(values);
    }

    /**
     * Returns a heel.
     *
     * @param height from the glue face to the cap, more than 0; its unit is the one answers are given in
     * @param width of the mating face at its top, more than 0
     * @return the heel
     */
    public static Heel of(Quantity<Length> height, Quantity<Length> width) {
        return new Heel(TABLE.values().amount(HEIGHT, height).amount(WIDTH, width));
    }

    /**
     * Returns this heel stacked from blocks of a thickness.
     *
     * @param thickness of each block, more than 0
     * @return the heel
     */
    public Heel blocks(Quantity<Length> thickness) {
        return new Heel(values().amount(BLOCKS, thickness));
    }

    /**
     * Returns the height in mm.
     *
     * @return more than 0
     */
    public double heightMm() {
        return values().house(HEIGHT);
    }

    /**
     * Returns the width in mm.
     *
     * @return more than 0
     */
    public double widthMm() {
        return values().house(WIDTH);
    }

    /**
     * Returns the thickness of each block.
     *
     * @return nothing where it is the shaft's
     */
    public Optional<Amount<Length>> blockThickness() {
        return values().find(BLOCKS);
    }

    /**
     * Returns the thickness of each block in mm.
     *
     * @param shaftThicknessMm what it is by default
     * @return more than 0
     */
    public double blockThicknessMm(double shaftThicknessMm) {
        if (!(shaftThicknessMm > 0 && shaftThicknessMm <= HouseUnits.MOST)) {
            throw Refusal.of(
                    "shaft's thickness",
                    "range",
                    "be more than 0 and no more than " + Numbers.plain(HouseUnits.MOST) + " mm",
                    Numbers.plain(shaftThicknessMm) + " mm");
        }
        return values().house(BLOCKS, shaftThicknessMm);
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        private static final Form<Heel> FORM = form("heel ");

        /** The same without its title, for the row of a neck. */
        static final Form<Heel> UNTITLED = form("");

        private static Form<Heel> form(String title) {
            return Form.<Heel>of("heel")
                    .fact("height", Kind.MM, "from the glue face to the cap", Heel::heightMm)
                    .fact("width", Kind.MM, "of the mating face at its top", Heel::widthMm)
                    .factIfAny(
                            "blockThickness", Kind.AMOUNT, "of each block, where not the shaft's", Heel::blockThickness)
                    .phrase("stacked", ", blocks of {blockThickness}")
                    .finds("heel", title + "{height} high, {width} wide at the top{stacked}");
        }
    }

    @Override
    public Form<Heel> form() {
        return Sentences.FORM;
    }
}
