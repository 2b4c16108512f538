package org.neckgeom.state;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.measure.Estimate;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * A line of a shop's log: what a step was meant to give, and what was read. Immutable.
 *
 * <p>Lines of one setting are one draw: give them its name. Lines of one day read with one zero share that zero: give its
 * name.
 */
public final class LogEntry extends Noun<LogEntry> {

    /** Its keys. */
    public static final Table<LogEntry> TABLE =
            Table.of("", "a line of the shop's log", LogEntry::new).printedBy(LogEntry::sentences);

    private static final Type<LocalDate> DAY = Types.text(
            "a date such as 2026-03-02",
            LogEntry::day,
            LocalDate::toString,
            Map.of("type", "string", "format", "date"));

    private static final Key<LogEntry, LocalDate> DATE = TABLE.needed("date", DAY, "day of the reading");
    private static final Key<LogEntry, ShopStep> STEP =
            TABLE.needed("step", Types.words(ShopStep.class, ShopStep::toString), "kind of step");
    private static final Key<LogEntry, Amount<Length>> MEANT =
            TABLE.usual("meant", Types.EITHER_WAY, ShopUnits.mm(0), "length the step was meant to give. Default: 0");
    private static final Key<LogEntry, Amount<Length>> READ = TABLE.needed("read", Types.EITHER_WAY, "length as read");
    private static final Key<LogEntry, Amount<Length>> U = TABLE.usual(
            "standard uncertainty",
            Types.SIZE_OR_NOTHING,
            ShopUnits.mm(0),
            "standard uncertainty of the reading. Default: 0");
    private static final Key<LogEntry, String> ZERO =
            TABLE.optional("zero", Types.TEXT, "name of the zero that readings of one day share. Default: none shared");
    private static final Key<LogEntry, String> SETTING =
            TABLE.optional("setting", Types.TEXT, "name of a setting that several lines share. Default: each its own");
    private static final Key<LogEntry, String> JIG = TABLE.optional("jig", Types.TEXT, "jig or machine");
    private static final Key<LogEntry, String> NECK = TABLE.optional("neck", Types.TEXT, "name of the neck");
    private static final Key<LogEntry, String> FEATURE = TABLE.optional("feature", Types.TEXT, "what was read");
    private static final Key<LogEntry, String> BY = TABLE.optional("by", Types.TEXT, "who did the step");

    private LogEntry(Values<LogEntry> values) {
        super(values);
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw Refusal.because("date", "date", "").causedBy(e);
        }
    }

    /**
     * {@return where a line begins}
     *
     * @param date of the reading, such as {@code 2026-03-02}
     * @param step kind of step
     * @throws IllegalArgumentException if the date is none
     */
    public static NeedsReading on(String date, ShopStep step) {
        LocalDate day;
        try {
            day = LocalDate.parse(Objects.requireNonNull(date, "date"));
        } catch (DateTimeParseException e) {
            throw Refusal.of("date", "date", "be a date such as 2026-03-02", Words.quoted(date))
                    .causedBy(e);
        }
        Values<LogEntry> begun = TABLE.values().with(DATE, day).with(STEP, Objects.requireNonNull(step, "step"));
        return value -> new LogEntry(begun.amount(READ, value));
    }

    /** A line that needs what was read. */
    @FunctionalInterface
    public interface NeedsReading {
        /**
         * {@return the line}
         *
         * @param value as read, positive as its step counts
         */
        LogEntry read(Quantity<Length> value);
    }

    /**
     * {@return this line with what the step was meant to give}
     *
     * @param length aimed at
     */
    public LogEntry meant(Quantity<Length> length) {
        return new LogEntry(values().amount(MEANT, length));
    }

    /**
     * {@return this line with the standard uncertainty of its reading}
     *
     * @param u 0 or more
     */
    public LogEntry standardUncertainty(Quantity<Length> u) {
        return new LogEntry(values().amount(U, u));
    }

    /**
     * {@return this line with the zero that it shares with others of its day}
     *
     * @param name of the zero
     */
    public LogEntry zero(String name) {
        return new LogEntry(values().with(ZERO, name));
    }

    /**
     * {@return this line with the setting that it shares with others}
     *
     * @param name of the setting
     */
    public LogEntry setting(String name) {
        return new LogEntry(values().with(SETTING, name));
    }

    /**
     * {@return this line with its jig or machine}
     *
     * @param name of the jig or machine
     */
    public LogEntry jig(String name) {
        return new LogEntry(values().with(JIG, name));
    }

    /**
     * {@return this line with who did the step}
     *
     * @param who one line of text
     */
    public LogEntry by(String who) {
        return new LogEntry(values().with(BY, who));
    }

    /**
     * {@return this line with its neck and what was read on it}
     *
     * @param neck its name
     * @param feature what was read
     */
    public LogEntry of(String neck, String feature) {
        return new LogEntry(values().with(NECK, neck).with(FEATURE, feature));
    }

    /** {@return the day of the reading} */
    public LocalDate date() {
        return values().at(DATE);
    }

    /** {@return the kind of step} */
    public ShopStep step() {
        return values().at(STEP);
    }

    /** {@return how far off it was: read less meant, with the uncertainty of the reading} */
    public Estimate<Length> residual() {
        return Estimate.of(style().amount(residualMm()), style().amount(uncertaintyMm()));
    }

    /** True for the same line, and for the same reading of the same neck on another date. */
    boolean isSameReading(LogEntry other) {
        return equals(other)
                || values().has(NECK) && equals(new LogEntry(other.values().with(DATE, date())));
    }

    double residualMm() {
        return values().at(READ).libraryValue() - values().at(MEANT).libraryValue();
    }

    double uncertaintyMm() {
        return values().at(U).libraryValue();
    }

    /** {@return the zero that readings of one day share} */
    public Optional<String> zero() {
        return values().find(ZERO);
    }

    /** {@return the setting that several lines share} */
    public Optional<String> setting() {
        return values().find(SETTING);
    }

    /** {@return the jig or machine} */
    public Optional<String> jig() {
        return values().find(JIG);
    }

    private static Form<LogEntry> sentences() {
        return TABLE.facts("log-entry").finds("log-entry", "{date}, {step}: {read}, meant {meant}");
    }
}
