package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.neckgeom.testing.Licences;

/** Nothing stands on this module's path whose licence was not looked at. */
class LicencesTest {

    @Test
    void everyDependency_hasTheLicenceListedAndAllowed() throws IOException {
        assertThat(Licences.faults()).isEmpty();
        assertThat(Licences.seen()).hasSizeGreaterThan(10).contains("unit-api", "indriya", "junit-jupiter-api");
    }

    @Test
    void runTimeDependencies_areTheFourThatEmbeddersTakeOn() throws IOException {
        assertThat(Licences.listed("run"))
                .containsExactlyInAnyOrder("unit-api", "indriya", "uom-lib-common", "jakarta.inject-api");
    }
}
