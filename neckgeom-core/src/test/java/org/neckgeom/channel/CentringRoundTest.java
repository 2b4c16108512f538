package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.thou;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.table.Spelling;
import org.neckgeom.table.Types;
import org.neckgeom.testing.OneKey;

/** Rounds as a maker notes them, and the steps they are of. */
class CentringRoundTest {

    private static final TrialCut FIRST = TrialCut.walls(List.of(mm(29.84), mm(29.86)), List.of(mm(31.26)))
            .slot(mm(6.02))
            .piece(mm(67.1));
    private static final TrialCut NEXT = TrialCut.walls(mm(30.5), mm(30.6)).repeatability(thou(1));
    private static final OneKey<List<CentringRound>> ROUNDS =
            new OneKey<>(Types.list(Types.group(CentringRound.TABLE), 0, 50));

    /** A cut, the same read again, two moves in a row, a move with its own uncertainty, and one after which nothing was cut. */
    private static final List<CentringStep> STEPS = List.of(
            CentringStep.read(FIRST),
            CentringStep.readAgain(FIRST.repeatability(mm(0.02))),
            CentringStep.moved(FenceMove.away(mm(0.7))),
            CentringStep.moved(FenceMove.toward(thou(1)).settingUncertainty(mm(0.004))),
            CentringStep.read(NEXT.rippedWithBlank(mm(0.04)).wallsCorrelated(0.5)),
            CentringStep.read(NEXT),
            CentringStep.moved(FenceMove.toward(mm(0))));

    @ParameterizedTest
    @EnumSource(Spelling.class)
    void rounds_readBackAsTheSameSteps(Spelling spelling) {
        List<CentringRound> rounds = CentringRound.of(STEPS);
        String written = Json.of(ROUNDS.written(rounds, spelling));

        List<CentringRound> read = ROUNDS.read(Json.read(written));

        assertThat(read).as(written).isEqualTo(rounds);
        assertThat(read.stream().flatMap(round -> round.steps().stream()).toList())
                .isEqualTo(STEPS);
        // A move and the cut after it are one round; a second move in a row is one of its own.
        assertThat(rounds).hasSize(6);
        assertThat(rounds.get(2).steps()).hasSize(1);
        assertThat(rounds.get(3).steps()).hasSize(2);
    }

    @Test
    void text_isThatOfItsSteps() {
        List<CentringRound> rounds = CentringRound.of(STEPS);

        assertThat(rounds.get(1).toString()).startsWith("The same cut read again: Trial cut");
        assertThat(rounds.get(2)).hasToString("fence moved 0.7 mm away from the cutter");
        assertThat(rounds.get(3).toString()).startsWith("fence moved 0.001 in toward the cutter, then Trial cut");
        assertThat(rounds.get(4)).hasToString(NEXT.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`\"again\": true, \"moved away from cutter\": \"1 mm\", \"near wall\": \"3 mm\", \"far wall\": \"3 mm\"` | again | again is given, and a move",
                "`\"moved toward cutter\": \"1 mm\", \"moved away from cutter\": \"1 mm\"` | moved away from cutter | keep one of them",
                "`\"moved\": {\"distance\": \"1 mm\"}` | moved.direction | moved.direction is missing",
                "`\"moved\": {\"distance\": \"1 mm\", \"direction\": \"up\"}` | moved.direction | be one of toward cutter, away from cutter",
                "`\"again\": true` | near wall | give both walls",
                "`` | near wall | give both walls",
                "`\"near wall\": \"3 mm\"` | far wall | far wall is missing",
                "`\"near wall\": \"3 mm\", \"far wall\": \"3 mm\", \"piece\": \"2 mm\"` | near wall | is longer than the piece",
                "`\"near wall\": [], \"far wall\": \"3 mm\"` | near wall | be a list of 1 to 100 items"
            })
    void round_refusesWhatDoesNotGoTogether_withItsPath(String keys, String path, String words) {
        assertThatThrownBy(() -> CentringRound.TABLE.read(Json.read("{" + (keys == null ? "" : keys) + "}")))
                .isInstanceOfSatisfying(Refusal.class, refused -> {
                    assertThat(refused.faults()).hasSize(1);
                    assertThat(refused.faults().get(0).path()).isEqualTo(path);
                    assertThat(refused.faults().get(0).must()).contains(words);
                });
    }
}
