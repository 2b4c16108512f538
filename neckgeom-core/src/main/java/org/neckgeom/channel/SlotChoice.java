package org.neckgeom.channel;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.neckgeom.shop.DecisionRule;

/**
 * The one decision on a setting: the step with the least expected cost, a spoiled neck being 1. Lengths in mm.
 *
 * <p>Pure arithmetic of the facts in {@link Facts}; {@link CentringRounds} gathers them and {@link SlotVerdict} speaks.
 */
final class SlotChoice {

    /** The steps that have a cost; of equal costs the earlier step is taken. */
    static final List<SlotStep> COSTED = List.of(SlotStep.CUT, SlotStep.READ_AGAIN, SlotStep.MOVE, SlotStep.TRIAL_CUT);

    /** After so many cuts since the start, or since the fence was lost, only cutting or moving is left. */
    static final int MOST_CUTS = 6;

    /** Reading the same cut again is offered so many times. */
    static final int MOST_READINGS_OF_A_CUT = 3;

    private static final double NO_MOVE = 1e-9;

    /** Gauss and Hermite's 31 places for the standard normal law, the middle and one side; their weights add up to 1.
     * The seven places farthest out have weights under 3e-7 and are left out: what is lost there is at most a move and a half. */
    private static final double[] PLACES = {
        0.0,
        0.5599475878410028,
        1.1212973740470091,
        1.685497905069052,
        2.2540950007544107,
        2.828792768157508,
        3.4115324158431557,
        4.004600901491223,
        4.61078979732399
    };

    private static final double[] WEIGHTS = {
        0.2232941387424068,
        0.19113200477464318,
        0.1196831096958546,
        0.054567258894475015,
        0.017967875843441658,
        0.004221717767270714,
        0.0006960312713792916,
        7.871624069602279e-05,
        5.9232023176863475e-06
    };

    /**
     * What the decision rests on: first what {@link Evidence} shows, the number of readings that of the last cut.
     *
     * @param readingVariance of one more reading of a cut
     * @param cutVariance of one cut at one setting
     * @param biasVariance of what every reading shares and nothing cancels
     * @param moveVariance of one move at the cutter
     * @param w1 the blank's width at the channel's head end
     * @param w2 at its heel end
     * @param u standard uncertainty of each end's own part of the offset
     * @param mayBePlaned whether the blank's edges may be planed parallel
     * @param stripUncertainty of a tapered strip
     */
    record Facts(
            @Nullable SettingState state,
            @Nullable SettingState before,
            boolean isRead,
            int readings,
            int cuts,
            boolean isWarned,
            double readingVariance,
            double cutVariance,
            double biasVariance,
            double moveVariance,
            double w1,
            double w2,
            double u,
            boolean mayBePlaned,
            double stripUncertainty) {}

    /**
     * What was chosen, and the figures that led there.
     *
     * @param step what to do
     * @param chance conformance probability of the slot along the channel if the neck were cut now; NaN before the
     *     first cut
     * @param move best move, toward the cutter; NaN before the first cut
     * @param afterMove the conformance probability after it
     * @param reach the conformance probability best placed, after six further trial cuts
     */
    record Chosen(SlotStep step, double chance, double move, double afterMove, double reach) {}

    private final Facts facts;
    private final SlotChance law;
    private final DecisionRule rule;
    /** How a length at hand comes nearest to a wanted one: the leaves of the shop. */
    private final DoubleUnaryOperator nearest;

    private final double middle;
    private final double readCost;
    private final double trialCost;
    private final double moveCost;

    SlotChoice(Facts facts, SlotChance law, DecisionRule rule, DoubleUnaryOperator nearest) {
        this.facts = facts;
        this.law = law;
        this.rule = rule;
        this.nearest = nearest;
        this.readCost = rule.readingAgainCost() / rule.spoiledNeckCost();
        this.trialCost = rule.trialCutCost() / rule.spoiledNeckCost();
        this.moveCost = rule.fenceMoveCost() / rule.spoiledNeckCost();
        this.middle = law.middle(-facts.w1 / 2, -facts.w2 / 2);
    }

    private double chance(double mean, double variance) {
        return chance(mean, variance, facts.w1, facts.w2, 0);
    }

    private double chance(double mean, double variance, double w1, double w2, double more) {
        return law.keeps(
                mean - w1 / 2,
                mean - w2 / 2,
                variance + facts.cutVariance + facts.biasVariance + more,
                facts.u,
                facts.u);
    }

    /** The best placing after six further cuts: what no amount of setting goes beyond. */
    private double farVariance() {
        double noise = facts.readingVariance + facts.cutVariance;
        if (facts.state == null) {
            return noise / MOST_CUTS;
        }
        double p = facts.state.variance();
        return noise + MOST_CUTS * p > 0 ? p * noise / (noise + MOST_CUTS * p) : 0;
    }

    Chosen choose() {
        double reach = chance(-middle, farVariance());
        SettingState state = facts.state;
        if (state == null) {
            SlotStep step = reach < rule.conformanceProbability() ? outOfReach() : SlotStep.TRIAL_CUT;
            return new Chosen(step, Double.NaN, Double.NaN, Double.NaN, reach);
        }
        double m = state.mean();
        double p = state.variance();
        double now = chance(m, p);
        double move = nearest.applyAsDouble(m + middle);
        double afterMove = chance(m - move, p + facts.moveVariance);
        boolean spent = facts.cuts >= MOST_CUTS;
        if (reach < rule.conformanceProbability()
                || spent && now < rule.conformanceProbability() && afterMove < rule.conformanceProbability()) {
            return new Chosen(outOfReach(), now, move, afterMove, reach);
        }
        return new Chosen(least(costs(state, now, move, afterMove, reach, spent, true)), now, move, afterMove, reach);
    }

    private static SlotStep least(double... costs) {
        int least = 0;
        for (int i = 1; i < costs.length; i++) {
            if (Double.isNaN(costs[least]) || rounded(costs[i]) < rounded(costs[least])) {
                least = i;
            }
        }
        return COSTED.get(least);
    }

    /** Expected costs of CUT, READ_AGAIN, MOVE, TRIAL_CUT, a spoiled neck being 1; NaN where a step is not offered. */
    double[] costs(Chosen chosen) {
        SettingState state = facts.state;
        return state == null || !COSTED.contains(chosen.step())
                ? none()
                : costs(state, chosen.chance(), chosen.move(), chosen.afterMove(), 1, facts.cuts >= MOST_CUTS, false);
    }

    /** The step that follows where a step's result is as expected; nothing where it cannot be foreseen. */
    Optional<SlotStep> after(SlotStep step) {
        SettingState state = facts.state;
        if (state == null) {
            return Optional.empty();
        }
        double noise = facts.readingVariance + facts.cutVariance;
        double p = state.variance();
        return switch (step) {
            case MOVE -> {
                double by = nearest.applyAsDouble(state.mean() + middle);
                yield Optional.of(next(
                        state.movedTowardCutter(by, facts.moveVariance),
                        state,
                        false,
                        facts.cuts,
                        facts.readingVariance));
            }
            case READ_AGAIN -> {
                SettingState known = new SettingState(state.mean(), 0, Math.min(p, expected(p)), 0, 0);
                yield Optional.of(next(known, facts.before, true, facts.cuts, facts.readingVariance / 2));
            }
            case TRIAL_CUT -> {
                SettingState known = new SettingState(state.mean(), 0, p * noise / (p + noise), 0, 0);
                yield Optional.of(next(known, state, true, facts.cuts + 1, facts.readingVariance));
            }
            default -> Optional.empty();
        };
    }

    private SlotStep next(
            SettingState state, @Nullable SettingState before, boolean isRead, int cuts, double readingVariance) {
        Facts expected = new Facts(
                state,
                before,
                isRead,
                1,
                cuts,
                false,
                readingVariance,
                facts.cutVariance,
                facts.biasVariance,
                facts.moveVariance,
                facts.w1,
                facts.w2,
                facts.u,
                facts.mayBePlaned,
                facts.stripUncertainty);
        return new SlotChoice(expected, law, rule, nearest).choose().step();
    }

    /** The variance of the setting after the last cut has been read as many times again. */
    private double expected(double p) {
        double again = facts.readingVariance / 2 + facts.cutVariance;
        if (facts.before == null) {
            return Math.min(p, again);
        }
        double before = facts.before.variance();
        return Math.min(p, before * again / (before + again));
    }

    /** Costs equal but for rounding are equal: then the earlier step is taken. */
    private static double rounded(double cost) {
        return Math.rint(cost * 1e12);
    }

    private static double[] none() {
        return new double[] {Double.NaN, Double.NaN, Double.NaN, Double.NaN};
    }

    /**
     * The costs of the steps; with {@code leastOnly} a step that surely costs more than one already found is left out.
     *
     * @param best the greatest conformance probability that any step leads to
     */
    private double[] costs(
            SettingState state,
            double now,
            double move,
            double afterMove,
            double best,
            boolean spent,
            boolean leastOnly) {
        double[] costs = none();
        double wanted = rule.conformanceProbability();
        double m = state.mean();
        double p = state.variance();
        double lost = law.isBestInTheMiddle(facts.u, facts.u) ? 1 - best : 0;
        double least = Double.POSITIVE_INFINITY;
        if (now >= wanted && !facts.isWarned) {
            costs[0] = 1 - now;
            least = leastOnly ? costs[0] : least;
        }
        double moved = p + facts.moveVariance;
        double noise = facts.readingVariance + facts.cutVariance;
        boolean mayRead = facts.isRead && facts.readingVariance > 0 && facts.readings <= MOST_READINGS_OF_A_CUT;
        if (mayRead && !spent && readCost + lost < least) {
            double after = expected(p);
            if (now >= wanted || Math.max(chance(m, after), chance(-middle, after + facts.moveVariance)) >= wanted) {
                costs[1] = readCost + look(m, p, after, least - readCost);
                least = leastOnly ? Math.min(least, costs[1]) : least;
            }
        }
        // Below the wanted probability a step is offered only if its expected result can reach it: else reading again,
        // the cheapest step, would be advised for ever where the wanted probability is out of reach.
        if (Math.abs(move) > NO_MOVE && moveCost + lost < least) {
            double movedAndCut = moved * noise / (moved + noise);
            if (now >= wanted || afterMove >= wanted || chance(m - move, movedAndCut) >= wanted) {
                double enough = Math.min(1 - afterMove, least - moveCost);
                costs[2] = moveCost
                        + Math.min(1 - afterMove, trialCost + look(m - move, moved, movedAndCut, enough - trialCost));
                least = leastOnly ? Math.min(least, costs[2]) : least;
            }
        }
        if (spent && !(Double.isNaN(costs[0]) && Double.isNaN(costs[2]))) {
            return costs;
        }
        if (trialCost + lost < least) {
            costs[3] = trialCost + look(m, p, p * noise / (p + noise), least - trialCost);
        }
        return costs;
    }

    /**
     * What is expected to be lost after learning more: cut as it is or move first, whichever costs less; or a number of at least
     * {@code enough} where it is more than that.
     */
    private double look(double mean, double before, double after, double enough) {
        boolean isMiddleBest = law.isBestInTheMiddle(facts.u, facts.u);
        double moving = Math.min(1, moveCost + breaks(-middle, after + facts.moveVariance, 1));
        double least = isMiddleBest ? breaks(-middle, after, moving) : 0;
        if (least >= enough) {
            return least;
        }
        double lost = breaks(mean, after, moving);
        // What is lost bends up: two places as far to each side lose at least twice the middle, or one of them loses a
        // move.
        double both = Math.min(2 * lost, moving + least);
        double sum = WEIGHTS[0] * lost + (1 - WEIGHTS[0]) / 2 * both;
        double spread = Math.sqrt(Math.max(0, before - after));
        // The best values spread about the middle of the band: both sides lose as much.
        boolean isEven = isMiddleBest && Math.abs(mean + middle) < NO_MOVE;
        for (int i = PLACES.length - 1; i > 0 && sum < enough; i--) {
            double up = breaks(mean + spread * PLACES[i], after, moving);
            double down = isEven ? up : breaks(mean - spread * PLACES[i], after, moving);
            sum += WEIGHTS[i] * (up + down - both);
        }
        return sum;
    }

    /** The probability of breaking the limit, or {@code most} where it is more than that. */
    private double breaks(double mean, double variance, double most) {
        return law.breaks(
                mean - facts.w1 / 2,
                mean - facts.w2 / 2,
                variance + facts.cutVariance + facts.biasVariance,
                facts.u,
                facts.u,
                most);
    }

    /** No setting of the fence is good enough: would parallel edges be, or a strip that tapers as the blank does? */
    private SlotStep outOfReach() {
        if (facts.w1 == facts.w2) {
            return SlotStep.CANNOT;
        }
        if (facts.mayBePlaned && squared(0) >= rule.conformanceProbability()) {
            return SlotStep.SQUARE_EDGES;
        }
        return squared(facts.stripUncertainty * facts.stripUncertainty) >= rule.conformanceProbability()
                ? SlotStep.TAPERED_STRIP
                : SlotStep.CANNOT;
    }

    private double squared(double more) {
        double w = (facts.w1 + facts.w2) / 2;
        return chance(-law.middle(-w / 2, -w / 2), farVariance(), w, w, more);
    }
}
