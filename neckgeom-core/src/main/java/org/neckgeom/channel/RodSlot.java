package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Channel;
import org.neckgeom.shop.Cutter;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The work on a rod channel (truss rod slot, groove, rout): depth, passes, stops, the effect of the blank, and
 * cautions. Immutable.
 *
 * <p>The slot is cut from the glue face, a fence against one edge of the blank. Stations are in x from the nut, positive
 * toward the body.
 */
public final class RodSlot extends ValueAnswer {

    private static final Form<RodSlot> FORM = Form.<RodSlot>of("rod-slot")
            .fact("depth", Kind.answer(SlotDepth.FORM), "how deep the slot is", RodSlot::depth)
            .fact("rod", Kind.ANSWER, "the rod in it", slot -> slot.channel.reinforcement())
            .fact("start", Kind.MM, "of the channel, from the nut", slot -> slot.channel.startMm())
            .fact("end", Kind.MM, "of the channel, from the nut", slot -> slot.channel.endMm())
            .fact("width", Kind.MM, "of the channel", slot -> slot.channel.widthMm())
            .finds("rod-slot", "Rod slot, {depth}")
            .line("rod", "rod", "{rod}")
            .line("runs", "runs", "{start:brief} to {end:brief} from the nut")
            .line("width", "width", "{width:brief}");

    private static final double LENGTH_SLACK_MM = 1e-9;

    private final Channel channel;

    private RodSlot(Channel channel, LengthStyle style) {
        super(FORM, style);
        this.channel = channel;
    }

    /**
     * {@return the job of cutting a channel}
     *
     * @param channel the channel
     */
    public static RodSlot of(Channel channel) {
        return new RodSlot(Objects.requireNonNull(channel, "channel"), channel.style());
    }

    /** {@return how deep the slot is and of what that is made} */
    public SlotDepth depth() {
        return new SlotDepth(channel, style());
    }

    /**
     * {@return the depth of the floor at a station, the pocket counted; 0 outside the channel} An arched floor is the
     * circle through both ends and the middle. Exact.
     *
     * @param station from the nut, positive toward the body
     */
    public Amount<Length> depthAt(Quantity<Length> station) {
        return style().amount(channel.depthAtMm(LibraryUnits.mm(station, "station")));
    }

    /** {@return the floor along its length, as a template for an arched channel is laid out} */
    public ChannelFloor floor() {
        return new ChannelFloor(channel, style());
    }

    /**
     * {@return the passes to the deepest place of the floor; an arched one takes them along its own curve}
     *
     * @param rule how deep a pass may be
     * @throws IllegalArgumentException if the slot is no deeper than the rule's last pass
     */
    public PassPlan passes(Passes rule) {
        return Objects.requireNonNull(rule, "rule").to(depth().deepest());
    }

    /**
     * {@return the passes of the pocket for the adjuster, from the glue face}
     *
     * @param rule how deep a pass may be
     * @throws ArithmeticException if the channel has no pocket
     * @throws IllegalArgumentException if the pocket is no deeper than the rule's last pass
     */
    public PassPlan pocketPasses(Passes rule) {
        requirePocket();
        return rule.to(style().amount(channel.adjusterPocketDepthMm()));
    }

    /**
     * {@return where the stops sit, the head end leading; the other way round see {@link StopBlocks#turned}}
     *
     * @param cutter no wider than the blank, nor than the channel is long
     * @param blank that holds the channel
     * @throws IllegalArgumentException if channel, cutter and blank do not go together
     */
    public StopBlocks stops(Cutter cutter, Blank blank) {
        requireFits(cutter, blank);
        return StopBlocks.headLeading(channel.startMm(), channel.endMm(), channel.widthMm(), cutter, blank, style());
    }

    /**
     * {@return where the stops sit for the adjuster's pocket, with the blank's head end leading}
     *
     * @param cutter for the pocket, no wider than the pocket, nor than the pocket is long
     * @param blank that holds the channel
     * @throws ArithmeticException if the channel has no pocket
     * @throws IllegalArgumentException if channel, cutter and blank do not go together
     */
    public StopBlocks pocketStops(Cutter cutter, Blank blank) {
        requirePocket();
        double narrowest = Math.min(channel.adjusterPocketWidthMm(), channel.adjusterPocketLengthMm());
        if (!(cutter.diameterMm() <= narrowest)) {
            throw LibraryUnits.refused(
                    "cutter diameter",
                    "at-most",
                    style().brief(narrowest) + " or less (the pocket's width and length)",
                    cutter.diameter());
        }
        requireFits(blank);
        double start = channel.adjusterPocketStartMm();
        double end = start + channel.adjusterPocketLengthMm();
        return StopBlocks.headLeading(start, end, channel.adjusterPocketWidthMm(), cutter, blank, style());
    }

    private void requirePocket() {
        if (!channel.hasAdjusterPocket()) {
            throw NoAnswer.because(
                    "pocket", "no-pocket", "this channel has no pocket: give it one, by pocket(length, width, depth)");
        }
    }

    /**
     * {@return the side clearance of the rod after one run of a cutter: cutter and runout less rod; below 0 when one
     * run is too narrow for the rod} A cutter that does not run true widens the slot by its runout and does not move
     * its middle.
     *
     * @param cutter the cutter
     */
    public Amount<Length> sideClearance(Cutter cutter) {
        return style().amount(Objects.requireNonNull(cutter, "cutter").slotWidthMm()
                - channel.reinforcement().widthMm());
    }

    /**
     * {@return what to beware of with this slot and a cutter; the machine's own instructions first}
     *
     * @param cutter the cutter
     */
    public Cautions cautions(Cutter cutter) {
        return Cautions.forSlot(channel, cutter);
    }

    /**
     * {@return what to beware of with this slot, a cutter and a blank; the machine's own instructions first}
     *
     * @param cutter the cutter
     * @param blank the blank
     */
    public Cautions cautions(Cutter cutter, Blank blank) {
        requireFits(cutter, blank);
        return Cautions.forSlot(channel, cutter, blank);
    }

    private void requireFits(Cutter cutter, Blank blank) {
        if (!(Objects.requireNonNull(cutter, "cutter").diameterMm()
                < Objects.requireNonNull(blank, "blank").widthMm())) {
            throw LibraryUnits.refused(
                    "cutter diameter",
                    "less-than",
                    "less than the blank's width of " + blank.width(),
                    cutter.diameter());
        }
        if (!(cutter.diameterMm() <= channel.lengthMm())) {
            throw LibraryUnits.refused(
                    "cutter diameter",
                    "at-most",
                    "no more than the channel's length of " + style().brief(channel.lengthMm()),
                    cutter.diameter());
        }
        requireFits(blank);
    }

    void requireFits(Blank blank) {
        double deepest = Math.max(depth().deepestMm(), channel.adjusterPocketDepthMm());
        if (!(deepest < Objects.requireNonNull(blank, "blank").thicknessMm())) {
            throw LibraryUnits.refused(
                    "channel depth",
                    "less-than",
                    "less than the blank's thickness of " + blank.thickness(),
                    style().amount(deepest));
        }
        double widest = Math.max(channel.widthMm(), channel.adjusterPocketWidthMm());
        if (!(widest < blank.widthMm())) {
            throw LibraryUnits.refused(
                    "channel width",
                    "less-than",
                    "less than the blank's width of " + blank.width(),
                    style().amount(widest));
        }
        double head = -blank.nutFromHeadEndMm();
        double heel = blank.lengthMm() - blank.nutFromHeadEndMm();
        if (!(channel.startMm() >= head - LENGTH_SLACK_MM)) {
            throw LibraryUnits.refused(
                    "channel start",
                    "at-least",
                    style().brief(head) + " or more (the blank's head end, from the nut)",
                    style().amount(channel.startMm()));
        }
        if (!(channel.endMm() <= heel + LENGTH_SLACK_MM)) {
            throw LibraryUnits.refused(
                    "channel end",
                    "at-most",
                    style().brief(heel) + " or less (the blank's heel end, from the nut)",
                    style().amount(channel.endMm()));
        }
    }

    /** {@return the channel} */
    public Channel channel() {
        return channel;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {channel};
    }
}
