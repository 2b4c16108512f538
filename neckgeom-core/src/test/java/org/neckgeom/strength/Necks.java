package org.neckgeom.strength;

import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;

import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Rod;
import org.neckgeom.design.StringSet;
import org.neckgeom.stock.Wood;

/** Invented necks for the tests. */
final class Necks {

    private Necks() {}

    /** Eight strings, a two-way rod in a flat channel. */
    static NeckDesign mandolin() {
        return NeckDesign.named("Octave mandolin, walnut")
                .scale(mm(560))
                .frets(20)
                .bodyAtFret(14)
                .fingerboard(Fingerboard.tapered(mm(34), mm(46))
                        .thickness(mm(6))
                        .radius(mm(400))
                        .wood(Wood.INDIAN_ROSEWOOD))
                .back(BackProfile.between(mm(14.5), mm(16.5)).rounded())
                .wood(Wood.BLACK_WALNUT)
                .rod(Rod.twoWay(mm(300), mm(6), mm(9)))
                .strings(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4"))
                        .doubled()
                        .tensions(newton(95)));
    }

    /** Six strings, inches, a single-action rod in an arched channel under a strip. */
    static NeckDesign guitar() {
        return NeckDesign.named("Guitar, maple")
                .scale(inch(25.5))
                .frets(22)
                .bodyAtFret(16)
                .fingerboard(Fingerboard.tapered(inch(1.6875), inch(2.2))
                        .thickness(inch(0.25))
                        .radius(inch(9.5), inch(12))
                        .wood(Wood.SUGAR_MAPLE))
                .back(BackProfile.between(inch(0.58), inch(0.65)).full())
                .wood(Wood.SUGAR_MAPLE)
                .channel(Channel.forRod(Rod.singleAction(mm(430), mm(4.8)))
                        .startingAt(mm(-10))
                        .coveredBy(mm(1))
                        .arched(mm(4)))
                .strings(StringSet.of(pitch("E2"), pitch("A2"), pitch("D3"), pitch("G3"), pitch("B3"), pitch("E4"))
                        .tensions(newton(78), newton(85), newton(82), newton(74), newton(69), newton(72)));
    }
}
