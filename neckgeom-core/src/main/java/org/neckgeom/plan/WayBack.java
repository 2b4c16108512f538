package org.neckgeom.plan;

import java.util.List;
import java.util.Map;
import org.neckgeom.order.Operation;

/**
 * What can go wrong in an operation, and the way back: common practice, before anything of it is measured. Once it is, the plan's
 * repairs have its figures.
 */
final class WayBack {

    private static final Map<String, List<String>> BY_OPERATION = Map.ofEntries(
            Map.entry(
                    Operation.FLATTEN_THE_FACE,
                    List.of(
                            "Hollow or twisted again after a day: rest it, and flatten it again before the next step.")),
            Map.entry(
                    Operation.CUT_ROD_CHANNEL,
                    List.of(
                            "Off centre: draw the neck from the channel while its edges are wide.",
                            "Too shallow: another pass, the fence as it is. Too deep: a strip glued under the rod.",
                            "Too narrow: the fence away from the cutter by half of what is missing, cut, turn end for end, cut.",
                            "Depth over its step: stop, the cutter creeps.")),
            Map.entry(
                    Operation.CUT_SCARF,
                    List.of(
                            "Angle off: keep it while the least break angle stays 5 deg or more, else plane the slope.",
                            "Sawn over the line: move the nut line, while the blank is long enough.")),
            Map.entry(
                    Operation.GLUE_HEAD,
                    List.of(
                            "Slid: plane the proud face flush and move the nut line; slid too far: saw the joint apart.")),
            Map.entry(
                    Operation.SAW_OUT_THE_HEAD,
                    List.of(
                            "Angle off: keep it while the least break angle stays 5 deg or more, else plane the face.")),
            Map.entry(
                    Operation.TRUE_THE_HEAD,
                    List.of(
                            "Too thin: a back veneer, or a face veneer, which moves the break line.",
                            "Narrow on one side: wings of 6 mm (1/4 in) or more, or the outline narrower on both sides.")),
            Map.entry(
                    Operation.CUT_HEEL_JOINT,
                    List.of(
                            "Too low at the bridge: take wood off the heel at its cap. Too high: at the glue face.",
                            "Off to one side at the bridge: take wood off the cheek on the other side.")),
            Map.entry(
                    Operation.GLUE_FINGERBOARD,
                    List.of(
                            "Off the channel: trim the neck to the fingerboard while its edges are wide.",
                            "Off by more: take the fingerboard off with heat, and glue it with fresh pins.")),
            Map.entry(
                    Operation.CARVE_THE_NECK,
                    List.of(
                            "Thin at one place: live with it if the plan shows little more relief; else a thicker fingerboard.")),
            Map.entry(
                    Operation.SAW_FRET_SLOTS,
                    List.of(
                            "A slot off by 0.3 mm (12 thou) or less: dress the crown over. By more: fill it and saw again.")),
            Map.entry(
                    Operation.FRET_THE_FINGERBOARD,
                    List.of("Bowed backward: wider slots for the frets still to come; read the bow before and after.")),
            Map.entry(
                    Operation.SET_UP,
                    List.of("A nut slot too deep: fill it and cut it again, or lift the nut on a shim.")));

    private WayBack() {}

    static List<String> of(String operation) {
        return BY_OPERATION.getOrDefault(operation, List.of());
    }
}
