package org.neckgeom.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Channel;
import org.neckgeom.shop.Caution;
import org.neckgeom.shop.Cutter;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.LengthStyle;

/**
 * The cautions that apply to a job, in the order they matter. Immutable.
 *
 * <p>Each has its source. The machine's own instructions come first, then local rules and licensed practice.
 */
public final class Cautions extends ValueAnswer {

    /** In the order they matter. */
    private static final List<String> EVERY_SLOT = List.of(
            "STOPPED_CUT",
            "END_OF_CUT",
            "CLIMB_FEED",
            "FULL_SLOT",
            "HANDS",
            "ISOLATE",
            "EYES_EARS",
            "SECOND_PASS",
            "DEPTH_PER_PASS",
            "CUTTER_CREEP",
            "NARROW_STOCK",
            "FLAT_FACE",
            "TAPE_SLIPS",
            "RUN_OUT",
            "DUST");

    private static final double LOOSE_MM = 0.2;
    private static final double LEAST_FLOOR_MM = 3;
    private static final double SHORT_MM = 300;
    private static final double NARROW_MM = 40;
    private static final int SHOWN = 5;

    private static final Form<Cautions> FORM = Form.<Cautions>of("cautions")
            .fact(
                    "cautions",
                    Kind.table(Caution.known("MACHINE_FIRST").form()),
                    "the most pressing first",
                    Cautions::list)
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
        if (blank.thicknessMm() - deepest(channel) < LEAST_FLOOR_MM) {
            all.add(1, Caution.known("THIN_FLOOR"));
        }
        if (!(blank.lengthMm() < SHORT_MM || blank.widthMm() < NARROW_MM)) {
            all.remove(Caution.known("NARROW_STOCK"));
        }
        boolean through = channel.startMm() <= -blank.nutFromHeadEndMm()
                && channel.endMm() >= blank.lengthMm() - blank.nutFromHeadEndMm();
        if (through) {
            all.removeAll(List.of(Caution.known("STOPPED_CUT"), Caution.known("RUN_OUT")));
        }
        return new Cautions(all);
    }

    private static List<Caution> slot(Channel channel, Cutter cutter) {
        List<Caution> all = new ArrayList<>();
        all.add(Caution.known("MACHINE_FIRST"));
        double deepest = deepest(channel);
        if (deepest > Objects.requireNonNull(cutter, "cutter").fluteLengthMm()
                        && cutter.shankMm() >= cutter.diameterMm()
                || deepest > cutter.stickOutMm()) {
            all.add(Caution.known("SHORT_FLUTES"));
        }
        if (cutter.slotWidthMm() - channel.reinforcement().widthMm() > LOOSE_MM
                && cutter.diameterMm() > channel.widthMm()) {
            all.add(Caution.known("CUTTER_TOO_WIDE"));
        }
        EVERY_SLOT.forEach(code -> all.add(Caution.known(code)));
        if (channel.reinforcement() instanceof Bar bar && bar.material() == Bar.Material.CARBON) {
            all.add(Caution.known("CARBON_DUST"));
        }
        return all;
    }

    /** Of the floor and the pocket. */
    private static double deepest(Channel channel) {
        return Math.max(
                channel.adjusterPocketDepthMm(), Math.max(channel.depthMm(), channel.depthMm() + channel.archMm()));
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
