package org.neckgeom.strength;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.order.Operation;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * What has been read of a neck's stiffness, in any order: blanks bent or tapped before they are carved, the bare shaft and the
 * finished neck weighed down, relief with the strings slack and at pitch, the rod turned. Immutable.
 *
 * <p>Each narrows the intervals of relief and rod force: {@link StiffnessKnowledge}. The same readings in another order give the
 * same answer.
 */
public final class StiffnessReadings extends Noun<StiffnessReadings> {

    private static final int MOST = 10;

    /** Its keys. */
    public static final Table<StiffnessReadings> TABLE = Table.of(
                    "", "what has been read of the neck's stiffness", StiffnessReadings::new)
            .printedBy(StiffnessReadings::sentences);

    private static final Key<StiffnessReadings, List<BlankBent>> NECK_BENT = TABLE.optional(
            "neck blank bent",
            Types.oneOrMore(Types.group(BlankBent.TABLE), MOST),
            "neck blank on two supports under a weight midway. Default: not read");
    private static final Key<StiffnessReadings, List<BlankBent>> BOARD_BENT = TABLE.optional(
            "board blank bent",
            Types.oneOrMore(Types.group(BlankBent.TABLE), MOST),
            "fingerboard blank on two supports under a weight midway. Default: not read");
    private static final Key<StiffnessReadings, List<BlankTapped>> NECK_TAPPED = TABLE.optional(
            "neck blank tapped",
            Types.oneOrMore(Types.group(BlankTapped.TABLE), MOST),
            "tap tone and weight of the neck blank. Default: not read");
    private static final Key<StiffnessReadings, List<BlankTapped>> BOARD_TAPPED = TABLE.optional(
            "board blank tapped",
            Types.oneOrMore(Types.group(BlankTapped.TABLE), MOST),
            "tap tone and weight of the fingerboard blank. Default: not read");
    private static final Key<StiffnessReadings, List<NeckBent>> SHAFT = TABLE.optional(
            "shaft weighed down",
            Types.oneOrMore(Types.group(NeckBent.TABLE), MOST),
            "carved shaft without its fingerboard under weights. Default: not read");
    private static final Key<StiffnessReadings, List<NeckBent>> NECK = TABLE.optional(
            "neck weighed down",
            Types.oneOrMore(Types.group(NeckBent.TABLE), MOST),
            "finished neck without strings under weights, rod slack. Default: not read");
    private static final Key<StiffnessReadings, Amount<Length>> SLACK = TABLE.optional(
            "relief slack",
            Types.EITHER_WAY,
            "relief from fret 1 to the body joint with slack strings and slack rod; negative: back-bow");
    private static final Key<StiffnessReadings, Amount<Length>> AT_PITCH =
            TABLE.optional("relief at pitch", Types.EITHER_WAY, "same with all strings at pitch, an hour after tuning");

    private static final Key<StiffnessReadings, Amount<Length>> RELIEF_U = TABLE.usual(
            "relief uncertainty",
            Types.SIZE,
            ShopUnits.mm(0.005),
            "standard uncertainty of each of the two reliefs, by feeler gauge and straightedge. Default: 0.005 mm");
    private static final Key<StiffnessReadings, RodTurned> ROD = TABLE.optional(
            "rod turned",
            Types.group(RodTurned.TABLE),
            "turns of the rod and relief at pitch before and after: shows how far a turn goes, and the relief with the rod"
                    + " slack. Default: not read");

    static {
        TABLE.together(SLACK, AT_PITCH);
    }

    private static final StiffnessReadings NONE = new StiffnessReadings(TABLE.values());

    private StiffnessReadings(Values<StiffnessReadings> values) {
        super(sorted(values));
        reliefChange().ifPresent(change -> {
            if (!(change > 0)) {
                throw values.refused(
                        AT_PITCH,
                        "more-than",
                        "be more than " + values.at(SLACK) + ", the relief with slack strings",
                        values.at(AT_PITCH));
            }
        });
    }

    /** In one order, for readings in any order. */
    private static Values<StiffnessReadings> sorted(Values<StiffnessReadings> values) {
        return sorted(
                sorted(sorted(sorted(sorted(sorted(values, NECK_BENT), BOARD_BENT), NECK_TAPPED), BOARD_TAPPED), SHAFT),
                NECK);
    }

    private static <V> Values<StiffnessReadings> sorted(
            Values<StiffnessReadings> values, Key<StiffnessReadings, List<V>> key) {
        return values.find(key)
                .filter(list -> list.size() > 1)
                .map(list -> values.with(
                        key,
                        list.stream()
                                .sorted(Comparator.comparing(String::valueOf))
                                .toList()))
                .orElse(values);
    }

    /** {@return a start of which nothing has been read} */
    public static StiffnessReadings none() {
        return NONE;
    }

    private <V> StiffnessReadings with(Key<StiffnessReadings, List<V>> key, V more) {
        List<V> all = new ArrayList<>(values().find(key).orElse(List.of()));
        all.add(Objects.requireNonNull(more, "reading"));
        return new StiffnessReadings(values().with(key, List.copyOf(all)));
    }

    /**
     * {@return these readings with the neck blank bent}
     *
     * @param reading what was read
     */
    public StiffnessReadings neckBlank(BlankBent reading) {
        return with(NECK_BENT, reading);
    }

    /**
     * {@return these readings with the fingerboard blank bent}
     *
     * @param reading what was read
     */
    public StiffnessReadings boardBlank(BlankBent reading) {
        return with(BOARD_BENT, reading);
    }

    /**
     * {@return these readings with the neck blank tapped}
     *
     * @param reading what was read
     */
    public StiffnessReadings neckBlank(BlankTapped reading) {
        return with(NECK_TAPPED, reading);
    }

    /**
     * {@return these readings with the fingerboard blank tapped}
     *
     * @param reading what was read
     */
    public StiffnessReadings boardBlank(BlankTapped reading) {
        return with(BOARD_TAPPED, reading);
    }

    /**
     * {@return these readings with the carved shaft weighed down, without its fingerboard}
     *
     * @param reading what was read
     */
    public StiffnessReadings shaft(NeckBent reading) {
        return with(SHAFT, reading);
    }

    /**
     * {@return these readings with the finished neck weighed down, without strings, its rod slack}
     *
     * @param reading what was read
     */
    public StiffnessReadings neck(NeckBent reading) {
        return with(NECK, reading);
    }

    /**
     * {@return these readings with the relief from fret 1 to the body joint, the rod slack}
     *
     * @param slack with slack strings; negative: back-bow
     * @param atPitch with all strings at pitch, more than that
     */
    public StiffnessReadings relief(Quantity<Length> slack, Quantity<Length> atPitch) {
        return new StiffnessReadings(values().amount(SLACK, slack).amount(AT_PITCH, atPitch));
    }

    /**
     * {@return these readings with the uncertainty of each of the two reliefs}
     *
     * @param ofEach standard uncertainty, more than 0; 0.005 mm unless given
     */
    public StiffnessReadings reliefUncertainty(Quantity<Length> ofEach) {
        return new StiffnessReadings(values().amount(RELIEF_U, ofEach));
    }

    /** Relief with slack strings, mm; 0 where it was not read. */
    double reliefSlackMm() {
        return values().libraryValue(SLACK, 0);
    }

    Amount<Length> reliefUncertainty() {
        return values().at(RELIEF_U);
    }

    /**
     * {@return these readings with the rod turned once}
     *
     * @param reading turns and relief before and after
     */
    public StiffnessReadings rod(RodTurned reading) {
        return new StiffnessReadings(values().with(ROD, reading));
    }

    Optional<RodTurned> rod() {
        return values().find(ROD);
    }

    /**
     * {@return the operations of the usual neck that must have been done for these readings to exist, by their names; none where
     * only blanks of one piece were read}
     *
     * <p>A shaft is weighed down with its back near its shape and its channel cut, a neck with its board on and carved, its frets in
     * unless they are read as open. Strings at pitch rest on a fitted heel, level frets and the nut: {@link #isStrung}.
     */
    public Set<String> operations() {
        Set<String> done = new LinkedHashSet<>();
        if (values().has(NECK_BENT) || values().has(NECK_TAPPED)) {
            done.add(Operation.GLUE_UP_THE_STRIPS);
        }
        if (values().has(SHAFT)) {
            done.addAll(List.of(Operation.CUT_ROD_CHANNEL, Operation.ROUGH_OUT_THE_BACK));
        }
        if (values().has(NECK)) {
            done.addAll(List.of(Operation.GLUE_FINGERBOARD, Operation.CARVE_THE_NECK));
        }
        if (necks().stream().anyMatch(NeckBent::isFretted)) {
            done.add(Operation.FRET_THE_FINGERBOARD);
        }
        if (isStrung()) {
            done.addAll(List.of(
                    Operation.FIT_HEEL_TO_BODY,
                    Operation.LEVEL_THE_FRETS,
                    Operation.FIT_THE_NUT,
                    Operation.FIT_THE_STRING_ANCHOR));
        }
        return Collections.unmodifiableSet(done);
    }

    /** {@return whether relief was read with the strings at pitch: all is done that comes before setting up} */
    public boolean isStrung() {
        return values().has(AT_PITCH) || values().has(ROD);
    }

    /** {@return whether nothing has been read} */
    public boolean isEmpty() {
        return count() == 0;
    }

    /** {@return how many readings there are; 0 or more} */
    public int count() {
        return neckBlanksBent().size()
                + boardBlanksBent().size()
                + neckBlanksTapped().size()
                + boardBlanksTapped().size()
                + shafts().size()
                + necks().size()
                + (reliefChange().isPresent() ? 1 : 0)
                + (rod().isPresent() ? 1 : 0);
    }

    private <V> List<V> all(Key<StiffnessReadings, List<V>> key) {
        return values().find(key).orElse(List.of());
    }

    List<BlankBent> neckBlanksBent() {
        return all(NECK_BENT);
    }

    List<BlankBent> boardBlanksBent() {
        return all(BOARD_BENT);
    }

    List<BlankTapped> neckBlanksTapped() {
        return all(NECK_TAPPED);
    }

    List<BlankTapped> boardBlanksTapped() {
        return all(BOARD_TAPPED);
    }

    List<NeckBent> shafts() {
        return all(SHAFT);
    }

    List<NeckBent> necks() {
        return all(NECK);
    }

    /** From slack to pitch, mm. */
    Optional<Double> reliefChange() {
        return values().find(AT_PITCH).map(pitch -> pitch.libraryValue() - values().libraryValue(SLACK));
    }

    private static Form<StiffnessReadings> sentences() {
        return TABLE.facts("stiffness-readings")
                .fact("count", Kind.WHOLE, "how many readings", StiffnessReadings::count)
                .finds("nothing", StiffnessReadings::isEmpty, "Stiffness: nothing read yet")
                .finds("readings", "Stiffness: {count:of reading/readings}")
                .line("rodTurned", "rod", "{rodTurned}");
    }
}
