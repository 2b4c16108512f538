package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.plan.Job;

/** The main job reads and prints the same wherever it runs. */
class LocalesTest {

    private static final Locale LOCALE = Locale.getDefault();
    private static final TimeZone ZONE = TimeZone.getDefault();

    @AfterEach
    void goHome() {
        Locale.setDefault(LOCALE);
        TimeZone.setDefault(ZONE);
    }

    @ParameterizedTest
    @CsvSource({
        "de-DE, Europe/Berlin",
        "ar-EG-u-nu-arab, Africa/Cairo",
        "tr-TR, Europe/Istanbul",
        "hi-IN-u-nu-deva, Asia/Kolkata"
    })
    void run_readsAndPrintsTheSame(String locale, String zone) {
        for (String neck : ShippedNecks.names()) {
            String atHome = printed(neck);
            Job read = NeckFile.parse(neck, ShippedNecks.text(neck));
            Locale.setDefault(Locale.forLanguageTag(locale));
            TimeZone.setDefault(TimeZone.getTimeZone(zone));

            assertThat(printed(neck)).isEqualTo(atHome).hasSizeGreaterThan(1_000);
            assertThat(NeckFile.parse(neck, ShippedNecks.text(neck))).isEqualTo(read);
            goHome();
        }
    }

    private static String printed(String neck) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
        assertThat(PlanANeck.run(List.of("--full", neck), to, to, Progress.none()))
                .isZero();
        return out.toString(StandardCharsets.UTF_8);
    }
}
