package org.neckgeom.template;

import java.util.Optional;
import org.neckgeom.channel.StopBlocks;
import org.neckgeom.channel.StopPlace;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.neck.End;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.PlanSection;

/**
 * The sketch of a card: of the channel the fence, cutter, stops and feed as seen from above; of the scarf its saw line; of a taper
 * its widths. Lengths along are to one scale, the rest is not.
 *
 * @param marks from its upper left corner
 * @param height of it
 */
record CardSketch(CardMarks marks, double height) {

    private static final double SMALL = 1.8;
    private static final double NUMBER = 2.6;
    private static final double STOP_WIDTH = 5;

    static Optional<CardSketch> of(BenchCard card, double width) {
        if (card.operation().cutsTheChannel()) {
            return Optional.of(channel(card, width));
        }
        if (figure(card, "faceMark").isPresent()) {
            return Optional.of(scarf(card, width));
        }
        return figure(card, "nut").isPresent() && figure(card, "body").isPresent()
                ? Optional.of(taper(card, width))
                : Optional.empty();
    }

    /** What a row of this key is set to. */
    private static Optional<String> figure(BenchCard card, String key) {
        return card.settings().stream()
                .flatMap(section -> section.rows().stream())
                .filter(row -> row.key().equals(key))
                .reduce((first, last) -> last)
                .flatMap(PlanSection.Row::figure);
    }

    /**
     * As seen from above with the fence beyond the cutter, fed from right to left: as the caution about the feed has it. The work
     * lies against the rear stop, dashed against the front stop; where the slot is open, where a stop would be.
     */
    private static CardSketch channel(BenchCard card, double width) {
        Job job = card.job();
        StopBlocks stops = job.plan().stops();
        double front = stops.front().fromCentre().libraryValue();
        double rear = stops.rear().fromCentre().libraryValue();
        double scale = (width - 2 * STOP_WIDTH) / (front + rear);
        double left = STOP_WIDTH;
        double right = width - STOP_WIDTH;
        double cutter = left + front * scale;
        double work = stops.workLength().libraryValue() * scale;
        CardMarks marks = new CardMarks();
        marks.box(0, 3.2, width, 2.6);
        marks.words(0, 2.4, SMALL, "fence, seen from above (on your side of the cutter: turn the card round)");
        marks.box(right - work, 5.8, work, 12);
        marks.line(Layer.CUT, left, 17.8, left, 5.8);
        marks.line(Layer.CUT, left, 17.8, Math.min(left + work, width), 17.8);
        stop(marks, stops.front(), 0);
        stop(marks, stops.rear(), right);
        turning(marks, cutter, 11.8);
        boolean headLeads = stops.leading() == End.HEAD;
        marks.words(right - work + 1.5, 9, SMALL, headLeads ? "head end" : "heel end");
        marks.toTheRight(right - 1.5, 9, SMALL, headLeads ? "heel end" : "head end");
        marks.arrow(right - 6, cutter + 8, 15.4);
        marks.words(cutter + 9, 14.4, SMALL, "feed");
        dimension(marks, left, cutter, 21.5, figure(card, "frontStop"));
        dimension(marks, cutter, right, 21.5, figure(card, "rearStop"));
        return new CardSketch(marks, 26);
    }

    private static void stop(CardMarks marks, StopPlace stop, double left) {
        if (stop.isOpen()) {
            marks.centred(left + STOP_WIDTH / 2, 12, SMALL, "open");
            return;
        }
        marks.box(left, 5.8, STOP_WIDTH, 13);
        marks.line(Layer.OUTLINE, left, 18.8, left + STOP_WIDTH, 5.8);
        marks.line(Layer.OUTLINE, left, 5.8, left + STOP_WIDTH, 18.8);
    }

    /** The cutter, and which way it turns. */
    private static void turning(CardMarks marks, double x, double y) {
        marks.ring(x, y, 1.5);
        marks.line(Layer.CENTRE, x, y - 6.5, x, y + 11);
        marks.arc(x, y, 3.6, 20, 290);
        double endX = x + 3.6 * StrictMath.cos(StrictMath.toRadians(290));
        double endY = y - 3.6 * StrictMath.sin(StrictMath.toRadians(290));
        marks.line(Layer.OUTLINE, endX - 1.3, endY - 1.2, endX, endY, endX - 1.6, endY + 0.7);
    }

    private static void dimension(CardMarks marks, double from, double to, double y, Optional<String> figure) {
        dimension(marks, from, to, y, 1.4, figure);
    }

    /** A length between two marks, its figure so far below its line. */
    private static void dimension(
            CardMarks marks, double from, double to, double y, double below, Optional<String> figure) {
        figure.ifPresent(words -> {
            marks.arrow((from + to) / 2, from, y);
            marks.arrow((from + to) / 2, to, y);
            marks.line(Layer.OUTLINE, from, y - 2, from, y + 2);
            marks.line(Layer.OUTLINE, to, y - 2, to, y + 2);
            marks.centred((from + to) / 2, y + NUMBER + below, NUMBER, words);
        });
    }

    /** The board from its side, its face up, the shaft's end to the right, the saw line through it. */
    private static CardSketch scarf(BenchCard card, double width) {
        ScarfBoard board = card.job().plan().scarfBoard().orElseThrow();
        double face = board.shaftCut().faceMark().libraryValue();
        double back = board.shaftCut().backMark().libraryValue();
        double scale = (width - 14) / Math.max(face, back);
        double deep = Math.max(5, board.thickness().libraryValue() * scale);
        double y = 11;
        CardMarks marks = new CardMarks();
        marks.line(Layer.OUTLINE, 0, y, width, y, width, y + deep, 0, y + deep);
        marks.line(Layer.CUT, width - face * scale, y, width - back * scale, y + deep);
        marks.words(0, y - 1.2, SMALL, "head");
        marks.toTheRight(width - 1, y + deep / 2 + SMALL / 2, SMALL, "shaft's end");
        dimension(
                marks,
                width - face * scale,
                width,
                y - 3,
                -1.2 - NUMBER,
                figure(card, "faceMark").map(mark -> "face " + mark));
        dimension(
                marks,
                width - back * scale,
                width,
                y + deep + 3,
                figure(card, "backMark").map(mark -> "back " + mark));
        return new CardSketch(marks, y + deep + 9);
    }

    /** The taper from above, nut to the left, widths in their proportion. */
    private static CardSketch taper(BenchCard card, double width) {
        var neck = card.job().neck();
        double nut = 2 * neck.halfWidthAtMm(0);
        double body = 2 * neck.halfWidthAtMm(neck.bodyJointMm());
        double tall = 14;
        double from = 30;
        double to = width - 30;
        double less = tall * (1 - nut / body) / 2;
        CardMarks marks = new CardMarks();
        marks.line(Layer.OUTLINE, from, 3 + less, to, 3, to, 3 + tall, from, 3 + tall - less, from, 3 + less);
        marks.line(Layer.CENTRE, from - 4, 3 + tall / 2, to + 4, 3 + tall / 2);
        marks.words(0, 3 + tall / 2 - 1.5, NUMBER, figure(card, "nut").orElse(""));
        marks.words(0, 3 + tall / 2 + 4, SMALL, "at the nut");
        marks.words(to + 3, 3 + tall / 2 - 1.5, NUMBER, figure(card, "body").orElse(""));
        marks.words(to + 3, 3 + tall / 2 + 4, SMALL, "at the body");
        figure(card, "joint").ifPresent(joint -> dimension(marks, from, to, tall + 6, Optional.of(joint)));
        return new CardSketch(marks, figure(card, "joint").isPresent() ? tall + 11.5 : tall + 5);
    }
}
