package org.neckgeom.strength;

import static org.neckgeom.units.ShopUnits.gigapascal;
import static org.neckgeom.units.ShopUnits.hertz;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Frequency;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.stock.Wood;
import org.neckgeom.stock.WoodFigure;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The three necks of src/test/resources/strength2/neck.py, with the tensions that it prints. */
enum ReferenceNecks {
    GUITAR(
            648,
            14,
            new double[] {43, 55},
            6,
            305,
            new double[] {15.5, 18},
            new double[] {357, 9},
            new double[] {0.4, 2},
            false,
            new double[] {87.340174277, 95.315103119, 89.370393943, 74.171463268, 68.851336125, 72.591203664},
            new double[] {1.1684, 0.9144, 0.6604, 0.4318, 0.3302, 0.254}),
    BASS(
            864,
            16,
            new double[] {42, 61},
            6,
            254,
            new double[] {16, 19},
            new double[] {507, 9},
            new double[] {0.5, 2.5},
            false,
            new double[] {202.25276652, 236.163107007, 246.070326453, 210.143465221},
            new double[] {2.667, 2.159, 1.651, 1.143}),
    MANDOLIN(
            352,
            12,
            new double[] {29, 37},
            5,
            0,
            new double[] {13, 15},
            new double[] {162, 6},
            new double[] {0.4, 1.7},
            true,
            new double[] {110.237327959, 105.484580201, 97.70518422, 103.672763331},
            new double[] {1.016, 0.6604, 0.4064, 0.2794});

    private final Neck neck;

    @SuppressWarnings({"unchecked", "rawtypes"}) // arrays of amounts
    ReferenceNecks(
            double scale,
            int joint,
            double[] widths,
            double board,
            double radius,
            double[] depths,
            double[] rod,
            double[] heights,
            boolean doubled,
            double[] tensions,
            double[] diameters) {
        double length = scale * (1 - Math.pow(2, -joint / 12.0));
        Fingerboard plain = Fingerboard.tapered(mm(widths[0]), mm(widths[1]))
                .thickness(mm(board))
                .fretHeight(mm(1.1))
                .wood(Wood.named("board of the reference").modulus(gigapascal(14)));
        double first = scale * (1 - Math.pow(2, -1 / 12.0));
        double slope = (depths[1] - depths[0]) / length;
        List<Amount<Frequency>> pitches =
                Arrays.stream(tensions).mapToObj(t -> hertz(100)).toList();
        StringSet single = StringSet.of(pitches);
        Neck drawn = Neck.named("reference " + name())
                .scale(mm(scale))
                .fingerboard(radius > 0 ? plain.radius(mm(radius)) : plain)
                .back(BackProfile.between(mm(depths[0] + slope * first), mm(depths[0] + slope * scale / 2))
                        .rounded())
                .frets(joint + 6)
                .bodyAtFret(joint)
                .wood(Wood.named("neck of the reference").modulus(gigapascal(12.6)))
                .channel(Channel.forRod(
                                TrussRod.twoWay(mm(rod[0])).section(mm(name().equals("MANDOLIN") ? 5 : 6), mm(rod[1])))
                        .startingAt(mm(3))
                        .depthClearance(mm(1)))
                .strings((doubled ? single.doubled() : single)
                        .tensions(Arrays.stream(tensions)
                                .mapToObj(ShopUnits::newton)
                                .toArray(Amount[]::new))
                        .diameters(
                                Arrays.stream(diameters).mapToObj(ShopUnits::mm).toArray(Amount[]::new)));
        this.neck = drawn.neckSet(NeckSet.saddle(mm(15)).atNut(mm(heights[0])).action(mm(heights[1])));
    }

    Neck neck() {
        return neck;
    }

    /** The same of woods whose moduli are those of a bending table. */
    static Neck ofTableWoods(Neck neck) {
        return neck.wood(ofTable(12_600)).fingerboard(neck.fingerboard().wood(ofTable(14_000)));
    }

    private static Wood ofTable(double modulus) {
        return Wood.of(
                "table wood",
                "",
                List.of(
                        new WoodFigure(WoodFigure.Kind.MODULUS, modulus, "a table", WoodFigure.Standing.PRINTED),
                        new WoodFigure(WoodFigure.Kind.MODULUS_VARIATION, 22, "a table", WoodFigure.Standing.PRINTED)));
    }

    static ReferenceNecks named(String name) {
        return valueOf(name.toUpperCase(Locale.ROOT));
    }
}
