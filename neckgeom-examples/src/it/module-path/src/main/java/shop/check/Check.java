package shop.check;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import javax.measure.quantity.Length;
import org.neckgeom.budget.Budget;
import org.neckgeom.channel.Centring;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.shop.TrialCut;

/** A program that uses the library, run on the class path, on the module path and in an image. */
public final class Check {

    private Check() {}

    /** Three answers of the library beside values worked without it. */
    public static void main(String[] arguments) {
        // By hand: (29.84 - 31.26) / 2; nearer the fence is negative.
        TrialCut trial = TrialCut.walls(mm(29.84), mm(31.26)).repeatability(mm(0.02));
        expect("slot off the middle, mm", -0.71, Centring.of(trial).offset().amountMm());

        // 15 / sin 13 degrees, with 25 digits by mpmath.
        Scarf scarf = Scarf.of(deg(13), mm(20), mm(15));
        expect("glue face, mm", 66.68117223878702, ScarfJoint.inTheHead(scarf).glueFaceMm());

        // Two equal rectangles add up to a triangle; by hand, its middle half holds three quarters.
        Budget<Length> budget = Budget.named("slot")
                .with("fence", ErrorDistribution.rectangular(mm(0.05)))
                .with("blank", ErrorDistribution.rectangular(mm(0.05)));
        expect("yield", 0.75, budget.yield(Limits.within(mm(0.05))).probability());
    }

    private static void expect(String what, double worked, double answered) {
        System.out.println(what + ": " + answered);
        if (!(Math.abs(answered - worked) < 1e-12 * Math.max(1, Math.abs(worked)))) {
            throw new AssertionError(what + " must be " + worked + ", but was " + answered);
        }
    }
}
