package org.neckgeom.examples;

import org.neckgeom.plan.NeckPlan;
import org.neckgeom.sheet.Paper;
import org.neckgeom.sheet.PlanData;
import org.neckgeom.sheet.Sheet;
import org.neckgeom.sheet.Template;
import org.neckgeom.units.LengthStyle;

/** What can be written of a plan besides the text on the terminal. */
enum Output {
    /** The plan with drawings. */
    HTML("--html", ".html", "the plan with drawings") {
        @Override
        String of(NeckPlan plan) {
            return Sheet.of(plan).toHtml();
        }
    },
    /** The templates as one drawing. */
    SVG("--svg", ".svg", "templates at full size") {
        @Override
        String of(NeckPlan plan) {
            return Template.of(plan).toSvg();
        }
    },
    /** The templates for CAD. */
    DXF("--dxf", ".dxf", "templates for CAD") {
        @Override
        String of(NeckPlan plan) {
            return Template.of(plan).toDxf();
        }
    },
    /** The templates cut into pages: letter for a neck in inches, A4 for one in millimetres. */
    PAGES("--pages", ".html", "templates cut into pages") {
        @Override
        String of(NeckPlan plan) {
            return Template.of(plan).toPages(plan.style() == LengthStyle.MILLIMETRES ? Paper.A4 : Paper.LETTER);
        }
    },
    /** The whole plan for other programs. */
    JSON("--json", ".json", "the plan as data") {
        @Override
        String of(NeckPlan plan) {
            return PlanData.of(plan).toJson();
        }
    },
    /** The table of frets. */
    FRETS("--frets", ".csv", "table of frets") {
        @Override
        String of(NeckPlan plan) {
            return PlanData.of(plan).fretCsv();
        }
    },
    /** The table of stations. */
    STATIONS("--stations", ".csv", "table of stations") {
        @Override
        String of(NeckPlan plan) {
            return PlanData.of(plan).stationCsv();
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

    /** The text to write. */
    abstract String of(NeckPlan plan);

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
