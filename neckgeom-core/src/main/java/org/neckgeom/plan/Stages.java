package org.neckgeom.plan;

import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Neck;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.LengthStyle;

/**
 * All that follows from a job, in stages; each takes results of the stages before it and works its own out at the first
 * question.
 */
record Stages(
        Inputs job,
        ShapeStage shape,
        OrderStage order,
        MeasuredStage made,
        SlotStage slot,
        FloorStage floor,
        StrengthStage strength,
        StateStage state) {

    static Stages of(Inputs job) {
        ShapeStage shape = new ShapeStage(job);
        OrderStage order = new OrderStage(job, shape);
        MeasuredStage made = new MeasuredStage(job, shape);
        SlotStage slot = new SlotStage(job, shape, order, made);
        return new Stages(
                job,
                shape,
                order,
                made,
                slot,
                new FloorStage(job, made, slot),
                new StrengthStage(job, made),
                new StateStage(job, shape, order, slot));
    }

    Neck neck() {
        return job.neck();
    }

    Blank blank() {
        return job.blank();
    }

    Shop shop() {
        return job.shop();
    }

    MeasuredNeck measured() {
        return job.measured();
    }

    LengthStyle style() {
        return job.style();
    }

    boolean isDone(String operation) {
        return order.isDone(operation);
    }

    /** A sentence of the plan, whose facts are still to come. */
    Statement words(String code, String words) {
        return Statement.of(code, words, style());
    }

    /** What a check allows. */
    Statement limit(Limits<?> limits) {
        return words("limit", "{limit}").with("limit", Kind.LIMITS, limits);
    }
}
