package org.neckgeom.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * What was read of one size: one indication of an instrument or several (VIM 4.1), or an estimate made elsewhere. Immutable.
 *
 * @param <Q> the kind of quantity
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Reading<Q extends Quantity<Q>> {

    private final List<Amount<Q>> indications;
    private final @Nullable Estimate<Q> known;

    private Reading(List<Amount<Q>> indications, @Nullable Estimate<Q> known) {
        this.indications = indications;
        this.known = known;
    }

    /**
     * {@return a reading of one or several indications}
     *
     * @param <Q> the kind of quantity
     * @param indications 1 or more, of any JSR 385 provider
     */
    public static <Q extends Quantity<Q>> Reading<Q> of(List<? extends Quantity<Q>> indications) {
        if (Objects.requireNonNull(indications, "indications").isEmpty()) {
            throw Refusal.of("indications", "at-least", "be 1 or more", "were", 0);
        }
        List<Amount<Q>> amounts = new ArrayList<>();
        for (Quantity<Q> indication : indications) {
            Amount<Q> amount = Amount.from(indication, "indication");
            amounts.add(
                    amounts.isEmpty()
                            ? amount
                            : Amount.from(amount, amounts.get(0).unit(), "indication"));
        }
        return new Reading<>(List.copyOf(amounts), null);
    }

    /**
     * {@return a reading whose standard uncertainty is known}
     *
     * @param <Q> the kind of quantity
     * @param known value and standard uncertainty
     */
    public static <Q extends Quantity<Q>> Reading<Q> of(Estimate<Q> known) {
        return new Reading<>(List.of(), Objects.requireNonNull(known, "estimate"));
    }

    /** {@return the indications; 1 or more; none where an estimate is known} */
    public List<Amount<Q>> indications() {
        return indications;
    }

    /** {@return the estimate made elsewhere; nothing where there are indications} */
    public Optional<Estimate<Q>> known() {
        return Optional.ofNullable(known);
    }

    /**
     * {@return the mean of the indications; its standard uncertainty is that of one divided by the root of their count
     * (GUM 4.2.3, with a repeatability known beforehand)}
     *
     * @param repeatability one standard deviation of one indication
     */
    public Estimate<Q> estimate(Quantity<Q> repeatability) {
        if (known != null) {
            return known;
        }
        Amount<Q> first = indications.get(0);
        double one = LibraryUnits.notNegative(repeatability, first.unit(), "repeatability");
        double sum = indications.stream().mapToDouble(Amount::libraryValue).sum();
        int n = indications.size();
        return Estimate.ofLibrary(sum / n, one / Math.sqrt(n), Double.POSITIVE_INFINITY, first.unit());
    }

    /**
     * {@return the same printed in a style of length; equal to this}
     *
     * @param style how lengths are printed
     */
    public Reading<Q> in(LengthStyle style) {
        Objects.requireNonNull(style, "style");
        return new Reading<>(
                indications.stream().map(one -> one.in(style)).toList(), known == null ? null : known.in(style));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Reading<?> that
                && indications.equals(that.indications)
                && Objects.equals(known, that.known);
    }

    @Override
    public int hashCode() {
        return Objects.hash(indications, known);
    }

    /** Returns such as {@code 9.21 mm, 9.2 mm} or the estimate. */
    @Override
    public String toString() {
        return known != null
                ? known.toString()
                : String.join(", ", indications.stream().map(Amount::toString).toList());
    }
}
