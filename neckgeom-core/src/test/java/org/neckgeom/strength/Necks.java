package org.neckgeom.strength;

import static org.neckgeom.units.ShopUnits.mm;

import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.TrussRod;

/** Invented necks for the tests. */
final class Necks {

    private Necks() {}

    /** Eight strings, a two-way rod in a flat channel that begins at the nut. */
    static Neck mandolin() {
        return SampleNecks.octaveMandolin().trussRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)));
    }
}
