package org.neckgeom.examples.neck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;

/** The readings in a neck file: trial cuts, each new or read again, after a move of the fence or none. */
final class ReadingsPart {

    private static final int MOST_ROUNDS = 50;
    private static final int MOST_READINGS = 30;

    static final Key<Amount<Length>> TOWARD = Key.optional(
            "moved toward cutter",
            Lengths.SIZE_OR_NOTHING,
            "how far the fence was moved toward the cutter before this cut, at the cutter, not at a stop block");
    static final Key<Amount<Length>> AWAY = Key.optional(
            "moved away from cutter", Lengths.SIZE_OR_NOTHING, "the same, away from the cutter; one of the two");
    static final Key<Boolean> AGAIN =
            Key.optional("again", Kinds.yesOrNo(), "yes: the cut before was read once more; no: a new cut");
    static final Key<List<Amount<Length>>> FENCE_WALL = Key.needed(
            "fence wall",
            Kinds.oneOrMore(Lengths.SIZE, MOST_READINGS),
            "the wall on the fence side, read once or several times");
    static final Key<List<Amount<Length>>> FAR_WALL =
            Key.needed("far wall", Kinds.oneOrMore(Lengths.SIZE, MOST_READINGS), "the wall on the far side");
    static final Key<List<Amount<Length>>> SLOT = Key.optional(
            "slot",
            Kinds.oneOrMore(Lengths.SIZE, MOST_READINGS),
            "the slot's width, if read, once or several times: lets the readings be checked");
    static final Key<List<Amount<Length>>> PIECE = Key.optional(
            "piece",
            Kinds.oneOrMore(Lengths.SIZE, MOST_READINGS),
            "the test piece's width, if read, once or several times");
    static final Key<Amount<Length>> RIPPED = Key.optional(
            "ripped with blank",
            Lengths.SIZE_OR_NOTHING,
            "scatter of rips at one setting, one standard deviation, where the piece was ripped with the blank and not read");
    static final Key<Amount<Length>> READS_WITHIN = Key.optional(
            "reads within", Lengths.SIZE, "one standard deviation of one reading; the shop's when left out");

    static final Shape ROUND =
            Shape.of("one trial cut", TOWARD, AWAY, AGAIN, FENCE_WALL, FAR_WALL, SLOT, PIECE, RIPPED, READS_WITHIN);

    /** All rounds, in the order in which they were made. */
    static final Kind<List<Section>> ROUNDS = Kinds.listOf(ROUND, 1, MOST_ROUNDS);

    private ReadingsPart() {}

    static Found<List<CentringStep>> of(List<Section> sections, Found<Shop> shop) {
        List<Found<List<CentringStep>>> rounds = new ArrayList<>();
        for (Section section : sections) {
            rounds.add(round(section, rounds.isEmpty(), shop));
        }
        boolean whole = rounds.stream().allMatch(Found::isThere);
        return whole
                ? Found.of(
                        rounds.stream().flatMap(round -> round.value().stream()).toList())
                : Found.unusable();
    }

    private static Found<List<CentringStep>> round(Section section, boolean first, Found<Shop> shop) {
        return section.make(() -> {
            boolean again = section.at(AGAIN).orElse(false);
            Optional<FenceMove> move = move(section, first, again);
            TrialCut cut = cut(section, shop);
            return Stream.concat(
                            move.stream().map(CentringStep::moved),
                            Stream.of(again ? CentringStep.readAgain(cut) : CentringStep.read(cut)))
                    .toList();
        });
    }

    private static TrialCut cut(Section section, Found<Shop> shop) {
        TrialCut cut = TrialCut.walls(
                section.at(FENCE_WALL).value(), section.at(FAR_WALL).value());
        if (!section.at(SLOT).isAbsent()) {
            cut = cut.slot(section.at(SLOT).value());
        }
        if (!section.at(PIECE).isAbsent()) {
            cut = cut.piece(section.at(PIECE).value());
        }
        if (!section.at(RIPPED).isAbsent()) {
            cut = cut.rippedWithBlank(section.at(RIPPED).value());
        }
        return cut.readWithin(
                section.at(READS_WITHIN).isAbsent()
                        ? shop.value().repeatability()
                        : section.at(READS_WITHIN).value());
    }

    private static Optional<FenceMove> move(Section section, boolean first, boolean again) {
        boolean toward = !section.at(TOWARD).isAbsent();
        boolean away = !section.at(AWAY).isAbsent();
        if (first && (toward || away || again)) {
            throw new IllegalArgumentException("the first trial cut must have nothing before it, but has "
                    + (again ? "again" : "a move of the fence"));
        }
        if (toward && away || again && (toward || away)) {
            throw new IllegalArgumentException(
                    "a trial cut must have one of moved toward cutter, moved away from cutter and"
                            + " again before it, or none where the fence was not touched, but has several");
        }
        return toward
                ? Optional.of(FenceMove.toward(section.at(TOWARD).value()))
                : away ? Optional.of(FenceMove.away(section.at(AWAY).value())) : Optional.empty();
    }
}
