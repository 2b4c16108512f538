package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import javax.measure.quantity.Length;
import org.neckgeom.channel.SlotOffset;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.Head;
import org.neckgeom.order.Operation;
import org.neckgeom.units.LengthStyle;

/** The part of a plan that lists what has been read on the neck, and where readings contradict each other. */
final class ReadParts {

    /** Two readings of one thing farther apart than three of their standard uncertainties are not of one thing. */
    private static final double APART = 3;

    private static final double HAIR = 1e-9;

    private ReadParts() {}

    static Optional<PlanPart> of(Stages plan) {
        return plan.measured().isEmpty() ? Optional.empty() : Optional.of(read(plan));
    }

    private static PlanPart read(Stages plan) {
        MeasuredNeck readings = plan.measured();
        LengthStyle style = plan.style();
        PlanSection.Draft draft = PlanSection.titled(SectionCode.READINGS, style);
        for (NeckFeature feature : NeckFeature.values()) {
            readings.of(feature)
                    .ifPresent(reading -> draft.row(feature.key(), feature.toString(), Kind.ESTIMATE, reading));
        }
        readings.scarfAngle().ifPresent(reading -> draft.row("scarfAngle", "scarf angle", Kind.ESTIMATE, reading));
        int offsets = 0;
        for (MeasuredNeck.OffsetRead one : readings.offsets()) {
            draft.row("offset" + ++offsets, one.name(style) + " off the channel", Kind.ESTIMATE, one.offset());
        }
        int backs = 0;
        for (Map.Entry<Double, Estimate<Length>> back : readings.backDepths().entrySet()) {
            double x = back.getKey();
            draft.row(
                    "back" + ++backs,
                    draft.words("back-at", "back at {station:brief}").with("station", Kind.MM, x),
                    draft.words("depth", "{depth}; drawn {drawn:brief}")
                            .with("depth", Kind.ESTIMATE, back.getValue())
                            .with("drawn", Kind.MM, plan.made().drawnDepthMm(x)));
        }
        if (!readings.stiffness().isEmpty()) {
            draft.row(
                    "stiffness",
                    "stiffness",
                    draft.words("stiffness-read", "{count:of reading/readings}; see relief below")
                            .with("count", Kind.WHOLE, readings.stiffness().count()));
        }
        return PlanPart.of(
                draft.note("in-place-of", "each narrows what was assumed, and the rest is judged on it"), agree(plan));
    }

    private static PlanCheck agree(Stages plan) {
        List<Statement> quarrels = quarrels(plan);
        LengthStyle style = plan.style();
        boolean agree = quarrels.isEmpty();
        return new PlanCheck(
                CheckCode.READINGS_AGREE,
                new Finding.Conflicting(quarrels.size(), true),
                agree
                        ? plan.words("readings", "{count:of reading/readings}")
                                .with("count", Kind.WHOLE, plan.measured().count())
                        : quarrels.get(0),
                plan.words("no-contradiction", "no two contradict each other"),
                agree ? plan.words("go-on", "Go on with what is left.") : readAgain(style, quarrels));
    }

    private static Statement readAgain(LengthStyle style, List<Statement> quarrels) {
        if (quarrels.size() == 1) {
            return Statement.of("read-both-again", "Read both again before you go on.", style);
        }
        List<String> braces = IntStream.range(1, quarrels.size())
                .mapToObj(i -> "{other" + i + "}")
                .toList();
        Statement again = Statement.of(
                "read-again", "Read again before you go on. Besides: " + String.join("; ", braces) + ".", style);
        for (int i = 1; i < quarrels.size(); i++) {
            again = again.with("other" + i, Kind.ANSWER, quarrels.get(i));
        }
        return again;
    }

    private static List<Statement> quarrels(Stages plan) {
        List<Statement> quarrels = new ArrayList<>();
        channelUnread(plan).ifPresent(quarrels::add);
        tooDeep(plan).ifPresent(quarrels::add);
        carvedThrough(plan).ifPresent(quarrels::add);
        slotElsewhere(plan).ifPresent(quarrels::add);
        scarfElsewhere(plan).ifPresent(quarrels::add);
        doubtful(plan).ifPresent(quarrels::add);
        return quarrels;
    }

    /** A reading that the others and the causes of the neck's errors make all but impossible. */
    private static Optional<Statement> doubtful(Stages plan) {
        return plan.state()
                .state()
                .agreement()
                .suspect()
                .map(one -> plan.words("doubtful", "{name} reads {value}, expected {expected}: read it again")
                        .with("name", Kind.NAME, one.reading().name())
                        .with("value", Kind.ESTIMATE, one.reading().value())
                        .with("expected", Kind.ESTIMATE, one.expected()));
    }

    /** What closes or undercuts the channel has been read, and nothing of the channel. */
    private static Optional<Statement> channelUnread(Stages plan) {
        Set<String> read = plan.measured().readAt();
        if (read.contains(Operation.CUT_ROD_CHANNEL)) {
            return Optional.empty();
        }
        String late = read.contains(Operation.CARVE_THE_NECK)
                ? "the back has been read as carved"
                : read.contains(Operation.GLUE_FINGERBOARD) ? "the board has been read as glued" : "";
        return late.isEmpty()
                ? Optional.empty()
                : Optional.of(plan.words(
                        "channel-unread",
                        late + ", of the channel under it nothing: it is taken as drawn, if it was cut before"));
    }

    private static Optional<Statement> tooDeep(Stages plan) {
        double thick = plan.blank().thicknessMm();
        Optional<Estimate<Length>> depth = plan.measured().of(NeckFeature.CHANNEL_DEPTH);
        if (depth.filter(read -> read.libraryValue() >= thick).isPresent()) {
            return Optional.of(plan.words(
                            "channel-too-deep", "the channel reads {depth:brief} deep in a blank {blank:brief} thick")
                    .with("depth", Kind.MM, depth.get().libraryValue())
                    .with("blank", Kind.MM, thick));
        }
        boolean hasHeel = plan.neck().heel().isPresent();
        double shaft = hasHeel ? plan.made().heelStartMm() : Double.POSITIVE_INFINITY;
        for (Map.Entry<Double, Estimate<Length>> back :
                plan.measured().backDepths().entrySet()) {
            double over = back.getValue().libraryValue() - thick;
            if (back.getKey() < shaft && over > APART * back.getValue().libraryUncertainty() + HAIR) {
                return Optional.of(plan.words(
                                "back-too-deep",
                                "the back reads {depth:brief} deep at {station:brief}, in a blank {blank:brief} thick")
                        .with("depth", Kind.MM, back.getValue().libraryValue())
                        .with("station", Kind.MM, back.getKey())
                        .with("blank", Kind.MM, thick));
            }
        }
        return Optional.empty();
    }

    private static Optional<Statement> carvedThrough(Stages plan) {
        MeasuredStage made = plan.made();
        for (Map.Entry<Double, Estimate<Length>> back :
                plan.measured().backDepths().entrySet()) {
            double floor = made.channel().depthAtMm(back.getKey());
            if (floor >= back.getValue().libraryValue()) {
                return Optional.of(plan.words(
                                "carved-through",
                                "at {station:brief} the back reads {depth:brief} deep over a channel of {floor:brief}:"
                                        + " carved through to the rod")
                        .with("station", Kind.MM, back.getKey())
                        .with("depth", Kind.MM, back.getValue().libraryValue())
                        .with("floor", Kind.MM, floor));
            }
        }
        return Optional.empty();
    }

    private static Optional<Statement> slotElsewhere(Stages plan) {
        Optional<Estimate<Length>> read = plan.measured().of(NeckFeature.SLOT_OFFSET);
        if (read.isEmpty() || plan.job().steps().isEmpty()) {
            return Optional.empty();
        }
        SlotOffset promised = plan.slot().rounds().place().start();
        double apart = read.get().libraryValue() - promised.amountMm();
        double u = StrictMath.hypot(read.get().libraryUncertainty(), promised.uncertaintyMm());
        return Math.abs(apart) > APART * u + HAIR
                ? Optional.of(plan.words(
                                "slot-elsewhere",
                                "the slot lies {apart:size small} from where the trial cuts put it, u {standardUncertainty:small}: the fence"
                                        + " or the blank moved, or the other edge rode the fence")
                        .with("apart", Kind.MM, apart)
                        .with("standardUncertainty", Kind.MM, u))
                : Optional.empty();
    }

    /** A saw is set to half a degree; a scarf farther off than that and its reading was drawn otherwise. */
    private static Optional<Statement> scarfElsewhere(Stages plan) {
        double most = Math.toRadians(5);
        return plan.measured().scarfAngle().flatMap(read -> {
            double drawn = plan.neck().head().map(Head::angleRad).orElse(read.libraryValue());
            double off = read.libraryValue() - drawn;
            return Math.abs(off) > most
                    ? Optional.of(plan.words(
                                    "scarf-elsewhere",
                                    "the scarf reads {off:size 1} " + (off > 0 ? "steeper" : "flatter")
                                            + " than drawn: was another angle read?")
                            .with("off", Kind.RAD, off))
                    : Optional.empty();
        });
    }
}
