package org.neckgeom.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.neckgeom.board.FallAway;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.BudgetKeys;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Tree;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.order.Condition;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderChanges;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.plan.Job;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.table.Branch;
import org.neckgeom.table.Moves;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/**
 * Documents of version 1: where their keys have gone. A figure that follows from other keys has no key today: it must agree
 * with them, and is dropped.
 */
final class Version1 {

    /** By how much what follows may differ, in mm: more than a fan's own scale is off, less than a calliper reads. */
    private static final double SAME_MM = 0.02;

    private static final double SAME = 1e-6;
    private static final double NANOMETRES = 1e6;

    /** From one key to another, which a table's own moves may take on. */
    private static final String KEYS = """
            design.name -> name
            design.scale.divisions -> frets to the octave
            design.scale.length -> scale
            design.frets -> frets
            design.bodyAtFret -> body at fret
            design.wood -> wood
            design.fingerboard -> fingerboard
            fingerboard.thicknessAtNut -> fingerboard.thickness
            fingerboard.radiusAtNut -> fingerboard.radius
            details.fretHeight -> fingerboard.fret height
            details.fallAway.drop -> fingerboard.fall-away
            details.fannedFrets.bassScale -> fanned frets.bass scale
            details.fannedFrets.trebleScale -> fanned frets.treble scale
            details.fannedFrets.squareFret -> fanned frets.square at fret
            design.back -> back
            back.firstFret -> back.at frets[1]
            back.secondFret -> back.at frets[2]
            back.exponentBass -> back.curve[1]
            back.exponentTreble -> back.curve[2]
            details.back.volute.extra -> back.volute.extra depth
            details.back.volute.length -> back.volute.length
            details.back.heelTurn.start -> back.heel turn.starts at
            details.back.heelTurn.radius -> back.heel turn.turn radius
            design.channel.rod -> rod
            design.channel -> channel
            channel.start -> channel.starts at
            channel.cover -> channel.cover strip
            channel.arch -> channel.deeper in the middle
            design.head -> head
            head.swing -> head.swung
            head.veneer -> head.face veneer.thickness
            head.veneerShortOfNut -> head.face veneer.short of nut
            details.headLayout.widthAtBreakLine -> head.width at break line
            details.headLayout.widthAtTip -> head.width at tip
            details.tuners.least -> head.tuners take[1]
            details.tuners.most -> head.tuners take[2]
            scarf.place -> head.scarf.joint
            scarf.kerf -> head.scarf.kerf
            scarf.cleaning -> head.scarf.cleaning
            design.heel -> heel
            heel.blockThickness -> heel.blocks
            details.heelBlockLength -> heel.block length
            details.dovetail -> heel.dovetail
            details.tenon -> heel.tenon
            heel.tenon.depths -> heel.tenon.holes at
            design.strings -> strings
            limits.relief -> relief
            limits.centredWithin -> limits.slot offset
            limits.woodLeftAtLeast -> limits.wood left
            limits.bridgeWithin -> limits.strings at bridge
            weather.before -> weather.shop air
            weather.after -> weather.worst air
            blank.nutFromHeadEnd -> blank.nut at
            details.spare.eachEnd -> blank.end spare
            details.spare.eachEdge -> blank.edge spare
            details.spare.eachFace -> blank.planing
            details.sawKerf -> blank.saw kerf
            shop.fence.build -> shop.fence.kind
            shop.leaves -> shop.feeler leaves
            shop.uncertainty.resolution -> shop.resolution
            shop.uncertainty.calliperZero -> shop.calliper zero
            shop.uncertainty.blankCalliperZero -> shop.blank calliper zero
            shop.uncertainty.cutScatter -> shop.cut scatter
            shop.uncertainty.cutScatterCuts -> shop.cut scatter from
            shop.uncertainty.moveScatter -> shop.move scatter
            shop.decision.spoiledNeckCost -> shop.decision.spoiled neck
            shop.decision.readingAgainCost -> shop.decision.reading again
            shop.decision.trialCutCost -> shop.decision.trial cut
            shop.decision.fenceMoveCost -> shop.decision.fence move
            readings -> measured
            measured.backDepths -> measured.back
            order.start -> order of work.start
            order.kept -> order of work.before
            """;

    /** What follows from the rest of a job. */
    private static final Map<String, Function<Job, Number>> FOLLOWING = following();

    private static final List<String> PLACES = List.of("details.stringsAtNut", "details.stringsAtSaddle");
    private static final List<String> OVERSTAND = List.of("details.overstand");
    private static final List<String> CUT =
            List.of("fenceWall", "farWall", "slot", "piece", "repeatability", "wallCorrelation");
    private static final List<String> STEPS =
            List.of("edge", "locating", "cutting", "gluing", "fitting", "stopping", "centring");

    /** The figure that each law of a spread has. */
    private static final Map<String, String> SIZES = Map.of(
            "normal", "standard uncertainty",
            "rectangular", "half-width",
            "triangular", "half-width",
            "arcsine", "half-width",
            "trapezoidal", "flat half-width",
            "samples", "from their mean",
            "bias", "shift");

    static final Moves JOB = keys().and("overstand and fretPlane -> one of them", Version1::overstand)
            .and("rod.height of a single-action rod -> rod.width", Version1::rod)
            .and("veneers of 0 -> none", Version1::veneers)
            .and("headLayout.posts -> head.posts", Version1::posts)
            .and("inCourse, pitches, places of strings -> strings", Version1::strings)
            .and("leaves of a common set -> its name", Version1::gauges)
            .and("blank.wood -> wood", Version1::blankWood)
            .and("words with hyphens -> words", Version1::words)
            .and("shop.decision.wantedChance -> a percentage", Version1::wantedChance)
            .and("steps -> trial cuts", Version1::steps)
            .and("order -> order of work", Version1::order)
            .and("workmanship -> without centring, by its keys of today", Version1::workmanship)
            .and("what follows -> nothing", old -> without(old, FOLLOWING.keySet()))
            .and("headInOnePiece -> nothing", old -> old.has("head.scarf") ? old : old.without("headInOnePiece"));

    static final Moves BUDGET = Moves.none()
            .and("contributors", "components")
            .and("components.spread -> by its keys of today", old -> old.each("components", c -> spread(c, "spread")));

    private Version1() {}

    static Job job(Map<?, ?> document) {
        Branch given = Branch.of(filled(document));
        Job job = Job.TABLE.read(Tree.of(given.plain()), JOB);
        refuseContradictions(given, job);
        return usualOrder(given, job);
    }

    static Neck neck(Map<?, ?> document) {
        return Neck.TABLE.read(Tree.of(filled(document)), JOB);
    }

    static Budget<?> budget(Map<?, ?> document) {
        return BudgetKeys.TABLE.read(Tree.of(document), BUDGET);
    }

    private static Moves keys() {
        Moves moves = Moves.none();
        for (String line : KEYS.lines().toList()) {
            String[] ends = line.split(" -> ", -1);
            moves = moves.and(ends[0], ends[1]);
        }
        return moves;
    }

    /** Without what is empty, which was written where nothing was given. */
    private static Map<?, ?> filled(Map<?, ?> group) {
        Map<Object, Object> full = new LinkedHashMap<>();
        group.forEach((key, value) -> {
            Object inner = value instanceof Map<?, ?> map
                    ? filled(map)
                    : value instanceof List<?> list
                            ? list.stream()
                                    .map(one -> one instanceof Map<?, ?> map ? filled(map) : one)
                                    .toList()
                            : value;
            if (!Map.of().equals(inner) && !List.of().equals(inner) && !"".equals(inner)) {
                full.put(key, inner);
            }
        });
        return full;
    }

    /** Without some keys, and without a group that they leave empty. */
    private static Branch without(Branch old, Iterable<String> paths) {
        Branch branch = old;
        for (String path : paths) {
            branch = branch.without(path);
            for (int end = path.lastIndexOf('.'); end > 0; end = path.lastIndexOf('.', end - 1)) {
                String group = path.substring(0, end);
                branch = branch.value(group).filter(Map.of()::equals).isPresent() ? branch.without(group) : branch;
            }
        }
        return branch;
    }

    /** A number, or a quantity in its library unit. */
    private static Optional<Double> number(Branch branch, String path) {
        if (!branch.has(path + ".value")) {
            return branch.value(path).filter(Double.class::isInstance).map(Double.class::cast);
        }
        Optional<String> unit = branch.text(path + ".unit").map(name -> name.equals("fractional in") ? "in" : name);
        return number(branch, path + ".value")
                .flatMap(value -> unit.map(name -> ShopUnit.named(name).toLibrary(value)));
    }

    private static boolean isSame(Optional<Double> one, Optional<Double> other, double within) {
        return one.isPresent() && other.isPresent() && Math.abs(one.get() - other.get()) <= within;
    }

    /** A length in mm, printed as another is. */
    private static Map<String, Object> length(double mm, Branch branch, String like) {
        Map<String, Object> length = new LinkedHashMap<>();
        length.put("value", StrictMath.rint(mm * NANOMETRES * 1000) / NANOMETRES / 1000);
        length.put("unit", "mm");
        branch.text(like + ".printedIn")
                .or(() -> branch.text(like + ".unit"))
                .ifPresent(unit -> length.put("printedIn", unit));
        return length;
    }

    /** The overstand where it was given: to the nanometre. It was else worked out from the fret plane. */
    private static Branch overstand(Branch old) {
        Optional<Double> given = number(old, "details.overstand")
                .filter(mm -> mm >= 0 && StrictMath.rint(mm * NANOMETRES) / NANOMETRES == mm);
        if (!old.has("neckSet")) {
            return given.filter(mm -> mm == 0).isPresent() ? without(old, OVERSTAND) : old;
        }
        return given.isPresent()
                ? old.without("neckSet.fretPlane").moved("details.overstand", "neckSet.overstand")
                : without(old, OVERSTAND);
    }

    private static Branch rod(Branch old) {
        boolean isRound = old.text("rod.kind").filter("single-action"::equals).isPresent()
                && isSame(number(old, "rod.height"), number(old, "rod.width"), 0);
        return spaced(isRound ? old.without("rod.height") : old, "rod.kind", List.of("steel-bar", "carbon-bar"));
    }

    private static Branch veneers(Branch old) {
        boolean isBare =
                number(old, "head.face veneer.thickness").filter(mm -> mm == 0).isPresent();
        Branch faced = isBare ? old.without("head.face veneer") : old;
        return number(faced, "head.backVeneer").filter(mm -> mm == 0).isPresent()
                ? faced.without("head.backVeneer")
                : faced;
    }

    /** A list of posts is a list of each of their distances, or one distance for all. */
    private static Branch posts(Branch old) {
        String list = "details.headLayout.posts";
        Branch branch = old;
        for (Map.Entry<String, String> key :
                Map.of("aside", "aside", "above", "string over face").entrySet()) {
            int count = branch.count(list);
            String to = "head.posts." + key.getValue();
            List<Object> all = IntStream.rangeClosed(1, count)
                    .mapToObj(i -> old.value(list + "[" + i + "]." + key.getKey()))
                    .flatMap(Optional::stream)
                    .toList();
            boolean isOne = all.size() == count && all.stream().distinct().count() == 1;
            for (int i = 1; i <= count; i++) {
                String from = list + "[" + i + "]." + key.getKey();
                branch = !isOne
                        ? branch.moved(from, to + "[" + i + "]")
                        : i == 1 ? branch.moved(from, to) : branch.without(from);
            }
        }
        for (int i = 1; branch.has(list + "[1].along"); i++) {
            branch = branch.moved(list + "[1].along", "head.posts.along[" + i + "]");
        }
        return branch;
    }

    private static Branch strings(Branch old) {
        Optional<Double> inCourse = number(old, "strings.inCourse").filter(count -> count == 1 || count == 2);
        Branch branch = inCourse.filter(count -> count == 2).isPresent() ? old.with("strings.doubled", true) : old;
        branch = inCourse.isPresent() ? branch.without("strings.inCourse") : branch;
        List<String> pitches = new ArrayList<>();
        for (int i = 1; i <= branch.count("strings.pitches"); i++) {
            number(branch, "strings.pitches[" + i + "]")
                    .ifPresent(hertz ->
                            pitches.add(Amount.ofLibrary(hertz, ShopUnit.HERTZ).lossless()));
        }
        boolean isNumbers = !pitches.isEmpty() && pitches.size() == branch.count("strings.pitches");
        branch = isNumbers ? branch.without("strings.pitches").with("strings.pitches", pitches) : branch;
        return across(branch, inCourse.orElse(1.0).intValue());
    }

    private static double[] lengths(Branch branch, String list) {
        return IntStream.rangeClosed(1, branch.count(list))
                .mapToObj(i -> number(branch, list + "[" + i + "]"))
                .flatMap(Optional::stream)
                .mapToDouble(mm -> mm)
                .toArray();
    }

    /** The places of the strings are how they are spread. */
    private static Branch across(Branch old, int inCourse) {
        double[] nut = lengths(old, PLACES.get(0) + ".centres");
        double[] wide = lengths(old, PLACES.get(0) + ".diameters");
        double[] saddle = lengths(old, PLACES.get(1) + ".centres");
        Optional<Double> board = number(old, "fingerboard.width at nut");
        int count = nut.length;
        if (count < 2 || wide.length != count || saddle.length != count || board.isEmpty()) {
            return old;
        }
        String like = PLACES.get(0) + ".centres[1]";
        double edges = (wide[0] + wide[count - 1]) / 2;
        Branch branch = old.with(
                        "strings.across.edge margin", length(board.get() / 2 + nut[0] - wide[0] / 2, old, like))
                .with("strings.across.span at saddle", length(saddle[count - 1] - saddle[0] + edges, old, like));
        branch = inCourse == 2 ? branch.with("strings.across.in pair", length(nut[1] - nut[0], old, like)) : branch;
        double[] spaces = IntStream.range(1, count / inCourse)
                .mapToDouble(i -> nut[i * inCourse] - nut[i * inCourse - 1])
                .toArray();
        double[] gaps = IntStream.range(0, spaces.length)
                .mapToDouble(i -> spaces[i] - (wide[(i + 1) * inCourse] + wide[(i + 1) * inCourse - 1]) / 2)
                .toArray();
        if (isEven(spaces) && !isEven(gaps)) {
            branch = branch.with("strings.across.spacing", "equal centres");
        } else if (!isEven(gaps)) {
            branch = branch.with("strings.across.spacing", "graduated")
                    .with("strings.across.growth", length(spaces[0] - spaces[1], old, like));
        }
        return without(branch, PLACES);
    }

    private static boolean isEven(double[] all) {
        return IntStream.range(1, all.length).allMatch(i -> Math.abs(all[i] - all[0]) <= SAME);
    }

    /** A common set was written gauge by gauge. */
    private static Branch gauges(Branch old) {
        String list = "shop.feeler leaves.leaves";
        double[] given = lengths(old, list);
        for (String set : List.of("metric 20", "metric 13", "inch 26")) {
            FeelerSet common = FeelerSet.TABLE.read(Tree.of(Map.of("set", set)));
            if (Arrays.equals(given, common.thicknessesMm())) {
                return old.without(list).with("shop.feeler leaves.set", set);
            }
        }
        return old;
    }

    private static Branch blankWood(Branch old) {
        Optional<Object> wood = old.value("blank.wood");
        if (wood.isPresent() && old.has("wood") && !wood.equals(old.value("wood"))) {
            throw Refusal.of("blank.wood", "follows", "be the wood of the neck", "another");
        }
        return old.has("wood") ? old.without("blank.wood") : old.moved("blank.wood", "wood");
    }

    private static Branch words(Branch old) {
        Branch branch = spaced(spaced(old, "head.scarf.joint", List.of()), "shop.fence.kind", List.of());
        for (String wood : List.of("wood", "fingerboard.wood")) {
            branch = branch.each(
                    wood + ".figures", figure -> spaced(spaced(figure, "kind", List.of()), "standing", List.of()));
        }
        return branch;
    }

    /** Hyphens of a word, or of one of some, become spaces. */
    private static Branch spaced(Branch old, String path, List<String> some) {
        return old.text(path)
                .filter(word -> some.isEmpty() || some.contains(word))
                .map(word -> old.worded(path, Map.of(word, word.replace('-', ' '))))
                .orElse(old);
    }

    private static Branch wantedChance(Branch old) {
        String path = "shop.decision.wantedChance";
        Optional<Object> chance = old.value(path).filter(Double.class::isInstance);
        return chance.isEmpty()
                ? old
                : old.without(path).with(path, Map.of("value", chance.get(), "unit", "1", "printedIn", "%"));
    }

    /** A move of the fence and the cut after it are one round. */
    private static Branch steps(Branch old) {
        Branch branch = old;
        int round = 0;
        boolean isMoved = false;
        for (int i = 1; branch.has("steps[1]"); i++) {
            branch = branch.moved("steps[1]", "step");
            round = isMoved && branch.has("step.trialCut") ? round : round + 1;
            isMoved = branch.has("step.fenceTowardCutter");
            String to = "trial cuts[" + round + "].";
            branch = branch.has("step.readAgain")
                    ? branch.with(to + "again", true).moved("step.readAgain", "step.trialCut")
                    : branch;
            for (String key : CUT) {
                branch = branch.moved("step.trialCut." + key, to + key);
            }
            branch = fenceMove(branch, to).moved("step.trialCut.ripScatter", to + "ripped with blank");
            if (branch.has("step")) {
                String step = "steps[" + i + "]";
                throw Refusal.because(
                        step,
                        "unknown",
                        step + " must be a trialCut, a readAgain or a fenceTowardCutter, with known keys");
            }
        }
        Optional<Double> usual = number(branch, "shop.repeatability");
        return branch.each(
                "trial cuts",
                cut -> isSame(number(cut, "repeatability"), usual, 0) ? cut.without("repeatability") : cut);
    }

    private static Branch fenceMove(Branch old, String to) {
        Branch branch = old.moved("step.settingUncertainty", to + "setting uncertainty");
        Optional<Double> away = number(branch, "step.fenceTowardCutter")
                .filter(toward -> toward < 0)
                .map(toward -> -toward);
        String key = to + "moved " + (away.isPresent() ? "away from cutter" : "toward cutter");
        Branch moved = branch.moved("step.fenceTowardCutter", key);
        return away.isPresent()
                ? moved.without(key).with(key, length(away.get(), branch, "step.fenceTowardCutter"))
                : moved;
    }

    private static Branch order(Branch old) {
        Branch branch = old;
        int place = 0;
        for (String list : List.of("leftOut", "done", "operations")) {
            String names = "order of work." + (list.equals("leftOut") ? "without" : "done");
            for (int i = 1; branch.has("order." + list + "[1]"); i++) {
                place++;
                Optional<String> name = branch.text("order." + list + "[1].name");
                if (name.isPresent() && !list.equals("operations")) {
                    branch = branch.with(names + "[" + i + "]", name.get());
                }
                branch = branch.moved("order." + list + "[1]", "order of work.operations[" + place + "]");
            }
        }
        return branch.each(
                "order of work.operations", one -> one.each("despite", two -> two.each("remedies", Version1::remedy)));
    }

    private static Branch remedy(Branch old) {
        Optional<String> name = old.text("adds.name");
        if (name.isEmpty()) {
            return old;
        }
        Branch branch = old.moved("adds.way", "way")
                .moved("adds.spread", "spread")
                .without("adds")
                .with("adds", name.get());
        return spread(branch.worded("way", Map.of("depth", "in depth")), "spread");
    }

    private static Branch workmanship(Branch old) {
        Branch branch = old.without("workmanship.centring");
        for (String step : STEPS) {
            branch = spread(branch, "workmanship." + step);
        }
        return branch;
    }

    private static Branch spread(Branch old, String path) {
        Branch branch = old.moved(path + ".standardDeviation", path + ".standard uncertainty")
                .moved(path + ".halfBase", path + ".half-width")
                .moved(path + ".halfTop", path + ".flat half-width");
        String law = branch.text(path + ".law").orElse("");
        if (!SIZES.containsKey(law) || !branch.has(path + "." + SIZES.get(law))) {
            return branch;
        }
        return law.equals("triangular") || law.equals("arcsine")
                ? branch.moved(path + ".law", path + ".distribution")
                : branch.without(path + ".law");
    }

    private static Map<String, Function<Job, Number>> following() {
        Map<String, Function<Job, Number>> all = new LinkedHashMap<>();
        all.put("scarf.pitch", job -> joint(job).scarf().angle().libraryValue());
        all.put("scarf.shaft", job -> joint(job).scarf().shaftMm());
        all.put("scarf.head", job -> joint(job).scarf().headMm());
        for (String none : List.of("nutLedge", "offHeadFace", "offShaftFace", "offHeadBack")) {
            all.put("scarf." + none, job -> 0);
        }
        all.put("scarf.veneer", job -> joint(job).veneerMm());
        all.put("scarf.backVeneer", job -> joint(job).backVeneerMm());
        all.put("neckSet.scale", job -> job.neck().scale().lengthMm());
        all.put("neckSet.bodyAtFret", job -> job.neck().bodyAtFret());
        all.put("neckSet.divisions", job -> job.neck().scale().divisions());
        all.put(
                "details.nutSlotHeight",
                job -> HeadLayout.slotHeight(job.neck()).libraryValue());
        all.put(
                "details.fallAway.start",
                job -> FallAway.of(job.neck()).orElseThrow().start().libraryValue());
        all.put(
                "details.fallAway.end",
                job -> FallAway.of(job.neck()).orElseThrow().end().libraryValue());
        all.put("details.fannedFrets.divisions", job -> job.neck().scale().divisions());
        all.put(
                "details.fannedFrets.spreadAtNut",
                job -> StringSpacing.atNut(job.neck()).orElseThrow().spread().libraryValue());
        all.put(
                "details.fannedFrets.spreadAtSaddle",
                job -> StringSpacing.atSaddle(job.neck()).orElseThrow().spread().libraryValue());
        return all;
    }

    private static ScarfJoint joint(Job job) {
        return ScarfJoint.of(job.neck().head().orElseThrow(), job.blank(), FannedFrets.nutSlant(job.neck()));
    }

    private static void refuseContradictions(Branch given, Job job) {
        List<Fault> faults = new ArrayList<>();
        FOLLOWING.forEach((path, of) -> {
            if (given.has(path)) {
                hold(given, path, of.apply(job).doubleValue(), faults);
            }
        });
        Optional<Double> plane = number(given, "neckSet.fretPlane");
        if (plane.isPresent() && given.has("details.overstand")) {
            Neck set = job.neck()
                    .neckSet(job.neck().neckSet().orElseThrow().fretPlane(ShopUnit.MILLIMETRE.of(plane.get())));
            hold(given, "details.overstand", BackSet.overstand(set).libraryValue(), faults);
        }
        List<Optional<StringPlaces>> places =
                List.of(StringSpacing.atNut(job.neck()), StringSpacing.atSaddle(job.neck()));
        for (int end = 0; end < places.size(); end++) {
            String path = PLACES.get(end);
            places.get(end).filter(all -> given.has(path)).ifPresent(all -> {
                hold(given, path + ".centres", all.centres(), faults);
                hold(given, path + ".diameters", all.diameters(), faults);
            });
        }
        if (!faults.isEmpty()) {
            throw Refusal.of(faults);
        }
    }

    private static void hold(Branch given, String path, List<? extends Amount<?>> all, List<Fault> faults) {
        for (int i = 0; i < all.size(); i++) {
            hold(given, path + "[" + (i + 1) + "]", all.get(i).libraryValue(), faults);
        }
    }

    private static void hold(Branch given, String path, double follows, List<Fault> faults) {
        boolean isLength = given.has(path + ".unit") && !path.equals("scarf.pitch");
        Optional<Double> number = number(given, path);
        if (!isSame(number, Optional.of(follows), isLength ? SAME_MM : SAME)) {
            String unit = isLength ? " mm" : path.equals("scarf.pitch") ? " rad" : "";
            String was = number.map(value -> Numbers.plain(value) + unit).orElse("no number");
            faults.add(new Fault(
                    path, "follows", "be " + Numbers.plain(follows) + unit + ", which follows from the rest", was));
        }
    }

    /** The order was written in full. Where only names differ from the usual order, these are the changes. */
    private static Job usualOrder(Branch given, Job job) {
        Branch moved = Branch.of((Map<?, ?>)
                Objects.requireNonNull(JOB.moved(Tree.of(given.plain())).plain()));
        Optional<Object> order = moved.value("order of work");
        if (order.isEmpty()) {
            return job;
        }
        OrderOfWork usual = OrderOfWork.forNeck(withRod(job.neck()));
        OrderOfWork work = OrderChanges.TABLE.read(Tree.of(order.get())).changed(OrderOfWork.of());
        List<String> leftOut = moved.value("order of work.without").stream()
                .flatMap(list -> ((List<?>) list).stream())
                .map(Object::toString)
                .filter(name ->
                        usual.leftOut().stream().noneMatch(one -> one.name().equals(name)))
                .toList();
        Branch few = moved.without("order of work.operations").without("order of work.without");
        few = leftOut.isEmpty() ? few : few.with("order of work.without", leftOut);
        for (Branch changes : List.of(few.without("order of work.start"), few)) {
            Optional<OrderChanges> read = changes.value("order of work")
                    .filter(group -> !Map.of().equals(group))
                    .map(group -> OrderChanges.TABLE.read(Tree.of(group)));
            if (frame(usual, read.orElse(OrderChanges.none()))
                    .filter(frame(work)::equals)
                    .isPresent()) {
                Branch whole = read.isPresent() ? changes : changes.without("order of work");
                return Job.TABLE.read(Tree.of(whole.plain()));
            }
        }
        return job;
    }

    /** Version 1 had the same steps for a bar as for a rod. */
    private static Neck withRod(Neck neck) {
        Optional<Bar> bar = neck.channel().flatMap(Channel::bar);
        return bar.isPresent()
                ? neck.trussRod(TrussRod.singleAction(
                        neck.style().amount(bar.get().lengthMm()),
                        neck.style().amount(bar.get().widthMm())))
                : neck;
    }

    private static Optional<List<Object>> frame(OrderOfWork usual, OrderChanges changes) {
        try {
            return Optional.of(frame(changes.changed(usual)));
        } catch (Refusal namesOfItsOwn) {
            return Optional.empty();
        }
    }

    /** An order without its words of why and how, which are the library's. */
    private static List<Object> frame(OrderOfWork work) {
        List<Object> frame = new ArrayList<>(List.of(work.start(), work.keptOrders()));
        for (List<Operation> list : List.of(work.leftOut(), work.finished(), work.operations())) {
            frame.add(list.stream().map(Version1::frame).toList());
        }
        return frame;
    }

    private static List<Object> frame(Operation one) {
        List<Object> frame =
                new ArrayList<>(List.of(one.name(), one.needs(), one.blockers(), one.takesAway(), one.puts()));
        for (Condition condition :
                Stream.of(one.needs(), one.blockers()).flatMap(List::stream).toList()) {
            frame.add(one.remedies(condition).stream()
                    .map(remedy -> List.of(
                            remedy.name(),
                            remedy.addsTo(one.name()).map(error -> List.of(error.way(), error.spread()))))
                    .toList());
        }
        return frame;
    }
}
