package org.neckgeom.strength;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.quantity.Length;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.ShopUnit;

/**
 * The bow of fingerboard and neck glued together when their moisture changes: {@code kappa = -e EA_b EA_n/(EA_b + EA_n) (z_b - z_n)/EI}
 * for a free strain e of the board over the neck (Timoshenko's two layers). A board that shrinks more bows the neck forward.
 *
 * <p>Along the grain wood moves 3 to 7e-5 for each percent of moisture (Wood Handbook 2010, 4-5: 0.1 to 0.2 % from green to
 * ovendry); that of board and neck differ by 1.5e-5, one standard deviation. Each takes up its share in its own time.
 */
final class MoistureBow {

    private static final double ALONG = 5e-5;

    /** Of each wood; their difference has 1.5e-5. */
    private static final double ALONG_U = 1.5e-5 / Math.sqrt(2);

    private static final int PANELS = 36;

    /** Standard normals: movement along the grain of board and neck, speed of moisture in board and neck. */
    private static final int OWN = 4;

    private static final int DAYS_TRIED = 80;
    private static final double LONGEST_LAG_DAYS = 400;

    private final Bends bends;
    private final AirInWood board;
    private final AirInWood neck;
    private final boolean isInBalance;

    MoistureBow(Bends bends, AirInWood board, AirInWood neck, boolean isInBalance) {
        this.bends = bends;
        this.board = board;
        this.neck = neck;
        this.isInBalance = isInBalance;
    }

    /** Relief added by a change of moisture in percent, with its 95 % interval. */
    Likely<Length> after(double change, ShopUnit<Length> unit) {
        return Likely.of(
                bends.woods.interval(
                        given -> {
                            double[] own = given.own();
                            double boardDone = isInBalance ? 1 : board.doneIn(own[2]);
                            double neckDone = isInBalance ? 1 : neck.doneIn(own[3]);
                            return bends.bow(
                                    given,
                                    (ALONG + ALONG_U * own[0]) * boardDone * change,
                                    (ALONG + ALONG_U * own[1]) * neckDone * change);
                        },
                        OWN),
                unit);
    }

    /** A day on the way to balance and the relief added then. */
    record Lag(double days, double relief) {}

    /** The day on which board and neck are farthest apart. */
    Lag greatestLag(double change) {
        double days = 0;
        double apart = 0;
        for (int i = 0; i <= DAYS_TRIED; i++) {
            double day = StrictMath.pow(LONGEST_LAG_DAYS, (double) i / DAYS_TRIED);
            double now = board.after(day).shareDone() - neck.after(day).shareDone();
            if (Math.abs(now) > Math.abs(apart)) {
                apart = now;
                days = day;
            }
        }
        double strain = ALONG * apart * change;
        double[] found = new double[1];
        bends.woods.atMeans(
                given -> {
                    found[0] = bends.bow(given, strain, 0);
                    return 0;
                },
                0);
        return new Lag(days, found[0]);
    }

    /** How a neck bends for a free strain of its board, and of the rest, at each pair of moduli: the same in every air. */
    static final class Bends {

        private final NeckBeam beam;
        private final StringPull pull;
        private final double from;
        private final double to;
        private final BowKnowledge woods;
        private final Map<List<Double>, Bend[]> known = new ConcurrentHashMap<>();

        Bends(StrungNeck strung, StringPull pull) {
            Neck design = strung.neck();
            this.beam = strung.beam();
            this.pull = pull;
            this.from = design.scale().fretMm(strung.fromFret());
            this.to = design.scale().fretMm(strung.toFret());
            this.woods = new BowKnowledge(strung.state(), new double[Cause.COUNT], NeckModel.spread(design));
        }

        private double bow(BowKnowledge.Given given, double boardStrain, double neckStrain) {
            Bend[] each = known.computeIfAbsent(
                    List.of(given.neck(), given.board()), moduli -> bends(given.neck(), given.board()));
            return new Straightedge(each[0].times(boardStrain).plus(each[1], neckStrain), null, from, to).bow(0);
        }

        private Bend[] bends(double neckFactor, double boardFactor) {
            NeckBeam made = beam.stiffer(neckFactor, boardFactor);
            return new Bend[] {bend(made, pull, 1, 0), bend(made, pull, 0, 1)};
        }
    }

    /** The bend of a beam for free strains of its board and of its neck's wood. */
    static Bend bend(NeckBeam beam, StringPull pull, double ofBoard, double ofNeck) {
        return Objects.requireNonNull(BeamScan.of(beam, pull, new Swelling(beam, ofBoard, ofNeck), PANELS)
                .rod());
    }

    /** Of free strains of the board, and of the rest of the wood, about an axis. */
    static double moment(SectionMoments board, SectionMoments wood, double ofBoard, double ofRest, double axis) {
        double top = board.stretchStiffness() * (board.neutralAxis() - axis);
        double all = wood.stretchStiffness() * (wood.neutralAxis() - axis);
        return -ofBoard * top - ofRest * (all - top);
    }

    /** Two free strains as the moment that they put on the section; bonded bars do not swell. */
    private static final class Swelling implements RodPull {

        private final NeckBeam beam;
        private final NeckBeam wood;
        private final double ofBoard;
        private final double ofNeck;
        private final SectionMoments whole = new SectionMoments();
        private final SectionMoments board = new SectionMoments();

        Swelling(NeckBeam beam, double ofBoard, double ofNeck) {
            this.beam = beam;
            this.wood = beam.withoutBars();
            this.ofBoard = ofBoard;
            this.ofNeck = ofNeck;
        }

        @Override
        public double moment(double x, double neutralAxis) {
            wood.section(x, whole);
            beam.board(x, board);
            return MoistureBow.moment(board, whole, ofBoard, ofNeck, neutralAxis);
        }

        @Override
        public double push(double x) {
            return 0;
        }

        @Override
        public double start() {
            return 0;
        }

        @Override
        public double end() {
            return beam.length();
        }
    }
}
