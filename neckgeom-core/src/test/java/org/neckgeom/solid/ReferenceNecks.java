package org.neckgeom.solid;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.hertz;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Frequency;
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
import org.neckgeom.neck.OutlinePoint;
import org.neckgeom.neck.Posts;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.neck.Volute;
import org.neckgeom.units.Amount;

/** The three invented necks whose figures stand in solid/*.csv, as nouns; their inputs are those at the head of solid.py. */
enum ReferenceNecks {
    STRAIGHT(640, 640, 0, 44, 55, 20, 14) {
        @Override
        BackProfile back() {
            return BackProfile.between(mm(15), mm(17))
                    .atFrets(1, 10)
                    .power(2.2)
                    .heelTransition(
                            HeelTransition.ofRadius(mm(22)).slope(deg(70)).capLength(mm(12)));
        }

        @Override
        Head head() {
            return Head.angled(deg(13))
                    .length(mm(190))
                    .width(mm(82))
                    .thickness(mm(14))
                    .veneer(mm(1.2), mm(0))
                    .backVeneer(mm(0.6))
                    .outline(at(0, 22), at(28, 30), at(60, 37), at(190, 41))
                    .posts(posts(60, -26, 100, -27.5, 140, -29, 140, 29, 100, 27.5, 60, 26));
        }

        @Override
        Heel heel(double width) {
            return Heel.of(mm(88), mm(width)).capWidth(mm(24));
        }

        @Override
        Fingerboard crowned(Fingerboard board, double far) {
            return board.thickness(mm(6)).radius(mm(300), mm(300 + 100 * far));
        }
    },
    FANNED(686, 648, 9, 49, 62, 22, 14) {
        @Override
        BackProfile back() {
            return BackProfile.between(mm(15.5), mm(17.5))
                    .atFrets(1, 10)
                    .asymmetric(2.6, 1.9)
                    .heelTransition(
                            HeelTransition.ofRadius(mm(25)).slope(deg(72)).capLength(mm(12)));
        }

        @Override
        Head head() {
            return Head.angled(deg(11))
                    .length(mm(210))
                    .width(mm(84))
                    .thickness(mm(15))
                    .veneer(mm(0.9), mm(0))
                    .outline(at(0, 24.5), at(30, 33), at(70, 39), at(210, 42))
                    .posts(posts(55, -27, 92, -29.5, 129, -31, 166, -32, 150, 31, 108, 30, 66, 28));
        }

        @Override
        Heel heel(double width) {
            return Heel.of(mm(96), mm(width)).capWidth(mm(26));
        }

        @Override
        Fingerboard crowned(Fingerboard board, double far) {
            return board.thickness(mm(6.4)).radius(mm(350), mm(350 + 150 * far));
        }
    },
    ONE_PIECE(655, 655, 0, 52, 62, 19, 12) {
        @Override
        BackProfile back() {
            return BackProfile.between(mm(16.5), mm(18.5))
                    .atFrets(1, 9)
                    .asymmetric(2, 2.4)
                    .volute(Volute.of(mm(3), mm(38)))
                    .heelTransition(
                            HeelTransition.ofRadius(mm(30)).slope(deg(65)).capLength(mm(12)));
        }

        @Override
        Head head() {
            return Head.angled(deg(14))
                    .swung(deg(3))
                    .length(mm(195))
                    .width(mm(74))
                    .thickness(mm(18))
                    .veneer(mm(1.5), mm(0))
                    .backVeneer(mm(0.8))
                    .outline(at(0, 26), at(25, 32), at(55, 36), at(195, 37))
                    .posts(posts(60, -24, 98, -24, 136, -24, 136, 24, 98, 24, 60, 24));
        }

        @Override
        Heel heel(double width) {
            return Heel.of(mm(92), mm(width)).capWidth(mm(26));
        }

        @Override
        Fingerboard crowned(Fingerboard board, double far) {
            return board.thickness(mm(6.5), mm(6.5 - far));
        }
    };

    private static final double GAUGE = 1;

    final double bass;
    final double treble;
    final int perpendicular;
    final double nut;
    final double atTwelfth;
    final int frets;
    final int body;

    ReferenceNecks(double bass, double treble, int perpendicular, double nut, double atTwelfth, int frets, int body) {
        this.bass = bass;
        this.treble = treble;
        this.perpendicular = perpendicular;
        this.nut = nut;
        this.atTwelfth = atTwelfth;
        this.frets = frets;
        this.body = body;
    }

    abstract BackProfile back();

    abstract Head head();

    abstract Heel heel(double width);

    /** The board's thickness and crown; far is how far fret 12 lies on the way to the last fret. */
    abstract Fingerboard crowned(Fingerboard board, double far);

    static ReferenceNecks named(String name) {
        return valueOf(name.replace('-', '_').toUpperCase(Locale.ROOT));
    }

    boolean isFanned() {
        return bass != treble;
    }

    double spreadAtNut() {
        return this == STRAIGHT ? 36 : this == FANNED ? 41.5 : 43;
    }

    double spreadAtSaddle() {
        return this == STRAIGHT ? 54 : this == FANNED ? 63 : 58;
    }

    double[] gauges() {
        return switch (this) {
            case STRAIGHT -> new double[] {1.35, 1.07, .81, .61, .41, .30};
            case FANNED -> new double[] {1.68, 1.32, 1.07, .81, .61, .41, .28};
            case ONE_PIECE -> new double[] {1.10, .90, .75, 1.02, .82, .71};
        };
    }

    double[] compensations() {
        return switch (this) {
            case STRAIGHT -> new double[] {4.2, 3.4, 2.6, 3.6, 2.4, 1.8};
            case FANNED -> new double[] {5., 4.2, 3.4, 2.6, 3.4, 2.2, 1.6};
            case ONE_PIECE -> new double[] {1.8, 1.6, 1.5, 2.6, 1.6, 1.2};
        };
    }

    double[] actions() {
        return switch (this) {
            case STRAIGHT -> new double[] {2.4, 2.3, 2.2, 2.1, 2.0, 1.9};
            case FANNED -> new double[] {2.3, 2.2, 2.15, 2.1, 2., 1.9, 1.8};
            case ONE_PIECE -> new double[] {4., 3.9, 3.7, 3.5, 3.2, 3.};
        };
    }

    double atNut() {
        return this == STRAIGHT ? .55 : this == FANNED ? .5 : .8;
    }

    double fretHeight() {
        return this == STRAIGHT ? 1.1 : this == FANNED ? 1.2 : 1;
    }

    /** Depth, width, start and end of the channel. */
    Channel channel(double joint) {
        double[] c = switch (this) {
            case STRAIGHT -> new double[] {8, 6.4, 10, 400};
            case FANNED -> new double[] {9, 6, 12, 410};
            case ONE_PIECE -> new double[] {8, 7, 6, 330};
        };
        double end = Math.min(c[3], joint - 15);
        return Channel.forRod(TrussRod.twoWay(mm(end - c[2])).section(mm(c[1]), mm(c[0])))
                .startingAt(mm(c[2]));
    }

    Neck neck() {
        double far = (1 - Math.pow(2, -1)) / (1 - Math.pow(2, -frets / 12.0));
        Fingerboard board = crowned(Fingerboard.tapered(mm(nut), mm(atTwelfth)).farWidthAtFret(12), far)
                .fretHeight(mm(fretHeight()));
        StringSet strings = strings();
        Neck bare = (isFanned()
                        ? Neck.named(name())
                                .fannedFrets(Fan.between(mm(bass), mm(treble)).perpendicularAt(perpendicular), strings)
                        : Neck.named(name()).scale(mm(centreline())))
                .fingerboard(board)
                .back(back())
                .strings(strings)
                .frets(frets)
                .bodyAtFret(body)
                .head(head());
        return bare.heel(heel(2 * bare.halfWidthAtMm(bare.bodyJointMm()))).channel(channel(bare.bodyJointMm()));
    }

    /** A straight neck's outer strings lean, so the centreline is a little shorter than their scale. */
    private double centreline() {
        double aside = (spreadAtSaddle() - spreadAtNut()) / 2;
        return Math.sqrt(bass * bass - aside * aside);
    }

    private StringSet strings() {
        int n = gauges().length;
        List<Amount<Frequency>> pitches = Collections.nCopies(n, hertz(100));
        @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type; it is only read
        Quantity<Length>[] gauges = Collections.nCopies(n, mm(GAUGE)).toArray(new Quantity[n]);
        return StringSet.of(pitches)
                .diameters(gauges)
                .across(Across.of(mm((nut - spreadAtNut() - GAUGE) / 2), mm(spreadAtSaddle() + GAUGE)));
    }

    private static OutlinePoint at(double along, double out) {
        return OutlinePoint.at(mm(along), mm(out));
    }

    private static Posts posts(double... alongAside) {
        List<TunerPost> all = new ArrayList<>();
        for (int i = 0; i < alongAside.length; i += 2) {
            all.add(TunerPost.at(mm(alongAside[i])).aside(mm(alongAside[i + 1])).above(mm(9)));
        }
        return Posts.of(all.toArray(TunerPost[]::new)).diameter(mm(6)).washers(mm(15));
    }
}
