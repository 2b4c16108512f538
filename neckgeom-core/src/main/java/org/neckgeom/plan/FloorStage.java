package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.kernel.Once;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.solid.BackShape;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** The wood under the channel as the neck is now. */
final class FloorStage {

    private final Inputs job;
    private final MeasuredStage made;
    private final SlotStage slot;
    private final Supplier<FloorThickness> wood = new Once<>(() -> under(made().channel(), made().back()));

    FloorStage(Inputs job, MeasuredStage made, SlotStage slot) {
        this.job = job;
        this.made = made;
        this.slot = slot;
    }

    private MeasuredStage made() {
        return made;
    }

    FloorThickness wood() {
        return wood.get();
    }

    /** Whether bass and treble side of the back have the same section. */
    boolean isEven() {
        BackProfile back = job.neck().back();
        return back.bassPower() == back.treblePower();
    }

    /**
     * The wood under a channel and a back, with the slot as far off as it is now. Which edge ran along the fence is not known, so of
     * an uneven back the thinner way counts, where the ways differ.
     */
    FloorThickness under(Channel channel, BackShape back) {
        SlotPlace place = slot.place();
        double offset = place.offsetMmAt(made.channel().startMm());
        double skew = place.skew().libraryValue();
        FloorThickness centred = FloorThickness.under(channel, back);
        List<FloorThickness> ways = new ArrayList<>();
        for (int way : new int[] {1, -1}) {
            ways.add(centred.offCentre(job.style().amount(way * offset))
                    .skewed(Amount.ofLibrary(way * skew, ShopUnit.DEGREE)));
        }
        boolean same = isEven() || offset == 0 && skew == 0;
        boolean first =
                same || ways.get(0).least().woodMm() <= ways.get(1).least().woodMm();
        return ways.get(first ? 0 : 1);
    }
}
