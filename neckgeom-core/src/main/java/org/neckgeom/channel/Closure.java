package org.neckgeom.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.measure.Estimate;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * Whether the readings of a trial cut agree with each other, such as
 * {@code readings close: 0.3 thou short, allowed 3.2}. Immutable.
 *
 * <p>With slot d and piece W read as well, {@code a + d + b - W} must be zero within twice its standard uncertainty
 * {@code sqrt(u_a^2 + u_b^2 + 2 rho u_a u_b + u_d^2 + u_W^2)}. Where a wall was read several times and the instrument's
 * repeatability u is stated, no reading may lie farther than 3 u (and its share of the mean) from its wall's mean.
 * The two walls alone must leave room for a slot in the piece.
 *
 * <p>Which reading is wrong cannot be told from four single readings: any one of them could be. Repeated readings tell,
 * and so does what the slot and the piece should be: {@link #cutBy}, {@link #slotShouldBe}, {@link #pieceShouldBe}.
 */
public final class Closure implements SaysLengths<Closure> {

    private static final double K = 2;
    private static final double K_REPEATED = 3;

    /** How far a cutter's slot may differ from its diameter, one standard deviation; common practice, from memory. */
    private static final double CUTTER_WITHIN_MM = 0.1;

    private static final double[] MM_DIVISIONS = {10, 5, 1, 0.5};
    private static final double[] INCH_DIVISIONS = {1, 0.1, 0.05, 0.025};

    /** Nobody writes down a longer number: it was converted. */
    private static final int MOST_WRITTEN = 8;

    private final TrialCut trial;
    private final double slotShouldBeMm;
    private final double slotWithinMm;
    private final double pieceShouldBeMm;
    private final double pieceWithinMm;
    private final double misfitMm;
    private final double allowedMm;
    private final boolean wallsExceedPiece;
    private final LengthStyle style;

    private Closure(
            TrialCut trial,
            double slotMm,
            double slotWithinMm,
            double pieceMm,
            double pieceWithinMm,
            LengthStyle style) {
        this.trial = trial;
        this.slotShouldBeMm = slotMm;
        this.slotWithinMm = slotWithinMm;
        this.pieceShouldBeMm = pieceMm;
        this.pieceWithinMm = pieceWithinMm;
        this.style = style;
        Estimate<Length> a = trial.fenceWall();
        Estimate<Length> b = trial.farWall();
        if (isComplete()) {
            Estimate<Length> d = trial.slot().orElseThrow();
            Estimate<Length> w = trial.piece().orElseThrow();
            misfitMm = a.valueHouse() + d.valueHouse() + b.valueHouse() - w.valueHouse() + 0.0;
            double ua = a.uncertaintyHouse();
            double ub = b.uncertaintyHouse();
            double walls = ua * ua + ub * ub + 2 * trial.wallCorrelation() * ua * ub;
            double rest = d.uncertaintyHouse() * d.uncertaintyHouse() + w.uncertaintyHouse() * w.uncertaintyHouse();
            allowedMm = K * Math.sqrt(walls + rest);
        } else {
            misfitMm = 0;
            allowedMm = 0;
        }
        wallsExceedPiece = trial.piece()
                .filter(w -> !(a.valueHouse() + b.valueHouse() < w.valueHouse()))
                .isPresent();
    }

    /**
     * Returns the check of a trial cut's readings.
     *
     * @param trial the readings
     * @return the check
     */
    public static Closure of(TrialCut trial) {
        return of(Objects.requireNonNull(trial, "trial"), trial.style());
    }

    static Closure of(TrialCut trial, LengthStyle style) {
        return new Closure(trial, 0, Double.NaN, 0, Double.NaN, style);
    }

    /**
     * Returns the check with what the slot's width should be.
     *
     * @param width expected, more than 0
     * @param within its standard uncertainty, more than 0
     * @return the check
     * @throws IllegalArgumentException if a length is out of its range
     */
    public Closure slotShouldBe(Quantity<Length> width, Quantity<Length> within) {
        return new Closure(
                trial,
                HouseUnits.mmPositive(width, "expected slot width"),
                HouseUnits.mmPositive(within, "expected slot width's uncertainty"),
                pieceShouldBeMm,
                pieceWithinMm,
                style);
    }

    /**
     * Returns the check with the cutter that made the slot: its diameter and runout, within 0.1 mm.
     *
     * @param cutter that made the slot
     * @return the check
     */
    public Closure cutBy(Cutter cutter) {
        double width = Objects.requireNonNull(cutter, "cutter").diameterMm() + cutter.runoutMm();
        return new Closure(trial, width, CUTTER_WITHIN_MM, pieceShouldBeMm, pieceWithinMm, style);
    }

    /**
     * Returns the check with what the piece's width should be.
     *
     * @param width expected, more than 0
     * @param within its standard uncertainty, more than 0
     * @return the check
     * @throws IllegalArgumentException if a length is out of its range
     */
    public Closure pieceShouldBe(Quantity<Length> width, Quantity<Length> within) {
        return new Closure(
                trial,
                slotShouldBeMm,
                slotWithinMm,
                HouseUnits.mmPositive(width, "expected piece width"),
                HouseUnits.mmPositive(within, "expected piece width's uncertainty"),
                style);
    }

    /**
     * Returns whether slot and piece were read, so that the readings can close or not.
     *
     * @return true when all four widths were read
     */
    public boolean isComplete() {
        return trial.slot().isPresent() && trial.piece().isPresent();
    }

    /**
     * Returns whether nothing speaks against the readings: the four widths close, if all were read, and repeated
     * readings of a wall agree.
     *
     * @return false when a reading is wrong
     */
    public boolean closes() {
        return Math.abs(misfitMm) <= allowedMm
                && !wallsExceedPiece
                && disagreeing().isEmpty();
    }

    /**
     * Returns by how much the walls and the slot together exceed the piece.
     *
     * @return positive when they are too long, negative when short; 0 when not all were read
     */
    public Amount<Length> misfit() {
        return style.amount(misfitMm);
    }

    /**
     * Returns by how much the walls and the slot together exceed the piece, in mm.
     *
     * @return mm, positive when they are too long, negative when short; 0 when not all were read
     */
    public double misfitMm() {
        return misfitMm;
    }

    /**
     * Returns how large the misfit may be.
     *
     * @return twice its standard uncertainty; 0 when not all were read
     */
    public Amount<Length> allowed() {
        return style.amount(allowedMm);
    }

    /**
     * Returns how large the misfit may be, in mm.
     *
     * @return mm, twice its standard uncertainty; 0 when not all were read
     */
    public double allowedMm() {
        return allowedMm;
    }

    /**
     * Returns the readings that may be wrong.
     *
     * @return most likely first; empty when the readings close
     */
    public List<TrialReading> suspects() {
        if (closes()) {
            return List.of();
        }
        if (isComplete()) {
            return blame().suspects();
        }
        return disagreeing()
                .map(List::of)
                .orElse(List.of(TrialReading.FENCE_WALL, TrialReading.FAR_WALL, TrialReading.PIECE));
    }

    private Blame blame() {
        double u = singleReadingMm();
        Blame blame = Blame.of(trial.fenceReadingsMm(), trial.farReadingsMm(), u)
                .slot(trial.slot().orElseThrow().valueHouse())
                .piece(trial.piece().orElseThrow().valueHouse());
        if (slotWithinMm > 0) {
            blame.shouldBe(TrialReading.SLOT, slotShouldBeMm, slotWithinMm);
        }
        if (pieceWithinMm > 0) {
            blame.shouldBe(TrialReading.PIECE, pieceShouldBeMm, pieceWithinMm);
        }
        return blame;
    }

    private double singleReadingMm() {
        return trial.repeatability().map(Amount::house).orElse(TrialCut.USUAL_REPEATABILITY_MM);
    }

    /** A wall whose own readings disagree, where the instrument's repeatability says that they do. */
    private Optional<TrialReading> disagreeing() {
        if (trial.repeatability().isEmpty()) {
            return Optional.empty();
        }
        if (isScattered(trial.fenceReadingsMm(), trial.fenceWall().valueHouse())) {
            return Optional.of(TrialReading.FENCE_WALL);
        }
        return isScattered(trial.farReadingsMm(), trial.farWall().valueHouse())
                ? Optional.of(TrialReading.FAR_WALL)
                : Optional.empty();
    }

    private boolean isScattered(double[] readings, double mean) {
        if (readings.length == 1) {
            return false;
        }
        double share = Math.sqrt((readings.length - 1.0) / readings.length);
        for (double reading : readings) {
            if (Math.abs(reading - mean) > K_REPEATED * singleReadingMm() * share + 1e-9) {
                return true;
            }
        }
        return false;
    }

    /**
     * Returns why no move is advised.
     *
     * @return a sentence; empty when the readings close
     */
    String objection() {
        if (closes()) {
            return "";
        }
        String what;
        if (Math.abs(misfitMm) > allowedMm) {
            what = "readings do not close: " + misfitText();
        } else {
            what = disagreeing()
                    .map(wall -> "readings of the " + wall + " disagree by more than 3 times their repeatability")
                    .orElse("the walls together leave no room for a slot in the piece");
        }
        return what + "; read again: " + joined(" or ");
    }

    private String joined(String last) {
        List<String> names = suspects().stream().map(TrialReading::toString).toList();
        return names.size() < 2
                ? String.join("", names)
                : names.subList(0, names.size() - 1).stream().collect(Collectors.joining(", "))
                        + last
                        + names.get(names.size() - 1);
    }

    private String misfitText() {
        return style.text(Math.abs(misfitMm)) + (misfitMm < 0 ? " short" : " too long") + ", allowed "
                + allowedNumber();
    }

    /** The allowed misfit in the unit its misfit is printed in, without repeating that unit. */
    private String allowedNumber() {
        String misfit = style.text(Math.abs(misfitMm));
        String allowed = style.text(allowedMm);
        int space = allowed.lastIndexOf(' ');
        return misfit.endsWith(allowed.substring(space)) ? allowed.substring(0, space) : allowed;
    }

    /** Explanations of the misfit by slips of the eye or the pen, for single readings under suspicion. */
    private List<String> slips() {
        List<String> found = new ArrayList<>();
        // Slips are made in the unit that was read.
        boolean inches = trial.style() != LengthStyle.MILLIMETRES;
        double scale = inches ? trial.style().unit().toHouse(1) : 1;
        for (double division : inches ? INCH_DIVISIONS : MM_DIVISIONS) {
            if (found.isEmpty() && Math.abs(Math.abs(misfitMm) - division * scale) <= allowedMm) {
                found.add("the misfit is about " + style.brief(division * scale) + ", a whole division misread?");
            }
        }
        for (TrialReading suspect : suspects()) {
            swapped(suspect).ifPresent(found::add);
        }
        return found;
    }

    private Optional<String> swapped(TrialReading reading) {
        double mm = value(reading);
        int sign = reading == TrialReading.PIECE ? -1 : 1;
        if (readings(reading) > 1) {
            return Optional.empty();
        }
        ShopUnit<Length> read = trial.style().unit();
        String text = Numbers.plain(read.fromHouse(mm));
        if (text.length() > MOST_WRITTEN || text.indexOf('E') >= 0) { // nobody writes a reading so
            return Optional.empty();
        }
        for (int i = 0; i + 1 < text.length(); i++) {
            int j = text.charAt(i + 1) == '.' ? i + 2 : i + 1;
            if (text.charAt(i) == '.' || j >= text.length() || text.charAt(i) == text.charAt(j)) {
                continue;
            }
            StringBuilder other = new StringBuilder(text);
            other.setCharAt(i, text.charAt(j));
            other.setCharAt(j, text.charAt(i));
            double change = read.toHouse(Double.parseDouble(other.toString())) - mm;
            if (Math.abs(misfitMm + sign * change) <= allowedMm) {
                return Optional.of(
                        "the " + reading + " written as " + text + " instead of " + other + " would explain it");
            }
        }
        return Optional.empty();
    }

    private int readings(TrialReading reading) {
        return switch (reading) {
            case FENCE_WALL -> trial.fenceReadingsMm().length;
            case FAR_WALL -> trial.farReadingsMm().length;
            case SLOT, PIECE -> 1;
        };
    }

    private double value(TrialReading reading) {
        return switch (reading) {
            case FENCE_WALL -> trial.fenceWall().valueHouse();
            case FAR_WALL -> trial.farWall().valueHouse();
            case SLOT -> trial.slot().orElseThrow().valueHouse();
            case PIECE -> trial.piece().orElseThrow().valueHouse();
        };
    }

    @Override
    public Closure in(LengthStyle other) {
        return new Closure(
                trial,
                slotShouldBeMm,
                slotWithinMm,
                pieceShouldBeMm,
                pieceWithinMm,
                Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Closure that
                && trial.equals(that.trial)
                && Double.compare(slotShouldBeMm, that.slotShouldBeMm) == 0
                && Double.compare(slotWithinMm, that.slotWithinMm) == 0
                && Double.compare(pieceShouldBeMm, that.pieceShouldBeMm) == 0
                && Double.compare(pieceWithinMm, that.pieceWithinMm) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(trial, slotShouldBeMm, slotWithinMm, pieceShouldBeMm, pieceWithinMm);
    }

    /**
     * Returns the finding, such as {@code readings close: 0.3 thou short, allowed 3.2}, what to read again, and how
     * well the readings were taken to repeat where nothing was told.
     */
    @Override
    public String toString() {
        String assumed = assumed(style);
        return assumed.isEmpty() || !isComplete() ? finding() : finding() + "\n  " + assumed;
    }

    /** What was assumed of readings that were taken once, empty where their repeatability was told. */
    String assumed(LengthStyle shown) {
        boolean wallsOnce = trial.fenceReadingsMm().length == 1 && trial.farReadingsMm().length == 1;
        boolean anyOnce = wallsOnce
                || trial.fenceReadingsMm().length == 1
                || trial.farReadingsMm().length == 1
                || trial.slot().isPresent()
                || trial.piece().isPresent();
        if (trial.repeatability().isPresent() || !anyOnce) {
            return "";
        }
        double usual = TrialCut.USUAL_REPEATABILITY_MM;
        return (wallsOnce ? "readings" : "single readings") + " taken as within "
                + (shown == LengthStyle.MILLIMETRES ? shown.brief(usual) : shown.small(usual))
                + " each (common practice)";
    }

    /** The finding alone. */
    String finding() {
        if (!closes()) {
            return unclosed();
        }
        if (!isComplete()) {
            return "not checked: read the slot and the piece as well";
        }
        return style.text(Math.abs(misfitMm)).equals(style.text(0))
                ? "readings close exactly, allowed " + style.text(allowedMm)
                : "readings close: " + misfitText();
    }

    private String unclosed() {
        if (!(Math.abs(misfitMm) > allowedMm)) {
            return objection();
        }
        Report report = Report.titled("readings do not close: " + misfitText());
        List<TrialReading> suspects = suspects();
        if (suspects.size() == 1) {
            report.note("suspect the " + suspects.get(0) + ": without it everything else agrees");
        } else {
            report.note("cannot tell which is wrong: " + joined(" or ")
                    + "; read each again, or say what slot and piece" + " should be");
        }
        slips().forEach(report::note);
        return report.note("no move is advised on these readings").toString();
    }
}
