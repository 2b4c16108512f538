package org.neckgeom.strength;

import static org.neckgeom.units.ShopUnits.mm;

import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Rod;
import org.neckgeom.fixture.SampleNecks;

/** Invented necks for the tests. */
final class Necks {

    private Necks() {}

    /** Eight strings, a two-way rod in a flat channel that begins at the nut. */
    static NeckDesign mandolin() {
        return SampleNecks.octaveMandolin().trussRod(Rod.twoWay(mm(300)).section(mm(6), mm(9)));
    }
}
