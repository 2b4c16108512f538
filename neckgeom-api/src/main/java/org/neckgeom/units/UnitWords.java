package org.neckgeom.units;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;

/** What makers write after a number, and the unit it means. */
final class UnitWords {

    private static final Map<String, ShopUnit<?>> WORDS = new HashMap<>();

    /** The same in small letters, without those that would mean two things, and without single letters. */
    private static final Map<String, ShopUnit<?>> ANY_CASE = new HashMap<>();

    /** Is no unit here, and no megapascal. */
    private static final String MILLIPASCAL = "mPa";

    /** Where the library unit is not what a maker writes, and where makers have other words for a unit. */
    private static final Map<Class<?>, List<String>> OFFERED = Map.of(
            Angle.class, List.of("deg", "rad"),
            Force.class, List.of("N", "kgf", "kg", "lbf", "lb", "ozf", "oz"),
            Frequency.class, List.of("rpm", "Hz"),
            Pressure.class, List.of("GPa", "MPa", "psi"),
            Speed.class, List.of("mm/min", "in/min", "mm/s", "m/s"));

    static {
        for (ShopUnit<?> unit : ShopUnit.ALL) {
            WORDS.put(unit.symbol(), unit);
            WORDS.put(unit.ucum(), unit);
        }
        WORDS.put("\"", ShopUnit.INCH);
        WORDS.put("inch", ShopUnit.INCH);
        WORDS.put("inches", ShopUnit.INCH);
        WORDS.put("'", ShopUnit.FOOT);
        WORDS.put("feet", ShopUnit.FOOT);
        WORDS.put("foot", ShopUnit.FOOT);
        WORDS.put("degree", ShopUnit.DEGREE);
        WORDS.put("degrees", ShopUnit.DEGREE);
        WORDS.put("\u00b0", ShopUnit.DEGREE);
        WORDS.put("newton", ShopUnit.NEWTON);
        // A string's pull; masses are not asked for.
        WORDS.put("lb", ShopUnit.POUND_FORCE);
        WORDS.put("lbs", ShopUnit.POUND_FORCE);
        WORDS.put("kg", ShopUnit.KILOGRAM_FORCE);
        WORDS.put("oz", ShopUnit.OUNCE_FORCE);
        WORDS.put("C", ShopUnit.CELSIUS);
        WORDS.put("\u00b0C", ShopUnit.CELSIUS);
        WORDS.put("F", ShopUnit.FAHRENHEIT);
        WORDS.put("\u00b0F", ShopUnit.FAHRENHEIT);
        WORDS.put("percent", ShopUnit.PERCENT);
        WORDS.remove("");
        Set<String> ambiguous = new HashSet<>();
        WORDS.forEach((word, unit) -> {
            ShopUnit<?> other = ANY_CASE.put(word.toLowerCase(Locale.ROOT), unit);
            if (word.length() < 2 || other != null && other != unit) {
                ambiguous.add(word.toLowerCase(Locale.ROOT));
            }
        });
        ANY_CASE.keySet().removeAll(ambiguous);
    }

    private UnitWords() {}

    static @Nullable ShopUnit<?> unit(String word) {
        return WORDS.get(word);
    }

    /** The unit of a word in capitals or small letters, as in {@code 12 MM}, where that can mean one thing only. */
    static @Nullable ShopUnit<?> unitInAnyCase(String word) {
        return word.equals(MILLIPASCAL) ? null : ANY_CASE.get(word.toLowerCase(Locale.ROOT));
    }

    /** The symbols of a kind, the library unit first. */
    static List<String> symbols(Class<?> kind) {
        List<String> symbols = new ArrayList<>();
        for (ShopUnit<?> unit : ShopUnit.ALL) {
            if (unit.kind() == kind && !unit.symbol().isEmpty()) {
                symbols.add(unit.symbol());
            }
        }
        if (symbols.isEmpty()) {
            throw Refusal.because("kind", "no-unit", "there is no unit for " + kind.getSimpleName() + " here");
        }
        return symbols;
    }

    /** The words offered after a number of a kind, the one a shop writes most first: 13 is 13 deg sooner than 13 rad. */
    static List<String> offered(Class<?> kind) {
        List<String> offered = OFFERED.get(kind);
        return offered == null ? symbols(kind) : offered;
    }

    static String kindInWords(Class<?> kind) {
        for (ShopUnit<?> unit : ShopUnit.HOUSE) {
            if (unit.kind() == kind) {
                return unit.kindInWords();
            }
        }
        throw Refusal.because("kind", "no-unit", "there is no unit for " + kind.getSimpleName() + " here");
    }
}
