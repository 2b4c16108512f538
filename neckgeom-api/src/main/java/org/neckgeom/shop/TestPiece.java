package org.neckgeom.shop;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A test piece ({@index scrap}, {@index "trial piece"}): an offcut as wide as the neck blank, for the trial cut. Immutable.
 *
 * <p>Its width is measured, or copied by a rip at the setting of the blank, such as {@code copied, rip scatter 0.04 mm}.
 * Width is more than 0; the rip scatter is a standard deviation, 0 or more.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class TestPiece extends ValueAnswer {

    private static final Form<TestPiece> FORM = Form.<TestPiece>of("test-piece")
            .factIfAny("width", Kind.ESTIMATE, "as measured", TestPiece::width)
            .factIfAny(
                    "widerThanBlank", Kind.ESTIMATE, "of a copied piece: 0 within two rips' scatter", TestPiece::copy)
            .finds("copied", "test piece copied, differs from the blank by {widerThanBlank:own}")
            .finds("measured", "test piece, {width:own}");

    private final double width;
    private final double uncertainty;
    private final double degreesOfFreedom;
    private final ShopUnit<Length> unit;

    private TestPiece(double width, double uncertainty, double degreesOfFreedom, ShopUnit<Length> unit) {
        super(FORM, LengthStyle.ofUnit(unit));
        this.width = width;
        this.uncertainty = LibraryUnits.finite(uncertainty, "standard uncertainty", unit.symbol());
        this.degreesOfFreedom = degreesOfFreedom;
        this.unit = unit;
    }

    /**
     * {@return a test piece whose width was measured}
     *
     * @param width its width with its standard uncertainty, more than 0
     */
    public static TestPiece measured(Estimate<Length> width) {
        if (!(Objects.requireNonNull(width, "width").libraryValue() > 0)) {
            throw LibraryUnits.refused("piece width", "more-than", "more than 0 " + width.unit(), width.value());
        }
        return new TestPiece(width.libraryValue(), width.libraryUncertainty(), width.degreesOfFreedom(), width.unit());
    }

    /**
     * {@return a test piece ripped at the same setting as the blank, neither of them measured} The two differ by two
     * rips' scatter: {@code u = sqrt(2) r}.
     *
     * @param ripRepeatability r, how far single rips at one setting scatter, one standard deviation, 0 or more
     */
    public static TestPiece copied(Quantity<Length> ripRepeatability) {
        double r = LibraryUnits.mmNotNegative(ripRepeatability, "rip repeatability");
        ShopUnit<Length> unit = LengthStyle.of(ripRepeatability).unit();
        return new TestPiece(Double.NaN, Math.sqrt(2) * r, Double.POSITIVE_INFINITY, unit);
    }

    /** {@return whether the piece was copied, not measured; true when it was copied} */
    public boolean isCopied() {
        return Double.isNaN(width);
    }

    /**
     * {@return how much wider the piece is than the neck blank; piece less neck; 0 with two rips' scatter for a copied
     * piece} The uncertainties of both widths add as root sum of squares, their degrees of freedom by the formula of
     * Welch and Satterthwaite (GUM G.4.1).
     *
     * @param neck the blank's width with its standard uncertainty; without effect where the piece was copied
     */
    public Estimate<Length> widerThan(Estimate<Length> neck) {
        Objects.requireNonNull(neck, "neck");
        if (isCopied()) {
            return Estimate.ofLibrary(0, uncertainty, Double.POSITIVE_INFINITY, unit);
        }
        double u = StrictMath.hypot(uncertainty, neck.libraryUncertainty());
        // Shares of the variance, so that no fourth power under- or overflows.
        double share = u > 0 ? uncertainty / u : 0;
        double rest = u > 0 ? neck.libraryUncertainty() / u : 0;
        double doubt = StrictMath.pow(share, 4) / degreesOfFreedom + StrictMath.pow(rest, 4) / neck.degreesOfFreedom();
        return Estimate.ofLibrary(
                width - neck.libraryValue(), u, doubt > 0 ? 1 / doubt : Double.POSITIVE_INFINITY, unit);
    }

    private Optional<Estimate<Length>> width() {
        return isCopied()
                ? Optional.empty()
                : Optional.of(Estimate.ofLibrary(width, uncertainty, degreesOfFreedom, unit));
    }

    private Optional<Estimate<Length>> copy() {
        return isCopied() ? Optional.of(Estimate.ofLibrary(0, uncertainty, degreesOfFreedom, unit)) : Optional.empty();
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {width, uncertainty, degreesOfFreedom};
    }
}
