import module org.neckgeom.core;
import static org.neckgeom.units.ShopUnits.*;

import org.neckgeom.channel.Centring;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.shop.TrialCut;

/** Two answers of the library beside values worked without it. */
void main() {
    // By hand: (29.84 - 31.26) / 2; nearer the fence is negative.
    expect("slot off the middle, mm", -0.71, Centring.of(TrialCut.walls(mm(29.84), mm(31.26))).offset().amountMm());

    // 15 / sin 13 degrees, with 25 digits by mpmath.
    expect("glue face, mm", 66.68117223878702, ScarfJoint.inTheHead(Scarf.of(deg(13), mm(20), mm(15))).glueFaceMm());
}

void expect(String what, double worked, double answered) {
    IO.println(what + ": " + answered);
    if (!(Math.abs(answered - worked) < 1e-12 * Math.max(1, Math.abs(worked)))) {
        throw new AssertionError(what + " must be " + worked + ", but was " + answered);
    }
}
