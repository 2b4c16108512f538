package org.neckgeom.plan;

import java.util.Optional;
import org.neckgeom.board.FallAway;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.design.Channel;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.fault.Refusal;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.shop.Shop;
import org.neckgeom.solid.BackShape;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;

/** Whether design, blank and shop can belong to one neck at all. */
final class Fit {

    private Fit() {}

    static void check(NeckDesign design, Blank blank, Shop shop) {
        Channel channel = design.channel()
                .orElseThrow(() -> Refusal.of(
                        "\"" + design.name() + "\"",
                        "missing",
                        "have its channel told for a plan",
                        "has",
                        "none: add .channel(...) or .rod(...)"));
        channelInBlank(channel, blank);
        cutterInChannel(channel, shop);
        neckInBlank(design, blank);
        FallAway.of(design);
        StringPlaces.atNut(design);
        StringPlaces.atSaddle(design);
    }

    static void check(NeckDesign design, ScarfJoint joint) {
        LengthStyle style = design.style();
        design.head().ifPresent(head -> joint.board(style.amount(design.bodyJointMm()), style.amount(head.lengthMm())));
    }

    static void check(NeckDesign design, NeckDetails details) {
        details.headLayout()
                .filter(layout -> !design.head().equals(Optional.of(layout.head())))
                .ifPresent(layout -> {
                    throw Refusal.because(
                            "head layout",
                            "same-head",
                            "head layout in the details must be of the design's own head, but" + " was of "
                                    + layout.head());
                });
        StringPlaces.atNut(design)
                .ifPresent(nut -> details.headLayout()
                        .filter(HeadLayout::hasPosts)
                        .ifPresent(layout -> postsAgree(design, details, layout, nut)));
    }

    /** Each string at the nut has its post. */
    private static void postsAgree(NeckDesign design, NeckDetails details, HeadLayout layout, StringPlaces nut) {
        layout.breaks(nut, design.style().amount(details.slotMm()));
    }

    static void check(NeckDesign design, NeckReadings readings) {
        if (design.head().isEmpty()
                && (readings.scarfAngle().isPresent() || readings.has(NeckFeature.HEAD_THICKNESS))) {
            throw Refusal.of(
                    "\"" + design.name() + "\"",
                    "missing",
                    "have its head told for a reading of it",
                    "has",
                    "none: add .head(...)");
        }
        double end = design.scale().fretMm(Math.max(design.frets(), design.bodyAtFret()));
        readings.backDepths().keySet().forEach(x -> {
            if (!(x >= 0 && x <= end)) {
                throw HouseUnits.refused(
                        "station of a back depth",
                        "range",
                        "on the neck, from the nut to " + design.style().brief(end),
                        design.style().amount(x));
            }
        });
    }

    private static void channelInBlank(Channel channel, Blank blank) {
        double wood = Math.min(blank.widthAtMm(channel.startMm()), blank.widthAtMm(channel.endMm()));
        double widest = Math.max(channel.widthMm(), channel.pocketWidthMm());
        if (!(widest < wood)) {
            throw HouseUnits.refused(
                    "blank width",
                    "more-than",
                    "more than the channel's " + channel.style().brief(widest),
                    blank.width());
        }
        double deepest = Math.max(channel.depthMm() + Math.max(0, channel.archMm()), channel.pocketDepthMm());
        if (!(deepest < blank.thicknessMm())) {
            throw HouseUnits.refused(
                    "blank thickness",
                    "more-than",
                    "more than the channel's depth of " + channel.style().brief(deepest),
                    blank.thickness());
        }
        if (!(-channel.startMm() <= blank.nutFromHeadEndMm())) {
            throw HouseUnits.refused(
                    "channel start",
                    "name",
                    "on the blank, which begins " + channel.style().brief(blank.nutFromHeadEndMm()) + " before the nut",
                    channel.style().amount(channel.startMm()));
        }
        double needed = blank.nutFromHeadEndMm() + channel.endMm();
        if (!(needed <= blank.lengthMm())) {
            throw HouseUnits.refused(
                    "blank length",
                    "at-least",
                    blank.style().brief(needed) + " or more, where the channel ends from the head end",
                    blank.length());
        }
    }

    private static void cutterInChannel(Channel channel, Shop shop) {
        if (!(shop.cutter().diameterMm() <= channel.widthMm())) {
            throw HouseUnits.refused(
                    "cutter diameter",
                    "at-most",
                    "no more than the channel's width of " + channel.style().brief(channel.widthMm()),
                    shop.cutter().diameter());
        }
        if (!(shop.cutter().diameterMm() <= channel.lengthMm())) {
            throw HouseUnits.refused(
                    "cutter diameter",
                    "at-most",
                    "no more than the channel's length of " + channel.style().brief(channel.lengthMm()),
                    shop.cutter().diameter());
        }
    }

    private static void neckInBlank(NeckDesign design, Blank blank) {
        double needed = blank.nutFromHeadEndMm() + design.bodyJointMm();
        if (!(needed <= blank.lengthMm())) {
            throw HouseUnits.refused(
                    "blank length",
                    "at-least",
                    blank.style().brief(needed) + " or more, to reach the body joint at fret " + design.bodyAtFret(),
                    blank.length());
        }
        double widest = 2 * Math.max(design.halfWidthAtMm(0), design.halfWidthAtMm(design.bodyJointMm()));
        if (!(widest <= blank.widthMm())) {
            throw HouseUnits.refused(
                    "blank width",
                    "at-least",
                    design.style().brief(widest) + " or more, the neck's own",
                    blank.width());
        }
        double deepest = Math.max(
                BackShape.of(design).depthAtMm(0),
                design.backDepthAtMm(design.scale().fretMm(design.back().secondFret())));
        if (!(deepest <= blank.thicknessMm())) {
            throw HouseUnits.refused(
                    "blank thickness",
                    "at-least",
                    design.style().brief(deepest) + " or more, the neck's own",
                    blank.thickness());
        }
    }
}
