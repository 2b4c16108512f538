package org.neckgeom.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.plan.SectionCode;

/**
 * An operation as the page has it: its place in the order, and the parts of the plan that are set or read at it.
 *
 * @param operation what is done
 * @param step its place in the order with the reason for it; nothing where it is done already
 * @param sections parts of the plan
 */
record StepPart(Operation operation, Optional<OrderPlan.Step> step, List<PlanSection> sections) {

    /** A note of a section that is not due in the order as it is. */
    private static final String NOT_DUE = "channel-first";

    /** Sections by the operation at which they are set, the first that a neck has. */
    private static final Map<SectionCode, List<String>> PLACES = Map.ofEntries(
            Map.entry(SectionCode.CENTRING, List.of(Operation.CUT_ROD_CHANNEL)),
            Map.entry(SectionCode.CHANNEL, List.of(Operation.CUT_ROD_CHANNEL)),
            Map.entry(SectionCode.CUTTER_LOAD, List.of(Operation.CUT_ROD_CHANNEL)),
            Map.entry(SectionCode.HEAD_AT_THE_FENCE, List.of(Operation.CUT_ROD_CHANNEL)),
            Map.entry(
                    SectionCode.BLANK_AND_CUTTING_LIST, List.of(Operation.SQUARE_THE_EDGES, Operation.MARK_THE_LINES)),
            Map.entry(SectionCode.LAMINATED, List.of(Operation.GLUE_UP_THE_STRIPS)),
            Map.entry(SectionCode.SCARF, List.of(Operation.CUT_SCARF)),
            Map.entry(SectionCode.HEAD_IN_ONE_PIECE, List.of(Operation.SAW_OUT_THE_HEAD)),
            Map.entry(SectionCode.HEAD, List.of(Operation.TRUE_THE_HEAD)),
            Map.entry(SectionCode.FRETS, List.of(Operation.SAW_FRET_SLOTS)),
            Map.entry(SectionCode.FANNED_FRETS, List.of(Operation.SAW_FRET_SLOTS)),
            Map.entry(SectionCode.FINGERBOARD, List.of(Operation.TAPER_THE_FINGERBOARD, Operation.GLUE_FINGERBOARD)),
            Map.entry(SectionCode.STRINGS_ACROSS, List.of(Operation.FIT_THE_NUT)),
            Map.entry(SectionCode.BACK, List.of(Operation.CARVE_THE_NECK)),
            Map.entry(SectionCode.WOOD_LEFT, List.of(Operation.CARVE_THE_NECK)),
            Map.entry(SectionCode.BARS, List.of(Operation.CUT_BAR_CHANNELS)),
            Map.entry(SectionCode.STRING_ANCHOR, List.of(Operation.FIT_THE_STRING_ANCHOR)),
            Map.entry(SectionCode.NECK_ANGLE, List.of(Operation.CUT_HEEL_JOINT, Operation.FIT_HEEL_TO_BODY)),
            Map.entry(SectionCode.HEEL, List.of(Operation.CUT_HEEL_JOINT, Operation.FIT_HEEL_TO_BODY)),
            Map.entry(SectionCode.STRINGS_AND_RELIEF, List.of(Operation.SET_UP)));

    StepPart {
        sections = List.copyOf(sections);
    }

    /** The operations done and left, in their order, each with what is set at it. */
    static List<StepPart> of(Contents contents) {
        Map<Operation, List<PlanSection>> sections = new LinkedHashMap<>();
        operations(contents).forEach(operation -> sections.put(operation, new ArrayList<>()));
        for (PlanSection section : contents.sections()) {
            place(contents, section)
                    .ifPresent(at -> sections.computeIfAbsent(at, operation -> new ArrayList<>())
                            .add(section));
        }
        List<StepPart> parts = new ArrayList<>();
        sections.forEach((operation, its) -> parts.add(new StepPart(operation, step(contents, operation), its)));
        return parts;
    }

    /** What is set at no operation, such as what was read, estimates, and what is not due. */
    static List<PlanSection> others(Contents contents) {
        return contents.sections().stream()
                .filter(section -> place(contents, section).isEmpty())
                .toList();
    }

    private static List<Operation> operations(Contents contents) {
        return Stream.concat(
                        contents.job().stream().flatMap(job -> job.plan().work().finished().stream()),
                        contents.order().stream()
                                .flatMap(order -> order.steps().stream())
                                .map(OrderPlan.Step::operation))
                .toList();
    }

    private static Optional<OrderPlan.Step> step(Contents contents, Operation operation) {
        return contents.order().stream()
                .flatMap(order -> order.steps().stream())
                .filter(step -> step.operation().equals(operation))
                .findFirst();
    }

    private static Optional<Operation> place(Contents contents, PlanSection section) {
        if (isWhatIf(section)) {
            return Optional.empty();
        }
        List<Operation> operations = operations(contents);
        return PLACES.entrySet().stream()
                .filter(place -> place.getKey().code().equals(section.code()))
                .flatMap(place -> place.getValue().stream())
                .flatMap(name -> operations.stream().filter(operation -> isCalled(operation, name)))
                .findFirst();
    }

    /** A groove or a bar's channel has the place of a rod's. */
    static boolean isCalled(Operation operation, String usual) {
        return operation.name().equals(usual) || usual.equals(Operation.CUT_ROD_CHANNEL) && operation.cutsTheChannel();
    }

    /** True for what is not set unless something else comes true. */
    static boolean isWhatIf(PlanSection section) {
        return section.code().equals(SectionCode.WHAT_IF.code())
                || section.notes().stream().anyMatch(note -> note.code().equals(NOT_DUE));
    }
}
