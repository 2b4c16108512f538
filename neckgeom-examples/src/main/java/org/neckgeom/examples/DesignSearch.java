package org.neckgeom.examples;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;

import java.util.List;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Job;
import org.neckgeom.search.Search;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.strength.Relief;
import org.neckgeom.sweep.Axis;
import org.neckgeom.units.Amount;

/**
 * A worked example of the design search: how flat may the head be and how thin the blank, for three woods? Break angle, wood
 * under the channel, string line, relief and blank are the plan's own checks; the rod keeps force to spare.
 */
public final class DesignSearch {

    /** The woods to compare. */
    public static final List<Wood> WOODS = List.of(Wood.BLACK_WALNUT, Wood.SUGAR_MAPLE, Wood.SPANISH_CEDAR);

    private DesignSearch() {}

    /** Prints the answer for the octave mandolin in each wood. */
    public static void main(String[] arguments) {
        Job job = NeckFile.read("octave-mandolin.yaml");
        for (Wood wood : WOODS) {
            System.out.println(wood.name() + ": " + search(job, wood).result());
        }
    }

    /**
     * {@return the search over one wood}
     *
     * @param job the neck, its blank and the shop
     * @param wood of the neck
     */
    public static Search<Job> search(Job job, Wood wood) {
        return Search.of(neck(job, job.neck().wood(wood)))
                .over(
                        "head angle",
                        Axis.steps(deg(4), deg(16), deg(0.5)),
                        (one, angle) -> neck(one, one.neck().head(head(one).angle(angle))))
                .over("blank thickness", Axis.steps(mm(15), mm(22), mm(0.5)), DesignSearch::thick)
                .over(
                        "depth at fret 1",
                        Axis.steps(mm(12), mm(16), mm(0.25)),
                        (one, depth) -> neck(
                                one,
                                one.neck()
                                        .back(BackProfile.between(depth, depth.plus(mm(2)))
                                                .rounded())))
                .least("head angle", one -> head(one).angle())
                .least("blank thickness", one -> one.blank().thickness())
                .keeping(
                        Job::plan,
                        CheckCode.STRINGS_PRESS_ON_THE_NUT,
                        CheckCode.WOOD_LEFT,
                        CheckCode.STRING_LINE,
                        CheckCode.RELIEF,
                        CheckCode.BLANK_LARGE_ENOUGH)
                .within("rod force", DesignSearch::rodForce, Limits.atMost(newton(800)))
                .designs(500);
    }

    private static Head head(Job job) {
        return job.neck().head().orElseThrow();
    }

    private static Job neck(Job job, Neck neck) {
        return job(job, neck, job.blank());
    }

    /** The same limits, relief and air for another neck and blank. */
    private static Job job(Job job, Neck neck, Blank blank) {
        return Job.of(neck, blank, job.shop())
                .limits(job.limits())
                .relief(job.relief())
                .weather(job.weather());
    }

    private static Job thick(Job job, Amount<Length> thickness) {
        Blank blank = job.blank();
        Blank other = Blank.ofLength(blank.length())
                .section(blank.width(), thickness)
                .nutAt(mm(blank.nutFromHeadEndMm()))
                .endAllowance(mm(blank.endAllowanceMm()))
                .edgeAllowance(mm(blank.edgeAllowanceMm()))
                .planing(mm(blank.planingMm()))
                .sawKerf(mm(blank.sawKerfMm()));
        return job(job, job.neck(), other);
    }

    /** What the rod has to give for the relief that is wanted. */
    private static Amount<Force> rodForce(Job job) {
        return Relief.of(job.neck())
                .rodForceFor(job.relief())
                .force()
                .orElseThrow(() -> NoAnswer.because("rod force", "none", "no force of this rod gives the relief"));
    }
}
