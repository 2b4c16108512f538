package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.measure.quantity.Length;
import org.neckgeom.board.FretTable;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.CentringRounds;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.PassPlan;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.channel.SlotStep;
import org.neckgeom.channel.SlotVerdict;
import org.neckgeom.channel.StopBlocks;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.heel.HeelCorners;
import org.neckgeom.kernel.Once;
import org.neckgeom.neck.Neck;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.shop.Caution;
import org.neckgeom.solid.ChannelJig;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.JigCut;
import org.neckgeom.solid.NeckSolid;
import org.neckgeom.solid.ToolPath;
import org.neckgeom.state.JointChance;
import org.neckgeom.state.Known;
import org.neckgeom.state.NeckState;
import org.neckgeom.state.ReadingWorth;
import org.neckgeom.state.Requirement;
import org.neckgeom.strength.Relief;
import org.neckgeom.text.Report;
import org.neckgeom.units.LengthStyle;

/**
 * A plan of a whole neck: settings, cuts, checks and order of operations, from neck, blank, shop and readings. Made by
 * {@link Job#plan}; a new reading makes a new job, and that a new plan. Immutable.
 *
 * <p>Every answer has its accessor, and is worked out once, at the first question. Nothing here throws: what cannot be was
 * refused by the job, and what has no answer is a check with {@link Finding.NoSolution}.
 *
 * <p>Nothing here replaces the machine's own instructions, which come first, then local rules.
 *
 * @see Job
 */
public final class Plan {

    /** So many checks that are not OK fit where a value is printed. */
    private static final int MOST_SHOWN = 3;

    private final Stages stages;
    private final Supplier<List<PlanPart>> parts = new Once<>(this::worked);
    private final Supplier<PlanStatus> status = new Once<>(this::counted);
    private final Supplier<List<Repair>> repairs = new Once<>(() -> Repairs.of(stages()));

    Plan(Stages stages) {
        this.stages = stages;
    }

    /** {@return the neck as designed} */
    public Neck designed() {
        return stages.neck();
    }

    /** {@return the neck as it is now: what has been read in the place of what was drawn} */
    public Neck made() {
        return stages.made().design();
    }

    /**
     * {@return the one decision on the channel: may the neck be cut, and else what comes next; the decision for this job's
     * limit on the offset}
     */
    public SlotVerdict slot() {
        return stages.slot().verdict();
    }

    /** {@return the fence move that comes next; the move at the cutter; nothing unless {@link #slot} asks for one} */
    public Optional<FenceMove> move() {
        return slot().step() == SlotStep.MOVE ? Optional.of(slot().move()) : Optional.empty();
    }

    /**
     * {@return the trial cuts and fence moves with all that they are judged by: blank, fence, bench, gauges, rule; none
     * before the first cut}
     */
    public CentringRounds rounds() {
        return stages.slot().rounds();
    }

    /**
     * {@return where the channel runs in the neck: as read on the neck itself, else as trial cuts and moves put it,
     * else as a fence set by one cut would; against the blank's own middle}
     */
    public SlotPlace slotPlace() {
        return stages.slot().place();
    }

    /** {@return the passes in which the channel is cut; by the shop's rule} */
    public PassPlan passes() {
        return stages.slot().passes();
    }

    /** {@return the way of the cutter's tip through those passes, points from the nut and the middle} */
    public ToolPath channelPath() {
        return stages.slot().path();
    }

    /** {@return where the stops are clamped for the channel, at the ends that are there when it is cut} */
    public StopBlocks stops() {
        return stages.slot().stops();
    }

    /** {@return the one shape of the neck as designed, that tables, drawings, checks, blanks and meshes ask} */
    public NeckSolid solid() {
        return stages.shape().solid().openAt(stages.slot().stops().openEnds());
    }

    /** {@return the frets; every fret from the nut} */
    public FretTable frets() {
        return FretTable.of(stages.neck());
    }

    /** {@return the scarf joint as designed, if the head is scarfed on; the joint, or nothing} */
    public Optional<ScarfJoint> scarf() {
        return stages.shape().scarf();
    }

    /**
     * {@return a jig that sits in the channel: where its edges, stops and pins lie; nothing where the neck has no channel or not the
     * part to be cut}
     *
     * @param cut that the jig is for
     */
    public Optional<ChannelJig> jig(JigCut cut) {
        Neck neck = designed();
        boolean has = switch (Objects.requireNonNull(cut, "cut")) {
            case HEEL -> neck.heel().isPresent();
            case HEAD -> neck.head().isPresent();
            case SCARF -> scarf().isPresent();
            default -> true;
        };
        if (!has || neck.channel().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                cut == JigCut.SCARF
                        ? ChannelJig.scarfSled(solid(), scarf().orElseThrow())
                        : ChannelJig.of(cut, solid()));
    }

    /**
     * {@return the board that shaft and head are sawn from as designed, its marks at the blank's edges, if the head is
     * scarfed on; the board, or nothing}
     */
    public Optional<ScarfBoard> scarfBoard() {
        return stages.shape().scarfBoard();
    }

    /**
     * {@return the neck's angle with all that it comes from, such as heel face and reach; nothing without a neck set, or where
     * no angle brings the strings to the saddle}
     */
    public Optional<BackSet> neckSet() {
        return stages.shape().neckSet();
    }

    /**
     * {@return what comes off at the corners of the heel's mating face, where height or centreline have been read at
     * the bridge and do not keep their limits; the four cuts, or nothing without such a reading, without heel or neck set}
     */
    public Optional<HeelCorners> heelCorners() {
        return stages.state().heelCorners();
    }

    /**
     * {@return the wood under the channel as the neck is now: its back with volute and heel, carved as far as read, the
     * channel as cut, as far off the middle as it is known to lie; of an uneven back the thinner way; ahead of the nut at
     * least}
     */
    public FloorThickness floorThickness() {
        return stages.floor().wood();
    }

    /**
     * {@return what strings and rod do to the neck; the relief under the strings and what the rod can do about it;
     * nothing where wood or strings are not known, or the channel is through the back}
     */
    public Optional<Relief> relief() {
        return stages.strength().relief();
    }

    /**
     * {@return how well each kind of step is done: as given, else common practice, and the channel's centring as it is
     * known now}
     */
    public Workmanship workmanship() {
        return stages.state().workmanship();
    }

    /** {@return what is known of the neck: the causes of its errors, and what has been read on it} */
    public NeckState state() {
        return stages.state().state();
    }

    /**
     * {@return the reading most worth taking next: an offset of what is made already, or one of the two at the bridge once the
     * heel is fitted; nothing where no reading is left that helps}
     */
    public Optional<ReadingWorth> nextReading() {
        return stages.state().nextReading();
    }

    /**
     * {@return what is known of a deviation of this neck, made from its channel: every reading on it counts, where it was read}
     *
     * @param which of the five
     */
    public Known known(BudgetCode which) {
        return stages.state().known(Objects.requireNonNull(which, "which"));
    }

    /**
     * {@return a deviation of this neck with its limits}
     *
     * @param which of the five
     */
    public Requirement requirement(BudgetCode which) {
        return stages.state().requirement(Objects.requireNonNull(which, "which"));
    }

    /** {@return the chance that all five deviations keep their limits together} */
    public JointChance chanceOfAll() {
        return stages.state().all();
    }

    /**
     * {@return the same as a tolerance stack-up, the spreads taken as given: what was read is one part of it}
     *
     * @param which of the five
     */
    public Budget<Length> budget(BudgetCode which) {
        return known(which).budget();
    }

    /** {@return the five stack-ups, in the order of {@link BudgetCode}} */
    public List<Budget<Length>> budgets() {
        return Arrays.stream(BudgetCode.values()).map(this::budget).toList();
    }

    /**
     * {@return the operations and the orders to keep; what is left to do, of the usual neck's work by default}
     *
     * <p>What this neck lacks is no step of it: scarf and gluing of a head in one piece with the shaft, which is sawn out
     * instead, wings of a head no wider than the blank, blocks of a heel that the blank is deep enough for. Where a joint in
     * the shaft would saw the channel off, gluing the head is kept before cutting the channel. What has
     * been read on the neck is done, and what comes before it in the order is taken as done.
     */
    public OrderOfWork work() {
        return stages.order().left();
    }

    /** {@return what is left of {@link #work} in its order, each operation with its reason} */
    public OrderPlan order() {
        return stages.order().plan();
    }

    /**
     * {@return the repairs of what has been read out of its limit: reading by reading, those that can be done first, the
     * least harm first; empty where all is well} After the last possible one a reading may have those that something rules
     * out; where all are, the last is to start again.
     */
    public List<Repair> repairs() {
        return repairs.get();
    }

    private Stages stages() {
        return stages;
    }

    /** {@return everything that is held against a limit, in the order of work; one or more} */
    public List<PlanCheck> checks() {
        return parts.get().stream().flatMap(part -> part.checks().stream()).toList();
    }

    /**
     * {@return a check by its code; the first check of this code; nothing where this neck has none}
     *
     * @param code such as {@code CheckCode.CHANNEL_CENTRED}
     */
    public Optional<PlanCheck> check(CheckCode code) {
        Objects.requireNonNull(code, "code");
        return checks().stream().filter(check -> check.code() == code).findFirst();
    }

    /** {@return the parts of the plan, in the order of work; one or more} */
    public List<PlanSection> sections() {
        return parts.get().stream().map(PlanPart::section).toList();
    }

    /**
     * {@return a section by its code; nothing where this neck has none}
     *
     * @param code such as {@code SectionCode.SCARF}
     */
    public Optional<PlanSection> section(SectionCode code) {
        Objects.requireNonNull(code, "code");
        return sections().stream()
                .filter(section -> section.code().equals(code.code()))
                .findFirst();
    }

    /**
     * {@return the cautions that apply to this neck in this shop; one or more} The machine's instructions and local
     * rules come first.
     */
    public List<Caution> cautions() {
        return RodSlot.of(stages.job().channel())
                .cautions(stages.shop().cutter(), stages.blank())
                .list();
    }

    /**
     * {@return what is spare: the wood under the channel where it is least, with its limit, and the blank's width on each side of
     * the neck where it is widest; rows rounded down}
     */
    public PlanSection spare() {
        return SpareParts.of(stages);
    }

    /** {@return the style it is printed in} */
    public LengthStyle style() {
        return stages.style();
    }

    private List<PlanPart> worked() {
        List<PlanPart> all = new ArrayList<>();
        ReadParts.of(stages).ifPresent(all::add);
        Repairs.section(stages, repairs()).ifPresent(all::add);
        add(all, SectionCode.CHANNEL, CheckCode.CHANNEL_CENTRED, SetUpParts::of);
        add(all, SectionCode.HEAD, CheckCode.SHAPE, ShapeParts::of);
        add(all, SectionCode.STRINGS_AND_RELIEF, CheckCode.STRENGTH, StrengthParts::of);
        Attempt.atAll(() -> Optional.of(WhatIfParts.of(stages))).answer().ifPresent(all::addAll);
        add(all, SectionCode.ERRORS, CheckCode.STRING_LINE, plan -> List.of(BudgetParts.of(plan)));
        all.add(OrderPart.of(stages));
        return all.stream().map(part -> part.after(stages)).toList();
    }

    /** What has no answer is stated, and the rest is answered. */
    private void add(List<PlanPart> all, SectionCode section, CheckCode check, Function<Stages, List<PlanPart>> group) {
        Attempt<List<PlanPart>> parts = Attempt.atAll(() -> Optional.of(group.apply(stages)));
        parts.answer().ifPresent(all::addAll);
        parts.why()
                .ifPresent(why -> all.add(PlanPart.unanswered(
                        stages,
                        section,
                        check,
                        new Finding.NoSolution(why),
                        why,
                        "an answer",
                        stages.words("change-it", "Change what the sentence names."))));
    }

    /** {@return the status: how many checks are OK, open, or to stop for} */
    public PlanStatus status() {
        return status.get();
    }

    private PlanStatus counted() {
        return PlanStatus.of(designed().name(), checks(), style());
    }

    /** True for a plan of the same job; how lengths are printed is no part of it. */
    @Override
    public boolean equals(Object obj) {
        return obj instanceof Plan other && stages.job().isLike(other.stages.job());
    }

    @Override
    public int hashCode() {
        return stages.job().neck().hashCode();
    }

    /**
     * {@return the status, and the checks that are not OK, the worst first}
     *
     * @param style how lengths are printed
     */
    public String text(LengthStyle style) {
        Report report = Report.titled(status().text(style));
        List<PlanCheck> wanting = checks().stream()
                .filter(check -> check.outcome() != Outcome.OK)
                .sorted(Comparator.comparing(PlanCheck::outcome).reversed())
                .toList();
        for (PlanCheck check : wanting.subList(0, Math.min(MOST_SHOWN, wanting.size()))) {
            report.row(
                    check.outcome().toString(),
                    check.name() + ": " + check.result().text(style) + ". "
                            + check.action().text(style));
        }
        if (wanting.size() > MOST_SHOWN) {
            report.note("and " + (wanting.size() - MOST_SHOWN) + " more in checks()");
        }
        return report.note("sections() and checks() have the rest").toString();
    }

    /** Returns {@link #text} in the style of the job. */
    @Override
    public String toString() {
        return text(style());
    }
}
