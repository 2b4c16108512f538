package org.neckgeom.examples;

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
}
