package org.neckgeom.examples.neck;

import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.design.Head;
import org.neckgeom.design.Heel;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Rod;
import org.neckgeom.design.Scale;
import org.neckgeom.design.StringSet;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Section;
import org.neckgeom.fault.Refusal;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.NeckSet;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.strength.Weather;
import org.neckgeom.units.Amount;

/** Puts the parts of a neck file together. */
final class NeckParts {

    private final Section top;
    private final Found<Fingerboard> board;
    private final Found<BackProfile> back;
    private final Found<Rod> rod;
    private final Found<Channel> channel;
    private final Found<Head> head;
    private final Found<Heel> heel;
    private final Found<StringSet> strings;
    private final Found<Blank> blank;
    private final Found<ScarfJoint> scarf;
    private final Found<Scale> scale;
    private final Found<NeckSet> neckSet;
    private final Found<Weather> weather;
    private final Found<Shop> shop;
    private final Found<List<CentringStep>> steps;

    /** Makes every part, so that the problems of all are noted, whichever of them is looked at first. */
    private NeckParts(Section top) {
        this.top = top;
        this.board = top.at(NeckKeys.FINGERBOARD);
        this.back = top.at(NeckKeys.BACK);
        this.rod = top.at(NeckKeys.ROD);
        this.channel = channel();
        this.head = top.at(NeckKeys.HEAD).then(HeadPart::of);
        this.heel = top.at(NeckKeys.HEEL).then(HeelPart::of);
        this.strings = top.at(NeckKeys.STRINGS);
        this.blank = top.at(NeckKeys.BLANK).then(section -> BlankPart.of(section, top.at(NeckKeys.WOOD)));
        this.scarf = scarf();
        this.scale = top.make(this::scale);
        this.neckSet = top.at(NeckKeys.NECK_SET)
                .then(section -> NeckSetPart.of(
                        section, scale, top.at(NeckKeys.BODY_AT_FRET), board, board.then(NeckParts::fretHeight)));
        this.weather = top.at(NeckKeys.WEATHER).then(WeatherPart::of);
        this.shop = top.at(NeckKeys.SHOP).then(ShopPart::of);
        this.steps = top.at(NeckKeys.READINGS).then(sections -> ReadingsPart.of(sections, shop));
    }

    static Found<NeckFile> of(Section top) {
        NeckParts parts = new NeckParts(top);
        Found<NeckDesign> design = parts.design();
        boolean fits = design.isThere()
                && parts.blank.isThere()
                && BlankCheck.of(top.at(NeckKeys.BLANK).value(), parts.blank.value(), design.value(), parts.scarf);
        boolean together = fits
                && (!parts.shop.isThere() || FitCheck.of(top, design.value(), parts.blank.value(), parts.shop.value()));
        if (!together) {
            return Found.unusable();
        }
        return DetailsPart.of(top, design.value(), parts.neckSet)
                .then(details -> FitCheck.posts(top, design.value(), details)
                        ? top.make(() -> parts.file(design.value(), details))
                        : Found.unusable())
                .then(parts::asMade)
                .then(file -> PlannedCheck.of(top, file));
    }

    /** What was read on the neck comes last: it is held to all that was told. */
    private Found<NeckFile> asMade(NeckFile file) {
        Found<Section> there = top.at(NeckKeys.AS_MADE);
        return there.isAbsent()
                ? Found.of(file)
                : there.then(section -> AsMadePart.of(section, file.shop())
                        .then(readings ->
                                section.make(() -> new NeckFile(file.plan().readings(readings), file.limits()))));
    }

    private NeckFile file(NeckDesign design, NeckDetails details) {
        NeckPlan bare = NeckPlan.of(design, blank.value(), shop.value());
        NeckLimits limitsToKeep = top.at(NeckKeys.LIMITS)
                .then(section -> LimitsPart.of(section, NeckLimits.of(bare)))
                .orElse(NeckLimits.of(bare));
        NeckPlan plan = limitsToKeep.heldBy(bare).details(details);
        plan = scarf.isAbsent() ? plan.headInOnePiece() : plan.scarf(scarf.value());
        plan = neckSet.isAbsent() ? plan : plan.neckSet(neckSet.value());
        plan = weather.isAbsent() ? plan : plan.weather(weather.value());
        plan = plan.relief(top.at(NeckKeys.RELIEF).orElse(plan.relief()));
        Found<Workmanship> work = top.at(NeckKeys.WORKMANSHIP).then(WorkmanshipPart::of);
        plan = work.isAbsent() ? plan : plan.workmanship(work.value());
        NeckPlan soFar = plan;
        Found<OrderOfWork> order = top.at(NeckKeys.ORDER).then(section -> OrderPart.of(section, soFar));
        plan = order.isAbsent() ? plan : plan.order(order.value());
        for (CentringStep step : steps.orElse(List.of())) {
            plan = plan.then(step);
        }
        plan = plan.in(top.at(NeckKeys.PRINT_IN).orElse(plan.style()));
        return new NeckFile(plan, limitsToKeep);
    }

    private Found<Channel> channel() {
        return rod.then(there -> {
            Found<Channel> told = top.at(NeckKeys.CHANNEL).then(cut -> top.make(() -> Channel.forRod(there, cut)));
            return told.isAbsent() ? Found.of(Channel.forRod(there)) : told;
        });
    }

    static Found<Amount<Length>> fretHeight(Fingerboard board) {
        return board.fretHeight().map(Found::of).orElseGet(Found::absent);
    }

    /** As given, or as it follows from the fan; one that is given beside a fan must be that. */
    private Scale scale() {
        NeckDesign neck = NeckDesign.named("scale");
        Found<Amount<Length>> given = top.at(NeckKeys.SCALE);
        if (given.isAbsent() && top.at(NeckKeys.FANNED_FRETS).isAbsent()) {
            throw Refusal.because(
                    "scale",
                    "missing",
                    "scale is missing; give " + NeckKeys.SCALE.kind().allowed());
        }
        neck = given.isAbsent() ? neck : neck.scale(given.value());
        neck = neck.fretsToTheOctave(top.at(NeckKeys.DIVISIONS).orElse(12));
        return (top.at(NeckKeys.FANNED_FRETS).isAbsent() ? neck : fanned(neck)).scale();
    }

    private NeckDesign fanned(NeckDesign square) {
        NeckDesign neck =
                square.fannedFrets(top.at(NeckKeys.FANNED_FRETS).value()).fingerboard(board.value());
        return strings.isAbsent() ? neck : neck.strings(strings.value());
    }

    private Found<ScarfJoint> scarf() {
        if (head.isAbsent() && !top.at(NeckKeys.SCARF).isAbsent()) {
            top.problem(NeckKeys.SCARF, "is given, but no head; give the head it turns back, or leave it out");
            return Found.unusable();
        }
        return top.at(NeckKeys.SCARF).then(section -> head.then(h -> blank.then(b -> ScarfPart.of(section, h, b))));
    }

    private Found<NeckDesign> design() {
        return top.make(() -> {
            NeckDesign design = NeckDesign.named(top.at(NeckKeys.NAME).value())
                    .scale(scale.value())
                    .frets(top.at(NeckKeys.FRETS).value())
                    .bodyAtFret(top.at(NeckKeys.BODY_AT_FRET).value())
                    .wood(top.at(NeckKeys.WOOD).value())
                    .fingerboard(board.value())
                    .back(back.value())
                    .channel(channel.value());
            design = head.isAbsent() ? design : design.head(head.value());
            design = heel.isAbsent() ? design : design.heel(heel.value());
            return top.at(NeckKeys.FANNED_FRETS).isAbsent()
                    ? strings.isAbsent() ? design : design.strings(strings.value())
                    : fanned(design);
        });
    }
}
