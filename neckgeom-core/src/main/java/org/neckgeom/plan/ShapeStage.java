package org.neckgeom.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.fault.Fault;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.heel.HeelBlocks;
import org.neckgeom.kernel.Once;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.neck.Neck;
import org.neckgeom.order.Operation;
import org.neckgeom.solid.HeadSolid;
import org.neckgeom.solid.LeastThickness;
import org.neckgeom.solid.NeckSolid;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** What follows from the neck as designed and its blank alone: scarf, neck angle, heel blocks, where the shaft ends. */
final class ShapeStage {

    private final Inputs job;
    private final Supplier<NeckSolid> solid = new Once<>(this::fromTheBlank);
    private final Supplier<Attempt<BackSet>> neckSet = new Once<>(() -> Attempt.at(this::setToTheBody));

    ShapeStage(Inputs job) {
        this.job = job;
    }

    private Neck neck() {
        return job.neck();
    }

    private NeckSolid fromTheBlank() {
        return NeckSolid.of(neck())
                .stock(job.blank().width())
                .cutter(job.style().amount(job.shop().cutter().slotWidthMm()));
    }

    /** The one shape of the neck as designed, sawn from its blank, its channel cut by the shop's cutter. */
    NeckSolid solid() {
        return solid.get();
    }

    Optional<ScarfJoint> scarf() {
        return scarfed().map(this::joint);
    }

    private Optional<Head> scarfed() {
        return neck().head().filter(head -> head.scarf().isPresent());
    }

    /** The joint of a head that may be angled as it was read. */
    ScarfJoint joint(Head head) {
        return ScarfJoint.of(head, job.blank(), nutSlant());
    }

    Amount<Angle> nutSlant() {
        return FannedFrets.nutSlant(neck());
    }

    /** How much farther than on the centreline a line along the slanted nut lies at a distance from it. */
    double slantedMm(double aside) {
        return aside * Math.abs(StrictMath.tan(nutSlant().libraryValue()));
    }

    /** The board of shaft and head with its marks at the blank's edges: what is kept is no wider than the blank. */
    Optional<ScarfBoard> scarfBoard() {
        return scarfed().map(head -> {
            HeadSolid there = solid().head().orElseThrow();
            double kept = Math.min(
                    job.blank().widthMm(),
                    Math.max(shaftWidthMm(), there.across().libraryValue()));
            return joint(head)
                    .keeping(job.style().amount(kept))
                    .board(job.style().amount(shaftEndMm()), there.reach())
                    .edges(job.blank().width());
        });
    }

    /** The shaft at its widest, as wide as the fingerboard up to the body joint. */
    double shaftWidthMm() {
        return 2 * Math.max(neck().halfWidthAtMm(0), neck().halfWidthAtMm(neck().bodyJointMm()));
    }

    /**
     * Where the heel's blocks begin to carry the depth on: their length before the shaft's end, as a dovetail or tenon is cut in
     * them too; without it where the back turns into the heel, or at the body joint.
     */
    double blocksFromMm() {
        double joint = neck().bodyJointMm();
        return neck().heel()
                .flatMap(Heel::blockLength)
                .map(length -> Math.min(joint, Math.max(0, shaftEndMm() - length.libraryValue())))
                .orElseGet(() -> Math.min(joint, solid().back().heelStartMm().orElse(joint)));
    }

    /** The least thickness of the finished wood: the back before the heel's blocks, and a head in one piece with it. */
    LeastThickness leastThickness() {
        return solid().leastThickness(job.style().amount(blocksFromMm()));
    }

    boolean isHeadInOnePiece() {
        return neck().head().flatMap(Head::scarf).isEmpty();
    }

    /** A head turned back in one piece with the shaft: the blank must be thick enough to hold it. */
    boolean isHeadSawnFromTheBlank() {
        return isHeadInOnePiece()
                && neck().head().filter(head -> head.angleRad() > 0).isPresent();
    }

    boolean hasEars() {
        return neck().head()
                .filter(head -> HeadLayout.of(head).wings(job.blank().width()).libraryValue() > 0)
                .isPresent();
    }

    /**
     * With a joint in the shaft the wood behind the nut is the head piece's own: a channel that starts there can only be cut in
     * the glued neck.
     */
    boolean headComesFirst() {
        return isOnBeforeTheChannel() || isJointUnderTheChannel();
    }

    /** Given so: head, wings and veneers are on before the channel is cut. */
    private boolean isOnBeforeTheChannel() {
        return neck().head().flatMap(Head::onBeforeChannel).isPresent();
    }

    /** The steps of the head that must come before the channel. */
    List<String> beforeTheChannel() {
        if (isOnBeforeTheChannel()) {
            return List.of(
                    Operation.GLUE_HEAD, Operation.SAW_OUT_THE_HEAD, Operation.GLUE_WINGS, Operation.GLUE_HEAD_VENEER);
        }
        return isJointUnderTheChannel() ? List.of(Operation.GLUE_HEAD) : List.of();
    }

    private boolean isJointUnderTheChannel() {
        return scarf().filter(joint -> joint.place() == JointPlace.IN_THE_SHAFT)
                .filter(joint -> job.channel().startMm()
                        < joint.frontLineMm() + slantedMm(job.channel().widthMm() / 2))
                .isPresent();
    }

    Optional<BackSet> neckSet() {
        return neckSet.get().answer();
    }

    /** Why no angle brings the strings to the saddle. */
    Optional<Fault> noNeckSet() {
        return neckSet.get().why();
    }

    private Optional<BackSet> setToTheBody() {
        return neck().neckSet().map(set -> BackSet.of(neck()));
    }

    /** How high the glue face is over the body's top at the joint, in mm; level where there is no neck set. */
    double overstandMm() {
        return neck().neckSet()
                .map(set -> BackSet.overstand(neck()).libraryValue())
                .orElse(0.0);
    }

    /** The floor of the nut's slots over the glue face. */
    Amount<Length> slotHeight() {
        return HeadLayout.slotHeight(neck()).in(job.style());
    }

    /** Where the shaft's wood ends: at the body joint, or past it at the end of the tenon or dovetail that enters the body. */
    double shaftEndMm() {
        double past = neck().heel()
                .flatMap(heel -> heel.joint().pastShoulder())
                .map(Amount::libraryValue)
                .orElse(0.0);
        return neck().bodyJointMm() + past;
    }

    Optional<HeelBlocks> heelBlocks() {
        return neck().heel().map(heel -> {
            double over = overstandMm();
            LengthStyle style = job.style();
            double shaft = job.blank().planedThicknessMm();
            HeelBlocks blocks = HeelBlocks.of(style.amount(heel.heightMm() - over), style.amount(shaft))
                    .overstand(style.amount(over))
                    .blocks(style.amount(heel.blockThicknessMm(shaft)));
            return neckSet().map(set -> blocks.at(set.angle().angle())).orElse(blocks);
        });
    }
}
