package org.neckgeom.template;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.PaperSet;
import org.neckgeom.drawing.Settled;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.neck.Neck;
import org.neckgeom.page.Document;
import org.neckgeom.plan.Job;
import org.neckgeom.shape.Spot;
import org.neckgeom.solid.ChannelJig;
import org.neckgeom.template.Mark.Stroke;
import org.neckgeom.template.Mark.Words;
import org.neckgeom.units.LengthStyle;

/**
 * A {@index "full-size template"} (1:1 drawing) of the neck, to lay on the wood: plan, side, sections, head
 * and its back, the heel's joint and the board's saw marks, each with a bar of 100 mm and one of 4 in to measure the print by.
 *
 * <p>Units are mm on the drawing; x runs along the centreline from the nut, positive toward the body. Straight lines
 * and arcs are exact to 1e-4 mm; the curves of the sections are chords that leave the curve by less than 0.005 mm.
 * Strings, posts and the head's outline are drawn where they are given; a head without outline is drawn as the room for
 * the maker's own. Output: SVG, DXF with layers, or pages.
 *
 * <p>Errors: a part that the neck does not have, asked by {@link #only}, throws {@link org.neckgeom.fault.Refusal} (an
 * {@code IllegalArgumentException}). Immutable.
 *
 * @see TemplatePart
 * @see org.neckgeom.page.Sheet
 */
public final class Template implements Answer {

    private static final Form<Template> FORM = Form.<Template>of("template")
            .fact("neck", Kind.NAME, "its name", template -> template.design.name())
            .finds("template", "Templates: {neck}")
            .row("parts", "parts", Kind.list(Kind.code(TemplatePart.class)), "that are drawn", Template::parts)
            .row("sheet", "sheet", Kind.answer(Sheet.FORM), "for all of them", Template::sheet)
            .note("files", "toSvg() and toDxf() at full size, toPages(paper) to print and join");

    private static final double MARGIN = 12;
    private static final double UPRIGHT_BAR_COLUMN = 18;
    private static final double BETWEEN = 14;
    private static final double BAR_GAP = 12;
    private static final double BARS_HEIGHT = 22;
    private static final double TITLE_SIZE = 5;

    private final Neck design;
    private final Settled settled;
    private final @Nullable ScarfJoint joint;
    private final List<TemplatePart> parts;
    private final String mark;
    private final @Nullable ChannelJig jig;

    private Template(
            Neck design,
            Settled settled,
            @Nullable ScarfJoint joint,
            List<TemplatePart> parts,
            String mark,
            @Nullable ChannelJig jig) {
        this.design = design;
        this.settled = settled;
        this.joint = joint;
        this.parts = List.copyOf(parts);
        this.mark = mark;
        this.jig = jig;
    }

    /**
     * {@return the templates of a plan, with its scarf, strings, posts, fanned frets and wings; all parts the neck has}
     *
     * @param job the job
     */
    public static Template of(Job job) {
        Settled settled = Settled.of(Objects.requireNonNull(job, "job"));
        return new Template(
                job.neck(),
                settled,
                job.plan().scarf().orElse(null),
                partsOf(job.neck(), settled),
                Document.mark(job),
                null);
    }

    /**
     * {@return the templates of a design, without scarf line; all parts the neck has}
     *
     * @param design the neck; with scale, fingerboard and back
     */
    public static Template of(Neck design) {
        return new Template(design, Settled.nothing(), null, partsOf(design, Settled.nothing()), "", null);
    }

    /**
     * {@return the template of a jig that sits in the neck's channel: the lines that it is cut to, its pins, the channel's centreline
     * and the nut line}
     *
     * @param jig with its guide bush and its play, if they are known
     */
    public static Template of(ChannelJig jig) {
        Neck neck = Objects.requireNonNull(jig, "jig").neck();
        return new Template(neck, Settled.nothing(), null, List.of(TemplatePart.JIG), "", jig);
    }

    private static List<TemplatePart> partsOf(Neck design, Settled settled) {
        Objects.requireNonNull(design, "design").fingerboard();
        design.back();
        design.scale();
        List<TemplatePart> parts =
                new ArrayList<>(List.of(TemplatePart.PLAN, TemplatePart.SIDE, TemplatePart.SECTIONS));
        if (design.head().isPresent()) {
            parts.addAll(List.of(TemplatePart.HEAD, TemplatePart.HEAD_BACK));
        }
        if (JointView.canBeDrawn(design)) {
            parts.add(TemplatePart.JOINT);
        }
        settled.board().ifPresent(board -> parts.add(TemplatePart.SAW_MARKS));
        return parts;
    }

    /**
     * {@return these templates with some parts only, in the order given}
     *
     * @param wanted one or more
     * @throws IllegalArgumentException if there is none, or a head, a joint, saw marks or a jig are wanted where there are none
     */
    public Template only(TemplatePart... wanted) {
        if (Objects.requireNonNull(wanted, "wanted").length == 0) {
            throw Refusal.of("parts of a template", "at-least", "be 1 or more", "there were none", "");
        }
        for (TemplatePart part : wanted) {
            Objects.requireNonNull(part, "part");
        }
        Template some = new Template(design, settled, joint, List.of(wanted), mark, jig);
        some.sheet();
        return some;
    }

    /** {@return the parts drawn; one or more} */
    public List<TemplatePart> parts() {
        return parts;
    }

    /** {@return the templates as a drawing in mm, to print at 100 %; SVG 1.1 in UTF-8, ending in a line feed} */
    public String toSvg() {
        Sheet sheet = sheet();
        return TemplateSvg.of(
                sheet.marks(),
                sheet.width(),
                sheet.height(),
                design.name() + ": templates at full size",
                description());
    }

    /**
     * {@return the templates for CAD: a drawing exchange file of release 12 in ASCII, POLYLINE with bulges and TEXT on
     * layers named for their meaning, one unit a millimetre; lines parted by CR LF}
     */
    public String toDxf() {
        return Dxf.of(sheet().marks());
    }

    /**
     * {@return the templates cut into pages, to print from any browser at 100 % and join at their crosses; the {@link
     * #pages} as one page of HTML that is well-formed XML too, complete in itself, in UTF-8}
     *
     * @param paper the paper in the printer
     */
    public String toPages(Paper paper) {
        return TemplatePages.html(
                design.name() + ": templates on "
                        + Objects.requireNonNull(paper, "paper").css(),
                pages(paper));
    }

    /**
     * {@return the templates cut into pages, to be drawn on anything that prints; two or more} The first is a map of
     * the others; each part begins a page of its own, with its own bars; pages overlap by 10 mm; empty ones are left
     * out.
     *
     * @param paper the paper in the printer
     */
    public List<TemplatePage> pages(Paper paper) {
        Objects.requireNonNull(paper, "paper");
        Map<TemplatePart, Sheet> sheets = new LinkedHashMap<>();
        parts.forEach(part -> sheets.put(part, only(part).sheet()));
        String name = design.name() + (mark.isEmpty() ? "" : " (" + PaperSet.named(mark) + ")");
        return TemplatePages.of(name, sheets, paper);
    }

    private String description() {
        return "Full size in millimetres: "
                + String.join(", ", parts.stream().map(TemplatePart::toString).toList())
                + ". Measure the bars of 100 mm and 4 in on the print before use.";
    }

    /** Stacks the views from the top, each over its bars, beside an upright bar. */
    Sheet sheet() {
        List<Mark> below = new ArrayList<>(); // v downwards from the sheet's top edge as negative numbers
        double left = MARGIN + UPRIGHT_BAR_COLUMN;
        double top = -MARGIN - TITLE_SIZE;
        double right = left + Sheet.INCH_BAR_MM;
        below.add(new Words(new Spot(left, top), TITLE_SIZE, false, design.name()));
        top -= 2.2 * TITLE_SIZE;
        below.add(new Words(
                new Spot(left, top),
                3,
                false,
                "Full size. Print at 100 %, measure the bars both ways, then use it."
                        + (mark.isEmpty() ? "" : " " + PaperSet.belonging(mark))));
        uprightBar(below, -MARGIN);
        for (TemplatePart part : parts) {
            List<Mark> view = viewOf(part);
            double[] box = Mark.box(view);
            top -= BETWEEN;
            below.add(new Words(new Spot(left, top), 4, false, part.toString()));
            top -= 6;
            double du = left - box[0];
            double dv = top - box[3];
            view.forEach(mark -> below.add(mark.moved(du, dv)));
            right = Math.max(right, left + box[2] - box[0]);
            top -= box[3] - box[1] + BAR_GAP;
            Sheet.bars(below, left, top);
            top -= BARS_HEIGHT - BAR_GAP;
        }
        double height = Math.max(-top + MARGIN, Sheet.METRIC_BAR_MM + 2 * MARGIN);
        List<Mark> marks = below.stream().map(mark -> mark.moved(0, height)).toList();
        return new Sheet(marks, Math.max(right, Mark.box(marks)[2]) + MARGIN, height);
    }

    private List<Mark> viewOf(TemplatePart part) {
        NeckShape shape = new NeckShape(design, settled);
        return part == TemplatePart.JIG
                ? JigView.of(shape, jig)
                : TemplateViews.of(part, shape, Optional.ofNullable(joint));
    }

    private static void uprightBar(List<Mark> marks, double v) {
        double u = MARGIN;
        marks.add(Stroke.through(Layer.SCALE, u, v, u, v - Sheet.METRIC_BAR_MM));
        marks.add(Stroke.through(Layer.SCALE, u - 2, v, u + 2, v));
        marks.add(Stroke.through(Layer.SCALE, u - 2, v - Sheet.METRIC_BAR_MM, u + 2, v - Sheet.METRIC_BAR_MM));
        marks.add(new Words(Layer.SCALE, new Spot(u + 1.5, v - Sheet.METRIC_BAR_MM / 2), 3, false, "100 mm"));
    }

    @Override
    public Form<Template> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return design.style();
    }

    /** True for the same parts of an equal neck. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Template that
                && design.equals(that.design)
                && settled.equals(that.settled)
                && Objects.equals(joint, that.joint)
                && parts.equals(that.parts)
                && mark.equals(that.mark)
                && Objects.equals(jig, that.jig);
    }

    @Override
    public int hashCode() {
        return Objects.hash(design, settled, joint, parts, mark, jig);
    }

    /** Returns what is drawn and how large the sheet is. */
    @Override
    public String toString() {
        return text(style());
    }
}
