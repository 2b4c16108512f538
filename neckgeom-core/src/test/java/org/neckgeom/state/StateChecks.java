package org.neckgeom.state;

import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.Map;
import org.neckgeom.state.ReferenceStates.Reference;
import org.neckgeom.validation.Check;
import org.neckgeom.validation.Checks;
import org.neckgeom.validation.PracticeFigures;
import org.neckgeom.validation.Source;
import org.neckgeom.validation.Status;

/** What is known of a neck, against an independent script and against necks made by a generator. */
public final class StateChecks {

    private static final int NECKS = 1_500;
    private static final long SEED = 21L;

    private StateChecks() {}

    @SuppressWarnings("exports") // a package of the tests
    public static void into(Checks checks) {
        tables(checks.topic("State of a neck"));
        simulated(checks.topic("State of a neck: does it keep its promises?"));
    }

    private static void tables(Checks checks) {
        JigError turned = JigError.turnedOver("jig", mm(100), mm(0.34));
        checks.check("jig turned over, lines 0.34 apart", Source.SCRIPT, "practice-2-figures.csv", Status.EXACT, "mm")
                .relative(PracticeFigures.of("J9"), turned.at(mm(100)).libraryValue(), 1e-8)
                .of("JigError.at");
        checks.check("its standard uncertainty", Source.SCRIPT, "practice-2-figures.csv", Status.EXACT, "mm")
                .relative(PracticeFigures.of("J10"), turned.at(mm(100)).libraryUncertainty(), 1e-8)
                .of("JigError.at");
        Check means = checks.check(
                        "estimates after 0, 1, 5 and 12 readings", Source.SCIPY, "state/necks.csv", Status.EXACT, "mm")
                .of("Known.estimate");
        Check us = checks.check("their standard uncertainties", Source.SCIPY, "state/necks.csv", Status.EXACT, "mm")
                .of("Known.estimate");
        Check singles = checks.check("chances outside limits", Source.SCIPY, "state/necks.csv", Status.EXACT, "")
                .of("Known.chance");
        Check joint = checks.check("chance of all five limits", Source.SCIPY, "state/necks.csv", Status.EXACT, "")
                .of("JointChance.probability");
        Check agreement = checks.check("chi-square of the readings", Source.SCIPY, "state/necks.csv", Status.EXACT, "")
                .of("Agreement.chiSquare");
        Check coefficients = checks.check(
                        "coefficients of every cause", Source.SCIPY, "state/coefficients.csv", Status.EXACT, "")
                .of(
                        "NeckErrors.stringLine",
                        "NeckErrors.boardOnNeck",
                        "NeckErrors.woodEachSide",
                        "NeckErrors.projection",
                        "NeckErrors.stringLength");
        for (Reference neck : ReferenceStates.all()) {
            Map<String, Requirement> quantities = neck.quantities();
            for (List<String> row : ReferenceStates.rows("coefficients.csv")) {
                if (row.get(0).equals(neck.name())) {
                    double expected = Double.parseDouble(row.get(3));
                    coefficients.figure(
                            expected,
                            quantities.get(row.get(1)).of().coefficient(ReferenceStates.cause(row.get(2))),
                            1e-11 * Math.max(1.0, Math.abs(expected)));
                }
            }
            for (List<String> row : ReferenceStates.rows("necks.csv")) {
                if (!row.get(0).equals(neck.name())) {
                    continue;
                }
                NeckState state = neck.state(Integer.parseInt(row.get(1)));
                double expected = Double.parseDouble(row.get(4));
                Requirement one = quantities.get(row.get(2));
                switch (row.get(3)) {
                    case "mean" ->
                        means.figure(
                                expected,
                                state.known("x", one.of()).estimate().libraryValue(),
                                2e-9 + 1e-8 * Math.abs(expected));
                    case "u" ->
                        us.relative(
                                expected, state.known("x", one.of()).estimate().libraryUncertainty(), 1e-8);
                    case "chi-square" ->
                        agreement.figure(expected, state.agreement().chiSquare(), 1e-7 * Math.max(1.0, expected));
                    case "chance all hold" ->
                        joint.figure(
                                expected,
                                state.chanceOfAll(List.copyOf(quantities.values()))
                                        .probability(),
                                2e-4);
                    case "standard error of it" -> {
                        // of the table's own figure; what is allowed above holds it
                    }
                    default ->
                        singles.figure(
                                expected,
                                state.known("x", one.of())
                                        .outside(
                                                one.limits().libraryLower(),
                                                one.limits().libraryUpper()),
                                2e-9);
                }
            }
        }
        Check predictive = checks.check(
                        "chance outside limits, every spread a guess",
                        Source.SCIPY,
                        "state/default.csv",
                        Status.EXACT,
                        "")
                .of("Known.chance");
        NeckErrors guessed = NeckErrors.of(ReferenceStates.neck("guessed", 560, 14, 78, 6));
        Known line = guessed.state().known("line", guessed.stringLine());
        for (List<String> row : ReferenceStates.rows("default.csv")) {
            double limit = Double.parseDouble(row.get(0));
            predictive.relative(Double.parseDouble(row.get(2)), line.outside(-limit, limit), 1e-5);
        }
    }

    /** Four standard errors of the counts are allowed: {@link SimulatedNecks#main} counts as many as it is asked to. */
    private static void simulated(Checks checks) {
        Reference neck = ReferenceStates.all().get(0);
        for (boolean guessed : new boolean[] {false, true}) {
            SimulatedNecks made = SimulatedNecks.of(neck, guessed, NECKS, SEED);
            String of = guessed ? ", every spread a guess" : ", spreads known";
            String once = "seed 21, 1,500 necks; run once with 50,000: ";
            double one = 4.0 * Math.sqrt(0.25 / made.necks());
            checks.check(
                            "95 % intervals that hold" + of,
                            Source.SESSIONS,
                            once + (guessed ? "0.9512" : "0.9509"),
                            Status.SIMULATED,
                            "")
                    .figure(0.95, made.covered(), 4.0 * Math.sqrt(0.95 * 0.05 / made.necks()))
                    .of("Known.interval");
            checks.check(
                            "single limits kept" + of,
                            Source.SESSIONS,
                            once + (guessed ? "kept 0.8463, claimed 0.8472" : "kept 0.8633, claimed 0.8648"),
                            Status.SIMULATED,
                            "")
                    .figure(made.kept(), made.claimed(), one)
                    .of("Known.chance");
            checks.check(
                            "all limits kept together" + of,
                            Source.SESSIONS,
                            once + (guessed ? "kept 0.4853, claimed 0.4868" : "kept 0.5030, claimed 0.5070"),
                            Status.SIMULATED,
                            "")
                    .figure(made.jointKept(), made.jointClaimed(), one)
                    .of("JointChance.probability");
        }
    }
}
