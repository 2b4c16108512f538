package org.neckgeom.strength;

import static org.neckgeom.units.ShopUnits.hertz;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;

import java.util.SplittableRandom;
import org.neckgeom.neck.Neck;

/**
 * A neck with a truth of its own, and ten calibrations of it whose readings have errors of their own: woods, slots, rod, glue, sizes,
 * tension and softness along the neck are drawn anew for each. The truth is a beam with a stiffness of its own at each station, not
 * the sum of effects that the library takes.
 */
final class SimulatedNeck {

    static final int CALIBRATIONS = 10;

    private static final double GRAVITY = 9.80665;
    private static final double S = Math.sqrt(Math.log1p(0.22 * 0.22));

    private final double relief;
    private final SplittableRandom random;
    private final MadeNeck made;
    private final double neckModulus;
    private final double boardModulus;
    private final double weights;
    private final double tap;

    SimulatedNeck(StrungNeck strung, SplittableRandom random) {
        this.random = random;
        double table = Math.pow(1.08, 1 + 0.315 * normal());
        double moist = Math.pow(0.98, normal());
        double back = Math.exp(S * normal() - S * S / 2) * table * moist * Math.pow(0.937, random.nextDouble());
        double board = Math.exp(S * normal() - S * S / 2) * table * moist;
        double slots = 0.6 * random.nextDouble();
        double rod = random.nextDouble();
        double[] along = {0.03 * normal(), 0.03 * normal(), 0.03 * normal()};
        double length = strung.beam().length();
        double deeper = 0.25 * random.nextDouble(-1, 1);
        double thicker = 0.15 * random.nextDouble(-1, 1);
        double glue = 1 - 0.0139 * random.nextDouble();
        // Two bars of 4.5 mm locked 4.5 mm apart: 2 I + A c^2/2.
        double bars = 200_000 * (2 * Math.PI * Math.pow(4.5, 4) / 64 + Math.PI * 4.5 * 4.5 / 4 * 4.5 * 4.5 / 2);
        NeckBeam beam = strung.beam()
                .thicker(thicker, deeper)
                .stiffer(back, board)
                .with((x, ei) -> {
                    double pitch = (648 - x) * (1 - Math.pow(2, -1 / 12.0));
                    double soft = 1 + slots * 8.5 / pitch;
                    double local = 0;
                    for (int k = 0; k < 3; k++) {
                        local += along[k] * Math.cos((k + 1) * Math.PI * x / length);
                    }
                    return (glue * ei + rod * bars) / soft * Math.exp(local);
                });
        StringPull pull = strung.pull().higher(thicker).times(Math.pow(1.02, normal()));
        this.made = new MadeNeck(strung.neck(), beam, pull.steeper(0.2 * normal() * pull.overSaddle()));
        this.relief = made.relief(strung.neck().scale().fretMm(1), length);
        double blanks = Math.exp(0.03 * normal());
        this.neckModulus = 12_600 * back * blanks;
        this.boardModulus = 14_000 * board * blanks;
        this.weights = Math.exp(0.02 * normal());
        this.tap = Math.exp(0.03 * normal());
    }

    private double normal() {
        double sum = 0;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return sum - 6;
    }

    StiffnessReadings calibration(int k) {
        StiffnessReadings none = StiffnessReadings.none();
        return switch (k) {
            case 0 -> none.neckBlank(neckBlank());
            case 1 -> none.boardBlank(boardBlank());
            case 2 -> none.neckBlank(neckBlank()).boardBlank(boardBlank());
            case 3 -> none.neckBlank(tapped());
            case 4 -> none.neck(supported(4));
            case 5 -> none.neck(supported(4)).neck(supported(8));
            case 6 -> none.neck(clamped());
            case 7 -> none.relief(mm(0), mm(Math.max(0.02, relief + 0.005 * Math.sqrt(2) * normal())));
            case 8 -> none.neckBlank(tapped()).neck(supported(8)).neck(clamped());
            default ->
                none.neckBlank(neckBlank())
                        .boardBlank(boardBlank())
                        .neck(supported(8))
                        .relief(mm(0), mm(Math.max(0.02, relief + 0.005 * Math.sqrt(2) * normal())));
        };
    }

    private BlankBent neckBlank() {
        double modulus = neckModulus * Math.exp(0.013 * normal());
        double fall = 49.03325 * Math.pow(600, 3) / (4 * modulus * 70 * Math.pow(22, 3)) * 1.0225866667;
        return BlankBent.over(mm(600)).section(mm(70), mm(22)).fall(newton(49.03325), mm(fall));
    }

    private BlankBent boardBlank() {
        double modulus = boardModulus * Math.exp(0.014 * normal());
        double fall = 19.6133 * Math.pow(400, 3) / (4 * modulus * 60 * Math.pow(7, 3)) * 1.005145;
        return BlankBent.over(mm(400)).section(mm(60), mm(7)).fall(newton(19.6133), mm(fall));
    }

    private BlankTapped tapped() {
        // 700 x 60 x 25 of 700 kg/m3: the reference's 219.5469 Hz belongs to 12,600 MPa.
        double modulus = neckModulus * 1.05 * tap * Math.exp(0.01 * normal());
        return BlankTapped.of(mm(700))
                .section(mm(60), mm(25))
                .rings(newton(0.735 * GRAVITY), hertz(219.5469 * Math.sqrt(modulus / 12_600)));
    }

    private NeckBent supported(double kg) {
        double load = kg * GRAVITY;
        return NeckBent.supported(newton(load), mm(load * weights * BenchRows.fall(made, true) + 0.003 * normal()));
    }

    private NeckBent clamped() {
        double load = 3 * GRAVITY;
        return NeckBent.clamped(newton(load), mm(load * weights * BenchRows.fall(made, false) + 0.003 * normal()));
    }

    /** How often the interval holds the truth after each calibration, and how wide it is left over that without. */
    record Coverage(double[] covered, double[] left) {

        double all() {
            double sum = 0;
            for (double one : covered) {
                sum += one / covered.length;
            }
            return sum;
        }
    }

    /** Of some necks, seeded. */
    static Coverage coverage(long seed, int necks) {
        SplittableRandom random = new SplittableRandom(seed);
        Neck neck = ReferenceNecks.ofTableWoods(ReferenceNecks.GUITAR.neck());
        StrungNeck strung = StrungNeck.usual(neck);
        double prior = Relief.of(neck).underStrings().relativeUncertainty();
        double[] covered = new double[CALIBRATIONS];
        double[] left = new double[CALIBRATIONS];
        for (int i = 0; i < necks; i++) {
            SimulatedNeck truth = new SimulatedNeck(strung, random);
            for (int k = 0; k < CALIBRATIONS; k++) {
                Bow bow = Relief.of(neck).knowing(truth.calibration(k)).underStrings();
                boolean holds = bow.interval().libraryLow() <= truth.relief
                        && truth.relief <= bow.interval().libraryHigh();
                covered[k] += holds ? 1.0 / necks : 0;
                left[k] += bow.relativeUncertainty() / prior / necks;
            }
        }
        return new Coverage(covered, left);
    }
}
