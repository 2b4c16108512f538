package org.neckgeom.design;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * The channel cut into the neck's glue face for a rod, such as {@code channel 3 to 303 mm from the nut, 6 mm wide, 9.2 mm
 * deep}. Immutable.
 *
 * <p>Unless told: it starts at the nut, is as wide and as long as the rod, flat, without cover strip, clearance or
 * pocket. Its ends are square; what a round cutter leaves there is chiselled out or run past. Whatever is told in
 * whatever order, arch and pocket keep their room: what would take it is refused.
 */
public final class Channel implements Answer, SaysLengths<Channel> {

    private final Rod rod;
    private final double start;
    private final double endPlay;
    private final double sidePlay;
    private final double cover;
    private final double clearance;
    private final double extraMiddleDepth;
    private final double pocketLength;
    private final double pocketWidth;
    private final double pocketDepth;

    private Channel(Parts parts) {
        this.rod = parts.rod;
        this.start = parts.start;
        this.endPlay = parts.endPlay;
        this.sidePlay = parts.sidePlay;
        this.cover = parts.cover;
        this.clearance = parts.clearance;
        this.extraMiddleDepth = parts.extraMiddleDepth;
        this.pocketLength = parts.pocketLength;
        this.pocketWidth = parts.pocketWidth;
        this.pocketDepth = parts.pocketDepth;
    }

    /** The parts on their way from one channel to the next; never leaves this class. */
    private static final class Parts {
        private Rod rod;
        private double start;
        private double endPlay;
        private double sidePlay;
        private double cover;
        private double clearance;
        private double extraMiddleDepth;
        private double pocketLength;
        private double pocketWidth;
        private double pocketDepth;

        private Parts(Rod rod) {
            this.rod = rod;
        }
    }

    /** A changed channel in which arch and pocket still have their room, whatever was told after them. */
    private Channel with(Consumer<Parts> change) {
        Channel changed = unchecked(change);
        changed.requireRoomForArch(amount(extraMiddleDepth));
        if (hasPocket()) {
            changed.requireRoomForPocket(amount(pocketLength), amount(pocketWidth), amount(pocketDepth));
        }
        return changed;
    }

    private Channel unchecked(Consumer<Parts> change) {
        Parts parts = new Parts(rod);
        parts.start = start;
        parts.endPlay = endPlay;
        parts.sidePlay = sidePlay;
        parts.cover = cover;
        parts.clearance = clearance;
        parts.extraMiddleDepth = extraMiddleDepth;
        parts.pocketLength = pocketLength;
        parts.pocketWidth = pocketWidth;
        parts.pocketDepth = pocketDepth;
        change.accept(parts);
        return new Channel(parts);
    }

    /**
     * Returns the plainest channel for a rod.
     *
     * @param rod the rod
     * @return the channel
     */
    public static Channel forRod(Rod rod) {
        return new Channel(new Parts(Objects.requireNonNull(rod, "rod")));
    }

    /**
     * Returns this channel starting elsewhere.
     *
     * @param x of its head end, positive toward the body; negative when it runs on into the head
     * @return the channel
     */
    public Channel startingAt(Quantity<Length> x) {
        double mm = HouseUnits.mm(x, "channel start");
        return with(parts -> parts.start = mm);
    }

    /**
     * Returns this channel longer than the rod.
     *
     * @param play added at the heel end, 0 or more
     * @return the channel
     */
    public Channel endPlay(Quantity<Length> play) {
        double mm = HouseUnits.mmNotNegative(play, "end play");
        return with(parts -> parts.endPlay = mm);
    }

    /**
     * Returns this channel wider than the rod.
     *
     * @param play width of the channel less width of the rod, 0 or more
     * @return the channel
     */
    public Channel sidePlay(Quantity<Length> play) {
        double mm = HouseUnits.mmNotNegative(play, "side play");
        return with(parts -> parts.sidePlay = mm);
    }

    /**
     * Returns this channel with a strip of wood over the rod.
     *
     * @param strip thickness, 0 or more
     * @return the channel
     */
    public Channel coveredBy(Quantity<Length> strip) {
        double mm = HouseUnits.mmNotNegative(strip, "cover strip");
        return with(parts -> parts.cover = mm);
    }

    /**
     * Returns this channel deeper than rod and strip.
     *
     * @param depth how far the rod, or the strip over it, lies below the glue face, 0 or more
     * @return the channel
     */
    public Channel clearance(Quantity<Length> depth) {
        double mm = HouseUnits.mmNotNegative(depth, "clearance");
        return with(parts -> parts.clearance = mm);
    }

    /**
     * Returns this channel as it was cut, ending elsewhere: it may have become too short for its rod.
     *
     * @param x of its heel end, positive toward the body, more than that of its head end
     * @return the channel
     */
    public Channel cutTo(Quantity<Length> x) {
        double mm = HouseUnits.mm(x, "channel end");
        if (!(mm > start)) {
            throw HouseUnits.refused("channel end", "more-than", "more than its start at " + amount(start), x);
        }
        return asCut(parts -> parts.endPlay = mm - start - rod.lengthMm());
    }

    /**
     * Returns this channel as it was cut, in another width: it may have become too narrow for its rod.
     *
     * @param width of the channel, its pocket not counted, more than 0
     * @return the channel
     */
    public Channel cutWide(Quantity<Length> width) {
        double mm = HouseUnits.mmPositive(width, "channel width");
        return asCut(parts -> parts.sidePlay = mm - rod.widthMm());
    }

    /**
     * Returns this channel as it was cut, in another depth: it may have become too shallow for its rod.
     *
     * @param depth at its ends, the whole depth where the floor is flat, more than 0
     * @return the channel
     */
    public Channel cutDeep(Quantity<Length> depth) {
        double mm = HouseUnits.mmPositive(depth, "channel depth");
        return asCut(parts -> parts.clearance = mm - rod.heightMm() - cover);
    }

    /** What was cut may leave the pocket shallower or narrower than the channel; the arch must still have its room. */
    private Channel asCut(Consumer<Parts> change) {
        Channel cut = unchecked(change);
        cut.requireRoomForArch(amount(extraMiddleDepth));
        return cut;
    }

    /**
     * Returns this channel with an arched floor, a circle through both ends and the middle.
     *
     * @param deeperInTheMiddle sagitta: middle depth less end depth; positive for a rod laid from the front, negative for
     *     one whose middle lies shallower
     * @return the channel
     */
    public Channel arched(Quantity<Length> deeperInTheMiddle) {
        double mm = HouseUnits.mm(deeperInTheMiddle, "arch");
        Channel arched = unchecked(parts -> parts.extraMiddleDepth = mm);
        arched.requireRoomForArch(deeperInTheMiddle);
        return arched;
    }

    private void requireRoomForArch(Quantity<Length> told) {
        if (!(Math.abs(extraMiddleDepth) < lengthMm() / 2)) {
            throw HouseUnits.refused(
                    "arch",
                    "less-than",
                    "less than half the channel's length of "
                            + amount(lengthMm()).toString(),
                    told);
        }
        if (!(depthMm() + extraMiddleDepth > 0)) {
            throw HouseUnits.refused(
                    "arch", "more-than", "more than -" + amount(depthMm()).toString(), told);
        }
    }

    /**
     * Returns this channel with a pocket for the adjuster at the end the rod is adjusted at.
     *
     * @param length along the neck, more than 0, no more than the channel's
     * @param width across, the channel's width or more
     * @param depth below the glue face, the channel's depth or more
     * @return the channel
     */
    public Channel pocket(Quantity<Length> length, Quantity<Length> width, Quantity<Length> depth) {
        double l = HouseUnits.mmPositive(length, "pocket length");
        double w = HouseUnits.mmPositive(width, "pocket width");
        double d = HouseUnits.mmPositive(depth, "pocket depth");
        if (!rod.isAdjustable()) {
            throw Refusal.because("pocket", "no-pocket", "a " + rod.kind() + " needs no pocket, but one was wanted");
        }
        Channel pocketed = unchecked(parts -> {
            parts.pocketLength = l;
            parts.pocketWidth = w;
            parts.pocketDepth = d;
        });
        pocketed.requireRoomForPocket(length, width, depth);
        return pocketed;
    }

    private void requireRoomForPocket(Quantity<Length> length, Quantity<Length> width, Quantity<Length> depth) {
        if (!(pocketLength <= lengthMm())) {
            throw HouseUnits.refused(
                    "pocket length",
                    "at-most",
                    "no more than the channel's " + amount(lengthMm()).toString(),
                    length);
        }
        if (!(pocketWidth >= widthMm())) {
            throw HouseUnits.refused(
                    "pocket width", "at-least", "the channel's " + amount(widthMm()) + " or more", width);
        }
        if (!(pocketDepth >= depthMm())) {
            throw HouseUnits.refused(
                    "pocket depth", "at-least", "the channel's " + amount(depthMm()) + " or more", depth);
        }
    }

    /**
     * Returns the rod.
     *
     * @return the rod
     */
    public Rod rod() {
        return rod;
    }

    /**
     * Returns x of the head end in mm.
     *
     * @return either sign
     */
    public double startMm() {
        return start;
    }

    /**
     * Returns x of the heel end in mm: start, rod and end play.
     *
     * @return more than the start
     */
    public double endMm() {
        return start + lengthMm();
    }

    /**
     * Returns the length in mm.
     *
     * @return more than 0
     */
    public double lengthMm() {
        return rod.lengthMm() + endPlay;
    }

    /**
     * Returns how much longer the channel is than the rod, in mm.
     *
     * @return 0 or more; negative when it was cut too short
     */
    public double endPlayMm() {
        return endPlay;
    }

    /**
     * Returns how much wider the channel is than the rod, in mm.
     *
     * @return 0 or more; negative when it was cut too narrow
     */
    public double sidePlayMm() {
        return sidePlay;
    }

    /**
     * Returns the width in mm: rod and side play. The pocket is wider.
     *
     * @return more than 0
     */
    public double widthMm() {
        return rod.widthMm() + sidePlay;
    }

    /**
     * Returns the depth at the ends in mm: rod, cover strip and clearance. The whole depth where the floor is flat.
     *
     * @return more than 0
     */
    public double depthMm() {
        return rod.heightMm() + cover + clearance;
    }

    /**
     * Returns the depth at the ends, the whole depth where the floor is flat.
     *
     * @return more than 0
     */
    public Amount<Length> depth() {
        return rod.style().amount(depthMm());
    }

    /**
     * Returns how much deeper the middle is than the ends, in mm.
     *
     * @return the sagitta; 0 for a flat floor
     */
    public double archMm() {
        return extraMiddleDepth;
    }

    /**
     * Returns the cover strip's thickness in mm.
     *
     * @return 0 or more
     */
    public double coverMm() {
        return cover;
    }

    /**
     * Returns the clearance in mm.
     *
     * @return 0 or more
     */
    public double clearanceMm() {
        return clearance;
    }

    /**
     * Says whether there is a pocket.
     *
     * @return true when there is one
     */
    public boolean hasPocket() {
        return pocketLength > 0;
    }

    /**
     * Returns x of the pocket's head end in mm.
     *
     * @return the channel's start, or its end less the pocket's length
     */
    public double pocketStartMm() {
        return rod.adjustedAt() == End.HEAD ? start : endMm() - pocketLength;
    }

    /**
     * Returns the pocket's length in mm.
     *
     * @return 0 where there is none
     */
    public double pocketLengthMm() {
        return pocketLength;
    }

    /**
     * Returns the pocket's width in mm.
     *
     * @return 0 where there is none
     */
    public double pocketWidthMm() {
        return pocketWidth;
    }

    /**
     * Returns the pocket's depth in mm.
     *
     * @return 0 where there is none
     */
    public double pocketDepthMm() {
        return pocketDepth;
    }

    /**
     * Returns the depth of the floor at a station, the pocket not counted: {@code d(x) = d_m - (R - sqrt(R^2 - (x -
     * m)^2))}, {@code R = (L^2/4 + s^2)/(2 s)}, m the middle, s the sagitta. Exact.
     *
     * @param xMm station in mm
     * @return depth in mm; 0 outside the channel
     */
    public double floorDepthAtMm(double xMm) {
        if (!(HouseUnits.stationMm(xMm) >= start && xMm <= endMm())) {
            return 0;
        }
        double s = extraMiddleDepth;
        if (s == 0) {
            return depthMm();
        }
        double half = lengthMm() / 2;
        double u = xMm - (start + half);
        // R - sqrt(R^2 - u^2) written without the difference of two near numbers, and with the sign of s.
        double radius = (half * half + s * s) / (2 * Math.abs(s));
        double drop = u * u / (radius + Math.sqrt(Math.max(0, radius * radius - u * u)));
        return depthMm() + s - Math.copySign(drop, s);
    }

    /**
     * Returns the greatest depth at a station, the pocket counted.
     *
     * @param xMm station in mm
     * @return depth in mm; 0 outside the channel
     */
    public double depthAtMm(double xMm) {
        double floor = floorDepthAtMm(xMm);
        return floor > 0 && isInPocket(xMm) ? Math.max(floor, pocketDepth) : floor;
    }

    /**
     * Returns the width at a station, the pocket counted.
     *
     * @param xMm station in mm
     * @return width in mm; 0 outside the channel
     */
    public double widthAtMm(double xMm) {
        if (!(HouseUnits.stationMm(xMm) >= start && xMm <= endMm())) {
            return 0;
        }
        return isInPocket(xMm) ? pocketWidth : widthMm();
    }

    private boolean isInPocket(double xMm) {
        return hasPocket() && xMm >= pocketStartMm() && xMm <= pocketStartMm() + pocketLength;
    }

    private Amount<Length> amount(double mm) {
        return style().amount(mm);
    }

    /**
     * Returns the style answers about this channel are printed in: that of the rod.
     *
     * @return the style
     */
    @Override
    public LengthStyle style() {
        return rod.style();
    }

    /**
     * Returns the same channel, printed in another style, its rod too.
     *
     * @param style how to print lengths
     * @return an equal channel
     */
    @Override
    public Channel in(LengthStyle style) {
        return unchecked(parts -> parts.rod = rod.in(style));
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        private static final Form<Channel> FORM = form("channel ");

        /** The same without its title, for the row of a neck. */
        static final Form<Channel> UNTITLED = form("");

        private static Form<Channel> form(String title) {
            return Form.<Channel>of("channel")
                    .fact("rod", Kind.answer(Rod.Sentences.FORM), "what lies in it", Channel::rod)
                    .fact("start", Kind.MM, "from the nut; negative: in the head", Channel::startMm)
                    .fact("end", Kind.MM, "from the nut", Channel::endMm)
                    .fact("width", Kind.MM, "of rod and side clearance", Channel::widthMm)
                    .fact("depth", Kind.MM, "at its ends", Channel::depthMm)
                    .fact("floorArch", Kind.MM, "middle deeper than the ends by; 0: flat", Channel::archMm)
                    .fact("middleDepth", Kind.MM, "where the floor is arched", c -> ifArched(c, c.middleDepthMm()))
                    .fact("endClearance", Kind.MM, "longer than the rod by; negative: too short", Channel::endPlayMm)
                    .fact("sideClearance", Kind.MM, "wider than the rod by; negative: too narrow", Channel::sidePlayMm)
                    .fact("fillet", Kind.MM, "thickness of the strip over the rod; 0: none", Channel::coverMm)
                    .fact("depthClearance", Kind.MM, "deeper than rod and fillet by", Channel::clearanceMm)
                    .fact("pocketLength", Kind.MM, "of the adjuster pocket", c -> ifPocketed(c, c.pocketLength))
                    .fact("pocketWidth", Kind.MM, "of the adjuster pocket", c -> ifPocketed(c, c.pocketWidth))
                    .fact("pocketDepth", Kind.MM, "of the adjuster pocket", c -> ifPocketed(c, c.pocketDepth))
                    .factIfAny("pocketEnd", Kind.code(End.class), "where the pocket is", Channel::pocketEnd)
                    .phrase("arched", " at its ends, {middleDepth} in the middle")
                    .phrase("pocket", ", pocket {pocketLength} x {pocketWidth} x {pocketDepth} at the {pocketEnd}")
                    .finds(
                            "channel",
                            title + "{start} to {end} from the nut, {width} wide, {depth} deep{arched}{pocket}");
        }

        private static double ifArched(Channel channel, double mm) {
            return channel.extraMiddleDepth == 0 ? Double.NaN : mm;
        }

        private static double ifPocketed(Channel channel, double mm) {
            return channel.hasPocket() ? mm : Double.NaN;
        }
    }

    private double middleDepthMm() {
        return depthMm() + extraMiddleDepth;
    }

    private Optional<End> pocketEnd() {
        return hasPocket() ? Optional.of(rod.adjustedAt()) : Optional.empty();
    }

    @Override
    public Form<Channel> form() {
        return Sentences.FORM;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Channel other
                && rod.equals(other.rod)
                && Double.compare(start, other.start) == 0
                && Double.compare(endPlay, other.endPlay) == 0
                && Double.compare(sidePlay, other.sidePlay) == 0
                && Double.compare(cover, other.cover) == 0
                && Double.compare(clearance, other.clearance) == 0
                && Double.compare(extraMiddleDepth, other.extraMiddleDepth) == 0
                && Double.compare(pocketLength, other.pocketLength) == 0
                && Double.compare(pocketWidth, other.pocketWidth) == 0
                && Double.compare(pocketDepth, other.pocketDepth) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                rod,
                start,
                endPlay,
                sidePlay,
                cover,
                clearance,
                extraMiddleDepth,
                pocketLength,
                pocketWidth,
                pocketDepth);
    }

    /** Returns such as {@code channel 3 mm to 303 mm from the nut, 6 mm wide, 9.2 mm deep}. */
    @Override
    public String toString() {
        return text(style());
    }
}
