package org.neckgeom.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.shop.Cutter;
import org.neckgeom.stock.Wood;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * What a cutter bears while it cuts a slot as wide as itself: rim speed, chip load, force, bend. Immutable; told step by
 * step: {@code CutterLoad.of(cutter, wood).feed(speed, turns).pass(depth)}.
 *
 * <p>Rim speed {@code pi D n} and chip load {@code f/(n z)} are exact. The rest is an estimate: power {@code k_c a D f},
 * mean tangential force power over rim speed, and that force at the tip of a stepped cantilever, fluted part with 0.8 of
 * the diameter (common practice 0.7 to 0.85), shank to the collet. The specific cutting force k_c is 0.055 N/mm2 for
 * each kg/m3 of density unless {@link Cutting#cuttingForce} tells it: the 32.0 to 37.6 N/mm2 measured on particleboard
 * (Palubicki, Materials 14, 2021, 2208) over its usual density; solid wood spreads from half to twice that, and a dull
 * edge doubles it again.
 */
public final class CutterLoad extends ValueAnswer {

    private static final Form<CutterLoad> FORM = Form.<CutterLoad>of("cutter-load")
            .fact("cutterDiameter", Kind.MM, "of the cutter", load -> load.cutter.diameterMm())
            .fact("passDepth", Kind.MM, "of the pass", load -> load.depthMm)
            .fact("rimSpeed", Kind.house(ShopUnit.METRE_PER_SECOND), "of the cutter's rim", CutterLoad::rimMmPerSecond)
            .fact("chipLoad", Kind.MM, "what each edge takes", CutterLoad::chipMm)
            .fact(
                    "slotWidth",
                    Kind.MM,
                    "cutter and runout",
                    load -> load.slotWidth().house())
            .fact("force", Kind.house(ShopUnit.NEWTON), "estimate, half to twice", CutterLoad::forceNewton)
            .fact(
                    "power",
                    Kind.house(ShopUnit.WATT),
                    "estimate, half to twice",
                    load -> load.power().house())
            .fact("bend", Kind.MM, "at the tip; estimate, half to twice", CutterLoad::bendMm)
            .fact("cautions", Kind.table(Caution.FORM), "what is out of the usual", CutterLoad::unusual)
            .finds("cutter-load", "Cutter load, {cutterDiameter:brief} cutter, pass {passDepth:table brief}")
            .line("rimSpeed", "rim speed", "{rimSpeed:1}")
            .line("chipLoad", "chip load", "{chipLoad:small} an edge")
            .line("slotWidth", "slot width", "{slotWidth:brief}")
            .line("force", "force", "about {force:1} (estimate, half to twice)")
            .line("power", "power", "about {power:0} (estimate)")
            .line("bend", "bend", "about {bend:small} at the tip (estimate)")
            .noteEach("cautions", "{sentence} ({why})");

    /** Diameter that counts for the bend of the fluted part, as a ratio of the cutter's. */
    static final double FLUTED_RATIO = 0.8;

    private static final double FORCE_PER_DENSITY = 0.055;
    private static final double[] LIMIT_DIAMETERS_MM = {25, 50, 64, 75};
    private static final double[] LIMIT_RPM = {24_000, 18_000, 12_000, 10_000, 10_000};
    private static final double LEAST_CHIP_MM = 0.05;
    private static final double GREATEST_CHIP_MM = 0.25;

    private final Cutter cutter;
    private final double specificForce;
    private final double feed;
    private final double turns;
    private final double depthMm;

    private CutterLoad(
            Cutter cutter, double specificForce, double feed, double turns, double depthMm, LengthStyle style) {
        super(style);
        this.cutter = cutter;
        this.specificForce = specificForce;
        this.feed = feed;
        this.turns = turns;
        this.depthMm = depthMm;
    }

    /**
     * Starts with a cutter and the wood it cuts.
     *
     * @param cutter the cutter
     * @param wood the wood
     * @return the next step: tell the feed
     */
    public static Cutting of(Cutter cutter, Wood wood) {
        return new Cutting(
                Objects.requireNonNull(cutter, "cutter"),
                FORCE_PER_DENSITY * Objects.requireNonNull(wood, "wood").densityKgPerM3());
    }

    /** A cutter in a wood, not yet fed. */
    public static final class Cutting implements Answer {
        private static final Form<Cutting> FORM = Form.<Cutting>of("cutting")
                .fact("cutter", Kind.ANSWER, "what is cut with", cutting -> cutting.cutter)
                .fact(
                        "specificForce",
                        Kind.house(ShopUnit.MEGAPASCAL),
                        "for each area of chip section",
                        cutting -> cutting.specificForce)
                .finds("not-fed", "{cutter}, specific cutting force about {specificForce:0}; tell the feed");

        private final Cutter cutter;
        private final double specificForce;

        private Cutting(Cutter cutter, double specificForce) {
            this.cutter = cutter;
            this.specificForce = specificForce;
        }

        /**
         * {@return the same with a specific cutting force of one's own}
         *
         * @param force for each area of chip section, more than 0
         * @throws IllegalArgumentException if it is not more than 0
         */
        public Cutting cuttingForce(Quantity<Pressure> force) {
            return new Cutting(cutter, HouseUnits.positive(force, ShopUnit.MEGAPASCAL, "specific cutting force"));
        }

        /**
         * {@return the cutter fed at a speed; the next step: tell the depth}
         *
         * @param speed of the feed, more than 0
         * @param turning of the cutter, more than 0
         * @throws IllegalArgumentException if one is not more than 0
         */
        public Feeding feed(Quantity<Speed> speed, Quantity<Frequency> turning) {
            return new Feeding(
                    this,
                    HouseUnits.positive(speed, ShopUnit.MM_PER_SECOND, "feed"),
                    HouseUnits.positive(turning, ShopUnit.HERTZ, "cutter speed"));
        }

        @Override
        public Form<Cutting> form() {
            return FORM;
        }

        @Override
        public LengthStyle style() {
            return cutter.style();
        }

        /** Returns what is cut with. */
        @Override
        public String toString() {
            return text(style());
        }
    }

    /** A cutter fed at a speed, its depth not yet told. */
    public static final class Feeding implements Answer {
        private static final Form<Feeding> FORM = Form.<Feeding>of("feeding")
                .fact("cutter", Kind.ANSWER, "what is cut with", feeding -> feeding.cutting.cutter)
                .fact("turning", Kind.house(ShopUnit.RPM), "of the cutter", feeding -> feeding.turns)
                .fact("feed", Kind.house(ShopUnit.MM_PER_MINUTE), "of the work", feeding -> feeding.feed)
                .finds("no-depth", "{cutter}, {turning:0}, feed {feed}; tell the depth of the pass");

        private final Cutting cutting;
        private final double feed;
        private final double turns;

        private Feeding(Cutting cutting, double feed, double turns) {
            this.cutting = cutting;
            this.feed = feed;
            this.turns = turns;
        }

        /**
         * {@return the load of a pass}
         *
         * @param depth of the pass, more than 0, no more than the cutter stands out
         * @throws IllegalArgumentException if the depth is out of its range
         */
        public CutterLoad pass(Quantity<Length> depth) {
            double mm = HouseUnits.mmPositive(depth, "pass depth");
            Cutter cutter = cutting.cutter;
            if (!(mm <= cutter.standOutMm())) {
                throw HouseUnits.refused(
                        "pass depth",
                        "at-most",
                        "no more than the cutter stands out, " + cutter.style().brief(cutter.standOutMm()),
                        depth);
            }
            return new CutterLoad(cutter, cutting.specificForce, feed, turns, mm, LengthStyle.of(depth));
        }

        @Override
        public Form<Feeding> form() {
            return FORM;
        }

        @Override
        public LengthStyle style() {
            return cutting.style();
        }

        /** Returns what is cut with and how fast. */
        @Override
        public String toString() {
            return text(style());
        }
    }

    /**
     * {@return the speed of the cutter's rim, {@code pi D n}; in m/s} Exact.
     */
    public Amount<Speed> rimSpeed() {
        return Amount.ofHouse(rimMmPerSecond(), ShopUnit.METRE_PER_SECOND);
    }

    private double rimMmPerSecond() {
        return CutterForces.rimSpeed(cutter.diameterMm(), turns);
    }

    /**
     * {@return what one edge takes a turn, {@code f/(n z)}; more than 0} Exact.
     */
    public Amount<Length> chipLoad() {
        return style().amount(chipMm());
    }

    private double chipMm() {
        return CutterForces.chipLoad(feed, turns, cutter.flutes());
    }

    /**
     * {@return the power at the cutter, {@code k_c a D f}; in W, half to twice} Estimate.
     */
    public Amount<Power> power() {
        return Amount.ofHouse(powerNmmPerSecond() / 1000, ShopUnit.WATT);
    }

    private double powerNmmPerSecond() {
        return CutterForces.power(specificForce, depthMm, cutter.diameterMm(), feed);
    }

    /**
     * {@return the mean tangential force, power over rim speed; in N, half to twice} Estimate.
     */
    public Amount<Force> force() {
        return Amount.ofHouse(forceNewton(), ShopUnit.NEWTON);
    }

    private double forceNewton() {
        return powerNmmPerSecond() / rimMmPerSecond();
    }

    /**
     * {@return how far that force at the tip bends the cutter; half to twice} Estimate; the collet and the spindle give
     * way as well.
     */
    public Amount<Length> bend() {
        return style().amount(bendMm());
    }

    /**
     * {@return how far that force at the tip bends the cutter, in mm; half to twice} Estimate.
     */
    public double bendMm() {
        double fluted = Math.min(cutter.fluteLengthMm(), cutter.standOutMm());
        double shank = cutter.standOutMm() - fluted;
        return CutterForces.bend(
                forceNewton(),
                cutter.material().modulusMPa(),
                fluted,
                CutterForces.roundSecondMoment(FLUTED_RATIO * cutter.diameterMm()),
                shank,
                CutterForces.roundSecondMoment(cutter.shankMm()));
    }

    /**
     * {@return the width of the slot: cutter and runout; more than 0} Runout widens a slot and does not move its
     * middle.
     */
    public Amount<Length> slotWidth() {
        return style().amount(cutter.diameterMm() + cutter.runoutMm());
    }

    /**
     * {@return the fastest a cutter of this diameter is usually run: 24,000 rpm to 25 mm, 18,000 to 50, 12,000 to 64,
     * 10,000 above} Common practice; the figure on the cutter and the machine's instructions come first.
     */
    public Amount<Frequency> usualFastest() {
        return ShopUnit.RPM.of(fastestRpm());
    }

    private double fastestRpm() {
        int i = 0;
        while (i < LIMIT_DIAMETERS_MM.length && cutter.diameterMm() > LIMIT_DIAMETERS_MM[i]) {
            i++;
        }
        return LIMIT_RPM[i];
    }

    /** {@return what to beware of at this load; the machine's own instructions first} */
    public Cautions cautions() {
        List<Caution> all = new ArrayList<>();
        all.add(Cautions.INSTRUCTIONS);
        all.addAll(unusual(style()));
        all.add(Cautions.CLIMB_FEED);
        all.add(Cautions.DUST);
        return Cautions.of(all);
    }

    private List<Caution> unusual(LengthStyle shown) {
        List<Caution> all = new ArrayList<>();
        if (turns * 60 > fastestRpm() * (1 + 1e-9)) {
            all.add(new Caution(
                    "TOO_FAST",
                    "Slower than " + Numbers.fixed(fastestRpm(), 0) + " rpm with a cutter of "
                            + cutter.diameter().in(shown),
                    "its edges fly off, or it burns; the figure on the cutter comes first"));
        }
        if (depthMm > cutter.diameterMm() / 2 * (1 + 1e-9)) {
            all.add(new Caution(
                    "PASS_TOO_DEEP",
                    "This pass is deeper than half the cutter's diameter: take more passes",
                    Cautions.DEPTH_PER_PASS.why()));
        }
        if (chipMm() < LEAST_CHIP_MM) {
            all.add(new Caution(
                    "RUBS",
                    "Feed faster or turn slower: each edge takes " + shown.small(chipMm()),
                    "an edge that takes under 0.05 mm (2 thou) rubs and burns"));
        } else if (chipMm() > GREATEST_CHIP_MM) {
            all.add(new Caution(
                    "BITES",
                    "Feed slower: each edge takes " + shown.small(chipMm()),
                    "more than about 0.25 mm (10 thou) an edge snatches and tears with a small cutter"));
        }
        return all;
    }

    @Override
    public Form<CutterLoad> form() {
        return FORM;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {cutter, specificForce, feed, turns, depthMm};
    }
}
