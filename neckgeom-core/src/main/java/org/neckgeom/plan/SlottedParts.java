package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.TunerPost;

/** The parts of a plan that belong to a slotted head: walls and web, where rollers end, ramps for the strings. */
final class SlottedParts {

    /** Least outer wall and least middle web, mm; common practice: 12 to 14 and 17 to 20. */
    private static final double WALL_MM = 12;

    private static final double WEB_MM = 17;

    /** A roller's tip is this far in the web at least, and this far from the other roller's at least: half of it each, mm. */
    private static final double IN_THE_WEB_MM = 3;

    private static final double FROM_THE_MIDDLE_MM = 1;

    /** Room of a string over the face, mm; common practice. */
    private static final double CLEAR_MM = 0.5;

    private SlottedParts() {}

    static List<PlanCheck> checks(Stages plan, PlanSection.Draft draft, Head head) {
        double wall = head.slotWallMm();
        double web = head.slotWebMm();
        draft.row(
                "slots",
                "slots",
                plan.words(
                                "slots",
                                "{from:brief} to {to:brief} from the nut line, {wide:brief} wide; across: wall {wall:brief},"
                                        + " slot, web {web:brief}, slot, wall")
                        .with("from", Kind.MM, head.slotFromMm())
                        .with("to", Kind.MM, head.slotFromMm() + head.slotLengthMm())
                        .with("wide", Kind.MM, head.slotWidthMm())
                        .with("wall", Kind.MM, wall)
                        .with("web", Kind.MM, web));
        List<PlanCheck> checks = new ArrayList<>();
        checks.add(wood(
                plan,
                CheckCode.SLOT_WALLS,
                wall,
                WALL_MM,
                "A wider head, narrower slots, or slots nearer the middle."));
        checks.add(wood(
                plan,
                CheckCode.SLOT_WEB,
                web,
                WEB_MM,
                "A wider head, narrower slots, or slots farther from the middle."));
        head.rollerLength().ifPresent(length -> checks.add(rollers(plan, head, length.libraryValue())));
        if (head.hasRollers()) {
            ramps(plan, draft, head);
        }
        return checks;
    }

    private static PlanCheck wood(Stages plan, CheckCode code, double mm, double least, String more) {
        Finding finding = new Finding.Computed(
                plan.style().amount(mm), Limits.atLeast(plan.style().amount(least)), Outcome.OPEN);
        return new PlanCheck(
                code,
                finding,
                plan.words("wood", "{wood:brief}").with("wood", Kind.MM, mm),
                plan.words("common-practice", "{least:brief} or more (common practice)")
                        .with("least", Kind.MM, least),
                finding.outcome() == Outcome.OK
                        ? plan.words("rout-the-slots", "Rout the slots while the head is square.")
                        : plan.words("more-wood", more));
    }

    /** From the side of the head through wall and slot into the web, clear of the roller from the other side. */
    private static PlanCheck rollers(Stages plan, Head head, double length) {
        double through = head.slotWallMm() + head.slotWidthMm();
        double least = through + IN_THE_WEB_MM;
        double most = through + head.slotWebMm() / 2 - FROM_THE_MIDDLE_MM;
        Finding finding = new Finding.Computed(
                plan.style().amount(length),
                Limits.between(
                        plan.style().amount(Math.min(least, most)), plan.style().amount(most)),
                Outcome.STOP);
        return new PlanCheck(
                CheckCode.ROLLERS_END_IN_THE_WEB,
                finding,
                plan.words("rollers", "{length:brief} from the side").with("length", Kind.MM, length),
                plan.words("in-the-web", "{least:brief} to {most:brief}: wall, slot and some of the web")
                        .with("least", Kind.MM, least)
                        .with("most", Kind.MM, most),
                finding.outcome() == Outcome.OK
                        ? plan.words(
                                "drill-for-rollers",
                                "Drill for the rollers from the sides, before the slots are routed.")
                        : plan.words("other-rollers", "Other tuners, or another width of wall, slot or web."));
    }

    /**
     * Where a string comes down to its roller: in the head's frame it runs straight from the nut, {@code u = -h sin a}, {@code v = h
     * cos a}, to its roller. Under the face before the slot's end it needs a ramp.
     */
    private static void ramps(Stages plan, PlanSection.Draft draft, Head head) {
        double high = plan.shape().slotHeight().libraryValue();
        double nutU = -high * StrictMath.sin(head.angleRad());
        double nutV = high * StrictMath.cos(head.angleRad()) - head.veneerMm();
        Map<Double, Double> places = new TreeMap<>();
        for (TunerPost post : head.posts()) {
            places.put(post.alongMm(), post.aboveMm());
        }
        places.forEach((along, over) -> {
            double slope = (nutV - over) / (along - nutU);
            double atSlot = nutV - slope * (head.slotFromMm() - nutU);
            double from = nutU + (nutV - CLEAR_MM) / slope;
            draft.row(
                    "ramp" + places.keySet().stream().toList().indexOf(along),
                    draft.words("roller", "roller at {along:brief}").with("along", Kind.MM, along),
                    ramp(draft, atSlot, from)
                            .with("height", Kind.MM, atSlot)
                            .with("deep", Kind.MM, CLEAR_MM - atSlot)
                            .with("begin", Kind.MM, from)
                            .with("break", Kind.RAD, head.angleRad() + StrictMath.atan(slope)));
        });
    }

    private static Statement ramp(PlanSection.Draft draft, double atSlot, double from) {
        String down = "string {break:1} down, {height:size 1|2} " + (atSlot < 0 ? "under" : "over")
                + " the face at the slot's end";
        return atSlot < CLEAR_MM
                ? draft.words(
                        "ramp",
                        down + ": file a ramp {deep:1|2} deep there"
                                + (from > 0 ? ", from {begin:brief} on" : ", from the nut on"))
                : draft.words("no-ramp", down + ": no ramp");
    }
}
