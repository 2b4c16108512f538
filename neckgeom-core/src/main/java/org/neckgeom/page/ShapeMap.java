package org.neckgeom.page;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.board.FallAway;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.OuterStrings;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Scale;
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
import org.neckgeom.solid.BackShape;
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
        details.stringsAtNut().ifPresent(places -> data.put("stringsAtNut", places(places, style)));
        details.stringsAtSaddle().ifPresent(places -> data.put("stringsAtSaddle", places(places, style)));
        details.fannedFrets().ifPresent(fan -> data.put("fannedFrets", fan(fan, style)));
        details.dovetail().ifPresent(seat -> data.put("dovetail", dovetail(seat, style)));
        details.tenon().ifPresent(tenon -> data.put("tenon", tenon(tenon, style)));
        details.headLayout()
                .ifPresent(layout ->
                        data.put("headLayout", layout(layout, style)).length("nutSlotHeight", details.slotMm(), style));
        details.fretHeightMm().ifPresent(frets -> data.length("fretHeight", frets, style));
        details.tuners().ifPresent(limits -> data.put("tuners", limits(limits)));
        details.fallAway()
                .ifPresent(slope -> data.put(
                        "fallAway",
                        DataMap.empty()
                                .quantity("start", slope.start().in(style))
                                .quantity("end", slope.end().in(style))
                                .quantity("drop", slope.drop().in(style))));
        details.back().ifPresent(back -> data.put("back", back(back, style)));
        data.length("overstand", details.overstandMm(), style);
        details.blockLengthMm().ifPresent(block -> data.length("heelBlockLength", block, style));
        return data;
    }

    static NeckDetails detailsFrom(DataSource data, NeckDesign design) {
        NeckDetails details = NeckDetails.none().overstand(data.length("overstand"));
        if (data.has("stringsAtNut") || data.has("stringsAtSaddle")) {
            details = details.strings(
                    data.one("stringsAtNut", ShapeMap::placesFrom), data.one("stringsAtSaddle", ShapeMap::placesFrom));
        }
        Optional<FannedFrets> fan = data.oneIfTold("fannedFrets", ShapeMap::fanFrom);
        details = fan.isPresent() ? details.fannedFrets(fan.get()) : details;
        Optional<DovetailSeat> dovetail = data.oneIfTold("dovetail", ShapeMap::dovetailFrom);
        details = dovetail.isPresent() ? details.dovetail(dovetail.get()) : details;
        Optional<TenonBolts> tenon = data.oneIfTold("tenon", ShapeMap::tenonFrom);
        details = tenon.isPresent() ? details.tenon(tenon.get()) : details;
        if (data.has("headLayout")) {
            details = details.head(
                    data.one("headLayout", part -> layoutFrom(part, design)), data.length("nutSlotHeight"));
        }
        if (data.has("fretHeight")) {
            details = details.fretHeight(data.length("fretHeight"));
        }
        Optional<Limits<Length>> tuners = data.oneIfTold("tuners", ShapeMap::limitsFrom);
        details = tuners.isPresent() ? details.tuners(tuners.get()) : details;
        Optional<FallAway> slope = data.oneIfTold(
                "fallAway", part -> FallAway.of(part.length("start"), part.length("end"), part.length("drop")));
        details = slope.isPresent() ? details.fallAway(slope.get()) : details;
        Optional<BackShape> back = data.oneIfTold("back", part -> backFrom(part, design));
        details = back.isPresent() ? details.back(back.get()) : details;
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

    private static DataMap places(StringPlaces places, LengthStyle style) {
        return DataMap.empty()
                .putAll("centres", places.centres(), amount -> DataMap.quantity(amount.in(style)))
                .putAll("diameters", places.diameters(), amount -> DataMap.quantity(amount.in(style)));
    }

    private static StringPlaces placesFrom(DataSource data) {
        return StringPlaces.of(
                data.quantities("centres", DataUnits.LENGTH), data.quantities("diameters", DataUnits.LENGTH));
    }

    private static DataMap fan(FannedFrets fan, LengthStyle style) {
        Scale bass = fan.bassScale();
        return DataMap.empty()
                .quantity("bassScale", bass.length().in(style))
                .quantity("trebleScale", fan.trebleScale().length().in(style))
                .put("divisions", bass.divisions())
                .length("spreadAtNut", fan.outerStrings().atNutMm(), style)
                .length("spreadAtSaddle", fan.outerStrings().atSaddleMm(), style)
                .number("squareFret", fan.squareFret());
    }

    private static FannedFrets fanFrom(DataSource data) {
        int divisions = data.count("divisions");
        return FannedFrets.of(
                Scale.of(data.length("bassScale")).divisions(divisions),
                Scale.of(data.length("trebleScale")).divisions(divisions),
                OuterStrings.of(data.length("spreadAtNut"), data.length("spreadAtSaddle")),
                data.number("squareFret"));
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

    private static DataMap back(BackShape back, LengthStyle style) {
        DataMap data = DataMap.empty();
        if (back.voluteMm() > 0) {
            data.put(
                    "volute",
                    DataMap.empty()
                            .length("extra", back.voluteMm(), style)
                            .length("length", back.voluteLengthMm(), style));
        }
        back.heelStartMm()
                .ifPresent(start -> data.put(
                        "heelTurn",
                        DataMap.empty().length("start", start, style).length("radius", back.heelRadiusMm(), style)));
        return data;
    }

    private static BackShape backFrom(DataSource data, NeckDesign design) {
        BackShape plain = BackShape.of(design);
        BackShape volute = data.oneIfTold("volute", part -> plain.volute(part.length("extra"), part.length("length")))
                .orElse(plain);
        return data.oneIfTold("heelTurn", part -> volute.heelFrom(part.length("start"), part.length("radius")))
                .orElse(volute);
    }
}
