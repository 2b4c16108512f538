package org.neckgeom.heel;

import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.hipparchus.dfp.Dfp;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;
import org.neckgeom.validation.Check;
import org.neckgeom.validation.Checks;
import org.neckgeom.validation.Numerics;
import org.neckgeom.validation.Numerics.Point;
import org.neckgeom.validation.Source;
import org.neckgeom.validation.Status;

/** The heel and the neck's angle against what was published, computed elsewhere, or is said by the trade. */
public final class HeelChecks {

    private HeelChecks() {}

    @SuppressWarnings("exports") // a package of the tests
    public static void into(Checks checks) {
        neckSet(checks.topic("Heel and neck angle"));
    }

    private static void neckSet(Checks checks) {
        BackSet set = BackSet.of(
                Scale.of(mm(648)),
                14,
                NeckSet.saddle(mm(15)).atNut(mm(0.4)).action(mm(2.2)).fretPlane(mm(7)));
        checks.check("14th fret to saddle at 648 mm", Source.TRADE, "", Status.PRACTICE, "mm")
                .figure(289, set.reach().libraryValue(), 0.5)
                .of("BackSet.reach");
        checks.check("off an 80 mm heel for 3 mm at the bridge", Source.TRADE, "", Status.PRACTICE, "mm")
                .figure(0.83, set.wedge(mm(80), mm(3)).cut().libraryValue(), 0.005)
                .of("BackSet.wedge", "HeelWedge.cut");
        checks.check("off a 50 mm cheek for 0.575 mm at the bridge", Source.TRADE, "", Status.PRACTICE, "mm")
                .figure(0.1, set.cheek(mm(50), mm(0.575)).cut().libraryValue(), 0.001)
                .of("BackSet.cheek", "HeelCheek.cut");
        Check sway = checks.check(
                "half a degree sideways about a 14th fret: at saddle and nut", Source.TRADE, "", Status.PRACTICE, "mm");
        double joint = Scale.of(mm(648)).fretMm(14);
        sway.of("BackSet.reach")
                .figure(2.5, set.reach().libraryValue() * Math.tan(Math.toRadians(0.5)), 0.05)
                .figure(3.1, joint * Math.tan(Math.toRadians(0.5)), 0.05);

        SplittableRandom random = new SplittableRandom(300);
        Numerics.worst(
                        checks,
                        "neck angle",
                        "S 100 to 500, a_s 0.5 to 15, H within 25 mm, down to 1e-9 off level",
                        1e-9,
                        10_000)
                .points(() -> {
                    double reach = random.nextDouble(100, 500);
                    double string = random.nextDouble(0.5, 15);
                    double rise = random.nextBoolean()
                            ? random.nextDouble(-25, 25)
                            : string + Math.pow(10, random.nextDouble(-9, 0)) * (random.nextBoolean() ? 1 : -1);
                    Dfp s = Numerics.of(reach);
                    Dfp a = Numerics.of(string);
                    Dfp exact = Numerics.asin(Numerics.of(rise)
                                    .divide(s.multiply(s).add(a.multiply(a)).sqrt()))
                            .subtract(Numerics.atan(a.divide(s)));
                    return new Point(exact, NeckSetKernel.angle(rise, reach, string));
                })
                .of("BackSet.angle", "NeckAngle.angle");
        Numerics.worst(checks, "string moved by a turn of the neck", "1e-9 to 10 deg, at -5 to 8 deg", 1e-9, 10_000)
                .points(() -> {
                    double reach = random.nextDouble(100, 500);
                    double string = random.nextDouble(0.5, 15);
                    double angle = Math.toRadians(random.nextDouble(-5, 8));
                    double turn = Math.toRadians(Math.pow(10, random.nextDouble(-9, 1)));
                    Dfp t = Numerics.of(angle);
                    Dfp after = t.add(Numerics.of(turn));
                    Dfp s = Numerics.of(reach);
                    Dfp a = Numerics.of(string);
                    Dfp rise = s.multiply(Numerics.sin(t)).add(a.multiply(Numerics.cos(t)));
                    Dfp exact = rise.subtract(s.multiply(Numerics.sin(after)))
                            .divide(Numerics.cos(after))
                            .subtract(a);
                    return new Point(exact, NeckSetKernel.stringChange(reach, string, angle, turn));
                })
                .of("BackSet.actionPer");
        Numerics.worst(checks, "sagitta of crown or dome", "R 100 to 1e7, y 1e-3 to 90 mm", 1e-9, 10_000)
                .points(() -> {
                    double radius = Math.pow(10, random.nextDouble(2, 7));
                    double y = Math.pow(10, random.nextDouble(-3, 1.95));
                    return new Point(Numerics.sagitta(radius, y), NeckSetKernel.drop(radius, y));
                })
                .of("BoardSection.drop", "BoardSection.edge");
    }
}
