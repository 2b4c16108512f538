package org.neckgeom.strength;

import static org.neckgeom.units.ShopUnits.gigapascal;
import static org.neckgeom.units.ShopUnits.gramPerMetre;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.kgPerM3;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.pitch;
import static org.neckgeom.units.ShopUnits.thou;

import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.End;
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

    /** Five strings by mass per length, inches, a two-way rod with a pocket, another shape on each side of the back. */
    static NeckDesign bass() {
        Wood maple = Wood.SUGAR_MAPLE
                .withName("our own maple")
                .density(kgPerM3(680))
                .modulus(gigapascal(12.1))
                .shrinkage(percent(4.6), percent(9.5));
        return NeckDesign.named("Short-scale bass, five strings")
                .scale(inch(30))
                .frets(22)
                .bodyAtFret(16)
                .wood(maple)
                .fingerboard(Fingerboard.tapered(inch(1.75), inch(2.625))
                        .secondAtFret(22)
                        .thickness(inch(0.25))
                        .radius(inch(12), inch(16))
                        .wood(Wood.SUGAR_MAPLE))
                .back(BackProfile.between(inch(0.625), inch(0.6875)).asymmetric(2.2, 2.6))
                .channel(Channel.forRod(
                                Rod.twoWay(inch(17.5), inch(0.25), inch(0.375)).adjustedAt(End.HEEL))
                        .startingAt(inch(0.125))
                        .endPlay(inch(0.03125))
                        .sidePlay(thou(4))
                        .clearance(thou(8))
                        .pocket(inch(0.75), inch(0.375), inch(0.4375)))
                .strings(StringSet.of(pitch("B0"), pitch("E1"), pitch("A1"), pitch("D2"), pitch("G2"))
                        .massesPerLength(
                                gramPerMetre(77),
                                gramPerMetre(44),
                                gramPerMetre(27),
                                gramPerMetre(15.5),
                                gramPerMetre(8.6)));
    }
}
