package org.neckgeom.shop;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * The decision rule for cutting a neck: the least conformance probability of the slot, and the costs of a spoiled neck and of
 * each step. Immutable.
 *
 * <p>The next step is the one with the least expected cost. Costs may be in minutes of work, in money, or in any other unit
 * that all four share: only their ratios count; each is 0 or more. Defaults (common practice): 95 %; a spoiled neck 120
 * minutes of work and wood, reading a cut again 0.36, a trial cut with its readings 1.8, a fence move 1.2.
 */
public final class DecisionRule extends Noun<DecisionRule> {

    /** Its keys. */
    public static final Table<DecisionRule> TABLE = Table.of(
                    "", "when the neck may be cut, and the costs of the steps", DecisionRule::new)
            .printedBy(DecisionRule::sentences);

    private static final double MOST = 1e6;
    private static final double LEAST_NECK = 1e-3;
    private static final double USUAL_NECK = 120;
    private static final double USUAL_READING = 0.36;
    private static final double USUAL_TRIAL_CUT = 1.8;
    private static final double USUAL_MOVE = 1.2;

    private static final Key<DecisionRule, Amount<Dimensionless>> LEAST = TABLE.usual(
            "conformance probability",
            Types.PERCENT.moreThan(ShopUnits.percent(50)).atMost(ShopUnits.percent(99.99)),
            ShopUnits.percent(95),
            "least conformance probability of the slot offset at which the neck may be cut. Default: 95 %");
    private static final Key<DecisionRule, Double> NECK = TABLE.usual(
                    "spoiled neck",
                    Types.number(LEAST_NECK, MOST),
                    USUAL_NECK,
                    "cost of a spoiled neck in minutes of work, or in one unit for all four costs. Default: 120")
            .called("cost of a spoiled neck");
    private static final Key<DecisionRule, Double> READING = TABLE.usual(
                    "reading again", Types.number(0, MOST), USUAL_READING, "cost of reading a cut again. Default: 0.36")
            .called("cost of reading a cut again");
    private static final Key<DecisionRule, Double> TRIAL_CUT = TABLE.usual(
                    "trial cut",
                    Types.number(0, MOST),
                    USUAL_TRIAL_CUT,
                    "cost of a trial cut with its readings. Default: 1.8")
            .called("cost of a trial cut");
    private static final Key<DecisionRule, Double> MOVE = TABLE.usual(
                    "fence move", Types.number(0, MOST), USUAL_MOVE, "cost of a fence move. Default: 1.2")
            .called("cost of a fence move");

    static {
        TABLE.moved(Moves.none().and("wanted chance", "conformance probability"));
    }

    private static final DecisionRule DEFAULTS = new DecisionRule(TABLE.values());

    private DecisionRule(Values<DecisionRule> values) {
        super(values);
    }

    /** {@return the rule of common practice} */
    public static DecisionRule withDefaults() {
        return DEFAULTS;
    }

    /**
     * {@return this rule with another least conformance probability of the slot offset}
     *
     * @param probability more than 50 and no more than 99.99 percent
     */
    public DecisionRule conformanceProbability(Quantity<Dimensionless> probability) {
        return new DecisionRule(values().amount(LEAST, probability));
    }

    /**
     * {@return this rule with another cost of a spoiled neck}
     *
     * @param cost wood and work, 0.001 or more, such as 300 minutes
     */
    public DecisionRule spoiledNeck(double cost) {
        return new DecisionRule(values().with(NECK, cost + 0.0));
    }

    /**
     * {@return this rule with another cost of reading a cut again}
     *
     * @param cost 0 or more, in the unit of the others
     */
    public DecisionRule readingAgain(double cost) {
        return new DecisionRule(values().with(READING, cost + 0.0));
    }

    /**
     * {@return this rule with another cost of a trial cut and its readings}
     *
     * @param cost 0 or more, in the unit of the others
     */
    public DecisionRule trialCut(double cost) {
        return new DecisionRule(values().with(TRIAL_CUT, cost + 0.0));
    }

    /**
     * {@return this rule with another cost of a fence move}
     *
     * @param cost 0 or more, in the unit of the others
     */
    public DecisionRule fenceMove(double cost) {
        return new DecisionRule(values().with(MOVE, cost + 0.0));
    }

    /** {@return the least conformance probability; more than 0.5 and less than 1} */
    public double conformanceProbability() {
        return values().libraryValue(LEAST);
    }

    /** {@return the cost of a spoiled neck; more than 0} */
    public double spoiledNeckCost() {
        return values().at(NECK);
    }

    /** {@return the cost of reading a cut again; 0 or more} */
    public double readingAgainCost() {
        return values().at(READING);
    }

    /** {@return the cost of a trial cut and its readings; 0 or more} */
    public double trialCutCost() {
        return values().at(TRIAL_CUT);
    }

    /** {@return the cost of a fence move; 0 or more} */
    public double fenceMoveCost() {
        return values().at(MOVE);
    }

    private static Form<DecisionRule> sentences() {
        return TABLE.facts("decision-rule")
                .fact("chance", Kind.PROBABILITY, "the least one", rule -> rule.conformanceProbability())
                .finds("cut-the-neck", "Cut the neck at a conformance probability of {chance} or more")
                .line("spoiledNeckCost", "spoiled neck", "{spoiledNeck:..2}")
                .line("readingAgainCost", "reading again", "{readingAgain:..2}")
                .line("trialCutCost", "trial cut", "{trialCut:..2}")
                .line("fenceMoveCost", "fence move", "{fenceMove:..2}");
    }
}
