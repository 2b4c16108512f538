package org.neckgeom.budget;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Spread;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * How well each kind of step is done in a shop, as the ready-made registration trees need it. Immutable.
 *
 * <p>The defaults are examples of careful work by hand and router, not figures of any standard: put your own readings in
 * their place, above all for the steps that turn out to matter.
 */
public final class Workmanship implements Answer {

    private static final Form<Workmanship> FORM = Form.<Workmanship>of("workmanship")
            .finds("workmanship", "Workmanship")
            .row("centring", "centring", Kind.SPREAD, "of the channel on the blank", Workmanship::centring)
            .row("edge", "edge", Kind.SPREAD, "of the blank's edges, at each station", Workmanship::edge)
            .row("locating", "locating", Kind.SPREAD, "on a channel or an edge, at each station", Workmanship::locating)
            .row("cutting", "cutting", Kind.SPREAD, "of heel and taper", Workmanship::cutting)
            .row("gluing", "gluing", Kind.SPREAD, "of the fingerboard, at each station", Workmanship::gluing)
            .row("fitting", "fitting", Kind.SPREAD, "of the body joint, at each end", Workmanship::fitting)
            .row("stopping", "stopping", Kind.SPREAD, "of stops and lines along the neck", Workmanship::stopping);

    private final Spread<Length> centring;
    private final Spread<Length> edge;
    private final Spread<Length> locating;
    private final Spread<Length> cutting;
    private final Spread<Length> gluing;
    private final Spread<Length> fitting;
    private final Spread<Length> stopping;

    private Workmanship(
            Spread<Length> centring,
            Spread<Length> edge,
            Spread<Length> locating,
            Spread<Length> cutting,
            Spread<Length> gluing,
            Spread<Length> fitting,
            Spread<Length> stopping) {
        this.centring = Objects.requireNonNull(centring, "centring");
        this.edge = Objects.requireNonNull(edge, "edge");
        this.locating = Objects.requireNonNull(locating, "locating");
        this.cutting = Objects.requireNonNull(cutting, "cutting");
        this.gluing = Objects.requireNonNull(gluing, "gluing");
        this.fitting = Objects.requireNonNull(fitting, "fitting");
        this.stopping = Objects.requireNonNull(stopping, "stopping");
    }

    /**
     * Returns the defaults: centring normal 0.05 mm; each station on an edge rectangular within 0.10 mm; each station on a
     * channel rectangular within 0.05 mm; cutting normal 0.06 mm; gluing, each station, rectangular within 0.08 mm;
     * fitting, each station, triangular within 0.06 mm; a stop or line along the neck rectangular within 0.15 mm.
     *
     * @return the workmanship
     */
    public static Workmanship withDefaults() {
        return new Workmanship(
                Spread.normal(mm(0.05)),
                Spread.rectangular(mm(0.10)),
                Spread.rectangular(mm(0.05)),
                Spread.normal(mm(0.06)),
                Spread.rectangular(mm(0.08)),
                Spread.triangular(mm(0.06)),
                Spread.rectangular(mm(0.15)));
    }

    private static Amount<Length> mm(double value) {
        return Amount.of(value, ShopUnit.MILLIMETRE);
    }

    /**
     * Returns this workmanship with another centring of the channel on the blank.
     *
     * @param spread how it spreads
     * @return the workmanship
     */
    public Workmanship withCentring(Spread<Length> spread) {
        return new Workmanship(spread, edge, locating, cutting, gluing, fitting, stopping);
    }

    /**
     * Returns this workmanship with another truth of the blank's edges, at each station, against its centreline.
     *
     * @param spread how it spreads
     * @return the workmanship
     */
    public Workmanship withEdge(Spread<Length> spread) {
        return new Workmanship(centring, spread, locating, cutting, gluing, fitting, stopping);
    }

    /**
     * Returns this workmanship with another locating on a channel or an edge, at each station.
     *
     * @param spread how it spreads
     * @return the workmanship
     */
    public Workmanship withLocating(Spread<Length> spread) {
        return new Workmanship(centring, edge, spread, cutting, gluing, fitting, stopping);
    }

    /**
     * Returns this workmanship with another cutting error of heel and taper.
     *
     * @param spread how it spreads
     * @return the workmanship
     */
    public Workmanship withCutting(Spread<Length> spread) {
        return new Workmanship(centring, edge, locating, spread, gluing, fitting, stopping);
    }

    /**
     * Returns this workmanship with another place and thickness of the glued fingerboard, at each station.
     *
     * @param spread how it spreads
     * @return the workmanship
     */
    public Workmanship withGluing(Spread<Length> spread) {
        return new Workmanship(centring, edge, locating, cutting, spread, fitting, stopping);
    }

    /**
     * Returns this workmanship with another fit of the body joint, at each end of its cheeks and of its face.
     *
     * @param spread how it spreads
     * @return the workmanship
     */
    public Workmanship withFitting(Spread<Length> spread) {
        return new Workmanship(centring, edge, locating, cutting, gluing, spread, stopping);
    }

    /**
     * Returns this workmanship with other stops and lines along the neck.
     *
     * @param spread how they spread
     * @return the workmanship
     */
    public Workmanship withStopping(Spread<Length> spread) {
        return new Workmanship(centring, edge, locating, cutting, gluing, fitting, spread);
    }

    /**
     * Returns how well the channel is centred on the blank.
     *
     * @return the spread
     */
    public Spread<Length> centring() {
        return centring;
    }

    /**
     * Returns how well true the blank's edges are, at each station.
     *
     * @return the spread
     */
    public Spread<Length> edge() {
        return edge;
    }

    /**
     * Returns how well a step is located on a channel or an edge, at each station.
     *
     * @return the spread
     */
    public Spread<Length> locating() {
        return locating;
    }

    /**
     * Returns how well heel and taper are cut.
     *
     * @return the spread
     */
    public Spread<Length> cutting() {
        return cutting;
    }

    /**
     * Returns how well the fingerboard is glued, at each station.
     *
     * @return the spread
     */
    public Spread<Length> gluing() {
        return gluing;
    }

    /**
     * Returns how well the body joint is fitted, at each end.
     *
     * @return the spread
     */
    public Spread<Length> fitting() {
        return fitting;
    }

    /**
     * Returns how well stops and lines along the neck are set.
     *
     * @return the spread
     */
    public Spread<Length> stopping() {
        return stopping;
    }

    @Override
    public Form<Workmanship> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(centring.unit());
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Workmanship other
                && centring.equals(other.centring)
                && edge.equals(other.edge)
                && locating.equals(other.locating)
                && cutting.equals(other.cutting)
                && gluing.equals(other.gluing)
                && fitting.equals(other.fitting)
                && stopping.equals(other.stopping);
    }

    @Override
    public int hashCode() {
        return Objects.hash(centring, edge, locating, cutting, gluing, fitting, stopping);
    }

    /** Returns a row a kind of step. */
    @Override
    public String toString() {
        return text(style());
    }
}
