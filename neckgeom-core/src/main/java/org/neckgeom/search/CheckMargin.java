package org.neckgeom.search;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.neckgeom.fault.Refusal;
import org.neckgeom.measure.Limits;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Finding;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.Plan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.units.Amount;

/**
 * Reads off a plan's check how far inside its limit the design is. It is kept when it is OK; the room is 0 there where it
 * turns: for a measured value at the guard band, for a probable one where the probability is just high enough.
 */
final class CheckMargin {

    private CheckMargin() {}

    /** Limits that are checks of a plan; the plan is asked once. */
    static <D> Rules<D> rules(Function<? super D, Plan> plan, List<CheckCode> codes) {
        return new Rules<>(codes.stream().map(CheckCode::code).toList(), design -> {
            Plan made = Aim.figure("plan", "be a plan", () -> plan.apply(design));
            return codes.stream().map(code -> of(made, code)).toList();
        });
    }

    private static SearchMargin of(Plan plan, CheckCode code) {
        PlanCheck check = plan.check(code)
                .orElseThrow(() -> Refusal.because(
                        "check", "known", "the plan of this neck has no check \"" + code.code() + "\""));
        return of(code.code(), check.finding(), check.finding().outcome() == Outcome.OK);
    }

    private static SearchMargin of(String name, Finding finding, boolean kept) {
        if (finding instanceof Finding.Remaining remaining) {
            return SearchMargin.left(name, remaining.left(), kept);
        }
        if (finding instanceof Finding.Together together) {
            return together.each().stream()
                    .map(each -> of(name, each, each.outcome() == Outcome.OK))
                    .min(Comparator.comparingDouble(SearchMargin::libraryRoom))
                    .orElse(SearchMargin.of(name, kept));
        }
        if (finding.value().isEmpty() || finding.limits().isEmpty()) {
            return SearchMargin.of(name, kept);
        }
        Amount<?> value = finding.value().get();
        Limits<?> limits = finding.limits().get();
        double room =
                Math.min(value.libraryValue() - limits.libraryLower(), limits.libraryUpper() - value.libraryValue());
        return SearchMargin.of(name, value, limits, room - kept(finding, room), kept);
    }

    /** What has to be left of the room for the value's error. */
    private static double kept(Finding finding, double room) {
        if (finding instanceof Finding.Measured measured) {
            return measured.decided().guardBand().libraryValue();
        }
        if (finding instanceof Finding.Likely likely) {
            return likelyGuard(room, likely.probability(), likely.wanted());
        }
        return 0;
    }

    /**
     * Where room and probability are those of one normal error, room = z(p) sd; so wanted probability needs z(wanted) sd.
     * Nothing where the two do not go together.
     */
    private static double likelyGuard(double room, double probability, double wanted) {
        double z = probability > 0 && probability < 1 ? NormalLaw.quantile(probability) : 0;
        double needed = wanted > 0 && wanted < 1 ? NormalLaw.quantile(wanted) : 0;
        return z * room > 0 ? needed * room / z : 0;
    }
}
