package org.neckgeom.plan;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.Offset;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.strength.Weather;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** What a plan has been told, usual things where nothing was. Lengths in mm. Immutable. */
final class Told {

    private static final double USUAL_RELIEF_MM = 0.2;
    private static final double USUAL_RELIEF_THOU = 8;
    private static final Weather HEATED_WINTER =
            Weather.from(ShopUnits.percent(45), ShopUnits.celsius(21)).to(ShopUnits.percent(25), ShopUnits.celsius(21));

    final NeckDesign design;
    final Blank blank;
    final Shop shop;
    final List<CentringStep> steps;
    final NeckLimits limits;
    final double relief;
    final Weather weather;
    final OrderOfWork order;
    final NeckDetails details;
    final Workmanship work;
    final NeckReadings readings;

    private Told(Parts parts) {
        this.design = parts.design;
        this.blank = parts.blank;
        this.shop = parts.shop;
        this.steps = List.copyOf(parts.steps);
        this.limits = parts.limits;
        this.relief = parts.relief;
        this.weather = parts.weather;
        this.order = parts.order;
        this.details = parts.details;
        this.work = parts.work;
        this.readings = parts.readings;
    }

    /** The parts on their way from one value to the next; never kept. */
    static final class Parts {
        NeckDesign design;
        Blank blank;
        Shop shop;
        List<CentringStep> steps = List.of();
        NeckLimits limits = NeckLimits.withDefaults();
        double relief = USUAL_RELIEF_MM;

        Weather weather = HEATED_WINTER;
        OrderOfWork order;
        NeckDetails details = NeckDetails.none();
        Workmanship work = Workmanship.withDefaults();
        NeckReadings readings = NeckReadings.none();

        private Parts(NeckDesign design, Blank blank, Shop shop) {
            this.design = design;
            this.blank = blank;
            this.shop = shop;
            this.order = OrderOfWork.forNeck(design);
            if (design.style() != LengthStyle.MILLIMETRES) {
                relief = ShopUnit.THOU.toHouse(USUAL_RELIEF_THOU);
            }
        }

        private Parts(Told told) {
            this.design = told.design;
            this.blank = told.blank;
            this.shop = told.shop;
            this.steps = told.steps;
            this.limits = told.limits;
            this.relief = told.relief;
            this.weather = told.weather;
            this.order = told.order;
            this.details = told.details;
            this.work = told.work;
            this.readings = told.readings;
        }
    }

    static Told of(NeckDesign design, Blank blank, Shop shop) {
        return new Told(new Parts(design, blank, shop));
    }

    Told with(Consumer<Parts> change) {
        Parts parts = new Parts(this);
        change.accept(parts);
        return new Told(parts);
    }

    /** The same, each part in a style. */
    Told in(LengthStyle style) {
        return with(parts -> {
            parts.design = design.in(style);
            parts.blank = blank.in(style);
            parts.shop = shop.in(style);
            parts.steps = steps.stream().map(step -> read(step, style)).toList();
            parts.readings = readings.in(style);
        });
    }

    private static CentringStep read(CentringStep step, LengthStyle style) {
        return step.cut()
                .map(cut -> cut.in(style))
                .map(cut -> step.isReadAgain() ? CentringStep.readAgain(cut) : CentringStep.read(cut))
                .orElseGet(() -> CentringStep.moved(moved(step.move().orElseThrow(), style)));
    }

    private static FenceMove moved(FenceMove move, LengthStyle style) {
        Amount<Length> u = style.amount(move.uncertainty().house());
        return FenceMove.of(Offset.of(style.amount(move.towardMm()), u))
                .settingUncertainty(style.amount(move.settingUncertaintyMm()));
    }

    List<Object> all() {
        return Arrays.asList(design, blank, shop, steps, limits, relief, weather, order, details, work, readings);
    }
}
