package org.neckgeom.budget;

import static org.neckgeom.units.ShopUnits.mm;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.LengthStyle;

/**
 * The workmanship of a shop (process capability): the error of each kind of step, as the ready-made registration trees
 * need it. Immutable.
 *
 * <p>The defaults are examples of careful work by hand and router, not figures of any standard: put your own readings in
 * their place, above all for the steps that turn out to matter.
 */
public final class Workmanship extends Noun<Workmanship> {

    private static final Form<Workmanship> FORM = Form.<Workmanship>of("workmanship")
            .finds("workmanship", "Workmanship")
            .row("centring", "centring", Kind.SPREAD, "of the channel on the blank", Workmanship::centring)
            .row("edge", "edge", Kind.SPREAD, "of the blank's edges, at each station", Workmanship::edge)
            .row("locating", "locating", Kind.SPREAD, "on a channel or an edge, at each station", Workmanship::locating)
            .row("cutting", "cutting", Kind.SPREAD, "of heel and taper", Workmanship::cutting)
            .row("gluing", "gluing", Kind.SPREAD, "of the fingerboard, at each station", Workmanship::gluing)
            .row("fitting", "fitting", Kind.SPREAD, "of the body joint, at each end", Workmanship::fitting)
            .row("stopping", "stopping", Kind.SPREAD, "of stops and lines along the neck", Workmanship::stopping);

    /** Its keys. */
    public static final Table<Workmanship> TABLE =
            Table.of("workmanship", "error distribution of each kind of step", Workmanship::new);

    /** The keys of how well one step is done. */
    public static final Table<ErrorDistribution<Length>> STEP = SpreadKeys.LENGTH;

    private static final Key<Workmanship, ErrorDistribution<Length>> EDGE = step(
            "edge",
            ErrorDistribution.rectangular(mm(0.10)),
            "error of the blank's edges, at each station. Default: common practice");
    private static final Key<Workmanship, ErrorDistribution<Length>> LOCATING = step(
            "locating",
            ErrorDistribution.rectangular(mm(0.05)),
            "locating error on channel or edge, at each station. Default: common practice");
    private static final Key<Workmanship, ErrorDistribution<Length>> CUTTING = step(
            "cutting", ErrorDistribution.normal(mm(0.06)), "cutting error of heel and taper. Default: common practice");
    private static final Key<Workmanship, ErrorDistribution<Length>> GLUING = step(
            "gluing",
            ErrorDistribution.rectangular(mm(0.08)),
            "error of place and thickness of the glued fingerboard, at each station. Default: common practice");
    private static final Key<Workmanship, ErrorDistribution<Length>> FITTING = step(
            "fitting",
            ErrorDistribution.triangular(mm(0.06)),
            "fitting error of the body joint, at each end of cheeks and face. Default: common practice");
    private static final Key<Workmanship, ErrorDistribution<Length>> STOPPING = step(
            "stopping",
            ErrorDistribution.rectangular(mm(0.15)),
            "error of stops and lines along the neck. Default: common practice");
    private static final Key<Workmanship, ErrorDistribution<Length>> CENTRING = step(
            "centring",
            ErrorDistribution.normal(mm(0.05)),
            "centring error of the channel, for a budget without a plan. A plan has it from trial cuts and readings");

    private Workmanship(Values<Workmanship> values) {
        super(values);
    }

    private static Key<Workmanship, ErrorDistribution<Length>> step(
            String name, ErrorDistribution<Length> usual, String meaning) {
        return TABLE.usual(name, Types.group(STEP), usual, meaning);
    }

    /**
     * {@return the defaults: centring normal, standard uncertainty 0.05 mm; each station on an edge rectangular,
     * half-width 0.10 mm; each station on a channel rectangular, half-width 0.05 mm; cutting normal, standard
     * uncertainty 0.06 mm; gluing, each station, rectangular, half-width 0.08 mm; fitting, each station, triangular,
     * half-width 0.06 mm; a stop or line along the neck rectangular, half-width 0.15 mm}
     */
    public static Workmanship withDefaults() {
        return new Workmanship(TABLE.values());
    }

    /**
     * {@return this workmanship with another centring of the channel on the blank}
     *
     * @param spread how it spreads
     */
    public Workmanship centring(ErrorDistribution<Length> spread) {
        return new Workmanship(values().with(CENTRING, spread));
    }

    /**
     * {@return this workmanship with another truth of the blank's edges, at each station, against its centreline}
     *
     * @param spread how it spreads
     */
    public Workmanship edge(ErrorDistribution<Length> spread) {
        return new Workmanship(values().with(EDGE, spread));
    }

    /**
     * {@return this workmanship with another locating on a channel or an edge, at each station}
     *
     * @param spread how it spreads
     */
    public Workmanship locating(ErrorDistribution<Length> spread) {
        return new Workmanship(values().with(LOCATING, spread));
    }

    /**
     * {@return this workmanship with another cutting error of heel and taper}
     *
     * @param spread how it spreads
     */
    public Workmanship cutting(ErrorDistribution<Length> spread) {
        return new Workmanship(values().with(CUTTING, spread));
    }

    /**
     * {@return this workmanship with another place and thickness of the glued fingerboard, at each station}
     *
     * @param spread how it spreads
     */
    public Workmanship gluing(ErrorDistribution<Length> spread) {
        return new Workmanship(values().with(GLUING, spread));
    }

    /**
     * {@return this workmanship with another fit of the body joint, at each end of its cheeks and of its face}
     *
     * @param spread how it spreads
     */
    public Workmanship fitting(ErrorDistribution<Length> spread) {
        return new Workmanship(values().with(FITTING, spread));
    }

    /**
     * {@return this workmanship with other stops and lines along the neck}
     *
     * @param spread how they spread
     */
    public Workmanship stopping(ErrorDistribution<Length> spread) {
        return new Workmanship(values().with(STOPPING, spread));
    }

    /** {@return how well the channel is centred on the blank} */
    public ErrorDistribution<Length> centring() {
        return values().at(CENTRING);
    }

    /** {@return how well true the blank's edges are, at each station} */
    public ErrorDistribution<Length> edge() {
        return values().at(EDGE);
    }

    /** {@return how well a step is located on a channel or an edge, at each station} */
    public ErrorDistribution<Length> locating() {
        return values().at(LOCATING);
    }

    /** {@return how well heel and taper are cut} */
    public ErrorDistribution<Length> cutting() {
        return values().at(CUTTING);
    }

    /** {@return how well the fingerboard is glued, at each station} */
    public ErrorDistribution<Length> gluing() {
        return values().at(GLUING);
    }

    /** {@return how well the body joint is fitted, at each end} */
    public ErrorDistribution<Length> fitting() {
        return values().at(FITTING);
    }

    /** {@return how well stops and lines along the neck are set} */
    public ErrorDistribution<Length> stopping() {
        return values().at(STOPPING);
    }

    @Override
    public Form<Workmanship> form() {
        return FORM;
    }

    /** {@return the keys of the steps whose spread was given; that of every other step is common practice} */
    public Set<String> given() {
        return Stream.of(CENTRING, EDGE, LOCATING, CUTTING, GLUING, FITTING, STOPPING)
                .filter(key -> values().has(key))
                .map(Key::name)
                .collect(Collectors.toUnmodifiableSet());
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(centring().unit());
    }
}
