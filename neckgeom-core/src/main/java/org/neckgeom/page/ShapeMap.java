package org.neckgeom.page;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.fault.Refusal;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.head.HeadPost;
import org.neckgeom.head.HeadSide;
import org.neckgeom.head.JointPlace;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.DovetailSeat;
import org.neckgeom.heel.NeckSet;
import org.neckgeom.heel.TenonBolts;
import org.neckgeom.measure.Limits;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** Scarf, neck set and details as data and back. */
final class ShapeMap {

    private ShapeMap() {}

    static DataMap scarf(ScarfJoint joint, LengthStyle style) {
        Scarf scarf = joint.scarf();
        return DataMap.empty()
                .put("place", DataSource.word(joint.place()))
                .quantity("pitch", scarf.pitch())
                .length("shaft", scarf.shaftMm(), style)
                .length("head", scarf.headMm(), style)
                .length("kerf", scarf.kerfMm(), style)
                .length("cleaning", scarf.cleaningMm(), style)
                .length("nutLedge", scarf.ledgeMm(), style)
                .length("offHeadFace", joint.offHeadFaceMm(), style)
                .length("offShaftFace", joint.offShaftFaceMm(), style)
                .length("offHeadBack", joint.offHeadBackMm(), style)
                .length("veneer", joint.veneerMm(), style)
                .length("backVeneer", joint.backVeneerMm(), style);
    }

    static ScarfJoint scarfFrom(DataSource data) {
        Scarf scarf = Scarf.at(data.angle("pitch"))
                .shaft(data.length("shaft"))
                .head(data.length("head"))
                .kerf(data.length("kerf"))
                .cleaning(data.length("cleaning"))
                .nutLedge(data.length("nutLedge"));
        ScarfJoint joint = data.word("place", JointPlace.values()) == JointPlace.IN_THE_HEAD
                ? scarf.inTheHead()
                : scarf.inTheShaft();
        return joint.planingHeadFace(data.length("offHeadFace"))
                .planingShaftFace(data.length("offShaftFace"))
                .planingHeadBack(data.length("offHeadBack"))
                .veneered(HeadSide.FACE, data.length("veneer"))
                .veneered(HeadSide.BACK, data.length("backVeneer"));
    }

    static DataMap neckSet(NeckSet set, LengthStyle style) {
        DataMap data = DataMap.empty()
                .quantity("scale", set.scale().in(style))
                .put("bodyAtFret", set.bodyAtFret())
                .put("divisions", set.divisions())
                .quantity("fretPlane", set.fretPlane().in(style))
                .quantity("saddle", set.saddle().in(style))
                .quantity("atNut", set.atNut().in(style))
                .quantity("action", set.action().in(style))
                .quantity("compensation", set.compensation().in(style));
        set.domeRadius()
                .ifPresent(radius -> data.put(
                        "dome",
                        DataMap.empty()
                                .quantity("radius", radius.in(style))
                                .quantity("poleToJoint", set.poleToJoint().in(style))
                                .quantity("poleToBridge", set.poleToBridge().in(style))));
        return data;
    }

    static NeckSet neckSetFrom(DataSource data) {
        NeckSet set = NeckSet.scale(data.length("scale"))
                .bodyAtFret(data.count("bodyAtFret"), data.count("divisions"))
                .fretPlane(data.length("fretPlane"))
                .saddle(data.length("saddle"))
                .atNut(data.length("atNut"))
                .action(data.length("action"))
                .compensation(data.length("compensation"));
        return data.oneIfTold(
                        "dome",
                        dome -> set.overDome(
                                dome.length("radius"), dome.length("poleToJoint"), dome.length("poleToBridge")))
                .orElse(set);
    }

    /** The details in the style of the plan they belong to: lengths are kept without one. */
    static DataMap details(NeckDetails details, LengthStyle style) {
        DataMap data = DataMap.empty();
        details.dovetail().ifPresent(seat -> data.put("dovetail", dovetail(seat, style)));
        details.tenon().ifPresent(tenon -> data.put("tenon", tenon(tenon, style)));
        details.headLayout()
                .ifPresent(layout ->
                        data.put("headLayout", layout(layout, style)).length("nutSlotHeight", details.slotMm(), style));
        details.tuners().ifPresent(limits -> data.put("tuners", limits(limits)));
        data.length("overstand", details.overstandMm(), style);
        if (details.hasSpare()) {
            data.put(
                    "spare",
                    DataMap.empty()
                            .length("eachEnd", details.endSpareMm(), style)
                            .length("eachEdge", details.edgeSpareMm(), style)
                            .length("eachFace", details.planingMm(), style));
        }
        data.length("sawKerf", details.kerfMm(), style);
        details.blockLengthMm().ifPresent(block -> data.length("heelBlockLength", block, style));
        return data;
    }

    static NeckDetails detailsFrom(DataSource data, NeckDesign design) {
        NeckDetails details =
                NeckDetails.none().overstand(data.length("overstand")).sawKerf(data.length("sawKerf"));
        Optional<DovetailSeat> dovetail = data.oneIfTold("dovetail", ShapeMap::dovetailFrom);
        details = dovetail.isPresent() ? details.dovetail(dovetail.get()) : details;
        Optional<TenonBolts> tenon = data.oneIfTold("tenon", ShapeMap::tenonFrom);
        details = tenon.isPresent() ? details.tenon(tenon.get()) : details;
        if (data.has("headLayout")) {
            details = details.head(
                    data.one("headLayout", part -> layoutFrom(part, design)), data.length("nutSlotHeight"));
        }
        Optional<Limits<Length>> tuners = data.oneIfTold("tuners", ShapeMap::limitsFrom);
        details = tuners.isPresent() ? details.tuners(tuners.get()) : details;
        NeckDetails soFar = details;
        details = data.oneIfTold(
                        "spare",
                        part -> soFar.spare(part.length("eachEnd"), part.length("eachEdge"), part.length("eachFace")))
                .orElse(soFar);
        return data.has("heelBlockLength") ? details.heelBlocks(data.length("heelBlockLength")) : details;
    }

    private static DataMap dovetail(DovetailSeat seat, LengthStyle style) {
        DataMap data = DataMap.empty().quantity("taper", seat.taper());
        if (seat.hasLength()) {
            data.length("length", seat.lengthMm(), style);
        }
        if (seat.hasSize()) {
            data.length("widthAtEnd", seat.endMm(), style)
                    .length("widthAtShoulder", seat.shoulderMm(), style)
                    .length("height", seat.heightMm(), style);
        }
        return data;
    }

    private static DovetailSeat dovetailFrom(DataSource data) {
        DovetailSeat seat = DovetailSeat.tapered(data.angle("taper"));
        seat = data.has("length") ? seat.length(data.length("length")) : seat;
        return data.has("height")
                ? seat.sized(data.length("widthAtEnd"), data.length("widthAtShoulder"), data.length("height"))
                : seat;
    }

    private static DataMap tenon(TenonBolts tenon, LengthStyle style) {
        return DataMap.empty()
                .quantity("height", tenon.height().in(style))
                .quantity("length", tenon.length().in(style))
                .quantity("holeDiameter", tenon.holeDiameter().in(style))
                .quantity("setBack", tenon.setBack().in(style))
                .putAll("depths", tenon.depths(), depth -> DataMap.quantity(depth.in(style)));
    }

    private static TenonBolts tenonFrom(DataSource data) {
        TenonBolts tenon = TenonBolts.tenon(data.length("height"), data.length("length"))
                .holes(data.length("holeDiameter"), data.length("setBack"));
        for (Amount<Length> depth : data.quantities("depths", DataUnits.LENGTH)) {
            tenon = tenon.at(depth);
        }
        return tenon;
    }

    private static DataMap layout(HeadLayout layout, LengthStyle style) {
        return DataMap.empty()
                .quantity("widthAtBreakLine", layout.widthAtBreakLine().in(style))
                .quantity("widthAtTip", layout.widthAtTip().in(style))
                .putAll(
                        "posts",
                        layout.posts(),
                        post -> DataMap.empty()
                                .quantity("along", post.along().in(style))
                                .quantity("aside", post.aside().in(style))
                                .quantity("above", post.above().in(style)));
    }

    private static HeadLayout layoutFrom(DataSource data, NeckDesign design) {
        HeadPost[] posts = data.all(
                        "posts",
                        post -> HeadPost.at(post.length("along"))
                                .aside(post.length("aside"))
                                .above(post.length("above")))
                .toArray(HeadPost[]::new);
        return HeadLayout.of(design.head()
                        .orElseThrow(() -> Refusal.because("head", "missing", "the design must have its head told")))
                .tapered(data.length("widthAtBreakLine"), data.length("widthAtTip"))
                .posts(posts);
    }

    private static DataMap limits(Limits<Length> limits) {
        DataMap data = DataMap.empty();
        if (!Double.isInfinite(limits.lowerHouse())) {
            data.quantity("least", Amount.ofHouse(limits.lowerHouse(), limits.unit()));
        }
        return Double.isInfinite(limits.upperHouse())
                ? data
                : data.quantity("most", Amount.ofHouse(limits.upperHouse(), limits.unit()));
    }

    private static Limits<Length> limitsFrom(DataSource data) {
        if (!data.has("most")) {
            return Limits.atLeast(data.length("least"));
        }
        return data.has("least")
                ? Limits.between(data.length("least"), data.length("most"))
                : Limits.atMost(data.length("most"));
    }
}
