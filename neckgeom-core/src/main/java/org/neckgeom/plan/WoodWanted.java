package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleBiFunction;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.order.Operation;
import org.neckgeom.solid.BackShape;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * What would leave enough wood under a channel: how shallow the channel that is not cut yet, or how deep the back, as sizes that a maker
 * sets, rounded to the safe side. Each changes one thing and leaves the other.
 */
final class WoodWanted {

    private static final double FARTHEST_MM = 40;
    private static final double NARROW_ENOUGH_MM = 1e-6;
    private static final double METRIC_STEP_MM = 0.1;
    private static final double INCHES_TO_A_STEP = 1.0 / 64;

    private final Stages plan;
    private final ToDoubleBiFunction<Channel, BackShape> wood;

    /**
     * @param wood least wood left in mm under a channel and a back
     */
    WoodWanted(Stages plan, ToDoubleBiFunction<Channel, BackShape> wood) {
        this.plan = plan;
        this.wood = wood;
    }

    /** Such as {@code a channel no deeper than 5.4 mm, or a back 12.1 mm deep at fret 1 and 12.6 mm at fret 12}. */
    Statement statement() {
        List<Statement> ways = new ArrayList<>();
        MeasuredStage made = plan.made();
        Channel channel = made.channel();
        BackShape back = made.back();
        boolean cut = plan.isDone(Operation.CUT_ROD_CHANNEL);
        double shallower = cut
                ? channel.depthMm()
                : least(less -> wood.applyAsDouble(raised(channel, less), back), channel.depthMm());
        if (shallower < channel.depthMm()) {
            double deep = Math.floor((channel.depthMm() - shallower) / stepMm() + NARROW_ENOUGH_MM) * stepMm();
            if (deep > 0) {
                ways.add(plan.words(
                                "shallower-channel",
                                "a channel no deeper than {depth:brief}" + forItsRod(channel, deep))
                        .with("depth", Kind.MM, deep));
            }
        }
        Neck design = made.design();
        double deeper =
                least(more -> wood.applyAsDouble(channel, back.on(design.back(deepened(design, more)))), FARTHEST_MM);
        if (deeper < FARTHEST_MM) {
            double first = roundedUp(design.back().firstDepthMm() + deeper);
            double second = roundedUp(design.back().secondDepthMm() + deeper);
            double deepest = Math.max(first, second);
            ways.add(plan.words(
                            "deeper-back",
                            "a back {firstDepth:brief} deep at fret {firstFret} and {secondDepth:brief} at fret"
                                    + " {secondFret}"
                                    + (deepest > plan.blank().thicknessMm() ? ", from a thicker blank" : ""))
                    .with("firstDepth", Kind.MM, first)
                    .with("firstFret", Kind.WHOLE, (int) design.back().firstFret())
                    .with("secondDepth", Kind.MM, second)
                    .with("secondFret", Kind.WHOLE, (int) design.back().secondFret()));
        }
        if (ways.isEmpty()) {
            ways.add(plan.words(
                    cut ? "deeper-floor" : "thicker-floor",
                    cut ? "see the repairs of the channel" : "a shallower channel, a deeper back, or a lower rod"));
        }
        Statement both = plan.words(
                        "do-not-carve", "Do not carve to this: {way}" + (ways.size() > 1 ? ", or {otherWay}." : "."))
                .with("way", Kind.ANSWER, ways.get(0));
        return ways.size() > 1 ? both.with("otherWay", Kind.ANSWER, ways.get(1)) : both;
    }

    private String forItsRod(Channel channel, double deep) {
        double rod = channel.reinforcement().heightMm() + channel.filletMm();
        return deep < rod ? " (for a rod so low)" : "";
    }

    /** A channel less deep, its pocket by as much. */
    private Channel raised(Channel channel, double less) {
        Channel raised = channel.cutDeep(plan.style().amount(channel.depthMm() - less));
        return channel.hasAdjusterPocket() && channel.adjusterPocketDepthMm() > less
                ? raised.adjusterPocket(plan.style().amount(channel.adjusterPocketLengthMm()))
                        .section(
                                plan.style().amount(channel.adjusterPocketWidthMm()),
                                plan.style().amount(channel.adjusterPocketDepthMm() - less))
                : raised;
    }

    private BackProfile deepened(Neck design, double more) {
        BackProfile drawn = design.back();
        return drawn.depths(
                plan.style().amount(drawn.firstDepthMm() + more), plan.style().amount(drawn.secondDepthMm() + more));
    }

    /** The least change from which on enough wood is left, or the most there can be where none is enough. */
    private double least(DoubleUnaryOperator left, double most) {
        double limit = plan.job().floorLimit().libraryValue();
        double few = 0;
        double many = most * (1 - NARROW_ENOUGH_MM);
        if (!(left.applyAsDouble(many) >= limit)) {
            return most;
        }
        while (many - few > NARROW_ENOUGH_MM) {
            double middle = (few + many) / 2;
            if (left.applyAsDouble(middle) >= limit) {
                many = middle;
            } else {
                few = middle;
            }
        }
        return many;
    }

    private double roundedUp(double mm) {
        return Math.ceil(mm / stepMm() - NARROW_ENOUGH_MM) * stepMm();
    }

    private double stepMm() {
        return plan.style() == LengthStyle.MILLIMETRES ? METRIC_STEP_MM : ShopUnit.INCH.toLibrary(INCHES_TO_A_STEP);
    }
}
