package org.neckgeom.board;

import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;

import java.util.Map;
import java.util.SplittableRandom;
import org.hipparchus.dfp.Dfp;
import org.neckgeom.kernel.FretKernel;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Scale;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.validation.Check;
import org.neckgeom.validation.Checks;
import org.neckgeom.validation.Numerics;
import org.neckgeom.validation.Numerics.Point;
import org.neckgeom.validation.PracticeFigures;
import org.neckgeom.validation.Rows;
import org.neckgeom.validation.Source;
import org.neckgeom.validation.Status;

/** The frets, the fingerboard and the strings across it against what was published, computed elsewhere, or is said by the trade. */
public final class BoardChecks {

    private static final String PRACTICE = "practice-2-figures.csv";

    private BoardChecks() {}

    @SuppressWarnings("exports") // a package of the tests
    public static void into(Checks checks) {
        frets(checks.topic("Frets"));
        fan(checks.topic("Frets"));
        board(checks.topic("Fingerboard and strings"));
        setUp(checks);
    }

    private static void frets(Checks checks) {
        Check rule = checks.check(
                "rule of eighteen, frets 1 to 24", Source.MPMATH, "fret-positions-650.csv", Status.EXACT, "cent");
        rule.of("Fret.centsFrom");
        FretTable table = FretTable.of(Scale.of(mm(650)), 24);
        for (Map<String, String> row : Rows.of("/board/fret-positions-650.csv")) {
            int n = (int) Rows.number(row, "n");
            if (n > 0) {
                rule.figure(
                        Rows.number(row, "rule_of_18_error_cents"),
                        table.fret(n)
                                .centsFrom(mm(Rows.number(row, "rule_of_18_position_mm")
                                        - Rows.number(row, "distance_from_nut_mm"))),
                        1e-8);
            }
        }
        Check tenth =
                checks.check("0.1 mm too far at frets 1, 12, 20 of 648 mm", Source.TRADE, "", Status.PRACTICE, "cent");
        tenth.of("Fret.centsFrom", "Fret.sounding");
        FretTable long648 = FretTable.of(Scale.of(mm(648)), 20);
        double[][] figures = {{1, 0.28}, {12, 0.53}, {20, 0.85}};
        for (double[] figure : figures) {
            Fret fret = long648.fret((int) figure[0]);
            tenth.figure(figure[1], fret.centsFrom(mm(0.1)), 0.006);
        }
        SplittableRandom random = new SplittableRandom(100);
        Numerics.worst(checks, "cents of a misplaced fret", "1e-9 to 1 mm on 100 to 900 mm", 1e-9, 10_000)
                .points(() -> {
                    double sounding = random.nextDouble(100, 900);
                    double off = Math.pow(10, random.nextDouble(-9, 0));
                    Dfp ratio =
                            Numerics.of(sounding).divide(Numerics.of(sounding).subtract(Numerics.of(off)));
                    return new Point(
                            Numerics.log(ratio)
                                    .divide(Numerics.log(Numerics.TWO))
                                    .multiply(1200),
                            FretKernel.cents(sounding, off));
                })
                .of("Fret.centsFrom");
    }

    /** The reference's fan: 686 mm and 648 mm, fret 9 perpendicular, 41.5 mm and 63 mm apart, 49 mm at the nut, 62 mm at fret 12. */
    private static void setUp(Checks checks) {
        Neck plain = Neck.named("648 mm")
                .scale(mm(648))
                .fingerboard(Fingerboard.tapered(mm(43), mm(56)).thickness(mm(6)))
                .back(BackProfile.between(mm(21), mm(21)));
        checks.check("side dot of fret 12, 648 mm", Source.SCRIPT, PRACTICE, Status.EXACT, "mm")
                .relative(
                        PracticeFigures.of("Q25"),
                        SideDots.of(plain).fromNut(12).libraryValue(),
                        1e-8)
                .of("SideDots.fromNut");
        Check slot = checks.check("nut slot over the fret plane", Source.SCRIPT, PRACTICE, Status.EXACT, "mm");
        Check held = checks.check("gap over fret 1, held at fret 3", Source.SCRIPT, PRACTICE, Status.EXACT, "mm");
        double[][] read = {{0.6, 2.2}, {0.33, 1.7}};
        String[] sides = {"bass", "treble"};
        for (int i = 0; i < 2; i++) {
            NutSlot string = NutSlot.of(Scale.of(mm(648)), mm(read[i][0]), mm(read[i][1]));
            slot.relative(PracticeFigures.of("Q6" + sides[i]), string.atNut().libraryValue(), 1e-8);
            held.relative(
                    PracticeFigures.of("Q7" + sides[i]), string.gapHeldAtThird().libraryValue(), 1e-8);
        }
        slot.of("NutSlot.atNut");
        held.of("NutSlot.gapHeldAtThird");
        Neck crowned = Neck.named("crown 305")
                .scale(mm(648))
                .fingerboard(
                        Fingerboard.tapered(mm(56), mm(56)).thickness(mm(6)).radius(mm(305)))
                .back(BackProfile.between(mm(21), mm(21)));
        // The script has the first term of the series; the arcs themselves differ by 0.002 mm.
        checks.check("wire 254 on a board of 305, 56 wide", Source.SCRIPT, PRACTICE, Status.EXACT, "mm")
                .figure(
                        PracticeFigures.of("Q8"),
                        FretBend.of(crowned, 5, mm(254)).gap().libraryValue(),
                        0.003)
                .of("FretBend.gap");
        // 43 wide at the nut, 56 at the body joint, which lies at 440.
        GlueClamps clamps = GlueClamps.of(plain.scale(mm(880)).bodyAtFret(12)).each(newton(1500));
        checks.check("force on a glued board, 0.7 MPa", Source.SCRIPT, PRACTICE, Status.PRACTICE, "N")
                .relative(PracticeFigures.of("Q10"), clamps.force().libraryValue(), 1e-8)
                .of("GlueClamps.force");
        checks.check("clamps of 1500 N for it", Source.SCRIPT, PRACTICE, Status.PRACTICE, "")
                .figure(PracticeFigures.of("Q11"), clamps.count().orElseThrow(), 0)
                .of("GlueClamps.force");
    }

    private static void fan(Checks checks) {
        Check ends = checks.check(
                "ends of fanned frets on the board's edges", Source.SCIPY, "solid-frets.csv", Status.EXACT, "mm");
        Check crossing =
                checks.check("fanned frets on the centreline", Source.SCIPY, "solid-frets.csv", Status.EXACT, "mm");
        Check slant = checks.check("slant of fanned frets", Source.SCIPY, "solid-frets.csv", Status.EXACT, "deg");
        ends.of("FannedFrets.onBassEdge", "FannedFrets.onTrebleEdge");
        crossing.of("FannedFrets.onCentreline");
        slant.of("FannedFrets.slant");
        FannedFrets fan = FannedFrets.of(Scale.of(mm(686)), Scale.of(mm(648)), OuterStrings.of(mm(41.5), mm(63)), 9);
        Neck neck = Neck.named("fan")
                .scale(fan.centrelineScale())
                .fingerboard(Fingerboard.tapered(mm(49), mm(62)).farWidthAtFret(12))
                .back(BackProfile.between(mm(15.5), mm(17.5)))
                .frets(22);
        for (Map<String, String> row : Rows.of("/solid/solid-frets.csv")) {
            if (row.get("neck").equals("fanned")) {
                double n = Rows.number(row, "fret");
                ends.figure(Rows.number(row, "bass_x"), fan.onBassEdge(n, neck).libraryValue(), 1e-6);
                ends.figure(
                        Rows.number(row, "treble_x"), fan.onTrebleEdge(n, neck).libraryValue(), 1e-6);
                crossing.figure(
                        Rows.number(row, "x_centre"), fan.onCentreline(n).libraryValue(), 1e-6);
                slant.figure(
                        Rows.number(row, "slant_deg"),
                        Math.toDegrees(fan.slant(n).libraryValue()),
                        1e-6);
            }
        }
    }

    private static void board(Checks checks) {
        Check rise = checks.check(
                "rise of a 304.8 mm crown over 42 and 56 mm", Source.MPMATH, "R - sqrt(R^2 - y^2)", Status.EXACT, "mm");
        rise.of("BoardSection.drop")
                .relative(0.72428574448764439189, drop(304.8, 42), 1e-13)
                .relative(1.2888140446879674511, drop(304.8, 56), 1e-13);
        Check trade = checks.check("drop from centre to edge", Source.TRADE, "", Status.PRACTICE, "mm");
        trade.of("BoardSection.drop");
        for (double[] row : new double[][] {{305, 43, 0.76}, {305, 56, 1.29}, {241, 43, 0.96}, {184, 43, 1.26}}) {
            trade.figure(row[2], drop(row[0], row[1]), 0.006);
        }
        Neck compound = Neck.named("compound")
                .scale(mm(648))
                .fingerboard(Fingerboard.tapered(mm(43), mm(57))
                        .farWidthAtFret(22)
                        .thickness(mm(6))
                        .radius(inch(10), inch(16)))
                .back(BackProfile.between(mm(14), mm(16)))
                .frets(22)
                .bodyAtFret(16);
        checks.check("10 in at the nut, 16 at fret 22: at the bridge", Source.TRADE, "", Status.PRACTICE, "in")
                .figure(18.3, BoardShape.of(compound).radiusAtSaddle(mm(648)).libraryValue() / 25.4, 0.1)
                .of("BoardShape.radiusAtSaddle");
        double each = 3.76 / 6;
        StringPlaces places = StringSpacing.diameters(mm(each), mm(each), mm(each), mm(each), mm(each), mm(each))
                .across(mm(36.63))
                .equalGaps();
        checks.check("gap of six strings over 36.63 mm", Source.TRADE, "", Status.PRACTICE, "mm")
                .figure(6.57, places.gaps().get(0).libraryValue(), 0.005)
                .of("StringSpacing.equalGaps", "StringPlaces.gaps");
    }

    private static double drop(double radius, double width) {
        return BoardSection.ofMm(0, width, 6, radius, LengthStyle.MILLIMETRES)
                .drop(mm(width / 2))
                .libraryValue();
    }
}
