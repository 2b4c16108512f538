package org.neckgeom.examples;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.measure.quantity.Length;
import org.neckgeom.page.Document;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.shape.Mesh;
import org.neckgeom.template.Cards;
import org.neckgeom.template.Paper;
import org.neckgeom.template.Template;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** What can be written of a plan besides the text on the terminal. */
enum Output {
    /** The plan with drawings. */
    HTML(
            "--html",
            "plan.html",
            "the plan with drawings",
            asked -> Sheet.of(asked.plan()).toHtml()),
    /** The templates as one drawing. */
    SVG(
            "--svg",
            "templates.svg",
            "templates at full size",
            asked -> Template.of(asked.plan()).toSvg()),
    /** The templates for CAD. */
    DXF(
            "--dxf",
            "templates.dxf",
            "templates for CAD",
            asked -> Template.of(asked.plan()).toDxf()),
    /** The templates cut into pages. */
    PAGES(
            "--pages",
            "template-pages.html",
            "templates cut into pages",
            asked -> Template.of(asked.plan()).toPages(asked.paper())),
    /** The same as a file that any reader prints. */
    PDF("--pdf", "templates.pdf", "templates cut into pages, as PDF", asked -> {
        throw new UnsupportedOperationException("a PDF is no text");
    }) {
        @Override
        byte[] of(Asked asked) {
            return TemplatePdf.of(
                    asked.plan().neck().name() + ": templates on " + asked.paper(),
                    Template.of(asked.plan()).pages(asked.paper()),
                    asked.progress());
        }
    },
    /** Cards to hang at the bench. */
    CARDS(
            "--cards-page",
            "cards.html",
            "cards of the operations",
            asked -> asked.cards().toPages(asked.paper())),
    /** The same as a file that any reader prints. */
    CARDS_PDF("--cards-pdf", "cards.pdf", "cards of the operations, as PDF", asked -> {
        throw new UnsupportedOperationException("a PDF is no text");
    }) {
        @Override
        byte[] of(Asked asked) {
            return TemplatePdf.of(
                    asked.plan().neck().name() + ": cards on " + asked.paper(),
                    asked.cards().pages(asked.paper()),
                    asked.progress());
        }
    },
    /** The whole plan for other programs. */
    JSON("--json", "plan.json", "the plan as data", asked -> Document.PLAN.json(asked.plan())),
    /** The table of frets. */
    FRETS(
            "--frets",
            "frets.csv",
            "table of frets",
            asked -> Sheet.of(asked.plan()).fretCsv()),
    /** The table of stations. */
    STATIONS(
            "--stations",
            "stations.csv",
            "table of stations",
            asked -> Sheet.of(asked.plan()).stationCsv()),
    /** A closed mesh of every piece in one file. */
    OBJ(
            "--obj",
            "pieces.obj",
            "meshes of all pieces, chords within " + Output.Fine.MESH,
            asked -> Mesh.obj(meshes(asked))),
    /** A closed mesh of each piece in a file of its own. */
    STL("--stl", "piece.stl", "mesh of each piece, chords within " + Output.Fine.MESH, asked -> {
        throw new UnsupportedOperationException("these files are no text");
    }) {
        @Override
        Map<Path, byte[]> files(Path path, Asked asked) {
            Map<Path, byte[]> files = new LinkedHashMap<>();
            meshes(asked).forEach(mesh -> files.put(beside(path, mesh.name()), mesh.toStl()));
            return files;
        }
    },
    /** Where the cutter runs in the channel. */
    CHANNEL_PATH(
            "--channel-path",
            "channel-path.csv",
            "tool path of the channel, as points",
            asked -> asked.plan().plan().channelPath().csv(asked.plan().style()));

    private final String option;
    private final String usualName;
    private final String what;
    private final Function<Asked, String> writer;

    Output(String option, String usualName, String what, Function<Asked, String> writer) {
        this.option = option;
        this.usualName = usualName;
        this.what = what;
        this.writer = writer;
    }

    /**
     * What a file is made from.
     *
     * @param plan the plan
     * @param paper the paper it is printed on
     * @param landscape whether cards lie across
     * @param progress who hears how far long work is
     */
    record Asked(Job plan, Paper paper, boolean landscape, Progress progress) {

        Cards cards() {
            Cards upright = Cards.of(plan);
            return landscape ? upright.landscape() : upright;
        }
    }

    /** How fine curves are drawn. */
    private static final class Fine {
        private static final Amount<Length> MESH = ShopUnits.mm(0.05);
    }

    private static List<Mesh> meshes(Asked asked) {
        return asked.plan().plan().solid().meshes(Fine.MESH);
    }

    /** Such as {@code neck-head.stl} for the head beside {@code neck.stl}: without blanks. */
    private static Path beside(Path path, String piece) {
        String name = path.getFileName().toString();
        int dot = name.lastIndexOf('.');
        String words = piece.replaceAll("[^a-z0-9]+", "-");
        return path.resolveSibling(name.substring(0, dot) + "-" + words + name.substring(dot));
    }

    /** The files to write where one is asked for. */
    Map<Path, byte[]> files(Path path, Asked asked) {
        return Map.of(path, of(asked));
    }

    /** What to write. */
    byte[] of(Asked asked) {
        return text(asked).getBytes(StandardCharsets.UTF_8);
    }

    /** The text to write, of a file that is one. */
    String text(Asked asked) {
        return writer.apply(asked);
    }

    /** How it is asked for on the command line. */
    String option() {
        return option;
    }

    /** Whether it is printed on a paper that can be chosen. */
    boolean isOnPaper() {
        return this == PAGES || this == PDF || isCards();
    }

    /** Whether it is cards. */
    boolean isCards() {
        return this == CARDS || this == CARDS_PDF;
    }

    /** How its file's name must end: a neck file given by mistake is then not written over. */
    String ending() {
        return usualName.substring(usualName.lastIndexOf('.'));
    }

    /** What its file is called when all are written to one folder. */
    String usualName() {
        return usualName;
    }

    /** Its name in words. */
    @Override
    public String toString() {
        return what;
    }
}
