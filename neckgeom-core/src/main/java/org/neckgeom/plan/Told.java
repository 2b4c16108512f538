package org.neckgeom.plan;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.geometry.NeckSet;
import org.neckgeom.geometry.ScarfJoint;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.strength.Weather;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** What a plan has been told, usual things where nothing was; never changed once it is in a plan. Lengths in mm. */
final class Told {

    private static final double USUAL_CENTRED_MM = 0.1;
    private static final double USUAL_WOOD_LEFT_MM = 3;
    private static final double USUAL_BRIDGE_MM = 1;
    private static final double USUAL_RELIEF_MM = 0.2;
    private static final double USUAL_CENTRED_THOU = 4;
    private static final double USUAL_WOOD_LEFT_IN = 0.125;
    private static final double USUAL_BRIDGE_THOU = 40;
    private static final double USUAL_RELIEF_THOU = 8;
    private static final Weather HEATED_WINTER =
            Weather.from(ShopUnits.percent(45), ShopUnits.celsius(21)).to(ShopUnits.percent(25), ShopUnits.celsius(21));

    final NeckDesign design;
    final Blank blank;
    final Shop shop;
    List<CentringStep> steps = List.of();
    double centredWithin = USUAL_CENTRED_MM;
    double woodLeft = USUAL_WOOD_LEFT_MM;
    double bridgeWithin = USUAL_BRIDGE_MM;
    double relief = USUAL_RELIEF_MM;

    @Nullable
    ScarfJoint scarf;

    @Nullable
    NeckSet neckSet;

    Weather weather = HEATED_WINTER;
    OrderOfWork order;
    NeckDetails details = NeckDetails.none();
    Workmanship work = Workmanship.withDefaults();
    NeckReadings readings = NeckReadings.none();

    Told(NeckDesign design, Blank blank, Shop shop) {
        this.design = design;
        this.blank = blank;
        this.shop = shop;
        this.order = OrderOfWork.forNeck(design);
        if (design.style() != LengthStyle.MILLIMETRES) {
            centredWithin = ShopUnit.THOU.toHouse(USUAL_CENTRED_THOU);
            woodLeft = ShopUnit.INCH.toHouse(USUAL_WOOD_LEFT_IN);
            bridgeWithin = ShopUnit.THOU.toHouse(USUAL_BRIDGE_THOU);
            relief = ShopUnit.THOU.toHouse(USUAL_RELIEF_THOU);
        }
    }

    Told copy() {
        return copy(design, blank, shop);
    }

    /** The same, each part in a style; readings keep theirs, and sections say them in the plan's. */
    Told in(LengthStyle style) {
        Told said = copy(design.in(style), blank.in(style), shop.in(style));
        said.scarf = scarf == null ? null : scarf.in(style);
        said.neckSet = neckSet == null ? null : neckSet.in(style);
        said.order = order.in(style);
        said.details = details.in(style);
        return said;
    }

    private Told copy(NeckDesign design, Blank blank, Shop shop) {
        Told copy = new Told(design, blank, shop);
        copy.steps = steps;
        copy.centredWithin = centredWithin;
        copy.woodLeft = woodLeft;
        copy.bridgeWithin = bridgeWithin;
        copy.relief = relief;
        copy.scarf = scarf;
        copy.neckSet = neckSet;
        copy.weather = weather;
        copy.order = order;
        copy.details = details;
        copy.work = work;
        copy.readings = readings;
        return copy;
    }

    List<@Nullable Object> all() {
        return Arrays.asList(
                design,
                blank,
                shop,
                steps,
                centredWithin,
                woodLeft,
                bridgeWithin,
                relief,
                scarf,
                neckSet,
                weather,
                order,
                details,
                work,
                readings);
    }
}
