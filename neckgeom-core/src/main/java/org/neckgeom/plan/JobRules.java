package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.neckgeom.board.BoardShape;
import org.neckgeom.board.FallAway;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.shop.Shop;
import org.neckgeom.solid.FretLine;
import org.neckgeom.stock.Blank;
import org.neckgeom.strength.StringLoad;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** What must hold between the neck, its blank, the shop and what has been read; each fault at the key a maker would change. */
final class JobRules {

    private static final List<NeckFeature> OF_THE_HEAD = List.of(
            NeckFeature.HEAD_THICKNESS,
            NeckFeature.SCARF_STEP,
            NeckFeature.HEAD_WIDTH_BASS,
            NeckFeature.HEAD_WIDTH_TREBLE);

    private static final String UNANSWERABLE = "unanswerable";
    private static final String HEAD_LENGTH = "head.length";

    private final Neck design;
    private final Channel channel;
    private final Blank blank;
    private final LengthStyle style;
    private final List<Fault> faults = new ArrayList<>();
    private final Set<String> refused = new HashSet<>();

    private static final double MOST_SKEW_DEG = 10;

    /** Nearer than this two stations print as one. */
    private static final double LEAST_APART_MM = 0.01;

    private JobRules(Neck design, Channel channel, Blank blank) {
        this.design = design;
        this.channel = channel;
        this.blank = blank;
        this.style = design.style();
    }

    /** Refuses with every fault at once. */
    static void check(Stages stages) {
        Neck design = stages.neck();
        Blank blank = stages.blank();
        Shop shop = stages.shop();
        if (design.channel().isEmpty()) {
            return; // a job's keys ask for it
        }
        JobRules rules = new JobRules(design, stages.job().channel(), blank);
        boolean hasPlaces = rules.across();
        rules.cutter(shop.cutter().diameterMm(), shop);
        rules.channelStart();
        rules.channelEnd();
        rules.channelWithinTheEdges();
        rules.pocketWidth();
        rules.channelWidth();
        rules.planing();
        rules.blankWidth(stages.shape());
        rules.back();
        rules.heel();
        if (rules.hasShape(stages.shape())) {
            rules.blankLength(stages.shape());
            rules.blankThickness(stages.shape());
        }
        rules.scarf(stages.shape());
        rules.neckSet(stages.shape());
        rules.tuners();
        rules.board();
        rules.boardEnd(stages.shape());
        if (hasPlaces) {
            rules.posts();
        }
        if (design.isReadyForLoad()) {
            rules.refused("strings", () -> StringLoad.of(design).total());
        }
        rules.readings(stages.measured());
        rules.fence(stages);
        rules.path(stages);
        rules.stiffness(stages);
        if (!rules.faults.isEmpty()) {
            throw Refusal.of(rules.faults);
        }
    }

    /** Readings of stiffness that no wood gives are asked about, once there is a neck to compare them with: the one that was made. */
    private void stiffness(Stages stages) {
        if (faults.isEmpty() && !stages.measured().stiffness().isEmpty()) {
            refused("measured.stiffness", stages.strength()::relief);
        }
    }

    private void fault(String path, String rule, String must, Object given) {
        faults.add(new Fault(path, rule, must, given.toString()));
    }

    private String brief(double mm) {
        return style.brief(mm);
    }

    private void cutter(double cutter, Shop shop) {
        if (channel.hasAdjusterPocket() && !(cutter <= channel.adjusterPocketLengthMm())) {
            fault(
                    "channel.adjuster pocket.length",
                    "at-least",
                    "be " + brief(cutter) + " or more, the cutter's diameter",
                    brief(channel.adjusterPocketLengthMm()));
        }
        if (!(cutter <= channel.widthMm())) {
            fault(
                    "shop.cutter.diameter",
                    "at-most",
                    "be " + brief(channel.widthMm())
                            + (channel.isLocatingGroove()
                                    ? " or less, the groove's width"
                                    : " or less, the channel's width: a thinner cutter, or a channel with "
                                            + brief(cutter
                                                    - channel.reinforcement().widthMm()) + " of side clearance"),
                    shop.cutter().diameter());
        }
        if (!(cutter <= channel.lengthMm())) {
            fault(
                    reinforcement() + ".length",
                    "at-least",
                    "make a channel of " + brief(cutter) + " or more, as long as the cutter is wide",
                    brief(channel.reinforcement().lengthMm()));
        }
    }

    /** The key of what is in the channel. */
    private String reinforcement() {
        return channel.isLocatingGroove() ? "locating groove" : channel.rod().isPresent() ? "truss rod" : "bar";
    }

    private void channelStart() {
        double begins = -blank.nutFromHeadEndMm();
        if (!(channel.startMm() >= begins)) {
            fault(
                    "channel.starts at",
                    "at-least",
                    "be " + brief(begins) + " or more, where the blank begins",
                    brief(channel.startMm()));
        }
    }

    /** Before the nut and past the board the neck's edges are carried on: where they meet there is no neck. */
    private void channelWithinTheEdges() {
        double atNut = design.halfWidthAtMm(0);
        double meet = -atNut / (design.halfWidthAtMm(1) - atNut);
        if (!(design.halfWidthAtMm(channel.startMm()) > 0)) {
            fault(
                    "channel.starts at",
                    "more-than",
                    "be more than " + brief(meet) + ", where the neck's edges meet",
                    brief(channel.startMm()));
        } else if (!(design.halfWidthAtMm(channel.endMm()) > 0)) {
            fault(
                    reinforcement() + ".length",
                    "less-than",
                    "make a channel that ends before " + brief(meet) + ", where the neck's edges meet",
                    brief(channel.reinforcement().lengthMm()));
        }
    }

    private void channelEnd() {
        double ends = blank.lengthMm() - blank.nutFromHeadEndMm();
        double tooLong = channel.endMm() - ends;
        double rod = channel.reinforcement().lengthMm();
        if (!(tooLong > 0)) {
            return;
        }
        if (tooLong < rod) {
            fault(
                    reinforcement() + ".length",
                    "at-most",
                    "be " + brief(rod - tooLong) + " or less: its channel ends " + brief(tooLong)
                            + " past the end of the blank",
                    brief(rod));
        } else {
            fault(
                    "channel.starts at",
                    "at-most",
                    "lie on the blank, which ends " + brief(ends) + " from the nut",
                    brief(channel.startMm()));
        }
    }

    private double narrowest() {
        return Math.min(blank.widthAtMm(channel.startMm()), blank.widthAtMm(channel.endMm()));
    }

    private void pocketWidth() {
        if (channel.hasAdjusterPocket() && !(channel.adjusterPocketWidthMm() < narrowest())) {
            fault(
                    "channel.adjuster pocket.width",
                    "less-than",
                    "be less than the blank's " + brief(narrowest()),
                    brief(channel.adjusterPocketWidthMm()));
        }
    }

    private void channelWidth() {
        double play = channel.widthMm() - channel.reinforcement().widthMm();
        if (channel.widthMm() < narrowest()) {
            return;
        }
        if (play > 0) {
            fault(
                    "channel.side clearance",
                    "less-than",
                    "leave a channel narrower than the blank's " + brief(narrowest()) + ", not one "
                            + brief(channel.widthMm()) + " wide",
                    brief(play));
        } else {
            fault(
                    reinforcement() + ".width",
                    "less-than",
                    "be less than the blank's " + brief(narrowest()),
                    brief(channel.reinforcement().widthMm()));
        }
    }

    /** A head that is scarfed on may come from another board; one that is not comes from this blank. */
    private void blankLength(ShapeStage shape) {
        double joint = design.bodyJointMm();
        double beforeNut = Math.max(
                Math.max(
                        blank.nutFromHeadEndMm(),
                        design.stringAnchor().map(Amount::libraryValue).orElse(0.0)),
                shape.solid()
                        .head()
                        .filter(head -> head.head().scarf().isEmpty())
                        .map(head -> head.farthest().libraryValue())
                        .orElse(0.0));
        double needed = beforeNut + joint;
        if (!(blank.lengthMm() >= needed)) {
            String shaft = "the shaft from the nut to the body joint at " + text(joint);
            String all = beforeNut == 0 ? shaft : text(beforeNut) + " before the nut line and " + shaft;
            outOfIt("blank.length", needed, all, blank.length());
        }
    }

    private void planing() {
        if (!(blank.planedThicknessMm() > 0)) {
            fault(
                    "blank.planing",
                    "less-than",
                    "be less than " + brief(blank.thicknessMm() / 2) + ", half the blank's thickness",
                    brief(blank.planingMm()));
        }
    }

    private void blankWidth(ShapeStage shape) {
        double needed = Math.max(shape.shaftWidthMm(), design.fingerboard().farWidthMm());
        if (!(blank.widthMm() >= needed)) {
            outOfIt("blank.width", needed, "the fingerboard at its widest", blank.width());
        }
    }

    private void blankThickness(ShapeStage shape) {
        double station = shape.leastThickness().station().libraryValue();
        double back = shape.solid().depth().valueAt(station);
        double floor = Math.max(channel.depthMm(), channel.floorDepthAtMm(channel.startMm() + channel.lengthMm() / 2));
        double cut = Math.max(floor, channel.hasAdjusterPocket() ? channel.adjusterPocketDepthMm() : 0);
        if (!(blank.thicknessMm() >= back)) {
            outOfIt(
                    "blank.thickness",
                    back,
                    "the back at its deepest before the heel, " + brief(station) + " from the nut,",
                    blank.thickness());
        } else if (!(blank.thicknessMm() > cut)) {
            outOfIt("blank.thickness", cut, "the channel alone, and then some wood behind it", blank.thickness());
        }
    }

    /** Whether the back can be drawn from the nut to the heel. */
    private boolean hasShape(ShapeStage shape) {
        int before = faults.size();
        try {
            shape.solid();
        } catch (Refusal refusal) {
            refusal.faults().stream()
                    .filter(fault -> refused.add(fault.toString()))
                    .forEach(faults::add);
            return false;
        }
        return faults.size() == before;
    }

    /** The heel is no shallower than the back it grows from. */
    private void heel() {
        double joint = design.bodyJointMm();
        double plain = design.backDepthAtMm(joint);
        design.heel()
                .filter(heel -> !(heel.heightMm() >= plain))
                .ifPresent(heel -> fault(
                        "heel.height",
                        "at-least",
                        "be " + text(plain) + " or more, the depth of the back at the body joint, " + brief(joint)
                                + " from the nut",
                        text(heel.heightMm())));
    }

    private void outOfIt(String path, double needed, String what, Object given) {
        fault(path, "at-least", "be " + text(needed) + " or more: " + what + " comes from it", given);
    }

    private String text(double mm) {
        return blank.style().text(mm);
    }

    /** The depth runs straight through its two frets: where nothing is left there is no neck to plan. */
    private void back() {
        double second = design.scale().fretMm(design.back().secondFret());
        double last = Math.max(Math.max(second, design.bodyJointMm()), channel.endMm());
        depthAt(
                Math.min(0, channel.startMm()),
                "back.depths[1].depth",
                design.back().firstDepthMm());
        depthAt(last, "back.depths[2].depth", design.back().secondDepthMm());
    }

    private void depthAt(double x, String path, double given) {
        if (!(design.backDepthAtMm(x) > 0)) {
            fault(path, UNANSWERABLE, "leave depth in the back " + brief(x) + " from the nut", brief(given));
        }
    }

    private void neckSet(ShapeStage shape) {
        try {
            shape.neckSet();
            if (blank.planedThicknessMm() > 0) {
                shape.heelBlocks();
            }
        } catch (Refusal refusal) {
            for (Fault fault : refusal.faults()) {
                boolean isWhole = fault.given().isEmpty();
                faults.add(new Fault(
                        isWhole ? "neck set" : "neck set." + fault.path(),
                        fault.rule(),
                        isWhole ? "neck set: " + refusal.getMessage() : fault.must(),
                        fault.given()));
            }
        }
    }

    private void scarf(ShapeStage shape) {
        refused("head", shape::scarfBoard);
    }

    /**
     * What is refused where it follows from the design is a fault of the key it follows from; what refuses several questions is one
     * at the first.
     */
    private void refused(String path, Runnable question) {
        try {
            question.run();
        } catch (NoAnswer none) {
            faults.add(new Fault(path, UNANSWERABLE, none.fault().toString(), ""));
        } catch (Refusal refusal) {
            Fault fault = refusal.faults().get(0);
            String own = String.valueOf(refusal.getMessage());
            if (!refused.add(own)) {
                return;
            }
            boolean isOfKey = path.equals(HEAD_LENGTH) && !fault.given().isEmpty();
            faults.add(
                    isOfKey
                            ? new Fault(path, fault.rule(), fault.must(), fault.given())
                            : new Fault(path, fault.rule(), own.startsWith(path) ? own : path + ": " + own, ""));
        }
    }

    private void tuners() {
        refused("head", () -> design.head().ifPresent(head -> head.tuners().ifPresent(HeadLayout.of(head)::woodFor)));
    }

    /** Each string at the nut has its post, and its pull, and a height from which it comes down to the post. */
    private void posts() {
        Optional<StringPlaces> nut = StringSpacing.atNut(design);
        int posts = design.head().map(head -> head.posts().size()).orElse(0);
        if (posts == 0) {
            return;
        }
        if (nut.isPresent() && posts != nut.get().centres().size()) {
            fault(
                    "head.posts.along",
                    "as-many",
                    "have " + nut.get().centres().size() + ", one to a string",
                    posts + " of them");
        }
        if (design.fingerboard().fretHeight().isEmpty()) {
            faults.add(new Fault(
                    "fingerboard.fret height",
                    "missing",
                    "fingerboard.fret height is missing; the strings come down from it to the head's posts",
                    ""));
        }
    }

    /** Whether the strings have their places. */
    private boolean across() {
        int before = faults.size();
        refused("strings.across", () -> {
            StringSpacing.atNut(design);
            StringSpacing.atSaddle(design);
        });
        return faults.size() == before;
    }

    private void board() {
        refused("fingerboard", () -> {
            FallAway.of(design);
            BoardShape shape = BoardShape.of(design);
            shape.atFret(0);
            shape.atFret(design.frets());
            for (int fret = 0; fret <= design.frets(); fret++) {
                double edge = shape.atFret(fret).edgeMm();
                if (!(edge > 0)) {
                    throw Refusal.of(
                            "fingerboard",
                            "more-than",
                            "be more than 0 thick at its edges at fret " + fret,
                            brief(edge));
                }
            }
        });
    }

    /** Where a fret more would lie the board ends; fanned, its ends lie apart. */
    private void boardEnd(ShapeStage shape) {
        if (faults.isEmpty()) {
            refused("fingerboard", () -> {
                FretLine end = shape.solid().fret(design.frets() + 1);
                BoardShape board = BoardShape.of(design);
                Stream.of(end.bass(), end.treble())
                        .map(corner -> board.at(design.style().amount(corner.uMm())))
                        .filter(section -> !(section.edgeMm() > 0))
                        .findFirst()
                        .ifPresent(section -> {
                            throw Refusal.of(
                                    "fingerboard",
                                    "more-than",
                                    "be more than 0 thick at the edges of its end, a fret past the last",
                                    brief(section.edgeMm()));
                        });
            });
        }
    }

    /** A cutter far too thin for the channel would take more strokes than a list holds. */
    private void path(Stages stages) {
        if (faults.isEmpty()) {
            refused("shop.cutter.diameter", stages.slot()::closedPath);
        }
    }

    /** Halves of a fence so far out of line turn the piece, and the slot with it. */
    private void fence(Stages stages) {
        double out = stages.shop().fence().outOfLineMm();
        if (!faults.isEmpty() || out == 0) {
            return;
        }
        double skew = stages.slot().place().skew().libraryValue();
        if (!(Math.abs(skew) < Math.toRadians(MOST_SKEW_DEG))) {
            fault(
                    "shop.fence.out of line",
                    "range",
                    "leave the slot askew by less than 10 deg",
                    brief(out) + ", askew by " + Math.round(Math.toDegrees(skew)) + " deg");
        }
    }

    /** A slot read so far off at one end and not at the other is no slot along a neck. */
    private void slotAskew(MeasuredNeck readings) {
        double from = read(readings, NeckFeature.CHANNEL_START, channel.startMm());
        double to = read(readings, NeckFeature.CHANNEL_END, channel.endMm());
        double most = (to - from) * StrictMath.tan(Math.toRadians(MOST_SKEW_DEG));
        double head = read(readings, NeckFeature.SLOT_OFFSET, 0);
        double heel = read(readings, NeckFeature.SLOT_OFFSET_AT_HEEL, head);
        if (to > from && !(Math.abs(heel - head) < most)) {
            fault(
                    "measured.slot offset at heel",
                    "range",
                    "lie less than " + brief(most) + " from that at the head end: a slot is askew by less than 10 deg",
                    brief(heel));
        }
    }

    private static double read(MeasuredNeck readings, NeckFeature feature, double otherwise) {
        return readings.of(feature).map(Estimate::libraryValue).orElse(otherwise);
    }

    /** A channel as read ends where there is wood to cut. */
    private void endAsRead(MeasuredNeck readings, NeckFeature feature) {
        double x = read(readings, feature, 0);
        double begins = -blank.nutFromHeadEndMm();
        double ends = blank.lengthMm() + begins;
        if (!(x >= begins && x <= ends)) {
            fault(
                    "measured." + feature,
                    "range",
                    "lie on the blank, from " + brief(begins) + " to " + brief(ends) + " from the nut",
                    brief(x));
        } else if (!(design.halfWidthAtMm(x) > 0 && design.backDepthAtMm(x) > 0)) {
            fault("measured." + feature, UNANSWERABLE, "lie where the neck, carried on, has width and depth", brief(x));
        }
    }

    /** Offsets are named by feature and station: two with one name are no two readings. */
    private void offsetsApart(MeasuredNeck readings) {
        List<MeasuredNeck.OffsetRead> all = readings.offsets();
        for (int i = 0; i < all.size(); i++) {
            MeasuredNeck.OffsetRead one = all.get(i);
            if (all.subList(0, i).stream().anyMatch(before -> isAtTheSame(before, one))) {
                fault(
                        "measured.offsets",
                        "once",
                        "have the stations of one feature " + brief(LEAST_APART_MM)
                                + " or more apart: several indications at one are a list",
                        "twice " + one.name(style));
            }
        }
    }

    private static boolean isAtTheSame(MeasuredNeck.OffsetRead one, MeasuredNeck.OffsetRead other) {
        return one.feature() == other.feature()
                && Math.abs(one.station().libraryValue() - other.station().libraryValue()) < LEAST_APART_MM;
    }

    private void readings(MeasuredNeck readings) {
        if (design.head().isEmpty()
                && (readings.scarfAngle().isPresent() || OF_THE_HEAD.stream().anyMatch(readings::has))) {
            fault("measured", "missing", "have a head to be read on", "of a neck without: add .head(...)");
        }
        slotAskew(readings);
        offsetsApart(readings);
        endAsRead(readings, NeckFeature.CHANNEL_START);
        endAsRead(readings, NeckFeature.CHANNEL_END);
        double end = design.scale().fretMm(Math.max(design.frets(), design.bodyAtFret()));
        readings.backDepths().keySet().forEach(x -> {
            if (!(x >= 0 && x <= end)) {
                fault(
                        "measured.back",
                        "range",
                        "have its stations on the neck, from the nut to " + brief(end),
                        "at " + brief(x));
            }
        });
    }
}
