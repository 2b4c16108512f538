package org.neckgeom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.neckgeom.testing.Advisories;

/** Nothing stands on this module's path that a listed advisory warns of. */
class AdvisoriesTest {

    @Test
    void everyDependency_isFreeOfTheAdvisoriesListed() throws IOException {
        assertThat(Advisories.faults()).isEmpty();
    }

    /** Versions before, at and behind the mended one, as the advisories name them. */
    @Test
    void of_knowsAnAffectedVersionFromAMendedOne() throws IOException {
        assertThat(Advisories.of("assertj-core", "3.27.6")).containsExactly("assertj-core 3.27.6 has CVE-2026-24400");
        assertThat(Advisories.of("assertj-core", "3.27.7")).isEmpty();
        assertThat(Advisories.of("assertj-core", "1.3.0")).isEmpty();
        assertThat(Advisories.of("commons-io", "2.13.0")).containsExactly("commons-io 2.13.0 has CVE-2024-47554");
        assertThat(Advisories.of("log4j", "1.2.17")).hasSize(1);
        assertThat(Advisories.of("snakeyaml-engine", "2.10")).isEmpty();
    }
}
