package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.Closure;
import org.neckgeom.channel.FeelerStack;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.SlotStep;
import org.neckgeom.channel.SlotVerdict;
import org.neckgeom.fault.Refusal;
import org.neckgeom.measure.Estimate;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.BenchAsk.Given;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** Answers of one group put into a job: as trial cut, fence move or reading on the neck. What cannot be is refused. */
final class BenchRecord {

    private BenchRecord() {}

    /**
     * An entry taken out of the record.
     *
     * @param before the job without it
     * @param words that name it
     */
    record Undone(Job before, String words) {}

    /**
     * The record without its last entry by the order of work: a job out of a file does not state what was entered last. While the
     * channel is being set it is the last trial cut or move; nothing where there is no entry.
     */
    static Optional<Undone> withoutLast(Job job) {
        List<CentringStep> steps = job.steps();
        if (!steps.isEmpty() && !job.stages().isDone(Operation.CUT_ROD_CHANNEL)) {
            CentringStep last = steps.get(steps.size() - 1);
            return Optional.of(new Undone(job.steps(steps.subList(0, steps.size() - 1)), last.text(job.style())));
        }
        List<Operation> finished = job.plan().work().finished();
        for (int i = finished.size() - 1; i >= 0; i--) {
            String name = finished.get(i).name();
            if (job.done().contains(name)) {
                return Optional.of(new Undone(job.undone(name), "done: " + name));
            }
            Optional<MeasuredNeck> fewer = job.measuredAsGiven().withoutLastAt(BenchStep.usualName(finished.get(i)));
            if (fewer.isPresent()) {
                Job before = job.fewer(fewer.get());
                return Optional.of(new Undone(before, gone(job, before) + ", read at " + name));
            }
        }
        return Optional.empty();
    }

    /** The reading that one of two jobs has and the other has not. */
    private static String gone(Job with, Job without) {
        return Arrays.stream(NeckFeature.values())
                .filter(feature ->
                        with.measured().has(feature) && !without.measured().has(feature))
                .map(feature -> feature + " "
                        + with.measured().of(feature).orElseThrow().value().in(with.style()))
                .findFirst()
                .orElse(
                        with.measured().scarfAngle().isPresent()
                                        && without.measured().scarfAngle().isEmpty()
                                ? "scarf angle"
                                : "depth of the back");
    }

    /**
     * {@return the job with the answers of a group}
     *
     * @param job before them
     * @param group of the questions
     * @param given each answer by the code of its question; not empty
     */
    static Job with(Job job, String group, Map<String, Given> given) {
        return switch (group) {
            case BenchStep.CUT -> cut(job, given);
            case BenchStep.PIECE -> piece(job, at(given, "piece").length());
            case BenchStep.MOVE -> job.fenceMoved(moved(job, at(given, "moved")));
            case BenchStep.WAY -> otherWay(job, at(given, "way").word());
            case BenchStep.WALLS -> walls(job, given);
            default -> reading(job, given.values().iterator().next());
        };
    }

    private static Given at(Map<String, Given> given, String code) {
        return Objects.requireNonNull(given.get(code), code);
    }

    private static Job cut(Job job, Map<String, Given> given) {
        TrialCut cut = TrialCut.walls(
                at(given, "near-wall").length(), at(given, "far-wall").length());
        cut = given.containsKey("slot") ? cut.slot(at(given, "slot").length()) : cut;
        cut = given.containsKey("piece") ? cut.piece(at(given, "piece").length()) : cut;
        boolean isAgain = verdict(job).step() == SlotStep.READ_AGAIN;
        return closing(isAgain ? job.readAgain(cut) : job.trialCut(cut));
    }

    /** Readings that do not close show nothing of the slot: they are not kept, but asked for again. */
    private static Job closing(Job job) {
        List<Closure> closures = job.plan().rounds().closures();
        Closure last = closures.get(closures.size() - 1);
        if (last.outcome() == Closure.Outcome.REFUSED) {
            throw Refusal.because("trial cut", "does-not-close", verdict(job).text(job.style()));
        }
        return job;
    }

    private static Job piece(Job job, Amount<Length> width) {
        List<CentringStep> steps = new ArrayList<>(job.steps());
        CentringStep last = steps.remove(steps.size() - 1);
        TrialCut cut = last.cut().orElseThrow().piece(width);
        return closing(
                job.steps(steps).then(last.isReadAgain() ? CentringStep.readAgain(cut) : CentringStep.read(cut)));
    }

    /** As advised, by the gauges at hand; or as far as it was moved, the way that was advised or given. */
    private static FenceMove moved(Job job, Given given) {
        SlotVerdict verdict = verdict(job);
        if (given.amount().isEmpty()) {
            return asAdvised(verdict, job.style());
        }
        boolean isToward = given.word().isEmpty()
                ? verdict.move().isTowardTheCutter()
                : given.word().equals(BenchStep.TOWARD);
        return isToward ? FenceMove.toward(given.length()) : FenceMove.away(given.length());
    }

    private static FenceMove asAdvised(SlotVerdict verdict, LengthStyle style) {
        Optional<FeelerStack> leaves = verdict.leaves();
        double toward = leaves.map(FenceMove::by).orElse(verdict.move()).towardMm();
        // What is set by hand has no more digits than this.
        ShopUnit<Length> unit = style == LengthStyle.MILLIMETRES ? ShopUnit.MILLIMETRE : ShopUnit.THOU;
        double steps = style == LengthStyle.MILLIMETRES ? 1000 : 10;
        Amount<Length> size = Amount.of(Math.rint(unit.fromLibrary(Math.abs(toward)) * steps) / steps, unit);
        FenceMove move = toward < 0 ? FenceMove.away(size) : FenceMove.toward(size);
        return leaves.map(stack -> move.settingUncertainty(
                        ShopUnit.MILLIMETRE.of(Math.rint(FenceMove.by(stack).settingUncertaintyMm() * 1e4) / 1e4)))
                .orElse(move);
    }

    /** The last move as it went. */
    private static Job otherWay(Job job, String way) {
        List<CentringStep> steps = new ArrayList<>(job.steps());
        for (int i = steps.size() - 1; i >= 0; i--) {
            Optional<FenceMove> move = steps.get(i).move();
            if (move.isPresent()) {
                Amount<Length> size = move.get().amount();
                FenceMove went = way.equals(BenchStep.TOWARD) ? FenceMove.toward(size) : FenceMove.away(size);
                steps.set(i, CentringStep.moved(went));
                return job.steps(steps);
            }
        }
        throw Refusal.because("fence move", "missing", "the fence was not moved yet");
    }

    private static Job walls(Job job, Map<String, Given> given) {
        double near = at(given, "near-wall").libraryValue();
        double far = at(given, "far-wall").libraryValue();
        double u = job.shop().repeatability().libraryValue() / Math.sqrt(2);
        return job.measured(job.measuredAsGiven().read(NeckFeature.SLOT_OFFSET, estimate(job, (near - far) / 2, u)));
    }

    /** With the digits that callipers show, and one more. */
    private static Estimate<Length> estimate(Job job, double mm, double u) {
        ShopUnit<Length> unit = job.style().inTables().unit();
        double steps = unit == ShopUnit.MILLIMETRE ? 1e4 : 1e5;
        return Estimate.of(
                Amount.of(Math.rint(unit.fromLibrary(mm) * steps) / steps + 0.0, unit),
                Amount.of(Math.rint(unit.fromLibrary(u) * steps) / steps, unit));
    }

    private static Job reading(Job job, Given given) {
        MeasuredNeck measured = job.measuredAsGiven();
        String code = given.ask().code();
        if (code.equals(BenchStep.SCARF_ANGLE)) {
            return job.measured(measured.indicatedAngle(given.angle()));
        }
        if (code.startsWith(BenchStep.BACK_DEPTH)) {
            double fret = Double.parseDouble(code.substring(BenchStep.BACK_DEPTH.length()));
            double station = job.neck().scale().fretMm(fret);
            return job.measured(measured.indicatedDepth(job.style().inTables().amount(station), given.length()));
        }
        return Arrays.stream(NeckFeature.values())
                .filter(feature -> BenchStep.code(feature).equals(code))
                .findFirst()
                .map(feature -> job.measured(measured.indicated(feature, given.length())))
                .orElseThrow();
    }

    private static SlotVerdict verdict(Job job) {
        return job.plan().slot();
    }
}
