package org.neckgeom.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * The variance shares of a budget's components, largest first. Immutable.
 *
 * @param <Q> the kind of the result
 */
public final class VarianceShares<Q extends Quantity<Q>> extends ValueAnswer {

    private static final int PRINTED = 10;

    private static final Form<VarianceShares<?>> FORM = Form.<VarianceShares<?>>of("shares")
            .fact("title", Kind.NAME, "name of the result", shares -> shares.title)
            .fact("shares", Kind.table(VarianceShare.FORM), "largest first", shares -> List.copyOf(shares.list))
            .finds("shares", "{title}: shares of the variance")
            .each(
                    "shares",
                    "{name}",
                    "{part}  ({contribution:own fine digits 2})",
                    PRINTED,
                    "and {more:of smaller one/smaller ones}")
            .fitted();

    private final String title;
    private final List<VarianceShare<Q>> list;

    private VarianceShares(String title, List<VarianceShare<Q>> list, ShopUnit<Q> unit) {
        super(FORM, LengthStyle.ofUnit(unit));
        this.title = title;
        this.list = list;
    }

    static <Q extends Quantity<Q>> VarianceShares<Q> of(Sum<Q> sum, boolean bySteps) {
        Map<String, List<UncertaintyComponent>> rows = new LinkedHashMap<>();
        for (UncertaintyComponent one : sum.components()) {
            rows.computeIfAbsent(bySteps ? one.step() : one.name(), name -> new ArrayList<>())
                    .add(one);
        }
        Coefficients coefficients = new Coefficients(sum.correlations());
        double total = sum.variance();
        List<VarianceShare<Q>> list = new ArrayList<>();
        rows.forEach((name, ones) -> {
            double part = 0.0;
            double own = 0.0;
            for (UncertaintyComponent one : ones) {
                part += coefficients.part(one, sum.components());
                own += coefficients.part(one, ones);
            }
            list.add(new VarianceShare<>(
                    name,
                    total > 0.0 ? part / total : 0.0,
                    Amount.ofLibrary(Math.sqrt(Math.max(0.0, own)), sum.unit())));
        });
        list.sort(Comparator.comparingDouble((VarianceShare<Q> share) -> -share.fraction())
                .thenComparingDouble(share -> -share.contribution().libraryValue()));
        return new VarianceShares<>(sum.title(), List.copyOf(list), sum.unit());
    }

    /** {@return all shares, largest first; they add up to 1 unless nothing spreads} */
    public List<VarianceShare<Q>> list() {
        return list;
    }

    /**
     * {@return the largest share; the component that matters most}
     *
     * @throws ArithmeticException if the budget is empty
     */
    public VarianceShare<Q> largest() {
        if (list.isEmpty()) {
            throw NoAnswer.because(
                    "largest share", "empty", title + " has no largest share, for it has no component yet");
        }
        return list.get(0);
    }

    /**
     * {@return the share of one component}
     *
     * @param name its name
     * @throws IllegalArgumentException if nothing is called so
     */
    public VarianceShare<Q> of(String name) {
        Objects.requireNonNull(name, "name");
        return list.stream()
                .filter(share -> share.name().equals(name))
                .findFirst()
                .orElseThrow(() -> Refusal.because(
                        "component", "unknown", "nothing in " + title + " is called " + Words.quoted(name)));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {title, list};
    }
}
