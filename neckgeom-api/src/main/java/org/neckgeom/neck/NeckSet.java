package org.neckgeom.neck;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * The neck set: the place and angle of the neck on the body, such as
 * {@code saddle 15.2 mm over the body, action 2 mm, 0.4 mm at the nut}. Immutable.
 *
 * <p>Heights over the body count from the body top at the joint, positive toward the strings. Heights of the
 * strings are those of their undersides. Scale, body joint and fingerboard come from the neck; the neck angle (back-set) follows:
 * {@code BackSet}. Defaults: overstand 0, compensation 0, flat top.
 *
 * <pre>{@code
 * println(NeckSet.saddle(mm(15.2)).atNut(mm(0.4)).action(mm(2)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * saddle 15.2 mm over the body, action 2 mm, 0.4 mm at the nut
 * }</pre>
 */
public final class NeckSet extends Noun<NeckSet> {

    /** Its keys. */
    public static final Table<NeckSet> TABLE =
            Table.of("", "the neck's place and angle on the body", NeckSet::new).printedBy(NeckSet::sentences);

    private static final Key<NeckSet, Amount<Length>> FRET_PLANE = TABLE.optional(
                    "fret plane",
                    Types.EITHER_WAY,
                    "height of the fret tops over the body top at the joint. Default: overstand, fingerboard and fret height")
            .called("fret plane at the joint");
    private static final Key<NeckSet, Amount<Length>> OVERSTAND = TABLE.optional(
            "overstand",
            Types.EITHER_WAY,
            "height of the glue face over the body top at the joint, instead of the fret plane. Negative: let in. Default: 0");
    private static final Key<NeckSet, Amount<Length>> SADDLE = TABLE.needed(
                    "saddle",
                    Types.SIZE,
                    "height of the saddle's top over the body top, under the strings: bridge and saddle")
            .called("top of the saddle");
    private static final Key<NeckSet, StringHeights> HEIGHTS = TABLE.inline(StringHeights.TABLE, List.of());
    private static final Key<NeckSet, Amount<Length>> COMPENSATION = TABLE.usual(
            "compensation",
            Types.EITHER_WAY,
            ShopUnits.mm(0),
            "distance from the scale's end back to the saddle. Default: 0");
    private static final Key<NeckSet, Dome> DOME = TABLE.optional(
            "dome",
            Types.group(Dome.TABLE),
            "domed body top. The saddle height then counts from the top under the saddle. Default: flat");

    static {
        TABLE.atMostOne(FRET_PLANE, OVERSTAND);
    }

    private NeckSet(Values<NeckSet> values) {
        super(values);
    }

    /**
     * Begins a neck set with the height of the saddle's top under the strings.
     *
     * @param height over the body's top, more than 0: bridge and saddle
     * @return the saddle, to be followed by {@code atNut}
     */
    public static NeedsNut saddle(Quantity<Length> height) {
        return new NeedsNut(TABLE.values().amount(SADDLE, height));
    }

    /** A saddle, without the strings yet. Immutable. */
    public static final class NeedsNut extends Unfinished<NeckSet> {

        private NeedsNut(Values<NeckSet> values) {
            super(values, "Neck set, string at the nut not given yet");
        }

        /**
         * Adds the strings' height over the fret tops at the nut.
         *
         * @param height 0 or more
         * @return the same, to be followed by {@code action}
         */
        public NeedsAction atNut(Quantity<Length> height) {
            return new NeedsAction(values(), StringHeights.of(height, height));
        }
    }

    /** A saddle and a nut, without the action yet. Immutable. */
    public static final class NeedsAction extends Unfinished<NeckSet> {

        private final StringHeights level;

        private NeedsAction(Values<NeckSet> values, StringHeights level) {
            super(values, "Neck set, action not given yet", level);
            this.level = level;
        }

        /**
         * Adds the action.
         *
         * @param height over the fret tops at half the scale, 0 or more
         * @return the neck set, its glue face level with a flat top, without compensation
         */
        public NeckSet action(Quantity<Length> height) {
            return new NeckSet(values().with(HEIGHTS, StringHeights.of(level.atNut(), height)));
        }
    }

    /**
     * {@return this neck set with the height of the fret tops at the joint, instead of the overstand}
     *
     * @param height over the body's top; negative where the fingerboard is let in
     */
    public NeckSet fretPlane(Quantity<Length> height) {
        return new NeckSet(values().without(OVERSTAND).amount(FRET_PLANE, height));
    }

    /**
     * {@return this neck set with the height of the glue face at the joint, instead of the fret plane}
     *
     * @param height over the body's top; negative where the fingerboard is let into the body
     */
    public NeckSet overstand(Quantity<Length> height) {
        return new NeckSet(values().without(FRET_PLANE).amount(OVERSTAND, height));
    }

    /**
     * {@return this neck set with other heights of the strings, such as some that differ on the treble side}
     *
     * @param strings their heights
     */
    public NeckSet heights(StringHeights strings) {
        return new NeckSet(values().with(HEIGHTS, strings));
    }

    /**
     * {@return this neck set with a saddle set back from the end of the scale}
     *
     * @param back either sign
     */
    public NeckSet compensation(Quantity<Length> back) {
        return new NeckSet(values().amount(COMPENSATION, back));
    }

    /**
     * {@return this neck set over a domed top; the saddle's height then counts from the top under it}
     *
     * @param top the dome
     */
    public NeckSet dome(Dome top) {
        return new NeckSet(values().with(DOME, Objects.requireNonNull(top, "dome")));
    }

    /**
     * {@return the height of the fret tops at the joint over the body's top; nothing where it follows from overstand,
     * board and fret}
     */
    public Optional<Amount<Length>> fretPlane() {
        return values().find(FRET_PLANE);
    }

    /**
     * {@return the height of the glue face over the body's top at the joint; nothing where it was not given; the glue
     * face is then level with the top, unless the fret plane was given}
     */
    public Optional<Amount<Length>> overstand() {
        return values().find(OVERSTAND);
    }

    /** {@return the height of the saddle's top over the body's top, under the strings; more than 0} */
    public Amount<Length> saddle() {
        return values().at(SADDLE);
    }

    /** {@return the heights of the strings over the fret tops} */
    public StringHeights heights() {
        return values().at(HEIGHTS);
    }

    /** {@return the compensation: distance from the end of the scale back to the saddle; either sign} */
    public Amount<Length> compensation() {
        return values().at(COMPENSATION);
    }

    /** {@return the domed top; nothing for a flat top} */
    public Optional<Dome> dome() {
        return values().find(DOME);
    }

    private static Form<NeckSet> sentences() {
        return TABLE.facts("neck-set-heights")
                .finds("neck-set", "saddle {saddle} over the body, action {action}, {atNut} at the nut");
    }
}
