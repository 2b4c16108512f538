package org.neckgeom.strength;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Strip;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A neck with its strings, a straightedge on it, and what its rod and its bars are taken to be: what all answers about its
 * relief are asked of.
 *
 * @param strings at their heights
 * @param fromFret of the straightedge, 0 is the nut
 * @param toFret of the straightedge, at most the fret at the body
 * @param arm between the axes of a two-way rod's bars, mm
 * @param limit greatest force of the rod, N
 * @param bar of the bonded pair, or null
 * @param barOffCentre from the centreline to the middle of each, mm
 * @param readings of its stiffness
 * @param readOn the neck that they were taken on, of the same woods; null: this one
 * @param worked what has been worked out already
 */
record StrungNeck(
        Neck neck,
        StringLoads strings,
        int fromFret,
        int toFret,
        double arm,
        double limit,
        @Nullable Bar bar,
        double barOffCentre,
        StiffnessReadings readings,
        @Nullable StrungNeck readOn,
        Worked worked) {

    StrungNeck(
            Neck neck,
            StringLoads strings,
            int fromFret,
            int toFret,
            double arm,
            double limit,
            @Nullable Bar bar,
            double barOffCentre,
            StiffnessReadings readings) {
        this(
                neck,
                strings,
                fromFret,
                toFret,
                arm,
                limit,
                bar,
                barOffCentre,
                readings,
                null,
                new Worked(() -> new MadeNeck(neck, beam(neck, bar, barOffCentre), strings.pull())));
    }

    /** Between which frets the straightedge lies. */
    static final Kind<StrungNeck> STRAIGHTEDGE = Kind.answer(Form.<StrungNeck>of("straightedge")
            .fact("fromFret", Kind.WHOLE, "0 is the nut", StrungNeck::fromFret)
            .fact("toFret", Kind.WHOLE, "at most the fret at the body", StrungNeck::toFret)
            .finds("from-nut", x -> x.fromFret == 0, "from the nut to fret {toFret}")
            .finds("from-fret", "from fret {fromFret} to fret {toFret}"));

    /** What the moduli of neck and fingerboard are taken to be. */
    static final Kind<List<Wood>> WOODS = Kind.table(Form.<Wood>of("wood-modulus")
            .fact("wood", Kind.NAME, "its name", Wood::name)
            .fact("modulus", Kind.libraryValue(ShopUnit.GIGAPASCAL), "mean of the species", Wood::modulusMPa)
            .fact("variation", Kind.RATIO, "standard deviation over mean", wood -> wood.modulusVariation())
            .finds("wood", "{wood} {modulus} +- {variation:percent 0}"));

    /** The greatest force of the rod. */
    static final Kind<StrungNeck> ROD_LIMIT = Kind.answer(Form.<StrungNeck>of("rod-limit")
            .fact("force", Kind.libraryValue(ShopUnit.NEWTON), "at most", StrungNeck::limit)
            .factIfAny(
                    "assumedStress", Kind.libraryValue(ShopUnit.MEGAPASCAL), "on its thread", StrungNeck::assumedStress)
            .finds("assumed", "{force:0}, assumed: {assumedStress:0} on its thread")
            .finds("given", "{force:0}"));

    /** What a threaded rod of mild steel carries, MPa on the core of its thread; from memory, on the safe side. */
    private static final double ROD_MPA = 300;

    /** Core of a thread over its full section; from memory. */
    private static final double THREAD_CORE = 0.75;

    /** Straightedge from the 1st fret to the body joint, strings as the neck is set, or at the usual heights. */
    static StrungNeck usual(Neck neck) {
        return new StrungNeck(
                neck,
                StringLoads.of(Objects.requireNonNull(neck, "neck")),
                usualFrom(neck),
                neck.bodyAtFret(),
                neck.channel()
                        .map(channel -> channel.reinforcement().heightMm() / 2)
                        .orElse(0.0),
                usualLimit(neck),
                null,
                0,
                StiffnessReadings.none());
    }

    private static int usualFrom(Neck neck) {
        return neck.bodyAtFret() > 1 ? 1 : 0;
    }

    /** Default force limit of the rod: its thread is as thick as one of its bars. */
    private static double usualLimit(Neck neck) {
        TrussRod rod = neck.channel().flatMap(Channel::rod).orElse(null);
        if (rod == null) {
            return 0;
        }
        double thread =
                rod.kind() == TrussRod.Kind.TWO_WAY ? Math.min(rod.widthMm(), rod.heightMm() / 2) : rod.heightMm();
        return ROD_MPA * THREAD_CORE * Math.PI * thread * thread / 4;
    }

    private Optional<Double> assumedStress() {
        return limit == usualLimit(neck) ? Optional.of(ROD_MPA) : Optional.empty();
    }

    String name() {
        return neck.name();
    }

    LengthStyle style() {
        return neck.style();
    }

    /** Of the neck, each of its strips' once, and of the fingerboard last. */
    List<Wood> woods() {
        Stream<Wood> shaft = neck.strips().isEmpty()
                ? Stream.of(NeckModel.wood(neck))
                : neck.strips().stream().map(Strip::wood).distinct();
        return Stream.concat(shaft, Stream.of(NeckModel.boardWood(neck))).toList();
    }

    boolean hasRod() {
        return neck.channel().flatMap(Channel::rod).isPresent();
    }

    boolean isTwoWay() {
        return neck.channel()
                .flatMap(Channel::rod)
                .filter(rod -> rod.kind() == TrussRod.Kind.TWO_WAY)
                .isPresent();
    }

    /** The least force of this rod: a two-way rod works both ways. */
    double leastForce() {
        return isTwoWay() ? Double.NEGATIVE_INFINITY : 0;
    }

    @Nullable
    RodPull rodPull() {
        if (!hasRod()) {
            return null;
        }
        return neck.channel()
                .map(channel -> isTwoWay()
                        ? new RodPull.Couple(
                                channel.startMm(),
                                channel.startMm() + channel.reinforcement().lengthMm(),
                                arm)
                        : new RodPull.Tendon(channel))
                .orElse(null);
    }

    NeckBeam beam() {
        return beam(neck, bar, barOffCentre);
    }

    private static NeckBeam beam(Neck neck, @Nullable Bar bar, double barOffCentre) {
        NeckBeam beam = NeckModel.beam(neck);
        return bar == null ? beam : beam.withBars(NeckModel.pair(bar, barOffCentre));
    }

    StringPull pull() {
        return strings.pull();
    }

    double rodNewton(Quantity<Force> force) {
        double newton = LibraryUnits.newton(force, "rod force");
        if (newton != 0 && !hasRod()) {
            throw LibraryUnits.refused("rod force", "no-rod", "0 N in a neck without an adjustable rod", force);
        }
        if (newton < leastForce()) {
            throw LibraryUnits.refused("rod force", "at-least", "0 N or more in a single-action rod", force);
        }
        return newton;
    }

    MadeNeck made() {
        return worked.made();
    }

    StrungNeck knowing(StiffnessReadings other) {
        return new StrungNeck(neck, strings, fromFret, toFret, arm, limit, bar, barOffCentre, other, null, worked);
    }

    /** This neck, its readings taken on another: of the same woods, before it was changed. */
    StrungNeck readOn(StrungNeck other) {
        return readings.isEmpty()
                ? this
                : new StrungNeck(
                        neck, strings, fromFret, toFret, arm, limit, bar, barOffCentre, readings, other, worked);
    }

    /** What each cause changes of the logarithm of relief. */
    double[] effects() {
        double from = neck.scale().fretMm(fromFret);
        double to = neck.scale().fretMm(toFret);
        return worked.effects(List.of(from, to), () -> MadeNeck.worked(made(), made -> made.relief(from, to)))
                .effects();
    }

    /** The readings as rows. */
    List<BenchRows.Named> rows() {
        return readOn == null ? BenchRows.of(made(), readings, worked) : readOn.rows();
    }

    /** The rod's intervals for a wanted relief, worked out once for its force and its turns. */
    List<double[]> found(double wanted, Supplier<List<double[]>> answer) {
        return worked.found(List.of(readings, wanted), answer);
    }

    /** What is known of the causes after the readings. */
    CauseState state() {
        CauseState state = CauseState.prior();
        if (!readings.isEmpty()) {
            for (BenchRows.Named row : rows()) {
                state = state.after(row.row());
            }
        }
        return state;
    }

    private BowKnowledge knowledge() {
        return new BowKnowledge(state(), effects(), NeckModel.spread(neck));
    }

    /** Reliefs are read from fret 1 to the body joint. */
    private OwnBow ownBow() {
        return OwnBow.of(
                readings, neck.scale().fretMm(usualFrom(neck)), neck.scale().fretMm(neck.bodyAtFret()));
    }

    Bench bench() {
        return new Bench(
                made().beam(),
                pull(),
                rodPull(),
                ownBow(),
                readOn == null ? null : readOn.bench(),
                neck.scale().fretMm(fromFret),
                neck.scale().fretMm(toFret),
                knowledge(),
                worked);
    }

    /**
     * Lays the straightedge on the neck for any multiple of the two moduli, and what else is not known.
     *
     * @param own bow of the neck without strings and rod, as it was read
     * @param readOn the neck that it was read on, where that was another
     */
    record Bench(
            NeckBeam beam,
            StringPull pull,
            @Nullable RodPull rod,
            OwnBow own,
            @Nullable Bench readOn,
            double from,
            double to,
            BowKnowledge knowledge,
            Worked worked) {

        /** On the neck as the model has it, at means and medians. */
        Straightedge middle() {
            Straightedge[] found = new Straightedge[1];
            knowledge.atMeans(
                    given -> {
                        found[0] = with(given, 0);
                        return 0;
                    },
                    1 + own.unknowns());
            return found[0];
        }

        /** On the plain beam: mean moduli, and nothing of what the beam leaves out. */
        Straightedge bare() {
            return with(1, 1, BeamScan.USUAL_PANELS);
        }

        private Straightedge with(BowKnowledge.Given given, double softer) {
            return straight(given, softer).bowed(curvature(given));
        }

        private Straightedge straight(BowKnowledge.Given given, double softer) {
            int panels = given.isMiddle() ? BeamScan.USUAL_PANELS : BeamScan.FEW_PANELS;
            return with(given.neck(), given.board(), panels)
                    .softer(given.softness() + softer, given.load(), given.arm());
        }

        /** Of the neck without strings and rod, as it was read, an hour after tuning. */
        private double curvature(BowKnowledge.Given given) {
            return readOn == null
                    ? own.curvature(straight(given, 0), own.unknowns() == 0 ? 0 : given.own()[1])
                    : readOn.curvature(given);
        }

        private Straightedge with(double backFactor, double boardFactor, int panels) {
            return worked.laid(
                    List.<Object>of(backFactor, boardFactor, panels), () -> scanned(backFactor, boardFactor, panels));
        }

        private Straightedge scanned(double backFactor, double boardFactor, int panels) {
            BeamScan scan = BeamScan.of(beam.stiffer(backFactor, boardFactor), pull, rod, panels);
            return new Straightedge(scan.strings(), scan.rod(), from, to);
        }

        /**
         * The result at the means, then the ends of its interval; for each question, most of them by the same scans.
         */
        List<double[]> intervals(List<ToDoubleFunction<Straightedge>> questions) {
            return intervals(Creep.NONE, questions);
        }

        /** The same after creep, which bows the neck further under strings less rod. */
        List<double[]> intervals(Creep creep, List<ToDoubleFunction<Straightedge>> questions) {
            return questions.stream()
                    .map(shown -> knowledge.interval(
                            given -> shown.applyAsDouble(with(given, creep.logSinceTuning(given.own()[0]))),
                            1 + own.unknowns()))
                    .toList();
        }
    }
}
