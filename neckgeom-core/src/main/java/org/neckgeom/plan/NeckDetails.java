package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.heel.DovetailSeat;
import org.neckgeom.heel.TenonBolts;
import org.neckgeom.measure.Limits;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * What else has been settled about a neck's shape, such as its posts and its joint, for {@link NeckPlan#details}.
 * Immutable.
 *
 * <p>Every part may be left out; the plan then has no section for it, or reckons it plain: the glue face
 * level with the body's top. Lengths are kept in mm.
 */
public final class NeckDetails implements Answer, SaysLengths<NeckDetails> {

    private static final Form<NeckDetails> FORM = Form.<NeckDetails>of("neck-details")
            .fact("parts", Kind.list(Kind.NAME), "what has been settled", NeckDetails::parts)
            .factIfAny("headLayout", Kind.ANSWER, "outline and posts", NeckDetails::headLayout)
            .fact(
                    "slotHeight",
                    Kind.MM,
                    "floor of the nut's slots over the glue face",
                    details -> details.head == null ? Double.NaN : details.slot)
            .factIfAny("tuners", Kind.LIMITS, "head thickness they take, veneers included", NeckDetails::tuners)
            .fact("overstand", Kind.MM, "glue face over the body's top at the joint", NeckDetails::overstandMm)
            .fact("endAllowance", Kind.MM, "of the blank at each end", details -> details.ifSpare(details.endSpare))
            .fact("edgeAllowance", Kind.MM, "of the blank at each edge", details -> details.ifSpare(details.edgeSpare))
            .fact("planing", Kind.MM, "off each face of the blank", details -> details.ifSpare(details.planing))
            .fact("sawKerf", Kind.MM, "of a cut square across", NeckDetails::kerfMm)
            .factIfAny("dovetail", Kind.ANSWER, "the heel goes home in", NeckDetails::dovetail)
            .factIfAny("tenon", Kind.ANSWER, "with its bolts", NeckDetails::tenon)
            .fact("heelBlockLength", Kind.MM, "along the grain", details -> details.blockLength)
            .finds("none", details -> details.parts().isEmpty(), "details: none told")
            .finds("details", "details: {parts}");

    /** Nothing more than the design. */
    private static final NeckDetails NONE = new NeckDetails(new Parts());

    private final @Nullable HeadLayout head;
    private final @Nullable DovetailSeat dovetail;
    private final @Nullable TenonBolts tenon;
    private final double slot;
    private final @Nullable Limits<Length> tuners;
    private final double overstand;
    private final boolean spareTold;
    private final double endSpare;
    private final double edgeSpare;
    private final double planing;
    private final double kerf;
    private final double blockLength;

    private NeckDetails(Parts parts) {
        this.head = parts.head;
        this.dovetail = parts.dovetail;
        this.tenon = parts.tenon;
        this.slot = parts.slot;
        this.tuners = parts.tuners;
        this.overstand = parts.overstand;
        this.spareTold = parts.spareTold;
        this.endSpare = parts.endSpare;
        this.edgeSpare = parts.edgeSpare;
        this.planing = parts.planing;
        this.kerf = parts.kerf;
        this.blockLength = parts.blockLength;
    }

    /** The parts on their way from one value to the next; never leaves this class. */
    private static final class Parts {
        private @Nullable HeadLayout head;
        private @Nullable DovetailSeat dovetail;
        private @Nullable TenonBolts tenon;
        private double slot;
        private @Nullable Limits<Length> tuners;
        private double overstand;
        private boolean spareTold;
        private double endSpare;
        private double edgeSpare;
        private double planing;
        private double kerf;
        private double blockLength = Double.NaN;
    }

    private NeckDetails with(Consumer<Parts> change) {
        Parts parts = new Parts();
        parts.head = head;
        parts.dovetail = dovetail;
        parts.tenon = tenon;
        parts.slot = slot;
        parts.tuners = tuners;
        parts.overstand = overstand;
        parts.spareTold = spareTold;
        parts.endSpare = endSpare;
        parts.edgeSpare = edgeSpare;
        parts.planing = planing;
        parts.kerf = kerf;
        parts.blockLength = blockLength;
        change.accept(parts);
        return new NeckDetails(parts);
    }

    /**
     * Returns a start of which nothing has been told.
     *
     * @return nothing more than the design
     */
    public static NeckDetails none() {
        return NONE;
    }

    /**
     * Returns these details with the head's outline and posts.
     *
     * @param layout outline and posts; each string's break is reckoned when its posts and the strings' places are told
     * @param slotHeight of the floor of the nut's slots over the glue face, 0 or more
     * @return the details
     */
    public NeckDetails head(HeadLayout layout, Quantity<Length> slotHeight) {
        Objects.requireNonNull(layout, "head layout");
        double mm = HouseUnits.mmNotNegative(slotHeight, "nut slot's height");
        return with(parts -> {
            parts.head = layout;
            parts.slot = mm;
        });
    }

    /**
     * Returns these details with the head thickness the tuners take, veneers included.
     *
     * @param thickness least and greatest
     * @return the details
     */
    public NeckDetails tuners(Limits<Length> thickness) {
        Objects.requireNonNull(thickness, "thickness for the tuners");
        return with(parts -> parts.tuners = thickness);
    }

    /**
     * Returns these details with the height at which the neck stands over the body.
     *
     * @param glueFace over the body's top at the joint, 0 or more
     * @return the details
     */
    public NeckDetails overstand(Quantity<Length> glueFace) {
        double mm = HouseUnits.mmNotNegative(glueFace, "overstand");
        return with(parts -> parts.overstand = mm);
    }

    /**
     * Returns these details with what the blank shall have to spare.
     *
     * @param eachEnd 0 or more
     * @param eachEdge 0 or more
     * @param eachFace planed off each face, 0 or more
     * @return the details
     */
    public NeckDetails spare(Quantity<Length> eachEnd, Quantity<Length> eachEdge, Quantity<Length> eachFace) {
        double end = HouseUnits.mmNotNegative(eachEnd, "spare at each end");
        double edge = HouseUnits.mmNotNegative(eachEdge, "spare at each edge");
        double face = HouseUnits.mmNotNegative(eachFace, "planing of each face");
        return with(parts -> {
            parts.spareTold = true;
            parts.endSpare = end;
            parts.edgeSpare = edge;
            parts.planing = face;
        });
    }

    /**
     * Returns these details with what a saw cut square across takes.
     *
     * @param cut 0 or more
     * @return the details
     */
    public NeckDetails sawKerf(Quantity<Length> cut) {
        double mm = HouseUnits.mmNotNegative(cut, "saw kerf");
        return with(parts -> parts.kerf = mm);
    }

    /**
     * Returns these details with the length along the grain of a heel block.
     *
     * @param each more than 0
     * @return the details
     */
    public NeckDetails heelBlocks(Quantity<Length> each) {
        double mm = HouseUnits.mmPositive(each, "heel block length");
        return with(parts -> parts.blockLength = mm);
    }

    /**
     * Returns these details with a heel that goes home in a dovetail.
     *
     * @param seat its taper
     * @return the details
     */
    public NeckDetails dovetail(DovetailSeat seat) {
        Objects.requireNonNull(seat, "dovetail");
        return with(parts -> parts.dovetail = seat);
    }

    /**
     * Returns these details with a heel held by a bolted tenon.
     *
     * @param bolts the tenon and its holes, one or more
     * @return the details
     * @throws IllegalArgumentException if no hole has been told: a plan judges the wood around each
     */
    public NeckDetails tenon(TenonBolts bolts) {
        Objects.requireNonNull(bolts, "tenon").leastWood();
        return with(parts -> parts.tenon = bolts);
    }

    /**
     * Returns the dovetail.
     *
     * @return its taper, or nothing when there is none
     */
    public Optional<DovetailSeat> dovetail() {
        return Optional.ofNullable(dovetail);
    }

    /**
     * Returns the bolted tenon.
     *
     * @return the tenon and its holes, or nothing when there is none
     */
    public Optional<TenonBolts> tenon() {
        return Optional.ofNullable(tenon);
    }

    /**
     * Returns the head's outline and posts.
     *
     * @return the layout, or nothing when it has not been told
     */
    public Optional<HeadLayout> headLayout() {
        return Optional.ofNullable(head);
    }

    /**
     * Returns the height of the floor of the nut's slots over the glue face, in mm.
     *
     * @return 0 or more; 0 where no head was told
     */
    public double slotMm() {
        return slot;
    }

    private static OptionalDouble told(double mm) {
        return Double.isNaN(mm) ? OptionalDouble.empty() : OptionalDouble.of(mm);
    }

    /**
     * Returns the head thickness the tuners take, if it was told.
     *
     * @return least and greatest, or nothing
     */
    public Optional<Limits<Length>> tuners() {
        return Optional.ofNullable(tuners);
    }

    /**
     * Returns how high the glue face stands over the body's top at the joint, in mm.
     *
     * @return 0 unless told
     */
    public double overstandMm() {
        return overstand;
    }

    /**
     * Says whether it was told what the blank shall have to spare.
     *
     * @return true when {@link #endSpareMm}, {@link #edgeSpareMm} and {@link #planingMm} were told
     */
    public boolean hasSpare() {
        return spareTold;
    }

    /**
     * Returns what the blank shall have to spare at each end, in mm.
     *
     * @return 0 unless told
     */
    public double endSpareMm() {
        return endSpare;
    }

    /**
     * Returns what the blank shall have to spare at each edge, in mm.
     *
     * @return 0 unless told
     */
    public double edgeSpareMm() {
        return edgeSpare;
    }

    /**
     * Returns what is planed off each face of the blank, in mm.
     *
     * @return 0 unless told
     */
    public double planingMm() {
        return planing;
    }

    /**
     * Returns what a saw cut square across takes, in mm.
     *
     * @return 0 unless told
     */
    public double kerfMm() {
        return kerf;
    }

    /**
     * Returns the length along the grain of a heel block in mm, if it was told.
     *
     * @return the length, or nothing
     */
    public OptionalDouble blockLengthMm() {
        return told(blockLength);
    }

    private List<@Nullable Object> all() {
        List<@Nullable Object> all = new ArrayList<>();
        all.add(head);
        all.add(dovetail);
        all.add(tenon);
        all.add(slot);
        all.add(tuners);
        all.add(overstand);
        all.add(spareTold);
        all.add(endSpare);
        all.add(edgeSpare);
        all.add(planing);
        all.add(kerf);
        all.add(blockLength);
        return all;
    }

    private double ifSpare(double mm) {
        return spareTold ? mm : Double.NaN;
    }

    @Override
    public Form<NeckDetails> form() {
        return FORM;
    }

    /** Returns the style of the first part that has one: of a shape, or of the tuners' limits. */
    @Override
    public LengthStyle style() {
        return Stream.of(head, dovetail, tenon)
                .flatMap(Stream::ofNullable)
                .map(Answer::style)
                .findFirst()
                .or(() -> tuners().map(limits -> LengthStyle.ofUnit(limits.unit())))
                .orElse(LengthStyle.MILLIMETRES);
    }

    @Override
    public NeckDetails in(LengthStyle other) {
        return with(parts -> {
            parts.tuners = SaysLengths.said(tuners, other);
        });
    }

    /** True when everything told is equal. */
    @Override
    public boolean equals(Object obj) {
        return obj instanceof NeckDetails other && all().equals(other.all());
    }

    @Override
    public int hashCode() {
        return all().hashCode();
    }

    private List<String> parts() {
        List<String> told = new ArrayList<>();
        add(told, head, "head layout");
        add(told, tuners, "tuners");
        add(told, hasSpare() ? this : null, "spare of the blank");
        add(told, dovetail, "dovetail");
        add(told, tenon, "tenon");
        add(told, Double.isNaN(blockLength) ? null : this, "heel blocks");
        return told;
    }

    /** Returns what has been settled, in a line. */
    @Override
    public String toString() {
        return text(style());
    }

    private static void add(List<String> told, @Nullable Object part, String name) {
        if (part != null) {
            told.add(name);
        }
    }
}
