package org.neckgeom.plan;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.order.OrderChanges;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.strength.Weather;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * What a job was given, in the style it prints in, with the defaults filled in.
 *
 * @param neck as designed
 * @param blank the piece it is made from
 * @param shop the machine and gauges it is made with
 * @param style in which the plan prints
 * @param slotLimit greatest offset of the slot, either way
 * @param floorLimit least wood under the channel
 * @param bridgeLimit greatest offset of the string line at the bridge, either way
 * @param limits of the neck, none left to its unit
 * @param relief wanted under the strings
 * @param weather to be ready for
 * @param workmanship without the channel's centring
 * @param order the maker's own order of work, where one was given
 * @param measured what was read on the neck
 * @param steps trial cuts and fence moves, in their order
 */
record Inputs(
        Neck neck,
        Blank blank,
        Shop shop,
        LengthStyle style,
        Amount<Length> slotLimit,
        Amount<Length> floorLimit,
        Amount<Length> bridgeLimit,
        NeckLimits limits,
        Amount<Length> relief,
        Weather weather,
        Workmanship workmanship,
        Optional<OrderChanges> order,
        MeasuredNeck measured,
        List<CentringStep> steps) {

    Channel channel() {
        return neck.channel().orElseThrow();
    }

    /** What a deviation may be, either way. */
    Limits<Length> limits(BudgetCode which) {
        return Limits.within(limits.eitherWay(which, style).in(style));
    }

    /** True for the same job, however it is printed. */
    boolean isLike(Inputs other) {
        return with(LengthStyle.MILLIMETRES).equals(other.with(LengthStyle.MILLIMETRES));
    }

    private Inputs with(LengthStyle other) {
        return with(neck, measured, other);
    }

    /** The same job on another neck, on which something else was read. */
    Inputs with(Neck otherNeck, MeasuredNeck otherwise) {
        return with(otherNeck, otherwise, style);
    }

    private Inputs with(Neck otherNeck, MeasuredNeck otherwise, LengthStyle other) {
        return new Inputs(
                otherNeck,
                blank,
                shop,
                other,
                slotLimit,
                floorLimit,
                bridgeLimit,
                limits,
                relief,
                weather,
                workmanship,
                order,
                otherwise,
                steps);
    }
}
