package org.neckgeom.budget;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The usual neck's registration, ready made, and the budgets a maker asks of it first. Immutable.
 *
 * <p>Two ways of working. {@link #fromTheChannel}: the rod channel is cut first, and heel, taper and fingerboard are all
 * located on it. {@link #fromAnEdge}: channel and fingerboard as before, but heel and taper are located on an edge of the
 * blank, so that the channel's own centring and the truth of the edge come between them. The difference of the two is what
 * registering from the channel buys.
 *
 * <p>Stations follow from the design: 5 and 95 percent of the way to the body joint for what is located on channel or
 * edge; the joint's cheeks reach {@value #CHEEK_MM} mm past the body's edge; the bridge stands at the scale length; the
 * heel's face is as high as the heel, {@value #USUAL_HEEL_MM} mm where the design tells none.
 */
public final class NeckTree extends ValueAnswer {

    private static final Form<NeckTree> FORM = Form.<NeckTree>of("neck-tree")
            .fact("name", Kind.NAME, "of the neck", tree -> tree.design.name())
            .fact("budgets", Kind.table(Budget.FORM), "the usual four", tree -> List.copyOf(tree.budgets()))
            .finds("on-an-edge", tree -> tree.edge, "{name}: heel and taper located on an edge of the blank")
            .finds("on-the-channel", "{name}: heel and taper located on the rod channel")
            .each("budgets", "{title}", "u {sum:own fine deviation}")
            .fitted();

    /** Reach of the body joint's cheeks along the neck, in mm: an assumption. */
    public static final double CHEEK_MM = 40.0;

    /** Height of the heel's face where the design tells none, in mm: an assumption. */
    public static final double USUAL_HEEL_MM = 90.0;

    private static final double NEAR_NUT = 0.05;
    private static final double NEAR_JOINT = 0.95;

    private final Neck design;
    private final Workmanship work;
    private final boolean edge;

    /** What has been read across, by feature. */
    private final Map<String, Estimate<Length>> measured;

    private NeckTree(Neck design, Workmanship work, boolean edge, Map<String, Estimate<Length>> measured) {
        super(FORM, Objects.requireNonNull(design, "design").style());
        this.design = Objects.requireNonNull(design, "design");
        this.work = Objects.requireNonNull(work, "workmanship");
        this.edge = edge;
        this.measured = measured;
        design.scale(); // refused here, where the neck is told, and not when the tree is printed
    }

    /**
     * {@return the tree of a neck all of whose steps are located on the channel, with the default workmanship}
     *
     * @param design with its scale told
     */
    public static NeckTree fromTheChannel(Neck design) {
        return new NeckTree(design, Workmanship.withDefaults(), false, Map.of());
    }

    /**
     * {@return the tree of a neck whose heel and taper are located on an edge of the blank, with the default
     * workmanship}
     *
     * @param design with its scale told
     */
    public static NeckTree fromAnEdge(Neck design) {
        return new NeckTree(design, Workmanship.withDefaults(), true, Map.of());
    }

    /**
     * {@return the same tree made with other workmanship}
     *
     * @param itsWork how well each kind of step is done
     */
    public NeckTree with(Workmanship itsWork) {
        return new NeckTree(design, itsWork, edge, measured);
    }

    /**
     * {@return the same tree with a feature's place across measured, as {@link DatumTree#measured} takes it}
     *
     * @param feature such as {@code fingerboard}
     * @param reading its error against what it is located on, positive toward the treble side
     * @throws IllegalArgumentException if the tree has no such feature across
     */
    public NeckTree measured(String feature, Estimate<Length> reading) {
        registration().measured(feature, reading);
        Map<String, Estimate<Length>> more = new TreeMap<>(measured);
        more.put(feature, reading);
        return new NeckTree(design, work, edge, more);
    }

    /** {@return the registration itself, to place more on it or to put measurements in} */
    public DatumTree registration() {
        DatumTree tree = drawn();
        for (Map.Entry<String, Estimate<Length>> reading : measured.entrySet()) {
            tree = tree.measured(reading.getKey(), reading.getValue());
        }
        return tree;
    }

    private DatumTree drawn() {
        double joint = design.bodyJointMm();
        Amount<Length> near = mm(NEAR_NUT * joint);
        Amount<Length> far = mm(NEAR_JOINT * joint);
        DatumTree tree = DatumTree.from("rod channel", work.centring());
        if (edge) {
            tree = tree.place("edge").on(DatumTree.BLANK).at(near, far).each(work.edge());
        }
        String base = edge ? "edge" : "rod channel";
        for (String cut : List.of("heel", "side taper")) {
            tree = tree.place(cut).on(base).at(near, far).each(work.locating()).cut(work.cutting());
        }
        tree = tree.place("fingerboard").on("rod channel").at(near, far).each(work.gluing());
        tree = tree.place("body joint")
                .on("heel")
                .at(mm(joint), mm(joint + CHEEK_MM))
                .each(work.fitting());
        tree = tree.placeInHeight("fingerboard")
                .on(DatumTree.BLANK)
                .at(near, far)
                .each(work.gluing());
        // An error at the foot of the heel's face turns the neck as one that far along it would.
        Amount<Length> foot = mm(joint + design.heel().map(Heel::heightMm).orElse(USUAL_HEEL_MM));
        tree = tree.placeInHeight("body joint")
                .on(DatumTree.BLANK)
                .at(mm(joint), foot)
                .each(work.fitting());
        for (String stopped : List.of("nut", "fret slots", "body joint")) {
            tree = tree.placeAlong(stopped).on(DatumTree.BLANK).by(work.stopping());
        }
        return tree.placeAlong("bridge").on("body joint").by(work.stopping());
    }

    /** {@return how far the body's line misses the fingerboard's line at the bridge, across} */
    public Budget<Length> stringLineAtBridge() {
        Budget<Length> budget = registration()
                .across("fingerboard", "body joint", mm(design.scale().lengthMm()));
        return budget.titled(
                "string line against the bridge's middle",
                budget.title() + "; the joint is judged at both ends of its "
                        + design.style().brief(CHEEK_MM));
    }

    /**
     * {@return how far the fingerboard's edges miss the neck's tapered sides, across}
     *
     * @param x the station
     */
    public Budget<Length> boardOnNeck(Quantity<Length> x) {
        Budget<Length> budget = registration().across("side taper", "fingerboard", x);
        boolean joint = LibraryUnits.mm(x, "station") == design.bodyJointMm();
        return budget.titled(
                "board on the neck at "
                        + (joint ? "the body joint" : LengthStyle.of(x).brief(LibraryUnits.mm(x, "station"))),
                budget.title());
    }

    /**
     * {@return how far the sides lie off the channel, so how much more wood stands on its treble side than meant, and
     * how much less on its bass side}
     *
     * @param x the station
     */
    public Budget<Length> woodEachSide(Quantity<Length> x) {
        Budget<Length> budget = registration().across("rod channel", "side taper", x);
        boolean nearNut = LibraryUnits.mm(x, "station") == NEAR_NUT * design.bodyJointMm();
        return budget.titled(
                "wood on each side of the channel "
                        + (nearNut ? "near the nut" : "at " + LengthStyle.of(x).brief(LibraryUnits.mm(x, "station"))),
                budget.title());
    }

    /** {@return how far the fingerboard's plane, extended to the bridge, lies too high over the body} */
    public Budget<Length> projectionAtBridge() {
        Budget<Length> budget = registration()
                .height("body joint", "fingerboard", mm(design.scale().lengthMm()));
        return budget.titled(
                "projection height at the bridge",
                budget.title() + "; the joint is judged at both ends of the heel's face");
    }

    /** {@return how far the bridge lies too far from the nut} */
    public Budget<Length> stringLength() {
        Budget<Length> budget = registration().along("nut", "bridge");
        return budget.titled("string length from nut to bridge", budget.title());
    }

    /**
     * {@return the usual four: string line and projection at the bridge, board on the neck at the body joint, and wood
     * on each side of the channel near the nut, where it is least}
     */
    public List<Budget<Length>> budgets() {
        double joint = design.bodyJointMm();
        return List.of(
                stringLineAtBridge(), boardOnNeck(mm(joint)), woodEachSide(mm(NEAR_NUT * joint)), projectionAtBridge());
    }

    private Amount<Length> mm(double libraryValue) {
        return design.style().amount(LibraryUnits.finite(libraryValue, "station", "mm"));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {design, work, edge, measured};
    }
}
