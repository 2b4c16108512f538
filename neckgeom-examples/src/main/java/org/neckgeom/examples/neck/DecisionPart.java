package org.neckgeom.examples.neck;

import javax.measure.quantity.Dimensionless;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.QuantityKind;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.shop.DecisionRule;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** When a neck may be cut, in a neck file. */
final class DecisionPart {

    private static final double MOST = 1e6;

    static final Key<Amount<Dimensionless>> WANTED = Key.optional(
            "wanted chance",
            QuantityKind.percent().moreThan(ShopUnits.percent(50)).atMost(ShopUnits.percent(99.99)),
            "of a slot within its limit; 95 % when left out");
    static final Key<Double> NECK = Key.optional(
            "spoiled neck",
            Kinds.number(1e-3, MOST),
            "its cost in minutes of work, or in any unit that all four share; 120 when left out");
    static final Key<Double> READING =
            Key.optional("reading again", Kinds.number(0, MOST), "cost of reading a cut again; 0.36 when left out");
    static final Key<Double> TRIAL_CUT =
            Key.optional("trial cut", Kinds.number(0, MOST), "cost of a trial cut; 1.8 when left out");
    static final Key<Double> MOVE =
            Key.optional("fence move", Kinds.number(0, MOST), "cost of a fence move; 1.2 when left out");

    static final Shape SHAPE = Shape.of(
            "when the neck may be cut, and what steps on the way cost", WANTED, NECK, READING, TRIAL_CUT, MOVE);

    private DecisionPart() {}

    static Found<DecisionRule> of(Section section) {
        return section.make(() -> {
            DecisionRule usual = DecisionRule.withDefaults();
            return usual.wantedChance(section.at(WANTED).orElse(usual.wantedPercent()))
                    .spoiledNeck(section.at(NECK).orElse(usual.spoiledNeckCost()))
                    .readingAgain(section.at(READING).orElse(usual.readingAgainCost()))
                    .trialCut(section.at(TRIAL_CUT).orElse(usual.trialCutCost()))
                    .fenceMove(section.at(MOVE).orElse(usual.fenceMoveCost()));
        });
    }
}
