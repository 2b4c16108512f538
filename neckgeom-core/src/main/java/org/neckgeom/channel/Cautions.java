package org.neckgeom.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Channel;
import org.neckgeom.shop.Cutter;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.LengthStyle;

/**
 * The cautions that apply to a job, in the order they matter. Immutable.
 *
 * <p>Common practice, gathered from general trade guidance. The machine's own instructions come first, then local rules
 * and licensed practice.
 */
public final class Cautions extends ValueAnswer {

    /**
     * The general rule of feed, seen from above: the leading point is where the cutter meets the oncoming work. Common
     * practice, to be confirmed by the machine's instructions.
     */
    public static final String FEED =
            "The fence is on the side toward which the cutter's leading point moves; then the cut"
                    + " drives the work onto the fence";

    static final Caution INSTRUCTIONS = new Caution(
            "MACHINE_FIRST",
            "The machine's own instructions come first, then local rules",
            "they know the machine, these figures do not");
    static final Caution CLIMB_FEED =
            new Caution("CLIMB_FEED", FEED, "fed with its turn the cutter throws the work and pulls the hand in");
    static final Caution SECOND_PASS = new Caution(
            "SECOND_PASS",
            "A slot that is begun is widened with the same edge and the fence away from the cutter, never toward it",
            "away, " + SecondPass.FENCE_AWAY + "; toward it, " + SecondPass.FENCE_TOWARD);
    static final Caution STOPPED_CUT = new Caution(
            "STOPPED_CUT",
            "Lower the blank against the rear stop; at the end switch off and let the cutter stop before lifting",
            "lifting off a running cutter is the usual accident");
    static final Caution DEPTH_PER_PASS = new Caution(
            "DEPTH_PER_PASS",
            "No pass deeper than half the cutter's diameter, a quarter in hardwood",
            "a deep pass burns, bends the cutter and snatches");
    static final Caution CREEP = new Caution(
            "CUTTER_CREEP",
            "Clean collet, shank short of the bottom; read the depth after every pass",
            "a cutter that creeps out is the most reported cause of a spoiled slot");
    static final Caution NARROW_STOCK = new Caution(
            "NARROW_STOCK",
            "Hold narrow or short stock in a carrier, or leave it wide until it is slotted",
            "hands belong 75 to 100 mm (3 to 4 in) from the cutter");
    static final Caution TAPE = new Caution(
            "TAPE_SLIPS",
            "Where tape holds the work: clean faces, enough of it, and screws or pins in the waste besides",
            "double-sided tape slips or lifts without warning");
    static final Caution DUST = new Caution(
            "DUST",
            "Extract the dust and wear a mask, with every wood",
            "hardwood dust causes cancer of the nose and asthma; some woods sensitise for life");
    static final Caution CARBON_DUST = new Caution(
            "CARBON_DUST",
            "Saw carbon bars to length wet or under suction, no bare skin",
            "its dust itches, and conducts electricity");
    static final Caution FLAT_FACE = new Caution(
            "FLAT_FACE",
            "The glue face flat on the table; of a bowed blank the hollow side",
            "it cuts too shallow where it is off the table");
    static final Caution SHORT_FLUTES = new Caution(
            "SHORT_FLUTES",
            "This slot is deeper than the cutter's flutes are long: take another cutter",
            "the shank rubs, burns and spoils the walls");
    static final Caution CUTTER_TOO_WIDE = new Caution(
            "CUTTER_TOO_WIDE",
            "This cutter makes the slot wider than the rod by more than 0.2 mm (8 thou)",
            "a loose rod rattles; tape, heat-shrink or a fillet holds it");
    static final Caution THIN_FLOOR = new Caution(
            "THIN_FLOOR",
            "Less than 3 mm (1/8 in) of the blank is left under the channel",
            "it breaks through, or bulges and splits at the adjuster");

    private static final double LOOSE_MM = 0.2;
    private static final double LEAST_FLOOR_MM = 3;
    private static final double SHORT_MM = 300;
    private static final double NARROW_MM = 75;
    private static final int SHOWN = 8;

    private static final Form<Cautions> FORM = Form.<Cautions>of("cautions")
            .fact("cautions", Kind.table(Caution.FORM), "the most pressing first", Cautions::list)
            .finds("cautions", "Cautions")
            .noteEach("cautions", "{sentence}", SHOWN, "and {more} more in list(), each with its reason");

    private final List<Caution> list;

    private Cautions(List<Caution> list) {
        super(FORM, LengthStyle.MILLIMETRES);
        this.list = List.copyOf(list);
    }

    static Cautions forSlot(Channel channel, Cutter cutter) {
        return new Cautions(slot(channel, cutter));
    }

    static Cautions forSlot(Channel channel, Cutter cutter, Blank blank) {
        List<Caution> all = slot(channel, cutter);
        double deepest = Math.max(
                channel.adjusterPocketDepthMm(), Math.max(channel.depthMm(), channel.depthMm() + channel.archMm()));
        if (blank.thicknessMm() - deepest < LEAST_FLOOR_MM) {
            all.add(1, THIN_FLOOR);
        }
        if (!(blank.lengthMm() < SHORT_MM || blank.widthMm() < NARROW_MM)) {
            all.remove(NARROW_STOCK);
        }
        boolean through = channel.startMm() <= -blank.nutFromHeadEndMm()
                && channel.endMm() >= blank.lengthMm() - blank.nutFromHeadEndMm();
        if (through) {
            all.remove(STOPPED_CUT);
        }
        return new Cautions(all);
    }

    private static List<Caution> slot(Channel channel, Cutter cutter) {
        List<Caution> all = new ArrayList<>();
        all.add(INSTRUCTIONS);
        double deepest = Math.max(channel.depthMm(), channel.depthMm() + channel.archMm());
        if (deepest > Objects.requireNonNull(cutter, "cutter").fluteLengthMm()
                        && cutter.shankMm() >= cutter.diameterMm()
                || deepest > cutter.stickOutMm()) {
            all.add(SHORT_FLUTES);
        }
        if (cutter.diameterMm() + cutter.runoutMm() - channel.reinforcement().widthMm() > LOOSE_MM
                && cutter.diameterMm() > channel.widthMm()) {
            all.add(CUTTER_TOO_WIDE);
        }
        all.addAll(List.of(
                STOPPED_CUT, CLIMB_FEED, SECOND_PASS, DEPTH_PER_PASS, CREEP, NARROW_STOCK, FLAT_FACE, TAPE, DUST));
        if (channel.reinforcement() instanceof Bar bar && bar.material() == Bar.Material.CARBON) {
            all.add(CARBON_DUST);
        }
        return all;
    }

    static Cautions of(List<Caution> list) {
        return new Cautions(list);
    }

    /** {@return the cautions as a list; at least one, the most pressing first} */
    public List<Caution> list() {
        return list;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {list};
    }
}
