package org.neckgeom.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.plan.Job;
import org.neckgeom.template.Paper;
import org.neckgeom.template.Template;
import org.neckgeom.testing.Approved;
import org.neckgeom.units.ShopUnits;

/**
 * A plan, its sheet, page, templates and data have the same bytes wherever they are made: with a decimal comma, with
 * Arabic and Devanagari digits, where the small letter of I has no dot, in any time zone.
 */
@Tag("long")
class LocalesTest {

    private static final Locale LOCALE = Locale.getDefault();
    private static final TimeZone ZONE = TimeZone.getDefault();

    private static List<String> atHome;

    @BeforeAll
    static void makeThemAtHome() {
        Locale.setDefault(Locale.ROOT);
        atHome = everything();
        Locale.setDefault(LOCALE);
    }

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
        "hi-IN-u-nu-deva, Asia/Kolkata",
        "th-TH-u-ca-buddhist-nu-thai, Pacific/Kiritimati"
    })
    void everything_hasTheSameBytes(String locale, String zone) {
        Locale.setDefault(Locale.forLanguageTag(locale));
        TimeZone.setDefault(TimeZone.getTimeZone(zone));
        // The locale is one that would show, if anything asked for it.
        assertThat(String.format("%,.1f|%S", 1234.5, "i")
                        + TimeZone.getDefault().getID())
                .isNotEqualTo("1,234.5|I" + ZONE.getID());

        assertThat(everything()).isEqualTo(atHome);
        Approved.hold(
                "page",
                Map.of(
                        "octave.txt", PlainText.of(Necks.octaveContents()),
                        "octave.html", Page.of(Necks.octaveContents())));
        Approved.hold(
                "template",
                Map.of(
                        "octave-template.svg",
                                Template.of(SampleNecks.octaveMandolin()).toSvg(),
                        "octave-template.dxf",
                                Template.of(SampleNecks.octaveMandolin()).toDxf()));
    }

    private static List<String> everything() {
        Job plan = Necks.octavePlan();
        Template template = Template.of(plan);
        assertThat(Document.PLAN.read(Document.PLAN.json(plan)).neckAsGiven()).isEqualTo(plan.neck());
        List<String> all = new ArrayList<>(List.of(
                plan.toString(),
                plan.plan().checks().toString(),
                plan.plan().budgets().toString(),
                plan.plan().budgets().get(0).simulate(1).trials(1_000).toString(),
                Sheet.of(plan).toText(),
                Sheet.of(plan).toHtml(),
                Document.PLAN.json(plan),
                Sheet.of(plan).fretCsv(),
                Sheet.of(plan).stationCsv(),
                template.toSvg(),
                template.toDxf(),
                template.toPages(Paper.A4)));
        for (String text : List.of("1 3/4 in", "12.5 mm", "25.5 IN", "0.02 m", "3/8 INCH", "10 thou")) {
            all.add(read(text));
        }
        return all;
    }

    private static String read(String text) {
        try {
            return ShopUnits.length(text).toString();
        } catch (IllegalArgumentException e) {
            return e.getMessage();
        }
    }
}
