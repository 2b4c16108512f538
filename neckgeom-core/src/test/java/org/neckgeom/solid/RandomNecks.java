package org.neckgeom.solid;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.hertz;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.Arrays;
import java.util.Collections;
import java.util.SplittableRandom;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fan;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.OutlinePoint;
import org.neckgeom.neck.Posts;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.neck.Volute;

/**
 * Invented whole necks by lot: straight or fanned, with or without volute, heel turn, swing, veneers and outline; and the same
 * neck as its mirror image, in another size, or without fan, swing or head angle.
 *
 * @param size by which every length is multiplied
 * @param fan how much longer the bass scale is than the treble scale; 0: straight
 * @param power exponents of the back, bass and treble
 * @param swing of the head in deg, positive toward the treble side
 * @param out the outline's distances from the head's axis, bass and treble, at 0, 0.15, 0.4 and 1 of its length
 * @param posts along and aside of each post from bass to treble
 */
record RandomNecks(
        double size,
        double scale,
        double fan,
        int perpendicular,
        double nut,
        double growth,
        double depth,
        double deeper,
        double[] power,
        double volute,
        double heelRadius,
        double heelSlope,
        double heelHeight,
        double pitch,
        double swing,
        double headLength,
        double headThickness,
        double veneer,
        double backVeneer,
        double[][] out,
        double[][] posts,
        double[] gauges,
        double[] channel,
        double board,
        double crown) {

    private static final double[] ALONG = {0, 0.15, 0.4, 1};
    private static final int STRINGS = 6;

    static RandomNecks of(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double nut = random.nextDouble(36, 54);
        double length = random.nextDouble(160, 220);
        double[][] out = new double[2][ALONG.length];
        for (double[] side : out) {
            side[0] = nut / 2;
            side[1] = nut / 2 + random.nextDouble(4, 10);
            side[2] = random.nextDouble(32, 38);
            side[3] = random.nextDouble(28, 42);
        }
        double[][] posts = new double[STRINGS][];
        double[] gauges = new double[STRINGS];
        for (int i = 0; i < STRINGS; i++) {
            boolean onBass = i < STRINGS / 2;
            int row = onBass ? i : STRINGS - 1 - i;
            posts[i] = new double[] {
                random.nextDouble(45, 55) + 0.2 * length * row, (onBass ? -1 : 1) * random.nextDouble(22, 27)
            };
            gauges[i] = random.nextDouble(0.3, 1.4);
        }
        boolean even = random.nextBoolean();
        double power = random.nextDouble(1.8, 3);
        return new RandomNecks(
                1,
                random.nextDouble(560, 700),
                random.nextBoolean() ? 0 : random.nextDouble(10, 45),
                random.nextInt(4, 12),
                nut,
                random.nextDouble(8, 13),
                random.nextDouble(15, 19),
                random.nextDouble(1, 3),
                new double[] {power, even ? power : random.nextDouble(1.8, 3)},
                random.nextBoolean() ? 0 : random.nextDouble(1, 5),
                random.nextInt(3) == 0 ? 0 : random.nextDouble(15, 35),
                random.nextDouble(55, 80),
                random.nextDouble(75, 100),
                random.nextDouble(5, 17),
                random.nextBoolean() ? 0 : random.nextDouble(-4, 4),
                length,
                random.nextDouble(13, 17),
                random.nextBoolean() ? 0 : random.nextDouble(0.5, 2),
                random.nextBoolean() ? 0 : random.nextDouble(0.5, 2),
                out,
                posts,
                gauges,
                new double[] {
                    random.nextDouble(2, 20),
                    random.nextDouble(5, 7),
                    random.nextDouble(7, 10),
                    random.nextDouble(-0.3, 0.5)
                },
                random.nextDouble(5, 7),
                random.nextDouble(200, 500));
    }

    /** The neck in a mirror: bass and treble exchanged, slant and swing the other way. */
    RandomNecks mirrored() {
        double[][] other = new double[STRINGS][];
        double[] thick = new double[STRINGS];
        for (int i = 0; i < STRINGS; i++) {
            double[] post = posts[STRINGS - 1 - i];
            other[i] = new double[] {post[0], -post[1]};
            thick[i] = gauges[STRINGS - 1 - i];
        }
        return with(
                size,
                -fan,
                new double[] {power[1], power[0]},
                -swing,
                pitch,
                new double[][] {out[1], out[0]},
                other,
                thick);
    }

    RandomNecks doubled() {
        return with(2 * size, fan, power, swing, pitch, out, posts, gauges);
    }

    RandomNecks fanned(double more) {
        return with(size, more, power, swing, pitch, out, posts, gauges);
    }

    RandomNecks swung(double degrees) {
        return with(size, fan, power, degrees, pitch, out, posts, gauges);
    }

    RandomNecks pitched(double degrees) {
        return with(size, fan, power, swing, degrees, out, posts, gauges);
    }

    private RandomNecks with(
            double newSize,
            double newFan,
            double[] newPower,
            double newSwing,
            double newPitch,
            double[][] newOut,
            double[][] newPosts,
            double[] newGauges) {
        return new RandomNecks(
                newSize,
                scale,
                newFan,
                perpendicular,
                nut,
                growth,
                depth,
                deeper,
                newPower,
                volute,
                heelRadius,
                heelSlope,
                heelHeight,
                newPitch,
                newSwing,
                headLength,
                headThickness,
                veneer,
                backVeneer,
                newOut,
                newPosts,
                newGauges,
                channel,
                board,
                crown);
    }

    private Quantity<Length> at(double mm) {
        return mm(mm * size);
    }

    NeckSolid solid() {
        return NeckSolid.of(neck());
    }

    Neck neck() {
        StringSet strings = strings();
        Neck bare = (fan == 0
                        ? Neck.named("by lot").scale(at(scale))
                        : Neck.named("by lot")
                                .fannedFrets(
                                        Fan.between(at(scale + fan / 2), at(scale - fan / 2))
                                                .perpendicularAt(perpendicular),
                                        strings))
                .fingerboard(Fingerboard.tapered(at(nut), at(nut + growth))
                        .farWidthAtFret(12)
                        .thickness(at(board))
                        .radius(at(crown))
                        .fretHeight(at(1)))
                .back(back())
                .strings(strings)
                .neckSet(NeckSet.saddle(at(15))
                        .atNut(at(0.5))
                        .action(at(2))
                        .compensation(at(2))
                        .fretPlane(at(9)))
                .frets(20)
                .bodyAtFret(14)
                .head(head());
        Neck heeled = bare.heel(Heel.of(at(heelHeight), mm(2 * bare.halfWidthAtMm(bare.bodyJointMm())))
                .capWidth(at(24)));
        double end = bare.bodyJointMm() / size - 40;
        return heeled.channel(
                Channel.forRod(TrussRod.twoWay(at(end - channel[0])).section(at(channel[1]), at(channel[2])))
                        .startingAt(at(channel[0]))
                        .arch(at(channel[3])));
    }

    private BackProfile back() {
        BackProfile plain = BackProfile.between(at(depth), at(depth + deeper))
                .atFrets(1, 10)
                .asymmetric(power[0], power[1]);
        BackProfile voluted = volute == 0 ? plain : plain.volute(Volute.of(at(volute), at(35)));
        return heelRadius == 0
                ? voluted
                : voluted.heelTransition(HeelTransition.ofRadius(at(heelRadius))
                        .slope(deg(heelSlope))
                        .capLength(at(12)));
    }

    private Head head() {
        OutlinePoint[] outline = new OutlinePoint[ALONG.length];
        Arrays.setAll(
                outline,
                i -> OutlinePoint.at(at(ALONG[i] * headLength), at(out[0][i])).treble(at(out[1][i])));
        Head plain = (pitch == 0 ? Head.flat() : Head.angled(deg(pitch)))
                .length(at(headLength))
                .width(at(90))
                .thickness(at(headThickness))
                .swung(deg(swing))
                .outline(outline)
                .posts(Posts.of(Arrays.stream(posts)
                                .map(p -> TunerPost.at(at(p[0])).aside(at(p[1])).above(at(8)))
                                .toArray(TunerPost[]::new))
                        .diameter(at(6))
                        .washers(at(14)));
        Head faced = veneer == 0 ? plain : plain.veneer(at(veneer), at(0));
        return backVeneer == 0 ? faced : faced.backVeneer(at(backVeneer));
    }

    private StringSet strings() {
        @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type; it is only read
        Quantity<Length>[] diameters = Arrays.stream(gauges).mapToObj(this::at).toArray(Quantity[]::new);
        return StringSet.of(Collections.nCopies(STRINGS, hertz(100)))
                .diameters(diameters)
                .across(Across.of(at(3.5), at(nut + 12)));
    }
}
