package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Shown;
import org.neckgeom.neck.Channel;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Plan;
import org.neckgeom.shape.Spot;
import org.neckgeom.strength.Bow;
import org.neckgeom.strength.Climate;
import org.neckgeom.strength.NeckWeather;
import org.neckgeom.strength.Weather;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** What the plan knows along the neck and over the air's range, as curves: every point is an answer of the plan. */
final class Curves {

    private static final int STATIONS = 60;
    private static final int AIRS = 8;
    private static final double LEAST_AIRS = 1e-6;

    private final Job job;
    private final Plan plan;
    private final NeckShape shape;
    private final Shown shown;
    private final double end;

    private Curves(Contents contents, Job job) {
        this.job = job;
        this.plan = job.plan();
        this.shape = contents.shape();
        this.shown = contents.shown();
        this.end = shape.boardEnd();
    }

    /** On one axis along the neck. */
    static List<Figure> along(Contents contents, Job job) {
        Curves curves = new Curves(contents, job);
        List<Figure> figures = new ArrayList<>();
        curves.wood().ifPresent(figures::add);
        figures.add(curves.depths());
        figures.add(curves.widths());
        curves.relief().ifPresent(figures::add);
        return figures;
    }

    /** Over the range of air that the wood has to bear; none where wood or strings are not known. */
    static List<Figure> inOtherAir(Contents contents, Job job) {
        return new Curves(contents, job).weather();
    }

    private CurvePlot along(String title) {
        return new CurvePlot(title, 0, end)
                .place(0, "nut")
                .place(shape.fret(5), "fret 5")
                .place(shape.bodyJoint(), "body, fret " + job.neck().bodyAtFret());
    }

    private Figure lengths(String id, CurvePlot plot, String words, String caption) {
        double unit = job.style().unit().toLibrary(1);
        return new Figure(id, plot.drawn(words, unit, this::tick), caption);
    }

    private String tick(double mm) {
        LengthStyle style = job.style().inTables();
        return Numbers.trimmed(style.unit().fromLibrary(mm), 4) + " "
                + style.unit().symbol();
    }

    private Optional<Figure> wood() {
        if (job.neck().channel().isEmpty()) {
            return Optional.empty();
        }
        List<Spot> wood = plan.floorThickness().along(STATIONS + 1).stream()
                .map(at -> new Spot(at.stationMm(), at.woodMm()))
                .toList();
        CurvePlot plot = along("Wood under the channel").curve("wood left", 0.5, wood);
        plan.check(CheckCode.WOOD_LEFT)
                .flatMap(check -> check.finding().limits())
                .ifPresent(limits -> {
                    plot.limit("limit " + shown.length(limits.libraryLower()), 1, limits.libraryLower());
                });
        String least = shown.length(plan.floorThickness().least().woodMm()) + " at "
                + shown.length(plan.floorThickness().least().stationMm()) + " from the nut";
        return Optional.of(lengths(
                "wood-along",
                plot,
                "The wood left between channel and back, along the neck. Least: " + least + ".",
                "Least: " + least + "."));
    }

    private Figure depths() {
        List<Spot> back = new ArrayList<>();
        for (int i = 0; i <= STATIONS; i++) {
            double x = shape.bodyJoint() * i / STATIONS;
            back.add(new Spot(x, shape.backDepth(x)));
        }
        CurvePlot plot = along("Depth of back and channel").curve("back", 0.35, back);
        plan.made().channel().ifPresent(channel -> plot.curve("channel", 0.35, floor(channel)));
        return lengths(
                "depths-along",
                plot,
                "The depth of the wood on the centreline and of the channel's floor below the glue face, along the neck.",
                "On the centreline, below the glue face.");
    }

    private static List<Spot> floor(Channel channel) {
        List<Spot> floor = new ArrayList<>();
        floor.add(new Spot(channel.startMm(), 0));
        for (int i = 0; i <= STATIONS; i++) {
            double x = channel.startMm() + channel.lengthMm() * i / STATIONS;
            floor.add(new Spot(x, channel.depthAtMm(x)));
        }
        floor.add(new Spot(channel.endMm(), 0));
        return floor;
    }

    private Figure widths() {
        List<Spot> board = List.of(new Spot(0, 2 * shape.halfWidth(0)), new Spot(end, 2 * shape.halfWidth(end)));
        CurvePlot plot = along("Width of the board and of the blank")
                .curve("board", 0, board)
                .limit("blank", 0, job.blank().widthMm());
        return lengths(
                "widths-along",
                plot,
                "The width of the fingerboard and shaft along the neck, from " + shown.length(2 * shape.halfWidth(0))
                        + " at the nut, and of the blank.",
                "The shaft is trimmed to the board.");
    }

    /** From the straightedge's one fret to its other. */
    private Optional<Figure> relief() {
        return plan.relief().map(relief -> {
            Bow bow = relief.underStrings();
            List<Spot> gaps = new ArrayList<>();
            for (int fret = 1; fret <= job.neck().bodyAtFret(); fret++) {
                gaps.add(new Spot(
                        job.neck().scale().fretMm(fret), bow.gapAtFret(fret).libraryValue()));
            }
            CurvePlot plot = along("Relief under the strings (estimate)").curve("rod slack", 0.5, gaps);
            if (plan.made().channel().flatMap(Channel::rod).isPresent()) {
                double wanted = job.relief().libraryValue();
                plot.limit("wanted " + shown.style().small(wanted), 1, wanted);
            }
            return lengths(
                    "relief-along",
                    plot,
                    "The gap under a straightedge from fret 1 to the body joint, strings at pitch. Greatest: "
                            + bow.relief() + ".",
                    "Greatest " + bow.relief() + ", 95 % interval " + bow.interval() + ".");
        });
    }

    /** From the air that the wood is worked in to the worst that it has to bear. */
    private List<Figure> weather() {
        Weather worst = job.weather();
        double from = worst.before().humidity().libraryValue();
        double to = worst.after().humidity().libraryValue();
        if (!(Math.abs(to - from) > LEAST_AIRS) || !job.neck().isReadyForLoad()) {
            return List.of();
        }
        NeckWeather neck = worst.on(plan.made()).knowing(job.measured().stiffness());
        List<Spot> relief = new ArrayList<>();
        List<Spot> clearance = new ArrayList<>();
        for (int i = 0; i <= AIRS; i++) {
            Weather air = air(worst, i / (double) AIRS);
            double humidity = air.after().humidity().libraryValue();
            NeckWeather then = air.on(neck);
            then.relief().ifPresent(added -> relief.add(new Spot(humidity, added.libraryValue())));
            then.slotFit()
                    .ifPresent(fit -> clearance.add(
                            new Spot(humidity, fit.clearanceAfter().libraryValue())));
        }
        List<Figure> figures = new ArrayList<>();
        String range = worst.before() + " to " + worst.after();
        if (!relief.isEmpty()) {
            figures.add(lengths(
                    "weather-relief",
                    airs("Relief that the air adds (estimate)", from, to).curve("added", 0.5, relief),
                    "The relief that a change of air adds to the neck as the wood comes to balance, from " + range
                            + ".",
                    "Over the range of air given: " + range + "."));
        }
        if (!clearance.isEmpty()) {
            figures.add(lengths(
                    "weather-rod",
                    airs("Rod's clearance in the air (estimate)", from, to).curve("side clearance", 0.5, clearance),
                    "The side clearance of the rod in its channel as the wood comes to balance, from " + range + ".",
                    "Below 0 the channel grips the rod."));
        }
        return figures;
    }

    private static CurvePlot airs(String title, double from, double to) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        return new CurvePlot(title, low, high)
                .place(low, percent(low))
                .place((low + high) / 2, percent((low + high) / 2))
                .place(high, percent(high) + " humidity");
    }

    private static String percent(double library) {
        return Numbers.trimmed(ShopUnit.PERCENT.fromLibrary(library), 0) + " %";
    }

    private static Weather air(Weather worst, double share) {
        Climate after = Climate.of(
                between(worst.before().humidity(), worst.after().humidity(), share, ShopUnit.PERCENT),
                between(worst.before().temperature(), worst.after().temperature(), share, ShopUnit.CELSIUS));
        Weather air = Weather.between(worst.before(), after);
        return worst.days().isPresent() ? air.days(worst.days().getAsDouble()) : air;
    }

    private static <Q extends Quantity<Q>> Amount<Q> between(
            Amount<Q> from, Amount<Q> to, double share, ShopUnit<Q> unit) {
        double a = unit.fromLibrary(from.libraryValue());
        double b = unit.fromLibrary(to.libraryValue());
        return Amount.of(a + share * (b - a), unit);
    }
}
