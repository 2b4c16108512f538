package org.neckgeom.examples.neck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;

/** The readings in a neck file: rounds of trial cuts, each after a move of the fence. */
final class ReadingsPart {

    private static final int MOST_ROUNDS = 50;
    private static final int MOST_READINGS = 30;

    static final Key<Amount<Length>> TOWARD = Key.optional(
            "moved toward cutter",
            Lengths.SIZE_OR_NOTHING,
            "how far the fence was moved toward the cutter before this round");
    static final Key<Amount<Length>> AWAY = Key.optional(
            "moved away from cutter", Lengths.SIZE_OR_NOTHING, "the same, away from the cutter; one of the two");
    static final Key<List<Amount<Length>>> FENCE_WALL = Key.needed(
            "fence wall",
            Kinds.oneOrMore(Lengths.SIZE, MOST_READINGS),
            "the wall on the fence side, read once or several times");
    static final Key<List<Amount<Length>>> FAR_WALL =
            Key.needed("far wall", Kinds.oneOrMore(Lengths.SIZE, MOST_READINGS), "the wall on the far side");
    static final Key<Amount<Length>> SLOT =
            Key.optional("slot", Lengths.SIZE, "the slot's width, if read: lets the readings be checked");
    static final Key<Amount<Length>> PIECE = Key.optional("piece", Lengths.SIZE, "the test piece's width, if read");
    static final Key<Amount<Length>> READS_WITHIN = Key.optional(
            "reads within", Lengths.SIZE, "one standard deviation of one reading; the shop's when left out");

    static final Shape ROUND =
            Shape.of("one round of a trial cut", TOWARD, AWAY, FENCE_WALL, FAR_WALL, SLOT, PIECE, READS_WITHIN);

    /** All rounds, in the order in which they were made. */
    static final Kind<List<Section>> ROUNDS = Kinds.listOf(ROUND, 1, MOST_ROUNDS);

    private ReadingsPart() {}

    static Found<List<TrialRound>> of(List<Section> sections, Found<Shop> shop) {
        List<Found<TrialRound>> rounds = new ArrayList<>();
        for (Section section : sections) {
            rounds.add(round(section, rounds.isEmpty(), shop));
        }
        boolean whole = rounds.stream().allMatch(Found::isThere);
        return whole ? Found.of(rounds.stream().map(Found::value).toList()) : Found.unusable();
    }

    private static Found<TrialRound> round(Section section, boolean first, Found<Shop> shop) {
        return section.make(() -> {
            Optional<Amount<Length>> move = move(section, first);
            TrialCut trial = TrialCut.walls(
                    section.at(FENCE_WALL).value(), section.at(FAR_WALL).value());
            if (!section.at(SLOT).isAbsent()) {
                trial = trial.slot(section.at(SLOT).value());
            }
            if (!section.at(PIECE).isAbsent()) {
                trial = trial.piece(section.at(PIECE).value());
            }
            trial = trial.readWithin(
                    section.at(READS_WITHIN).isAbsent()
                            ? shop.value().repeatability()
                            : section.at(READS_WITHIN).value());
            return new TrialRound(move, trial);
        });
    }

    private static Optional<Amount<Length>> move(Section section, boolean first) {
        boolean toward = !section.at(TOWARD).isAbsent();
        boolean away = !section.at(AWAY).isAbsent();
        if (first && (toward || away)) {
            throw new IllegalArgumentException("the first round must have no move of the fence before it, but has one");
        }
        if (!first && toward == away) {
            throw new IllegalArgumentException("a later round must say how the fence was moved before it: "
                    + "either moved toward cutter or moved away from cutter, and not both");
        }
        if (first) {
            return Optional.empty();
        }
        return Optional.of(
                toward ? section.at(TOWARD).value() : section.at(AWAY).value().negated());
    }
}
