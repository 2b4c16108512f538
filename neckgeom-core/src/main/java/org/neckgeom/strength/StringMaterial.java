package org.neckgeom.strength;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.LinearDensity;
import org.neckgeom.units.MassDensity;
import org.neckgeom.units.ShopUnit;

/**
 * What strings are made of, with its density: {@code StringMaterial.NYLON.plain(mm(0.71))} is the mass per length of such
 * a string. Densities are general handbook values, from memory; a maker's own figure is better.
 */
public enum StringMaterial {
    /** Music wire, 7850 kg/m3. */
    STEEL(7850),
    /** Pure nickel, 8908 kg/m3. */
    NICKEL(8908),
    /** Phosphor bronze with about 8 % tin, 8800 kg/m3; 8780 to 8860 occur. */
    PHOSPHOR_BRONZE(8800),
    /** Copper with 20 % zinc, 8670 kg/m3, sold as 80/20 bronze. */
    BRASS(8670),
    /** Copper, 8920 kg/m3. */
    COPPER(8920),
    /** Nylon, 1140 kg/m3; 1040 to 1150 occur in strings. */
    NYLON(1140),
    /** Polyvinylidene fluoride, 1780 kg/m3, called fluorocarbon. */
    FLUOROCARBON(1780),
    /** Gut, 1300 kg/m3. */
    GUT(1300);

    private final double kgPerM3;

    StringMaterial(double kgPerM3) {
        this.kgPerM3 = kgPerM3;
    }

    /** {@return the density} */
    public Amount<MassDensity> density() {
        return Amount.ofLibrary(kgPerM3, ShopUnit.KG_PER_M3);
    }

    /**
     * {@return the mass per length of a plain round string: {@code rho pi d^2/4}} Exact for the density.
     *
     * @param diameter d, more than 0
     */
    public Amount<LinearDensity> plain(Quantity<Length> diameter) {
        double kgPerM = plainKgPerM(kgPerM3, LibraryUnits.mmPositive(diameter, "string diameter"));
        return grams(kgPerM);
    }

    /**
     * {@return the mass per length of a string of this core with one close layer of round wire around it: {@code rho_c
     * pi d^2/4 + rho_w pi^2 w (d + w)/4}} Estimate: turns touch, the wire keeps its round section.
     *
     * @param core d, diameter of the core, more than 0
     * @param wrap what the wire is made of
     * @param wire w, diameter of the wire, more than 0
     */
    public Amount<LinearDensity> wrapped(Quantity<Length> core, StringMaterial wrap, Quantity<Length> wire) {
        double d = LibraryUnits.mmPositive(core, "core diameter");
        double w = LibraryUnits.mmPositive(wire, "wire diameter");
        return grams(plainKgPerM(kgPerM3, d) + windingKgPerM(Objects.requireNonNull(wrap, "wrap").kgPerM3, d, w));
    }

    double kgPerM3() {
        return kgPerM3;
    }

    private static Amount<LinearDensity> grams(double kgPerM) {
        return Amount.of(1000 * kgPerM, ShopUnit.GRAM_PER_METRE);
    }

    /** Mass per length of a plain round string: {@code rho pi d^2/4}, in kg/m from kg/m3 and mm. */
    static double plainKgPerM(double kgPerM3, double diameterMm) {
        double d = diameterMm / 1000;
        return kgPerM3 * Math.PI * d * d / 4;
    }

    /**
     * Mass per length of one close layer of round wire around a round core:
     * {@code rho pi^2 dw (dc + dw)/4}, kg/m. Estimate: the turns touch and the wire keeps its round section; the small
     * slope of the helix is left out.
     */
    static double windingKgPerM(double kgPerM3, double coreMm, double wireMm) {
        double dc = coreMm / 1000;
        double dw = wireMm / 1000;
        return kgPerM3 * Math.PI * Math.PI * dw * (dc + dw) / 4;
    }
}
