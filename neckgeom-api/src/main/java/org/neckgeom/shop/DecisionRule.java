package org.neckgeom.shop;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * When a neck may be cut: the chance wanted of a good slot, and what a spoiled neck and each step on the way cost. Immutable.
 *
 * <p>The next step is the one with the least expected cost. Costs may be in minutes of work, in money, or in any other unit
 * that all four share: only their ratios count. Defaults (common practice): a chance of 95 %; a spoiled neck 120 minutes of
 * work and wood, reading a cut again 0.36, a trial cut with its readings 1.8, a fence move 1.2.
 */
public final class DecisionRule implements Answer {

    static final Form<DecisionRule> FORM = Form.<DecisionRule>of("decision-rule")
            .fact("wantedChance", Kind.PROBABILITY, "of a slot within its limit", rule -> rule.wanted)
            .fact("spoiledNeckCost", Kind.RATIO, "in the unit of the others", DecisionRule::spoiledNeckCost)
            .fact("readingAgainCost", Kind.RATIO, "of reading a cut again", DecisionRule::readingAgainCost)
            .fact("trialCutCost", Kind.RATIO, "of a trial cut and its readings", DecisionRule::trialCutCost)
            .fact("fenceMoveCost", Kind.RATIO, "of a fence move", DecisionRule::fenceMoveCost)
            .finds("cut-the-neck", "Cut the neck at a chance of {wantedChance} or more")
            .line("spoiledNeckCost", "spoiled neck", "{spoiledNeckCost:..2}")
            .line("readingAgainCost", "reading again", "{readingAgainCost:..2}")
            .line("trialCutCost", "trial cut", "{trialCutCost:..2}")
            .line("fenceMoveCost", "fence move", "{fenceMoveCost:..2}");

    private static final double WANTED = 0.95;
    private static final double NECK = 120;
    private static final double READING = 0.36;
    private static final double TRIAL_CUT = 1.8;
    private static final double MOVE = 1.2;
    private static final DecisionRule DEFAULTS = new DecisionRule(WANTED, NECK, READING, TRIAL_CUT, MOVE);

    private final double wanted;
    private final double neck;
    private final double reading;
    private final double trialCut;
    private final double move;

    private DecisionRule(double wanted, double neck, double reading, double trialCut, double move) {
        this.wanted = wanted;
        this.neck = neck;
        this.reading = reading;
        this.trialCut = trialCut;
        this.move = move;
    }

    /**
     * Returns the rule of common practice.
     *
     * @return the defaults
     */
    public static DecisionRule withDefaults() {
        return DEFAULTS;
    }

    /**
     * Returns this rule with another chance wanted of a slot within its limit.
     *
     * @param chance more than 0 and less than 100 percent
     * @return the rule
     */
    public DecisionRule wantedChance(Quantity<Dimensionless> chance) {
        return new DecisionRule(HouseUnits.probability(chance, "wanted chance"), neck, reading, trialCut, move);
    }

    /**
     * Returns this rule with another cost of a spoiled neck.
     *
     * @param cost wood and work, more than 0, such as 300 minutes
     * @return the rule
     */
    public DecisionRule spoiledNeck(double cost) {
        if (!(cost > 0 && cost < Double.POSITIVE_INFINITY)) {
            throw Refusal.of("cost of a spoiled neck", "more-than", "be more than 0", Numbers.plain(cost));
        }
        return new DecisionRule(wanted, cost, reading, trialCut, move);
    }

    /**
     * Returns this rule with another cost of reading a cut again.
     *
     * @param cost 0 or more, in the unit of the others
     * @return the rule
     */
    public DecisionRule readingAgain(double cost) {
        return new DecisionRule(wanted, neck, cost(cost, "reading a cut again"), trialCut, move);
    }

    /**
     * Returns this rule with another cost of a trial cut and its readings.
     *
     * @param cost 0 or more, in the unit of the others
     * @return the rule
     */
    public DecisionRule trialCut(double cost) {
        return new DecisionRule(wanted, neck, reading, cost(cost, "a trial cut"), move);
    }

    /**
     * Returns this rule with another cost of a fence move.
     *
     * @param cost 0 or more, in the unit of the others
     * @return the rule
     */
    public DecisionRule fenceMove(double cost) {
        return new DecisionRule(wanted, neck, reading, trialCut, cost(cost, "a fence move"));
    }

    private static double cost(double cost, String of) {
        if (!(cost >= 0 && cost < Double.POSITIVE_INFINITY)) {
            throw Refusal.of("cost of " + of, "at-least", "be 0 or more", Numbers.plain(cost));
        }
        return cost + 0.0;
    }

    /**
     * Returns the chance wanted.
     *
     * @return a ratio, more than 0 and less than 1
     */
    public double wantedChance() {
        return wanted;
    }

    /**
     * Returns the chance wanted in percent.
     *
     * @return more than 0 and less than 100 percent
     */
    public Amount<Dimensionless> wantedPercent() {
        return Amount.ofHouse(wanted, ShopUnit.PERCENT);
    }

    /**
     * Returns the cost of a spoiled neck.
     *
     * @return more than 0
     */
    public double spoiledNeckCost() {
        return neck;
    }

    /**
     * Returns the cost of reading a cut again.
     *
     * @return 0 or more
     */
    public double readingAgainCost() {
        return reading;
    }

    /**
     * Returns the cost of a trial cut and its readings.
     *
     * @return 0 or more
     */
    public double trialCutCost() {
        return trialCut;
    }

    /**
     * Returns the cost of a fence move.
     *
     * @return 0 or more
     */
    public double fenceMoveCost() {
        return move;
    }

    @Override
    public Form<DecisionRule> form() {
        return FORM;
    }

    /** Returns millimetres: a rule has no lengths. */
    @Override
    public LengthStyle style() {
        return LengthStyle.MILLIMETRES;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof DecisionRule other
                && Double.compare(wanted, other.wanted) == 0
                && Double.compare(neck, other.neck) == 0
                && Double.compare(reading, other.reading) == 0
                && Double.compare(trialCut, other.trialCut) == 0
                && Double.compare(move, other.move) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(wanted, neck, reading, trialCut, move);
    }

    /** Returns the chance wanted and the four costs. */
    @Override
    public String toString() {
        return text(style());
    }
}
