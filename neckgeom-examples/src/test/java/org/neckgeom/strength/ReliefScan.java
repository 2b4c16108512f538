package org.neckgeom.strength;

import java.util.List;
import org.neckgeom.neck.Channel;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;

/** Opens the scan of this package, which has no public door of its own, to the benchmarks. */
public final class ReliefScan {

    private final NeckBeam beam;
    private final StringPull pull;
    private final RodPull rod;

    /** A neck as {@code BeamScanTest} bends it, with a back of any exponent. */
    public ReliefScan(Channel channel, double power) {
        Superellipse shape = Superellipse.of(power);
        beam = new NeckBeam(
                311,
                new NeckBeam.Board(Taper.through(0, 34, 311, 46), new Taper(6, 0), new Taper(400, 0), 12_300),
                new NeckBeam.Back(
                        Taper.through(0, 17, 311, 23), Taper.through(31, 14.5, 280, 16.5), shape, shape, 11_600),
                channel,
                0,
                List.of());
        pull = StringPull.NONE.plus(760, new Line(new Point(0, 0, 7.5), new Point(560, 0, 9.9)));
        rod = new RodPull.Couple(0, 300, 4.5);
    }

    /** Sections and bent line at about this many stations, then the relief from 31 mm to the body joint. */
    public double relief(int stations) {
        BeamScan scan = BeamScan.of(beam, pull, rod, stations / 2);
        return new Straightedge(scan.strings(), scan.rod(), 31, 311).relief(0);
    }
}
