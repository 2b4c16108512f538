package org.neckgeom.solid;

import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.SpreadLaw;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * How channel and back may come out, each by a spread of its own: the channel's depth (positive deeper), its offset
 * (positive toward the treble side) and the carving (positive where more is taken off, square to the back). Immutable.
 *
 * <p>Whatever is not told is exact. The three are taken as independent, and alike along the whole channel.
 */
public final class WoodSpreads extends ValueAnswer {

    private static final Form<WoodSpreads> FORM = with(
            with(
                    with(
                            Form.<WoodSpreads>of("wood-spreads").finds("spreads", "Spreads of channel and back"),
                            "depth",
                            s -> s.depth),
                    "offset",
                    s -> s.offset),
            "carving",
            s -> s.carving);

    private static final WoodSpreads EXACT = new WoodSpreads(zero(), zero(), zero());

    private final ErrorDistribution<Length> depth;
    private final ErrorDistribution<Length> offset;
    private final ErrorDistribution<Length> carving;

    private static Form<WoodSpreads> with(
            Form<WoodSpreads> form, String key, Function<WoodSpreads, ErrorDistribution<Length>> from) {
        return form.fact(key, Kind.SPREAD, "of the " + key, from)
                .line(key, key, spreads -> from.apply(spreads).equals(zero()), "exact")
                .line(key, key, spreads -> !from.apply(spreads).equals(zero()), "{" + key + "}");
    }

    private WoodSpreads(
            ErrorDistribution<Length> depth, ErrorDistribution<Length> offset, ErrorDistribution<Length> carving) {
        super(
                FORM,
                LengthStyle.ofUnit(Stream.of(depth, offset, carving)
                        .filter(spread -> !spread.equals(zero()))
                        .findFirst()
                        .orElse(depth)
                        .unit()));
        this.depth = depth;
        this.offset = offset;
        this.carving = carving;
    }

    /**
     * {@return spreads of which the channel's depth is told}
     *
     * @param spread of the depth, positive deeper
     */
    public static WoodSpreads ofDepth(ErrorDistribution<Length> spread) {
        return EXACT.depth(spread);
    }

    /**
     * {@return a copy with the spread of the channel's depth}
     *
     * @param spread positive deeper
     */
    public WoodSpreads depth(ErrorDistribution<Length> spread) {
        return new WoodSpreads(Objects.requireNonNull(spread, "depth spread"), offset, carving);
    }

    /**
     * {@return a copy with the spread of the channel's offset}
     *
     * @param spread positive toward the treble side
     */
    public WoodSpreads offset(ErrorDistribution<Length> spread) {
        return new WoodSpreads(depth, Objects.requireNonNull(spread, "offset spread"), carving);
    }

    /**
     * {@return a copy with the spread of the carving}
     *
     * @param spread positive where more is taken off
     */
    public WoodSpreads carving(ErrorDistribution<Length> spread) {
        return new WoodSpreads(depth, offset, Objects.requireNonNull(spread, "carving spread"));
    }

    SpreadLaw depthLaw() {
        return new SpreadLaw(depth);
    }

    SpreadLaw offsetLaw() {
        return new SpreadLaw(offset);
    }

    SpreadLaw carvingLaw() {
        return new SpreadLaw(carving);
    }

    private static ErrorDistribution<Length> zero() {
        Quantity<Length> none = Amount.ofLibrary(0, ShopUnit.MILLIMETRE);
        return ErrorDistribution.bias(none);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {depth, offset, carving};
    }
}
