package org.neckgeom.units;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What makers write after a number, and the unit it means. */
final class UnitWords {

    private static final Map<String, ShopUnit<?>> WORDS = new HashMap<>();

    static {
        for (ShopUnit<?> unit : ShopUnit.ALL) {
            WORDS.put(unit.symbol(), unit);
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
    }

    private UnitWords() {}

    static @Nullable ShopUnit<?> unit(String word) {
        return WORDS.get(word);
    }

    /** The symbols of a kind, the house unit first. */
    static List<String> symbols(Class<?> kind) {
        List<String> symbols = new ArrayList<>();
        for (ShopUnit<?> unit : ShopUnit.ALL) {
            if (unit.kind() == kind && !unit.symbol().isEmpty()) {
                symbols.add(unit.symbol());
            }
        }
        if (symbols.isEmpty()) {
            throw new IllegalArgumentException("there is no unit for " + kind.getSimpleName() + " here");
        }
        return symbols;
    }

    static String kindInWords(Class<?> kind) {
        for (ShopUnit<?> unit : ShopUnit.HOUSE) {
            if (unit.kind() == kind) {
                return unit.kindInWords();
            }
        }
        throw new IllegalArgumentException("there is no unit for " + kind.getSimpleName() + " here");
    }
}
