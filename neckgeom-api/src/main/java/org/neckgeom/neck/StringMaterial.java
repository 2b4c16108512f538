package org.neckgeom.neck;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.LinearDensity;
import org.neckgeom.units.MassDensity;
import org.neckgeom.units.ShopUnit;

/**
 * A string material with its density: {@code StringMaterial.NYLON.plain(mm(0.71))} is the mass per length of such
 * a string. Densities are general handbook values, from memory; a maker's own figure is better.
 */
public enum StringMaterial {
    /** Music wire, 7850 kg/m3. */
    STEEL("steel", 7850),
    /** Pure nickel, 8908 kg/m3. */
    NICKEL("nickel", 8908),
    /** Phosphor bronze with about 8 % tin, 8800 kg/m3; 8780 to 8860 occur. */
    PHOSPHOR_BRONZE("phosphor bronze", 8800),
    /** Copper with 20 % zinc, 8670 kg/m3, sold as 80/20 bronze. */
    BRASS("brass", 8670),
    /** Copper, 8920 kg/m3. */
    COPPER("copper", 8920),
    /** Nylon, 1140 kg/m3; 1040 to 1150 occur in strings. */
    NYLON("nylon", 1140),
    /** Polyvinylidene fluoride, 1780 kg/m3, called fluorocarbon. */
    FLUOROCARBON("fluorocarbon", 1780),
    /** Gut, 1300 kg/m3. */
    GUT("gut", 1300);

    private final String word;
    private final double kgPerM3;

    StringMaterial(String word, double kgPerM3) {
        this.word = word;
        this.kgPerM3 = kgPerM3;
    }

    /** Returns such as {@code phosphor bronze}. */
    @Override
    public String toString() {
        return word;
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
        return grams(plainKgPerM(LibraryUnits.mmPositive(diameter, "string diameter")));
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
        return grams(woundKgPerM(d, Objects.requireNonNull(wrap, "wrap"), w));
    }

    private static Amount<LinearDensity> grams(double kgPerM) {
        return Amount.of(1000 * kgPerM, ShopUnit.GRAM_PER_METRE);
    }

    /** Mass per length of a plain round string: {@code rho pi d^2/4}, in kg/m from mm. */
    double plainKgPerM(double diameterMm) {
        double d = diameterMm / 1000;
        return kgPerM3 * Math.PI * d * d / 4;
    }

    /**
     * Mass per length of a core with one close layer of round wire: {@code rho_c pi dc^2/4 + rho_w pi^2 dw (dc + dw)/4}, kg/m
     * from mm.
     */
    double woundKgPerM(double coreMm, StringMaterial wrap, double wireMm) {
        double dc = coreMm / 1000;
        double dw = wireMm / 1000;
        return plainKgPerM(coreMm) + wrap.kgPerM3 * Math.PI * Math.PI * dw * (dc + dw) / 4;
    }
}
