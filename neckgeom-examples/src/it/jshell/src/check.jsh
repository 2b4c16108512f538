import org.neckgeom.board.*;
import org.neckgeom.budget.*;
import org.neckgeom.channel.*;
import org.neckgeom.head.*;
import org.neckgeom.heel.*;
import org.neckgeom.measure.*;
import org.neckgeom.shop.*;
import org.neckgeom.solid.*;
import static org.neckgeom.units.ShopUnits.*;

boolean near(String what, double worked, double answered) {
    System.out.println(what + ": " + answered);
    return Math.abs(answered - worked) < 1e-12 * Math.max(1, Math.abs(worked));
}

// By hand: (29.84 - 31.26) / 2; nearer the fence is negative.
var offset = Centring.of(TrialCut.walls(mm(29.84), mm(31.26)).repeatability(mm(0.02))).offset();
boolean centred = near("slot off the middle, mm", -0.71, offset.amountMm());

// 15 / sin 13 degrees, with 25 digits by mpmath.
boolean scarfed = near("glue face, mm", 66.68117223878702, ScarfJoint.inTheHead(Scarf.of(deg(13), mm(20), mm(15))).glueFaceMm());

// Two equal rectangles add up to a triangle; by hand, its middle half holds three quarters.
var budget = Budget.named("slot").with("fence", ErrorDistribution.rectangular(mm(0.05))).with("blank", ErrorDistribution.rectangular(mm(0.05)));
boolean added = near("yield", 0.75, budget.yield(Limits.within(mm(0.05))).probability());

/exit centred && scarfed && added ? 0 : 1
