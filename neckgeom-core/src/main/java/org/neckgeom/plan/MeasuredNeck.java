package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Reading;
import org.neckgeom.neck.Head;
import org.neckgeom.order.Operation;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.strength.StiffnessReadings;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * What has been read on a neck while it is being made, each with its own uncertainty, for {@link Job#measured}: such
 * as {@code channel depth 9.31 mm, u 0.02 mm}. Immutable.
 *
 * <pre>
 * MeasuredNeck.none().
 *     read(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(9.31), mm(0.02))).
 *     backDepth(mm(100), Estimate.of(mm(15.2), mm(0.05)))
 * </pre>
 *
 * <p>A reading takes the place of what was assumed, its uncertainty that of the assumption. The operation it was read on is done;
 * of stiffness it is what the reading needs, such as all but the set-up for relief at pitch.
 */
public final class MeasuredNeck extends Noun<MeasuredNeck> {

    private static final int MOST_ROWS = 14;
    private static final int MOST_READINGS = 30;
    private static final int MOST_STATIONS = 50;

    /** Its keys. */
    public static final Table<MeasuredNeck> TABLE = Table.of(
                    "", "what has been read on the neck itself", MeasuredNeck::new)
            .printedBy(MeasuredNeck::sentences);

    private static final Map<NeckFeature, Key<MeasuredNeck, Reading<Length>>> LENGTHS =
            new EnumMap<>(NeckFeature.class);
    private static final Key<MeasuredNeck, Reading<Angle>> SCARF_ANGLE;
    private static final Key<MeasuredNeck, List<BackDepth>> BACK;

    static {
        for (NeckFeature feature : NeckFeature.values()) {
            LENGTHS.put(
                    feature,
                    TABLE.optional(
                                    feature.toString(),
                                    feature.isSize() ? BackDepth.SIZES : BackDepth.EITHER_WAY,
                                    feature.about())
                            .called(feature + " as read"));
        }
        SCARF_ANGLE = TABLE.optional(
                        "scarf angle",
                        Types.reading(
                                Types.ANGLE
                                        .atLeast(ShopUnit.DEGREE.of(1))
                                        .atMost(ShopUnit.DEGREE.of(Head.GREATEST_ANGLE_DEGREES)),
                                MOST_READINGS),
                        "scarf angle as sawn, head face to glue face")
                .called("scarf angle as read");
        BACK = TABLE.optional(
                "back",
                Types.list(Types.group(BackDepth.TABLE), 1, MOST_STATIONS),
                "neck depths as carved, each with its station");
    }

    private static final Key<MeasuredNeck, List<Offset>> OFFSETS = TABLE.optional(
            "offsets",
            Types.list(Types.group(Offset.TABLE), 1, MOST_STATIONS),
            "offsets from the channel of what was cut or glued, each with its station");

    private static final Key<MeasuredNeck, StiffnessReadings> STIFFNESS = TABLE.usual(
            "stiffness",
            Types.group(StiffnessReadings.TABLE),
            StiffnessReadings.none(),
            "blanks bent or tapped, neck weighed down, relief at two tensions. Default: nothing");
    private static final Key<MeasuredNeck, Amount<Length>> REPEATABILITY = TABLE.usual(
            "repeatability",
            Types.SIZE,
            ShopUnit.MILLIMETRE.of(BenchUncertainty.USUAL_REPEATABILITY_MM),
            "standard deviation of one reading of a length. Default: the shop's");
    private static final Key<MeasuredNeck, Amount<Angle>> ANGLE_REPEATABILITY = TABLE.usual(
            "angle repeatability",
            Types.ANGLE.moreThan(ShopUnit.DEGREE.of(0)).atMost(ShopUnit.DEGREE.of(10)),
            ShopUnit.DEGREE.of(0.1),
            "standard deviation of one scarf angle reading. Default: 0.1 deg");

    static {
        TABLE.moved(Moves.none().and("reads within", "repeatability").and("angle within", "angle repeatability"));
    }

    private static final MeasuredNeck NONE = new MeasuredNeck(TABLE.values());

    /** A depth of the back as carved. */
    private record BackDepth(Amount<Length> station, Reading<Length> depth) {

        static final Type<Reading<Length>> SIZES = Types.reading(Types.SIZE, MOST_READINGS);
        static final Type<Reading<Length>> EITHER_WAY = Types.reading(Types.EITHER_WAY, MOST_READINGS);

        static final Table<BackDepth> TABLE = Table.of("back", "a carved depth", BackDepth::new, BackDepth::values);

        static final Key<BackDepth, Amount<Length>> STATION = TABLE.needed(
                        "station", Types.SIZE_OR_NOTHING, "distance from the nut line to the station")
                .called("station");
        static final Key<BackDepth, Reading<Length>> DEPTH = TABLE.needed(
                        "depth", SIZES, "neck depth as carved, glue face to back")
                .called("back depth as read");

        BackDepth(Values<BackDepth> given) {
            this(given.at(STATION), given.at(DEPTH));
        }

        private Values<BackDepth> values() {
            return TABLE.values().with(STATION, station).with(DEPTH, depth);
        }
    }

    /** What can be located on the channel and read against it. */
    public enum Located {
        /** The glued fingerboard. */
        FINGERBOARD("fingerboard", Operation.GLUE_FINGERBOARD),
        /** The tapered sides: the middle of both. */
        SIDE_TAPER("side taper", Operation.TAPER_THE_SIDES),
        /** The heel: the middle of its cheeks. */
        HEEL("heel", Operation.CUT_HEEL_JOINT);

        private final String words;
        private final String operation;

        Located(String words, String operation) {
            this.words = words;
            this.operation = operation;
        }

        /** An offset of it, such as {@code side taper at 280 mm}. */
        String at(Amount<Length> station, LengthStyle style) {
            return this + " at " + style.brief(station.libraryValue());
        }

        /** Returns it in words, such as {@code side taper}. */
        @Override
        public String toString() {
            return words;
        }
    }

    /** An offset from the channel at a station. */
    private record Offset(Located feature, Amount<Length> station, Reading<Length> offset) {

        static final Table<Offset> TABLE =
                Table.of("offsets", "an offset from the channel", Offset::new, Offset::values);

        static final Key<Offset, Located> FEATURE =
                TABLE.needed("feature", Types.words(Located.class, Located::toString), "what was read");
        static final Key<Offset, Amount<Length>> STATION = TABLE.needed(
                        "station", Types.EITHER_WAY, "distance from the nut line to the station")
                .called("station");
        static final Key<Offset, Reading<Length>> OFFSET = TABLE.needed(
                        "offset",
                        BackDepth.EITHER_WAY,
                        "offset of its middle from the channel's. Positive: toward the treble side")
                .called("offset as read");

        Offset(Values<Offset> given) {
            this(given.at(FEATURE), given.at(STATION), given.at(OFFSET));
        }

        private Values<Offset> values() {
            return TABLE.values().with(FEATURE, feature).with(STATION, station).with(OFFSET, offset);
        }
    }

    /**
     * An offset from the channel as it was read.
     *
     * @param feature what was read
     * @param station from the nut
     * @param offset of its middle from the channel's, positive toward the treble side
     */
    record OffsetRead(Located feature, Amount<Length> station, Estimate<Length> offset) {

        /** Its name among the readings, such as {@code side taper at 280 mm}. */
        String name(LengthStyle style) {
            return feature.at(station, style);
        }
    }

    private MeasuredNeck(Values<MeasuredNeck> values) {
        super(sorted(values));
        if (has(NeckFeature.SLOT_OFFSET_AT_HEEL) && !has(NeckFeature.SLOT_OFFSET)) {
            throw Refusal.of(
                    "slot offset",
                    "head-end-first",
                    "be read at its head end before its heel end",
                    "read at its heel end only");
        }
        Optional<Estimate<Length>> start = of(NeckFeature.CHANNEL_START);
        Optional<Estimate<Length>> end = of(NeckFeature.CHANNEL_END);
        if (start.isPresent()
                && end.isPresent()
                && !(end.get().libraryValue() > start.get().libraryValue())) {
            throw LibraryUnits.refused(
                    NeckFeature.CHANNEL_END + " as read",
                    "more-than",
                    "more than its start at " + start.get().value(),
                    end.get().value());
        }
    }

    /** By station; of two at one station the later one. */
    private static Values<MeasuredNeck> sorted(Values<MeasuredNeck> values) {
        if (!values.has(BACK)) {
            return values;
        }
        SortedMap<Double, BackDepth> byStation = new TreeMap<>();
        values.at(BACK).forEach(depth -> byStation.put(depth.station().libraryValue(), depth));
        return values.with(BACK, List.copyOf(byStation.values()));
    }

    /** {@return a start of which nothing has been read; no reading} */
    public static MeasuredNeck none() {
        return NONE;
    }

    /**
     * {@return these readings with a length read; an earlier reading of it is forgotten}
     *
     * @param feature what was read
     * @param reading its value with its uncertainty
     * @throws IllegalArgumentException if a size is not more than 0, the channel would end before it begins, or the slot's
     *     offset is read at its heel end before its head end
     */
    public MeasuredNeck read(NeckFeature feature, Estimate<Length> reading) {
        return new MeasuredNeck(
                values().with(key(feature), Reading.of(Objects.requireNonNull(reading, feature.toString()))));
    }

    /** The same, as it was indicated: its uncertainty is that of one reading here. */
    MeasuredNeck indicated(NeckFeature feature, Amount<Length> indication) {
        return new MeasuredNeck(values().with(key(feature), Reading.of(List.of(indication))));
    }

    /** The scarf's angle as it was indicated. */
    MeasuredNeck indicatedAngle(Amount<Angle> indication) {
        return new MeasuredNeck(values().with(SCARF_ANGLE, Reading.of(List.of(indication))));
    }

    private static Key<MeasuredNeck, Reading<Length>> key(NeckFeature feature) {
        return Objects.requireNonNull(LENGTHS.get(Objects.requireNonNull(feature, "feature")));
    }

    /**
     * {@return these readings with the angle of the scarf, between the head's face and the glue face}
     *
     * @param reading from 1 to 45 deg, with its uncertainty
     */
    public MeasuredNeck scarfAngle(Estimate<Angle> reading) {
        return new MeasuredNeck(values().with(SCARF_ANGLE, Reading.of(Objects.requireNonNull(reading, "scarf angle"))));
    }

    /**
     * {@return these readings with the depth of the carved back at a station; an earlier reading there is forgotten}
     *
     * @param station from the nut
     * @param depth from the glue face to the back, more than 0, with its uncertainty
     */
    public MeasuredNeck backDepth(Quantity<Length> station, Estimate<Length> depth) {
        return backDepth(station, Reading.of(Objects.requireNonNull(depth, "back depth")));
    }

    /** The same, as it was indicated. */
    MeasuredNeck indicatedDepth(Quantity<Length> station, Amount<Length> indication) {
        return backDepth(station, Reading.of(List.of(indication)));
    }

    private MeasuredNeck backDepth(Quantity<Length> station, Reading<Length> depth) {
        List<BackDepth> more = new ArrayList<>(values().find(BACK).orElse(List.of()));
        more.add(new BackDepth(
                BackDepth.TABLE.values().amount(BackDepth.STATION, station).with(BackDepth.DEPTH, depth)));
        return new MeasuredNeck(values().with(BACK, List.copyOf(more)));
    }

    /** These readings without the last that a session asks for at an operation of the usual neck; nothing where there is none. */
    Optional<MeasuredNeck> withoutLastAt(String operation) {
        if (operation.equals(Operation.CARVE_THE_NECK) && values().has(BACK)) {
            List<BackDepth> fewer = new ArrayList<>(values().at(BACK));
            fewer.remove(fewer.size() - 1);
            return Optional.of(new MeasuredNeck(
                    fewer.isEmpty() ? values().without(BACK) : values().with(BACK, List.copyOf(fewer))));
        }
        boolean isOfTheAngle = operation.equals(Operation.CUT_SCARF) || operation.equals(Operation.SAW_OUT_THE_HEAD);
        if (isOfTheAngle && values().has(SCARF_ANGLE)) {
            return Optional.of(new MeasuredNeck(values().without(SCARF_ANGLE)));
        }
        return lengths().stream()
                .filter(feature -> feature.operation().equals(operation))
                // Of a channel the walls are read last.
                .max(Comparator.comparing((NeckFeature feature) -> feature == NeckFeature.SLOT_OFFSET)
                        .thenComparing(Comparator.naturalOrder()))
                .map(last -> new MeasuredNeck(values().without(key(last))));
    }

    /** These readings without those of the back. */
    MeasuredNeck withoutBack() {
        return new MeasuredNeck(values().without(BACK));
    }

    /**
     * {@return these readings with the offset of a feature from the channel at a station; an earlier one there is forgotten}
     *
     * @param feature what was read
     * @param station from the nut, positive toward the body
     * @param offset of its middle from the channel's, positive toward the treble side, with its uncertainty
     */
    public MeasuredNeck offset(Located feature, Quantity<Length> station, Estimate<Length> offset) {
        Offset fresh = new Offset(Offset.TABLE
                .values()
                .with(Offset.FEATURE, Objects.requireNonNull(feature, "feature"))
                .amount(Offset.STATION, station)
                .with(Offset.OFFSET, Reading.of(Objects.requireNonNull(offset, "offset"))));
        List<Offset> more = new ArrayList<>(values().find(OFFSETS).orElse(List.of()));
        more.removeIf(one -> one.feature() == feature && one.station().equals(fresh.station()));
        more.add(fresh);
        return new MeasuredNeck(values().with(OFFSETS, List.copyOf(more)));
    }

    /** The offsets from the channel that were read, in the order given. */
    List<OffsetRead> offsets() {
        return values().find(OFFSETS).orElse(List.of()).stream()
                .map(one -> new OffsetRead(
                        one.feature(), one.station(), one.offset().estimate(values().at(REPEATABILITY))))
                .toList();
    }

    /**
     * {@return these readings with the repeatability of what was read by indications, where none was given}
     *
     * @param ofTheShop one standard deviation of one indication
     */
    MeasuredNeck readBy(Amount<Length> ofTheShop) {
        return values().has(REPEATABILITY) ? this : new MeasuredNeck(values().with(REPEATABILITY, ofTheShop));
    }

    /**
     * {@return a length that was read; its value with its uncertainty, or nothing}
     *
     * @param feature which
     */
    public Optional<Estimate<Length>> of(NeckFeature feature) {
        return values().find(key(feature)).map(reading -> reading.estimate(values().at(REPEATABILITY)));
    }

    /** {@return the angle of the scarf, if it was read; its value with its uncertainty, or nothing} */
    public Optional<Estimate<Angle>> scarfAngle() {
        return values().find(SCARF_ANGLE).map(reading -> reading.estimate(values().at(ANGLE_REPEATABILITY)));
    }

    /**
     * {@return the depths of the carved back that were read; an unmodifiable map of depths by station in mm from the
     * nut, ascending; empty where none was read}
     */
    public SortedMap<Double, Estimate<Length>> backDepths() {
        SortedMap<Double, Estimate<Length>> depths = new TreeMap<>();
        for (BackDepth depth : values().find(BACK).orElse(List.of())) {
            depths.put(depth.station().libraryValue(), depth.depth().estimate(values().at(REPEATABILITY)));
        }
        return Collections.unmodifiableSortedMap(depths);
    }

    /**
     * {@return these readings with what has been read of the neck's stiffness}
     *
     * @param readings on blanks and neck, in any order
     */
    public MeasuredNeck stiffness(StiffnessReadings readings) {
        return new MeasuredNeck(values().with(STIFFNESS, readings));
    }

    /** {@return what has been read of the neck's stiffness} */
    public StiffnessReadings stiffness() {
        return values().at(STIFFNESS);
    }

    /** {@return whether nothing has been read; true for {@link #none}} */
    public boolean isEmpty() {
        return count() == 0;
    }

    /** How many readings there are. */
    int count() {
        int depths = values().find(BACK).map(List::size).orElse(0);
        return lengths().size()
                + (values().has(SCARF_ANGLE) ? 1 : 0)
                + depths
                + offsets().size()
                + stiffness().count();
    }

    private List<NeckFeature> lengths() {
        return Arrays.stream(NeckFeature.values()).filter(this::has).toList();
    }

    boolean has(NeckFeature feature) {
        return values().has(key(feature));
    }

    /** The operations of the usual neck whose work was itself read. */
    Set<String> readAt() {
        Set<String> read = new LinkedHashSet<>();
        if (values().has(SCARF_ANGLE)) {
            read.addAll(List.of(Operation.CUT_SCARF, Operation.SAW_OUT_THE_HEAD));
        }
        lengths().forEach(feature -> read.add(feature.operation()));
        offsets().forEach(one -> read.add(one.feature().operation));
        if (values().has(BACK)) {
            read.add(Operation.CARVE_THE_NECK);
        }
        return read;
    }

    /** The operations of the usual neck that must be done for these readings to exist. */
    Set<String> proofs() {
        Set<String> proofs = readAt();
        proofs.addAll(stiffness().operations());
        return proofs;
    }

    private static Form<MeasuredNeck> sentences() {
        Form<MeasuredNeck> form = Form.<MeasuredNeck>of("neck-readings")
                .fact("count", Kind.WHOLE, "how many readings", MeasuredNeck::count)
                .finds("nothing", MeasuredNeck::isEmpty, "Read on the neck: nothing yet")
                .finds("readings", "Read on the neck: {count:of reading/readings}");
        for (NeckFeature feature : NeckFeature.values()) {
            form = form.factIfAny(feature.key(), Kind.ESTIMATE, "as read", readings -> readings.of(feature))
                    .line(feature.key(), feature.toString(), "{" + feature.key() + ":own}");
        }
        Form<Map.Entry<Double, Estimate<Length>>> depth = Form.<Map.Entry<Double, Estimate<Length>>>of(
                        "back-depth-read")
                .fact("station", Kind.MM, "from the nut", Map.Entry::getKey)
                .fact("depth", Kind.ESTIMATE, "neck depth as carved, glue face to back", Map.Entry::getValue);
        Form<OffsetRead> offset = Form.<OffsetRead>of("offset-read")
                .fact("feature", Kind.code(Located.class), "what was read", OffsetRead::feature)
                .fact("station", Kind.AMOUNT, "from the nut", OffsetRead::station)
                .fact("offset", Kind.ESTIMATE, "from the channel, positive toward the treble side", OffsetRead::offset);
        return form.fact("offsets", Kind.table(offset), "from the channel", readings -> readings.offsets())
                .each("offsets", "{feature} at {station:brief}", "{offset:own}", 6, "and {more} more")
                .factIfAny("scarfAngle", Kind.ESTIMATE, "of the head's face to the glue face", MeasuredNeck::scarfAngle)
                .line("scarfAngle", "scarf angle", "{scarfAngle}")
                .fact(
                        "backDepths",
                        Kind.table(depth),
                        "of the carved back, by station",
                        readings -> List.copyOf(readings.backDepths().entrySet()))
                .each(
                        "backDepths",
                        "back at {station:brief}",
                        "{depth:own}",
                        readings -> Math.max(
                                0,
                                MOST_ROWS
                                        - readings.count()
                                        + readings.backDepths().size()),
                        "");
    }
}
