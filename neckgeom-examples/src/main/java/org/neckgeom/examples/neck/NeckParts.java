package org.neckgeom.examples.neck;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.design.Head;
import org.neckgeom.design.Heel;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.NeckSet;
import org.neckgeom.design.Rod;
import org.neckgeom.design.Scale;
import org.neckgeom.design.ScarfCut;
import org.neckgeom.design.StringSet;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Section;
import org.neckgeom.heel.BackSet;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.strength.Weather;

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
    private final Found<Scale> scale;
    private final Found<Weather> weather;
    private final Found<Shop> shop;
    private final Found<List<CentringStep>> steps;

    /** Makes every part, so that the problems of all are noted, whichever of them is looked at first. */
    private NeckParts(Section top) {
        this.top = top;
        this.board = top.at(NeckKeys.FINGERBOARD).then(FingerboardPart::of);
        this.back = top.at(NeckKeys.BACK).then(BackPart::of);
        this.rod = top.at(NeckKeys.ROD).then(RodPart::of);
        this.channel = channel();
        this.head = head();
        this.heel = top.at(NeckKeys.HEEL);
        this.strings = top.at(NeckKeys.STRINGS).then(StringsPart::of);
        this.blank = top.at(NeckKeys.BLANK).then(section -> BlankPart.of(section, top.at(NeckKeys.WOOD)));
        this.scale = top.make(() -> Scale.of(top.at(NeckKeys.SCALE).value())
                .divisions(top.at(NeckKeys.DIVISIONS).orElse(12)));
        this.weather = top.at(NeckKeys.WEATHER).then(WeatherPart::of);
        this.shop = top.at(NeckKeys.SHOP).then(ShopPart::of);
        this.steps = top.at(NeckKeys.READINGS).then(sections -> ReadingsPart.of(sections, shop));
    }

    static Found<NeckFile> of(Section top) {
        NeckParts parts = new NeckParts(top);
        Found<NeckDesign> design = parts.design();
        boolean fits = design.isThere()
                && parts.blank.isThere()
                && BlankCheck.of(top.at(NeckKeys.BLANK).value(), parts.blank.value(), design.value());
        boolean together = fits
                && (!parts.shop.isThere() || FitCheck.of(top, design.value(), parts.blank.value(), parts.shop.value()));
        if (!together) {
            return Found.unusable();
        }
        return DetailsPart.of(top, design.value())
                .then(details -> parts.withNeckSet(design.value(), details))
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
            Found<Channel> told = top.at(NeckKeys.CHANNEL).then(section -> ChannelPart.of(section, there));
            return told.isAbsent() ? Found.of(Channel.forRod(there)) : told;
        });
    }

    private Found<Head> head() {
        Found<Head> inOnePiece = top.at(NeckKeys.HEAD);
        Found<ScarfCut> cut = top.at(NeckKeys.SCARF);
        if (cut.isAbsent()) {
            return inOnePiece;
        }
        if (inOnePiece.isAbsent()) {
            top.problem(NeckKeys.SCARF, "is given, but no head; give the head it turns back, or leave it out");
            return Found.unusable();
        }
        return inOnePiece.then(head -> cut.then(scarf -> {
            if (head.scarf().isPresent()) {
                top.problem(NeckKeys.SCARF, "is given, and head.scarf too; keep one of them");
                return Found.unusable();
            }
            return top.make(NeckKeys.SCARF, () -> head.scarfed(scarf));
        }));
    }

    /** What neck set, board and frets do not allow together is noted at the neck set. */
    private Found<NeckDetails> withNeckSet(NeckDesign design, NeckDetails details) {
        return design.neckSet().isEmpty()
                ? Found.of(details)
                : top.make(NeckKeys.NECK_SET, () -> {
                    OptionalDouble frets = details.fretHeightMm();
                    BackSet.of(
                            design,
                            frets.isPresent()
                                    ? Optional.of(design.style().amount(frets.getAsDouble()))
                                    : Optional.empty());
                    return details;
                });
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
            Found<NeckSet> set = top.at(NeckKeys.NECK_SET);
            design = set.isAbsent() ? design : design.neckSet(set.value());
            return strings.isAbsent() ? design : design.strings(strings.value());
        });
    }
}
