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
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.shop.Caution;
import org.neckgeom.shop.Cutter;
import org.neckgeom.stock.Wood;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * Cutting forces (estimate) on a cutter (bit, router bit) in a slot as wide as the cutter: rim speed, {@index "chip load"}
 * (feed per tooth), force, bend. Immutable.
 *
 * <p>Rim speed {@code pi D n} and chip load {@code f/(n z)} are exact. The rest is an estimate: power {@code k_c a D f},
 * mean tangential force power over rim speed, and that force at the tip of a stepped cantilever, fluted part with 0.8 of
 * the diameter (common practice 0.7 to 0.85), shank to the collet. The specific cutting force k_c is 0.055 N/mm2 for
 * each kg/m3 of density unless {@link #cuttingForce} is given: the 32.0 to 37.6 N/mm2 measured on particleboard
 * (Palubicki, Materials 14, 2021, 2208) over its usual density; solid wood spreads from half to twice that, and a dull
 * edge doubles it again.
 */
public final class CutterLoad extends ValueAnswer {

    private static final Form<CutterLoad> FORM = Form.<CutterLoad>of("cutter-load")
            .fact("cutterDiameter", Kind.MM, "of the cutter", load -> load.cutter.diameterMm())
            .fact("passDepth", Kind.MM, "of the pass", load -> load.depthMm)
            .fact(
                    "rimSpeed",
                    Kind.libraryValue(ShopUnit.METRE_PER_SECOND),
                    "of the cutter's rim",
                    x -> x.rimSpeed().libraryValue())
            .fact(
                    "chipLoad",
                    Kind.MM,
                    "feed per edge and turn",
                    x -> x.chipLoad().libraryValue())
            .fact(
                    "slotWidth",
                    Kind.MM,
                    "cutter and runout",
                    load -> load.slotWidth().libraryValue())
            .fact(
                    "force",
                    Kind.libraryValue(ShopUnit.NEWTON),
                    "estimate, half to twice",
                    x -> x.force().libraryValue())
            .fact(
                    "power",
                    Kind.libraryValue(ShopUnit.WATT),
                    "estimate, half to twice",
                    load -> load.power().libraryValue())
            .fact(
                    "bend",
                    Kind.MM,
                    "at the tip; estimate, half to twice",
                    x -> x.bend().libraryValue())
            .fact(
                    "cautions",
                    Kind.table(Caution.known("MACHINE_FIRST").form()),
                    "values outside the usual range",
                    CutterLoad::unusual)
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
        super(FORM, style);
        this.cutter = cutter;
        this.specificForce = specificForce;
        this.feed = feed;
        this.turns = turns;
        this.depthMm = depthMm;
    }

    /**
     * {@return the load of a pass}
     *
     * @param cutter the cutter
     * @param wood the wood it cuts
     * @param speed of the feed, more than 0
     * @param turning of the cutter, more than 0
     * @param depth of the pass, more than 0, no more than the cutter's stick-out
     * @throws IllegalArgumentException if one is out of its range
     */
    public static CutterLoad of(
            Cutter cutter, Wood wood, Quantity<Speed> speed, Quantity<Frequency> turning, Quantity<Length> depth) {
        Objects.requireNonNull(cutter, "cutter");
        double density = Objects.requireNonNull(wood, "wood").densityKgPerM3();
        double feed = LibraryUnits.positive(speed, ShopUnit.MM_PER_SECOND, "feed");
        double turns = LibraryUnits.positive(turning, ShopUnit.HERTZ, "cutter speed");
        double mm = LibraryUnits.mmPositive(depth, "pass depth");
        if (!(mm <= cutter.stickOutMm())) {
            throw LibraryUnits.refused(
                    "pass depth",
                    "at-most",
                    "no more than the cutter's stick-out, " + cutter.style().brief(cutter.stickOutMm()),
                    depth);
        }
        return new CutterLoad(cutter, FORCE_PER_DENSITY * density, feed, turns, mm, LengthStyle.of(depth));
    }

    /**
     * {@return the same with a specific cutting force of one's own}
     *
     * @param force for each area of chip section, more than 0
     * @throws IllegalArgumentException if it is not more than 0
     */
    public CutterLoad cuttingForce(Quantity<Pressure> force) {
        double mpa = LibraryUnits.positive(force, ShopUnit.MEGAPASCAL, "specific cutting force");
        return new CutterLoad(cutter, mpa, feed, turns, depthMm, style());
    }

    /** {@return the speed of the cutter's rim, {@code pi D n}; exact} */
    public Amount<Speed> rimSpeed() {
        return Amount.ofLibrary(Math.PI * cutter.diameterMm() * turns, ShopUnit.METRE_PER_SECOND);
    }

    /** {@return what one edge takes a turn, {@code f/(n z)}, more than 0; exact} */
    public Amount<Length> chipLoad() {
        return style().amount(feed / (turns * cutter.flutes()));
    }

    /** {@return the power at the cutter, {@code k_c a D f}; estimate, half to twice} */
    public Amount<Power> power() {
        return Amount.ofLibrary(powerNmmPerSecond() / 1000, ShopUnit.WATT);
    }

    private double powerNmmPerSecond() {
        return specificForce * depthMm * cutter.diameterMm() * feed;
    }

    /** {@return the mean tangential force, power over rim speed; estimate, half to twice} */
    public Amount<Force> force() {
        return Amount.ofLibrary(powerNmmPerSecond() / rimSpeed().libraryValue(), ShopUnit.NEWTON);
    }

    /** {@return how far that force at the tip bends the cutter; estimate, collet and spindle give way as well} */
    public Amount<Length> bend() {
        double fluted = Math.min(cutter.fluteLengthMm(), cutter.stickOutMm());
        double shank = cutter.stickOutMm() - fluted;
        return style().amount(bend(
                force().libraryValue(),
                cutter.material().modulusMPa(),
                fluted,
                roundSecondMoment(FLUTED_RATIO * cutter.diameterMm()),
                shank,
                roundSecondMoment(cutter.shankMm())));
    }

    /** Second moment of a round section in mm^4. */
    static double roundSecondMoment(double diameter) {
        return Math.PI * diameter * diameter * diameter * diameter / 64;
    }

    /**
     * Bend at the tip of a stepped cantilever under a load at the tip, in mm.
     *
     * @param force in N
     * @param modulus in MPa
     * @param free length of the free part, with second moment {@code freeI}
     * @param root length of the part next to the collet, with second moment {@code rootI}
     */
    static double bend(double force, double modulus, double free, double freeI, double root, double rootI) {
        double all = free + root;
        double cube = free * free * free;
        return force / (3 * modulus) * (cube / freeI + (all * all * all - cube) / rootI);
    }

    /** {@return the width of the slot: cutter and runout, which does not move its middle; more than 0} */
    public Amount<Length> slotWidth() {
        return style().amount(cutter.slotWidthMm());
    }

    /**
     * {@return the fastest a cutter of this diameter is usually run: 24,000 rpm to 25 mm, 18,000 to 50, 12,000 to 64,
     * 10,000 above} Common practice; the figure on the cutter and the machine's instructions come first.
     */
    public Amount<Frequency> usualFastest() {
        int i = 0;
        while (i < LIMIT_DIAMETERS_MM.length && cutter.diameterMm() > LIMIT_DIAMETERS_MM[i]) {
            i++;
        }
        return ShopUnit.RPM.of(LIMIT_RPM[i]);
    }

    /** {@return what to beware of at this load; the machine's own instructions first} */
    public Cautions cautions() {
        List<Caution> all = new ArrayList<>();
        all.add(Caution.known("MACHINE_FIRST"));
        all.addAll(unusual(style()));
        all.add(Caution.known("CUTTER_SPEED"));
        all.add(Caution.known("CLIMB_FEED"));
        all.add(Caution.known("DUST"));
        return Cautions.of(all);
    }

    private List<Caution> unusual(LengthStyle shown) {
        List<Caution> all = new ArrayList<>();
        double fastest = usualFastest().valueIn(ShopUnit.RPM);
        double chip = chipLoad().libraryValue();
        if (turns * 60 > fastest * (1 + 1e-9)) {
            all.add(new Caution(
                    "TOO_FAST",
                    "Slower than " + Numbers.fixed(fastest, 0) + " rpm with a cutter of "
                            + cutter.diameter().in(shown),
                    "its edges fly off, or it burns; the figure on the cutter comes first",
                    Caution.known("CUTTER_SPEED").source()));
        }
        if (depthMm > cutter.diameterMm() / 2 * (1 + 1e-9)) {
            all.add(new Caution(
                    "PASS_TOO_DEEP",
                    "This pass is deeper than half the cutter's diameter: take more passes",
                    Caution.known("DEPTH_PER_PASS").why(),
                    Caution.known("DEPTH_PER_PASS").source()));
        }
        if (chip < LEAST_CHIP_MM) {
            all.add(new Caution(
                    "RUBS",
                    "Feed faster or turn slower: each edge takes " + shown.small(chip),
                    "an edge that takes under 0.05 mm (2 thou) rubs and burns",
                    Caution.known("DEPTH_PER_PASS").source()));
        } else if (chip > GREATEST_CHIP_MM) {
            all.add(new Caution(
                    "BITES",
                    "Feed slower: each edge takes " + shown.small(chip),
                    "more than about 0.25 mm (10 thou) an edge snatches and tears with a small cutter",
                    Caution.known("DEPTH_PER_PASS").source()));
        }
        return all;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {cutter, specificForce, feed, turns, depthMm};
    }
}
