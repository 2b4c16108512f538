package org.neckgeom.solid;

import java.util.Arrays;
import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.shape.Point;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * One pass of a tool path: the points that the middle of the cutter's tip runs through, in order, straight between them.
 * Immutable.
 */
public final class ToolPass extends LeanAnswer {

    private final int number;
    private final boolean inPocket;
    private final List<Point> points;

    ToolPass(int number, boolean inPocket, List<Point> points, LengthStyle style) {
        super(style);
        this.number = number;
        this.inPocket = inPocket;
        this.points = List.copyOf(points);
    }

    /** {@return its number in its part, 1 or more} */
    public int number() {
        return number;
    }

    /** {@return whether it cuts the adjuster pocket; else the channel} */
    public boolean isInPocket() {
        return inPocket;
    }

    /** {@return its points in the neck's axes, two or more; z is 0 on the glue face and negative in the wood} */
    public List<Point> points() {
        return points;
    }

    /** {@return x, y and z of its points in turn, in mm; a fresh array} */
    public double[] xyzMm() {
        return points.stream().flatMapToDouble(p -> Arrays.stream(p.toMm())).toArray();
    }

    /** {@return how deep its deepest point lies below the glue face; more than 0} */
    public Amount<Length> depth() {
        return style().amount(depthMm());
    }

    private double depthMm() {
        return -points.stream().mapToDouble(Point::zMm).min().orElseThrow();
    }

    /** {@return how far the cutter runs in it; 0 or more} */
    public Amount<Length> length() {
        return style().amount(lengthMm());
    }

    double lengthMm() {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += points.get(i).distanceMm(points.get(i - 1));
        }
        return sum;
    }

    String part() {
        return inPocket ? "adjuster pocket" : "channel";
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<ToolPass> FORM = Form.<ToolPass>of("tool-pass")
                .fact("part", Kind.NAME, "channel or adjuster pocket", ToolPass::part)
                .fact("number", Kind.WHOLE, "of the pass in its part, from 1", ToolPass::number)
                .fact("depth", Kind.MM, "of its deepest point", ToolPass::depthMm)
                .fact("points", Kind.WHOLE, "how many", pass -> pass.points.size())
                .fact("length", Kind.MM, "that the cutter runs", ToolPass::lengthMm)
                .finds(
                        "pass",
                        "{part}, pass {number}: {depth:table text} deep, {points:of point/points}, runs {length:table brief}");
    }

    @Override
    public Form<ToolPass> form() {
        return Sentences.FORM;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {number, inPocket, points};
    }
}
