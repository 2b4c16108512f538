import org.neckgeom.budget.Budget
import org.neckgeom.head.Scarf
import org.neckgeom.head.ScarfJoint
import org.neckgeom.measure.Limits
import org.neckgeom.measure.ErrorDistribution
import org.neckgeom.channel.Centring
import org.neckgeom.shop.TrialCut
import org.neckgeom.units.ShopUnits.deg
import org.neckgeom.units.ShopUnits.mm
import kotlin.math.abs
import kotlin.math.max

/** Three answers of the library beside values worked without it. */
fun main() {
    // By hand: (29.84 - 31.26) / 2; nearer the fence is negative.
    val trial = TrialCut.walls(mm(29.84), mm(31.26)).repeatability(mm(0.02))
    expect("slot off the middle, mm", -0.71, Centring.of(trial).offset().amountMm())

    // 15 / sin 13 degrees, with 25 digits by mpmath.
    val scarf = Scarf.of(deg(13.0), mm(20.0), mm(15.0))
    expect("glue face, mm", 66.68117223878702, ScarfJoint.inTheHead(scarf).glueFaceMm())

    // Two equal rectangles add up to a triangle; by hand, its middle half holds three quarters.
    val budget = Budget.named("slot")
        .with("fence", ErrorDistribution.rectangular(mm(0.05)))
        .with("blank", ErrorDistribution.rectangular(mm(0.05)))
    expect("yield", 0.75, budget.`yield`(Limits.within(mm(0.05))).probability())
}

private fun expect(what: String, worked: Double, answered: Double) {
    println("$what: $answered")
    check(abs(answered - worked) < 1e-12 * max(1.0, abs(worked))) { "$what must be $worked, but was $answered" }
}
