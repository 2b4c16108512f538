package org.neckgeom.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * What has been given of a noun, key by key. Immutable. Equal are values of one table that hold the same under each key,
 * given or by default.
 *
 * @param <T> the noun
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Values<T> {

    private final Table<T> table;
    private final @Nullable Object[] given;
    /** The style asked for by {@link #printedIn}; null where the values have their own. */
    private final @Nullable LengthStyle asked;

    Values(Table<T> table, @Nullable Object[] given) {
        this(table, given, null);
    }

    private Values(Table<T> table, @Nullable Object[] given, @Nullable LengthStyle asked) {
        this.table = table;
        this.given = given;
        this.asked = asked;
    }

    /**
     * {@return the value under a key; what was given, else the default}
     *
     * @param <V> its type
     * @param key of this table, needed or with a default
     * @throws IllegalArgumentException if there is neither
     */
    @SuppressWarnings("unchecked") // with() took the value by this very key
    public <V> V at(Key<T, V> key) {
        Object value = given[Objects.requireNonNull(key, "key").index];
        if (value != null) {
            return (V) value;
        }
        if (key.usual != null) {
            return key.usual;
        }
        throw missing(key);
    }

    /**
     * {@return the value under a key that may be absent; what was given, else the default, else nothing}
     *
     * @param <V> its type
     * @param key of this table
     */
    @SuppressWarnings("unchecked") // with() took the value by this very key
    public <V> Optional<V> find(Key<T, V> key) {
        Object value = given[Objects.requireNonNull(key, "key").index];
        return Optional.ofNullable(value != null ? (V) value : key.usual);
    }

    /**
     * {@return a quantity in its library unit; mm, rad, N and so on}
     *
     * @param <Q> the kind of quantity
     * @param key of this table, needed or with a default
     */
    public <Q extends Quantity<Q>> double libraryValue(Key<T, Amount<Q>> key) {
        return at(key).libraryValue();
    }

    /**
     * {@return a quantity in its library unit, or another number where it was not given; mm, rad, N and so on}
     *
     * @param <Q> the kind of quantity
     * @param key of this table
     * @param otherwise the number where there is none
     */
    public <Q extends Quantity<Q>> double libraryValue(Key<T, Amount<Q>> key, double otherwise) {
        return has(key) || key.usual != null ? at(key).libraryValue() : otherwise;
    }

    /**
     * {@return whether a value was given and is not only the default; true when given}
     *
     * @param key of this table
     */
    public boolean has(Key<T, ?> key) {
        return given[Objects.requireNonNull(key, "key").index] != null;
    }

    /**
     * {@return these values with one more, or with another under its key}
     *
     * @param <V> its type
     * @param key of this table
     * @param value the value
     * @throws IllegalArgumentException if the key's type does not allow it
     */
    public <V> Values<T> with(Key<T, V> key, V value) {
        Objects.requireNonNull(key, "key").type.check(Objects.requireNonNull(value, key.label()), key.label());
        return put(key.index, value);
    }

    /**
     * {@return these values with a quantity of any JSR 385 provider}
     *
     * @param <Q> the kind of quantity
     * @param key of this table
     * @param quantity the value
     * @throws IllegalArgumentException if the key's type does not allow it
     */
    public <Q extends Quantity<Q>> Values<T> amount(Key<T, Amount<Q>> key, Quantity<Q> quantity) {
        Objects.requireNonNull(quantity, Objects.requireNonNull(key, "key").label());
        return put(key.index, ((QuantityType<Q>) key.type).checked(quantity, key.label()));
    }

    /**
     * {@return these values with a list of quantities of any JSR 385 provider}
     *
     * @param <Q> the kind of quantity
     * @param key of this table
     * @param quantities the list
     * @throws IllegalArgumentException if the key's type does not allow it
     */
    public <Q extends Quantity<Q>> Values<T> amounts(
            Key<T, List<Amount<Q>>> key, List<? extends Quantity<Q>> quantities) {
        List<Amount<Q>> amounts = new ArrayList<>();
        Objects.requireNonNull(quantities, Objects.requireNonNull(key, "key").label());
        for (Quantity<Q> quantity : quantities) {
            amounts.add(Amount.from(quantity, key.label()));
        }
        return with(key, List.copyOf(amounts));
    }

    /**
     * {@return these values with a quantity as it was found on a neck, which need not be what the key's type allows a
     * maker to give}
     *
     * @param <Q> the kind of quantity
     * @param key of this table
     * @param quantity as it was read
     */
    public <Q extends Quantity<Q>> Values<T> found(Key<T, Amount<Q>> key, Quantity<Q> quantity) {
        Objects.requireNonNull(quantity, Objects.requireNonNull(key, "key").label());
        return put(key.index, Amount.from(quantity, ((QuantityType<Q>) key.type).like(), key.label()));
    }

    /**
     * {@return these values without what was given under a key}
     *
     * @param key of this table
     */
    public Values<T> without(Key<T, ?> key) {
        return put(Objects.requireNonNull(key, "key").index, null);
    }

    private Values<T> put(int index, @Nullable Object value) {
        @Nullable Object[] copy = given.clone();
        copy[index] = value;
        return new Values<>(table, copy, asked);
    }

    /**
     * {@return these values once all that is needed is among them: the first line of a noun's constructor}
     *
     * @throws IllegalArgumentException naming every key that lacks
     */
    public Values<T> complete() {
        table.refuseLacking(this);
        table.refuseRivals(this);
        return this;
    }

    Form<T> form() {
        return table.form();
    }

    private Refusal missing(Key<T, ?> key) {
        return Refusal.because(key.name(), "missing", Table.missing(key.label(), key));
    }

    /**
     * {@return the refusal of a value that is allowed by itself, but not beside others; to be thrown; in a tree it gets
     * its path}
     *
     * @param key whose value cannot be
     * @param rule a stable code, lower case with hyphens
     * @param must such as {@code be 78 mm or less, the heel's own height}
     * @param was what was given
     */
    public Refusal refused(Key<T, ?> key, String rule, String must, Object was) {
        return Refusal.of(Objects.requireNonNull(key, "key").name(), rule, must, was);
    }

    /**
     * {@return the same values, printed in another style of length; equal values}
     *
     * @param style how to print lengths
     */
    public Values<T> printedIn(LengthStyle style) {
        Objects.requireNonNull(style, "style");
        @Nullable Object[] copy = given.clone();
        for (Key<T, ?> key : table.keys) {
            Object value = copy[key.index];
            copy[key.index] = value == null ? null : restyled(key, value, style);
        }
        return new Values<>(table, copy, style);
    }

    @SuppressWarnings("unchecked") // with() took the value by this very key
    private static <T, V> Object restyled(Key<T, V> key, Object value, LengthStyle style) {
        return key.type.in((V) value, style);
    }

    /**
     * {@return the style asked for by {@link #printedIn}, else that of the first length given; millimetres where there is
     * none}
     */
    public LengthStyle style() {
        return style(LengthStyle.MILLIMETRES);
    }

    /**
     * {@return the style asked for by {@link #printedIn}, else that of the first length given}
     *
     * @param otherwise the style where there is none
     */
    public LengthStyle style(LengthStyle otherwise) {
        return firstStyle().orElse(Objects.requireNonNull(otherwise, "otherwise"));
    }

    Optional<LengthStyle> firstStyle() {
        if (asked != null) {
            return Optional.of(asked);
        }
        for (Key<T, ?> key : table.keys) {
            Optional<LengthStyle> style = styleOf(key);
            if (style.isPresent()) {
                return style;
            }
        }
        return Optional.empty();
    }

    @SuppressWarnings("unchecked") // with() took the value by this very key
    private <V> Optional<LengthStyle> styleOf(Key<T, V> key) {
        Object value = given[key.index];
        return value == null ? Optional.empty() : key.type.style((V) value);
    }

    /** Whether a key of this table has neither a value nor a default. */
    boolean isLacking(Key<?, ?> key) {
        return given[key.index] == null && key.usual == null;
    }

    private @Nullable Object[] effective() {
        @Nullable Object[] all = given.clone();
        for (Key<T, ?> key : table.keys) {
            all[key.index] = all[key.index] == null ? key.usual : all[key.index];
        }
        return all;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Values<?> that
                && table == that.table
                && (Arrays.equals(given, that.given) || Arrays.equals(effective(), that.effective()));
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(effective());
    }

    /** What was given, key by key, as a neck file has it. */
    @Override
    public String toString() {
        return table.plain(this, Spelling.WORDS).toString();
    }
}
