package org.neckgeom.units;

import java.util.Map;

/** Codes of the Unified Code for Units of Measure where they differ from a shop's symbols. */
final class UcumCodes {

    private static final Map<ShopUnit<?>, String> CODES = Map.ofEntries(
            Map.entry(ShopUnit.INCH, "[in_i]"),
            Map.entry(ShopUnit.INCH_FRACTION, "[in_i]"),
            Map.entry(ShopUnit.THOU, "[mil_i]"),
            Map.entry(ShopUnit.FOOT, "[ft_i]"),
            Map.entry(ShopUnit.POUND_FORCE, "[lbf_av]"),
            Map.entry(ShopUnit.OUNCE_FORCE, "[oz_av].[g]"),
            Map.entry(ShopUnit.PSI, "[psi]"),
            Map.entry(ShopUnit.CELSIUS, "Cel"),
            Map.entry(ShopUnit.FAHRENHEIT, "[degF]"),
            Map.entry(ShopUnit.RPM, "/min"),
            Map.entry(ShopUnit.INCH_PER_MINUTE, "[in_i]/min"),
            Map.entry(ShopUnit.POUND_PER_INCH, "[lb_av]/[in_i]"));

    private UcumCodes() {}

    static String of(ShopUnit<?> unit) {
        return CODES.getOrDefault(unit, unit.toString());
    }
}
