package org.neckgeom.plan;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.measure.Estimate;
import org.neckgeom.text.Report;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * What has been read on a neck while it is being made, each with its own uncertainty, for {@link NeckPlan#readings}: such
 * as {@code channel depth 9.31 mm, u 0.02 mm}. Immutable.
 *
 * <pre>
 * NeckReadings.none().
 *     read(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(9.31), mm(0.02))).
 *     backDepth(mm(100), Estimate.of(mm(15.2), mm(0.05)))
 * </pre>
 *
 * <p>A reading takes the place of what was assumed, its uncertainty that of the assumption. What it was read on is done.
 */
public final class NeckReadings implements SaysLengths<NeckReadings> {

    private static final int MOST_ROWS = 14;
    private static final NeckReadings NONE = new NeckReadings(Map.of(), null, Collections.emptyNavigableMap());

    private final Map<NeckFeature, Estimate<Length>> lengths;
    private final @Nullable Estimate<Angle> scarf;
    private final NavigableMap<Double, Estimate<Length>> back;

    private NeckReadings(
            Map<NeckFeature, Estimate<Length>> lengths,
            @Nullable Estimate<Angle> scarf,
            NavigableMap<Double, Estimate<Length>> back) {
        this.lengths = Collections.unmodifiableMap(lengths);
        this.scarf = scarf;
        this.back = Collections.unmodifiableNavigableMap(back);
    }

    /**
     * Returns a start of which nothing has been read.
     *
     * @return no reading
     */
    public static NeckReadings none() {
        return NONE;
    }

    /**
     * Returns these readings with a length read; an earlier reading of it is forgotten.
     *
     * @param feature what was read
     * @param reading its value with its uncertainty
     * @return the readings
     * @throws IllegalArgumentException if a size is not more than 0, the channel would end before it begins, or the slot's
     *     offset is read at its heel end before its head end
     */
    public NeckReadings read(NeckFeature feature, Estimate<Length> reading) {
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(reading, feature.toString());
        if (feature.isSize() && !(reading.valueHouse() > 0)) {
            throw HouseUnits.refused(
                    feature + " as read", "more-than", "more than 0 " + reading.unit(), reading.value());
        }
        Map<NeckFeature, Estimate<Length>> more = lengthsAnew();
        more.put(feature, reading);
        if (more.containsKey(NeckFeature.SLOT_OFFSET_AT_HEEL) && !more.containsKey(NeckFeature.SLOT_OFFSET)) {
            throw Refusal.of(
                    "slot offset",
                    "head-end-first",
                    "be read at its head end before its heel end",
                    "read at its heel end only");
        }
        Estimate<Length> start = more.get(NeckFeature.CHANNEL_START);
        Estimate<Length> end = more.get(NeckFeature.CHANNEL_END);
        if (start != null && end != null && !(end.valueHouse() > start.valueHouse())) {
            throw HouseUnits.refused(
                    NeckFeature.CHANNEL_END + " as read",
                    "more-than",
                    "more than its start at " + start.value(),
                    end.value());
        }
        return new NeckReadings(more, scarf, back);
    }

    /**
     * Returns these readings with the angle of the scarf, between the head's face and the glue face.
     *
     * @param reading from 1 to 45 deg, with its uncertainty
     * @return the readings
     */
    public NeckReadings scarfAngle(Estimate<Angle> reading) {
        double degrees =
                Math.toDegrees(Objects.requireNonNull(reading, "scarf angle").valueHouse());
        if (!(degrees >= 1 && degrees <= 45)) {
            throw HouseUnits.refused("scarf angle as read", "range", "from 1 to 45 deg", reading.value());
        }
        return new NeckReadings(lengths, reading, back);
    }

    /**
     * Returns these readings with the depth of the carved back at a station; an earlier reading there is forgotten.
     *
     * @param station from the nut
     * @param depth from the glue face to the back, more than 0, with its uncertainty
     * @return the readings
     */
    public NeckReadings backDepth(Quantity<Length> station, Estimate<Length> depth) {
        double x = HouseUnits.mm(station, "station");
        if (!(Objects.requireNonNull(depth, "back depth").valueHouse() > 0)) {
            throw HouseUnits.refused("back depth as read", "more-than", "more than 0 " + depth.unit(), depth.value());
        }
        TreeMap<Double, Estimate<Length>> more = new TreeMap<>(back);
        more.put(x, depth);
        return new NeckReadings(lengths, scarf, more);
    }

    private Map<NeckFeature, Estimate<Length>> lengthsAnew() {
        Map<NeckFeature, Estimate<Length>> anew = new EnumMap<>(NeckFeature.class);
        anew.putAll(lengths);
        return anew;
    }

    /**
     * Returns a length that was read.
     *
     * @param feature which
     * @return its value with its uncertainty, or nothing
     */
    public Optional<Estimate<Length>> of(NeckFeature feature) {
        return Optional.ofNullable(lengths.get(Objects.requireNonNull(feature, "feature")));
    }

    /**
     * Returns the angle of the scarf, if it was read.
     *
     * @return its value with its uncertainty, or nothing
     */
    public Optional<Estimate<Angle>> scarfAngle() {
        return Optional.ofNullable(scarf);
    }

    /**
     * Returns the depths of the carved back that were read.
     *
     * @return an unmodifiable map of depths by station in mm from the nut, ascending; empty where none was read
     */
    public SortedMap<Double, Estimate<Length>> backDepths() {
        return back;
    }

    /**
     * Says whether nothing has been read.
     *
     * @return true for {@link #none}
     */
    public boolean isEmpty() {
        return lengths.isEmpty() && scarf == null && back.isEmpty();
    }

    /** How many readings there are. */
    int count() {
        return lengths.size() + (scarf == null ? 0 : 1) + back.size();
    }

    boolean has(NeckFeature feature) {
        return lengths.containsKey(feature);
    }

    /** The operations of the usual neck that must be done for these readings to exist, each with what was read. */
    Map<String, String> proofs() {
        Map<String, String> proofs = new LinkedHashMap<>();
        if (scarf != null) {
            proofs.put(NeckPlan.SCARF, "scarf angle");
            proofs.put(NeckPlan.ONE_PIECE_HEAD, "scarf angle");
        }
        lengths.keySet().forEach(feature -> proofs.putIfAbsent(feature.operation(), feature.toString()));
        if (!back.isEmpty()) {
            proofs.put(NeckPlan.CARVING, "back depth");
        }
        return proofs;
    }

    @Override
    public NeckReadings in(LengthStyle other) {
        Objects.requireNonNull(other, "style");
        Map<NeckFeature, Estimate<Length>> said = lengthsAnew();
        said.replaceAll((feature, reading) -> reading.in(other));
        NavigableMap<Double, Estimate<Length>> depths = new TreeMap<>(back);
        depths.replaceAll((station, depth) -> depth.in(other));
        return new NeckReadings(said, scarf, depths);
    }

    /** True for the same readings. */
    @Override
    public boolean equals(Object obj) {
        return obj instanceof NeckReadings other
                && lengths.equals(other.lengths)
                && Objects.equals(scarf, other.scarf)
                && back.equals(other.back);
    }

    @Override
    public int hashCode() {
        return Objects.hash(lengths, scarf, back);
    }

    /** Returns a row a reading. */
    @Override
    public String toString() {
        String many = count() + (count() == 1 ? " reading" : " readings");
        Report report = Report.titled("Read on the neck: " + (isEmpty() ? "nothing yet" : many));
        lengths.forEach((feature, reading) -> report.row(feature.toString(), reading));
        scarfAngle().ifPresent(reading -> report.row("scarf angle", reading));
        int left = MOST_ROWS - count() + back.size();
        back.entrySet().stream()
                .limit(Math.max(0, left))
                .forEach(entry -> report.row("back at " + station(entry), entry.getValue()));
        return report.toString();
    }

    private static String station(Map.Entry<Double, Estimate<Length>> depth) {
        return LengthStyle.ofUnit(depth.getValue().unit()).brief(depth.getKey());
    }
}
