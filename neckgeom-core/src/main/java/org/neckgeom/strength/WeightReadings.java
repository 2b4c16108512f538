package org.neckgeom.strength;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * Falls under weights, with the slope of all of them through zero.
 *
 * @param perNewton fall for one newton, mm: {@code (W.d)/(W.W)}
 * @param uncertainty standard uncertainty of its logarithm, from that of one fall or the residuals, the greater
 */
record WeightReadings(double perNewton, double uncertainty) {

    private static final int MOST = 20;

    /** A dial's. */
    static final Amount<Length> DIAL = ShopUnits.mm(0.003);

    static final String DIAL_MEANING = "standard uncertainty of one fall. Default: 0.003 mm, a dial's";

    static final Type<List<Amount<Force>>> WEIGHTS =
            Types.oneOrMore(Types.FORCE.moreThan(ShopUnits.newton(0)).suchAs("5 kg or 11 lb"), MOST);
    static final Type<List<Amount<Length>>> FALLS = Types.oneOrMore(Types.SIZE, MOST);

    static WeightReadings of(List<Amount<Force>> weights, List<Amount<Length>> falls, double one) {
        if (weights.size() != falls.size()) {
            throw Refusal.of("falls", "as-many", "be as many as the weights, " + weights.size(), falls.size());
        }
        double ww = 0;
        double wd = 0;
        for (int i = 0; i < weights.size(); i++) {
            double weight = weights.get(i).libraryValue();
            ww += weight * weight;
            wd += weight * falls.get(i).libraryValue();
        }
        double slope = wd / ww;
        double squares = 0;
        for (int i = 0; i < weights.size(); i++) {
            double off = falls.get(i).libraryValue() - slope * weights.get(i).libraryValue();
            squares += off * off;
        }
        double scatter = weights.size() > 1 ? Math.sqrt(squares / (weights.size() - 1)) : 0;
        return new WeightReadings(slope, Math.max(one, scatter) / Math.sqrt(ww) / slope);
    }

    static <Q extends Quantity<Q>> List<Amount<Q>> more(List<Amount<Q>> before, Quantity<Q> another, String name) {
        List<Amount<Q>> all = new ArrayList<>(before);
        all.add(Amount.from(another, name));
        return List.copyOf(all);
    }
}
