package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.budget.ResultDistribution;
import org.neckgeom.drawing.Shown;
import org.neckgeom.shape.Spot;
import org.neckgeom.state.Share;
import org.neckgeom.units.ShopUnits;

/** A budget drawn twice: whose error it is, as bars, and how it spreads against its limits, as a curve. */
final class BudgetDrawings {

    private static final double EDGE = 8;
    private static final double ROW = 38;
    private static final double BAR = 12;
    private static final double CURVE_HEIGHT = 150;
    private static final double CURVE_TOP = 42;
    private static final int POINTS = 160;

    private BudgetDrawings() {}

    /** Bars of each step's share of the variance, largest first. */
    static Figure shares(BudgetPart part, String id) {
        List<Share> largest = part.largest();
        double room = Drawing.WIDTH - 2 * EDGE;
        StringBuilder words = new StringBuilder("Bars, largest first. ");
        for (Share share : largest) {
            words.append(share.name())
                    .append(": ")
                    .append(BudgetPart.text(share))
                    .append(". ");
        }
        Drawing drawing = new Drawing(
                part.title() + ": whose error it is", words.toString().strip(), largest.size() * ROW + EDGE);
        double v = 0;
        for (Share share : largest) {
            drawing.label("words", "start", EDGE, v + 16, shortened(share.name()));
            drawing.label("number", "end", Drawing.WIDTH - EDGE, v + 16, BudgetPart.text(share));
            drawing.shape("bar", box(EDGE, v + 21, Math.max(1, room * Math.min(1, share.fraction())), BAR));
            v += ROW;
        }
        int rest = (int) part.known().shares().stream()
                        .filter(share -> share.fraction() > 0)
                        .count()
                - largest.size();
        return new Figure(
                id,
                drawing,
                "Shares of the variance: the longest bar is the one worth working on."
                        + (rest > 0 ? " " + rest + " smaller ones are left out." : ""));
    }

    /** What fits beside the number at a phone's width. */
    private static String shortened(String name) {
        int most = 36;
        return name.length() <= most ? name : name.substring(0, most - 3) + "...";
    }

    /** The density of the deviation, the spreads as given, with its limits. */
    static Figure curve(BudgetPart part, Shown shown, String id) {
        ResultDistribution<Length> law = part.budget().distribution();
        double lower = part.limits().libraryLower();
        double upper = part.limits().libraryUpper();
        String chance = part.known().chance(part.limits()).toString();
        double mean = law.mean().libraryValue();
        double reach = 4 * law.standardDeviation().libraryValue();
        double low = Math.min(mean - reach, Double.isFinite(lower) ? lower : mean);
        double high = Math.max(mean + reach, Double.isFinite(upper) ? upper : mean);
        double margin = 0.04 * (high - low);
        Scale scale = new Scale(low - margin, high + margin);
        String dashed = "limits, " + part.limits();
        String deviation = "Standard deviation "
                + shown.style().small(law.standardDeviation().libraryValue()) + ".";
        Drawing drawing = new Drawing(
                part.title() + ": distribution of the result",
                "The distribution of the result as a curve over its value. Dashed: " + dashed + ". Within the limits: "
                        + chance + ". " + deviation,
                CURVE_TOP + CURVE_HEIGHT + 46);
        double floor = CURVE_TOP + CURVE_HEIGHT;
        List<Spot> curve = density(law, scale, floor);
        List<Spot> area = new ArrayList<>(curve);
        area.add(new Spot(curve.get(curve.size() - 1).uMm(), floor));
        area.add(new Spot(curve.get(0).uMm(), floor));
        drawing.shape("curve", area);
        drawing.line("axis", EDGE, floor, Drawing.WIDTH - EDGE, floor);
        limit(drawing, lower, scale, shown.length(lower), floor);
        limit(drawing, upper, scale, shown.length(upper), floor);
        drawing.label("words", "middle", Drawing.WIDTH / 2, 12, "within the limits");
        drawing.label("number", "middle", Drawing.WIDTH / 2, 28, chance);
        return new Figure(id, drawing, "Dashed: " + dashed + ". " + deviation);
    }

    /** Values across the drawing. */
    private record Scale(double low, double high) {

        double at(double value) {
            return EDGE + (Drawing.WIDTH - 2 * EDGE) * (value - low) / (high - low);
        }
    }

    private static List<Spot> density(ResultDistribution<Length> law, Scale scale, double floor) {
        double[] density = new double[POINTS + 1];
        double most = 0;
        for (int i = 0; i <= POINTS; i++) {
            double value = scale.low() + (scale.high() - scale.low()) * i / POINTS;
            double d = law.densityPerLibraryUnit(ShopUnits.mm(value));
            // A hollow law runs to infinity at its ends; the drawing stops at its edge.
            density[i] = Double.isFinite(d) ? Math.max(0, d) : 0;
            most = Math.max(most, density[i]);
        }
        List<Spot> points = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            double value = scale.low() + (scale.high() - scale.low()) * i / POINTS;
            double share = most > 0 ? density[i] / most : 0;
            points.add(new Spot(scale.at(value), floor - CURVE_HEIGHT * share));
        }
        return points;
    }

    private static void limit(Drawing drawing, double value, Scale scale, String number, double floor) {
        if (!Double.isFinite(value)) {
            return;
        }
        double u = scale.at(value);
        drawing.line("limit", u, CURVE_TOP - 6, u, floor + 6);
        String anchor = u < Drawing.WIDTH / 3 ? "start" : u > 2 * Drawing.WIDTH / 3 ? "end" : "middle";
        double nudge = anchor.equals("start") ? -4 : anchor.equals("end") ? 4 : 0;
        drawing.label("number", anchor, u + nudge, floor + 22, number);
        drawing.label("words", anchor, u + nudge, floor + 37, "limit");
    }

    private static List<Spot> box(double u, double v, double width, double height) {
        return List.of(
                new Spot(u, v), new Spot(u + width, v), new Spot(u + width, v + height), new Spot(u, v + height));
    }
}
