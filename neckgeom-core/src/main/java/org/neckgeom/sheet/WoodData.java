package org.neckgeom.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** A maker's own wood from its figures. */
final class WoodData {

    /** Source of a figure the maker gave; shrinkage and change follow from each other, and only one of them was given. */
    private static final String GIVEN = "given";

    private WoodData() {}

    static Wood own(String name, List<?> figures) {
        Map<String, Double> told = new HashMap<>();
        boolean changeGiven = false;
        for (Object figure : figures) {
            DataMap data = DataMap.of(figure, "wood figure");
            told.put(data.text("kind"), data.number("value"));
            changeGiven |= data.text("kind").equals("radial_change")
                    && data.text("source").equals(GIVEN);
        }
        Wood wood = Wood.named(name);
        if (told.containsKey("density")) {
            wood = wood.density(ShopUnits.kgPerM3(told.get("density")));
        }
        if (told.containsKey("modulus")) {
            wood = wood.modulus(Amount.of(told.get("modulus"), ShopUnit.MEGAPASCAL));
        }
        if (told.containsKey("modulus_variation")) {
            wood = wood.modulusVariation(ShopUnits.percent(told.get("modulus_variation")));
        }
        if (told.containsKey("bending_strength")) {
            wood = wood.bendingStrength(Amount.of(told.get("bending_strength"), ShopUnit.MEGAPASCAL));
        }
        Double radial = told.get("radial_shrinkage");
        Double tangential = told.get("tangential_shrinkage");
        if (radial != null && tangential != null && !changeGiven) {
            return wood.shrinkage(ShopUnits.percent(radial), ShopUnits.percent(tangential));
        }
        Double radialChange = told.get("radial_change");
        Double tangentialChange = told.get("tangential_change");
        return radialChange == null || tangentialChange == null
                ? wood
                : wood.changePerPercent(radialChange, tangentialChange);
    }
}
