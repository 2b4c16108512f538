package org.neckgeom.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.neckgeom.board.BoardChecks;
import org.neckgeom.budget.BudgetChecks;
import org.neckgeom.channel.SetupChecks;
import org.neckgeom.head.HeadChecks;
import org.neckgeom.heel.HeelChecks;
import org.neckgeom.order.PlanChecks;
import org.neckgeom.shape.ShapeChecks;
import org.neckgeom.solid.SolidChecks;
import org.neckgeom.state.StateChecks;
import org.neckgeom.strength.StrengthChecks;

/** Every check against something outside the project, and the page that reports them. */
class ValidationTest {

    private static final Path PAGE = Path.of("VALIDATION.md");

    private static Checks checks;

    @BeforeAll
    static void compute() throws Exception {
        checks = new Checks();
        BenchChecks.into(checks);
        ShapeChecks.into(checks);
        SetupChecks.into(checks);
        BoardChecks.into(checks);
        HeadChecks.into(checks);
        HeelChecks.into(checks);
        SolidChecks.into(checks);
        StrengthChecks.into(checks);
        BudgetChecks.into(checks);
        StateChecks.into(checks);
        PlanChecks.into(checks);
    }

    @Test
    void ours_differFromTheExpectedByNoMoreThanIsAllowed() {
        assertThat(checks.all().stream().map(Check::faults).flatMap(List::stream))
                .isEmpty();
    }

    @Test
    void checks_areManyAndFromManySources() {
        List<Check> outside = checks.all().stream()
                .filter(check -> check.status() != Status.PRACTICE && check.status() != Status.MEMORY)
                .toList();

        assertThat(outside).hasSizeGreaterThanOrEqualTo(60).allMatch(check -> check.figures() > 0);
        assertThat(ValidationPage.sources(outside)).isGreaterThanOrEqualTo(12);
        assertThat(ValidationPage.figures(outside, Status.PUBLISHED)).isGreaterThanOrEqualTo(60);
    }

    @Test
    void check_failsWhenTheToleranceIsExceeded() {
        Check check = new Checks().check("an inch", Source.NIST_SP_811, "", Status.PUBLISHED, "mm");

        assertThat(check.figure(25.4, 25.4001, 1e-3).faults()).isEmpty();
        assertThat(check.figure(25.4, 25.41, 1e-3).faults()).hasSize(1);
        assertThat(check.figure(25.4, Double.NaN, 1e-3).faults()).hasSize(2);
    }

    @Test
    void page_isCurrent() throws Exception {
        String text = new ValidationPage(checks, new Surface()).text();
        boolean approving = Boolean.getBoolean("neckgeom.approve");

        if (approving) {
            Files.writeString(PAGE, text);
        }
        Assumptions.assumeFalse(approving, "approved anew: look at the page, then run without the property");

        assertThat(Files.readString(PAGE))
                .as("VALIDATION.md differs: run with -Dneckgeom.approve=true and look at it")
                .isEqualTo(text);
    }

    @Test
    void readme_quotesTheReport() throws Exception {
        String summary = new ValidationPage(checks, new Surface()).summary();

        String readme = Files.readString(Path.of("..", "README.md")).replaceAll("\\s+", " ");
        assertThat(readme.contains(summary))
                .as("README.md says in its trust section: %s", summary)
                .isTrue();
    }
}
