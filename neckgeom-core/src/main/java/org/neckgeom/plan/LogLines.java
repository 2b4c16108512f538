package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.SlotOffset;
import org.neckgeom.measure.Estimate;
import org.neckgeom.state.LogEntry;
import org.neckgeom.state.ShopLog;
import org.neckgeom.state.ShopStep;

/** What the readings of a job are to the log of its shop. */
final class LogLines {

    private LogLines() {}

    static ShopLog of(Stages plan, String date) {
        Inputs job = plan.job();
        List<LogEntry> lines = new ArrayList<>(moves(job, plan.slot(), date));
        for (MeasuredNeck.OffsetRead one : job.measured().offsets()) {
            String name = one.name(job.style());
            lines.add(
                    one.feature() == MeasuredNeck.Located.FINGERBOARD
                            ? line(job, date, ShopStep.GLUING, name, one.offset())
                            : line(job, date, ShopStep.LOCATING, name, uncut(one.offset(), job)));
        }
        job.measured()
                .of(NeckFeature.FINGERBOARD_OFFSET)
                .ifPresent(read ->
                        lines.add(line(job, date, ShopStep.GLUING, NeckFeature.FINGERBOARD_OFFSET.toString(), read)));
        return ShopLog.of(lines);
    }

    /** What was located and then cut shows the locating the less, the more the cut itself strays. */
    private static Estimate<Length> uncut(Estimate<Length> read, Inputs job) {
        double cut = Math.sqrt(job.workmanship().cutting().libraryVariance());
        return Estimate.of(read.value(), job.style().amount(StrictMath.hypot(read.libraryUncertainty(), cut)));
    }

    private static LogEntry line(Inputs job, String date, ShopStep step, String feature, Estimate<Length> read) {
        return LogEntry.on(date, step)
                .read(read.value())
                .standardUncertainty(read.standardUncertainty())
                .of(job.neck().name(), feature);
    }

    /**
     * Each move between two trial cuts that show the slot: by how much it came nearer the fence, the widths of the
     * two pieces taken out, against what the fence was moved.
     */
    private static List<LogEntry> moves(Inputs job, SlotStage slot, String date) {
        List<LogEntry> lines = new ArrayList<>();
        Optional<SlotOffset> before = Optional.empty();
        List<FenceMove> moved = new ArrayList<>();
        int round = 0;
        for (CentringStep step : job.steps()) {
            step.move().ifPresent(moved::add);
            if (step.cut().isEmpty()) {
                continue;
            }
            Optional<SlotOffset> now = slot.shownBy(step.cut().get());
            round++;
            if (before.isPresent() && now.isPresent() && moved.size() == 1) {
                double u =
                        StrictMath.hypot(before.get().uncertaintyMm(), now.get().uncertaintyMm());
                lines.add(LogEntry.on(date, ShopStep.FENCE_MOVE)
                        .read(job.style()
                                .amount(before.get().amountMm() - now.get().amountMm()))
                        .meant(job.style().amount(moved.get(0).towardMm()))
                        .standardUncertainty(job.style().amount(u))
                        .of(job.neck().name(), "trial cut " + round));
            }
            before = now;
            moved.clear();
        }
        return lines;
    }
}
