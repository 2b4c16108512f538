package org.neckgeom.examples;

import java.nio.charset.StandardCharsets;
import org.neckgeom.page.Document;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.template.Paper;
import org.neckgeom.template.Template;

/** What can be written of a plan besides the text on the terminal. */
enum Output {
    /** The plan with drawings. */
    HTML("--html", ".html", "the plan with drawings") {
        @Override
        String text(Asked asked) {
            return Sheet.of(asked.plan()).toHtml();
        }
    },
    /** The templates as one drawing. */
    SVG("--svg", ".svg", "templates at full size") {
        @Override
        String text(Asked asked) {
            return Template.of(asked.plan()).toSvg();
        }
    },
    /** The templates for CAD. */
    DXF("--dxf", ".dxf", "templates for CAD") {
        @Override
        String text(Asked asked) {
            return Template.of(asked.plan()).toDxf();
        }
    },
    /** The templates cut into pages. */
    PAGES("--pages", ".html", "templates cut into pages") {
        @Override
        String text(Asked asked) {
            return Template.of(asked.plan()).toPages(asked.paper());
        }
    },
    /** The same as a file that any reader prints. */
    PDF("--pdf", ".pdf", "templates cut into pages, as PDF") {
        @Override
        byte[] of(Asked asked) {
            return TemplatePdf.of(
                    asked.plan().design().name() + ": templates on " + asked.paper(),
                    Template.of(asked.plan()).pages(asked.paper()),
                    asked.progress());
        }
    },
    /** The whole plan for other programs. */
    JSON("--json", ".json", "the plan as data") {
        @Override
        String text(Asked asked) {
            return Document.PLAN.json(asked.plan());
        }
    },
    /** The table of frets. */
    FRETS("--frets", ".csv", "table of frets") {
        @Override
        String text(Asked asked) {
            return Sheet.of(asked.plan()).fretCsv();
        }
    },
    /** The table of stations. */
    STATIONS("--stations", ".csv", "table of stations") {
        @Override
        String text(Asked asked) {
            return Sheet.of(asked.plan()).stationCsv();
        }
    };

    private final String option;
    private final String ending;
    private final String what;

    Output(String option, String ending, String what) {
        this.option = option;
        this.ending = ending;
        this.what = what;
    }

    /**
     * What a file is made from.
     *
     * @param plan the plan
     * @param paper the paper it is printed on
     * @param progress who hears how far long work is
     */
    record Asked(NeckPlan plan, Paper paper, Progress progress) {}

    /** What to write. */
    byte[] of(Asked asked) {
        return text(asked).getBytes(StandardCharsets.UTF_8);
    }

    /** The text to write, of a file that is one. */
    String text(Asked asked) {
        throw new UnsupportedOperationException(this + " is no text");
    }

    /** How it is asked for on the command line. */
    String option() {
        return option;
    }

    /** How its file's name must end: a neck file given by mistake is then not written over. */
    String ending() {
        return ending;
    }

    /** What its file is called when all are written to one folder. */
    String usualName() {
        return switch (this) {
            case HTML -> "plan.html";
            case SVG -> "templates.svg";
            case DXF -> "templates.dxf";
            case PAGES -> "template-pages.html";
            case PDF -> "templates.pdf";
            case JSON -> "plan.json";
            case FRETS -> "frets.csv";
            case STATIONS -> "stations.csv";
        };
    }

    /** What it is, in words. */
    @Override
    public String toString() {
        return what;
    }
}
