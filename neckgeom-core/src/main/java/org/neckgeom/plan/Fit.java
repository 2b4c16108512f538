package org.neckgeom.plan;

import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Head;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.fault.Refusal;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;

/** Whether design, blank and shop can belong to one neck at all. */
final class Fit {

    /** Rounded to two decimals of a mm or three of an inch the centreline's scale is near enough to be told so. */
    private static final double SCALE_TOLERANCE_MM = 0.02;

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
        scarfInHead(design, blank);
    }

    private static void checkScale(NeckDesign design, FannedFrets fan) {
        double wanted = fan.centrelineScale().house();
        if (!(Math.abs(design.scale().lengthMm() - wanted) <= SCALE_TOLERANCE_MM)) {
            throw HouseUnits.refused(
                    "scale",
                    "same-scale",
                    design.style().brief(wanted) + ", that of the fanned frets on the centreline",
                    design.scale().length());
        }
    }

    private static void scarfInHead(NeckDesign design, Blank blank) {
        LengthStyle style = design.style();
        design.head()
                .filter(head -> head.scarf().isPresent())
                .ifPresent(head -> ScarfJoint.of(head, blank)
                        .board(style.amount(design.bodyJointMm()), style.amount(head.lengthMm())));
    }

    static void check(NeckDesign design, NeckDetails details) {
        details.fannedFrets().ifPresent(fan -> checkScale(design, fan));
        details.back().filter(back -> !back.isOf(design)).ifPresent(back -> {
            throw Refusal.of("back in the details", "same-back", "be that of the plan's design", back);
        });
        details.stringsAtNut()
                .ifPresent(nut -> design.head()
                        .filter(head -> !head.posts().isEmpty())
                        .ifPresent(head -> postsAgree(design, details, head, nut)));
    }

    /** Each string at the nut has its post, and its pull, and a height from which it comes down to the post. */
    private static void postsAgree(NeckDesign design, NeckDetails details, Head head, StringPlaces nut) {
        int across = nut.centres().size();
        if (head.posts().size() != across) {
            throw Refusal.of(
                    "head.posts.along",
                    "as-many",
                    "be " + across + ", one to a string",
                    "were",
                    head.posts().size());
        }
        if (details.fretHeightMm().isEmpty()) {
            throw Refusal.because(
                    "fret height",
                    "missing",
                    "the head's posts are given, but not the fingerboard's fret height, from which the strings come down to"
                            + " them");
        }
        int strings = design.hasStrings()
                ? design.strings().courses() * design.strings().inCourse()
                : across;
        if (across != strings) {
            throw Refusal.of("strings at the nut", "as-many", "be as many as the neck's " + strings, "were", across);
        }
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
                design.backDepthAtMm(0),
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
