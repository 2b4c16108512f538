package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.shape.Spot;

/** The order of work as a graph: a line for each operation, and an arc from what has to come before it. */
final class OrderDrawing {

    private static final double ROW = 24;
    private static final double TOP = 20;
    private static final double NODES = 118;
    private static final double FURTHEST = NODES - 8;
    private static final int CHORDS = 24;
    private static final int MOST_LETTERS = 27;

    private final OrderPlan order;
    private final Drawing drawing;

    private OrderDrawing(OrderPlan order, String words) {
        this.order = order;
        this.drawing = new Drawing("Order of work", words, TOP + order.steps().size() * ROW);
    }

    static Figure of(OrderPlan order) {
        StringBuilder words = new StringBuilder("A line for each operation, from first to last. ");
        for (OrderPlan.Step step : order.steps()) {
            if (!order.before(step).isEmpty()) {
                words.append(step.number()).append(" after ");
                words.append(String.join(
                        ", ", order.before(step).stream().map(String::valueOf).toList()));
                words.append(". ");
            }
        }
        return new Figure(
                "order-graph",
                new OrderDrawing(order, words.toString().strip()).drawn(),
                "An arc goes from an operation to one that has to come after it. What no arcs tie together may change places.");
    }

    private Drawing drawn() {
        for (OrderPlan.Step step : order.steps()) {
            order.before(step).forEach(first -> arc(first, step.number()));
        }
        for (OrderPlan.Step step : order.steps()) {
            Spot at = at(step.number());
            drawing.dot(at);
            drawing.label("words", "end", NODES + 24, at.vMm() + 4, String.valueOf(step.number()));
            drawing.label(
                    "name",
                    "start",
                    NODES + 30,
                    at.vMm() + 4,
                    shortened(step.operation().name()));
        }
        return drawing;
    }

    private static Spot at(int number) {
        return new Spot(NODES, TOP / 2 + (number - 0.5) * ROW);
    }

    /** Half an ellipse to the left, the further apart the two the wider, with its head at the later one. */
    private void arc(int first, int then) {
        double from = at(first).vMm();
        double to = at(then).vMm();
        double wide = FURTHEST
                * StrictMath.sqrt(
                        (then - first) / (double) Math.max(1, order.steps().size() - 1));
        List<Spot> points = new ArrayList<>();
        for (int i = 0; i <= CHORDS; i++) {
            double turn = StrictMath.PI * i / CHORDS;
            points.add(new Spot(
                    NODES - 3 - wide * StrictMath.sin(turn), (from + to) / 2 - (to - from) / 2 * StrictMath.cos(turn)));
        }
        drawing.through("link", points);
        drawing.shape("head", List.of(at(then).plus(-3, 0), at(then).plus(-9, -3.2), at(then).plus(-9, 1.6)));
    }

    private static String shortened(String name) {
        return name.length() <= MOST_LETTERS ? name : name.substring(0, MOST_LETTERS - 3) + "...";
    }
}
