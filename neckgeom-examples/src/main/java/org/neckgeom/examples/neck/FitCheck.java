package org.neckgeom.examples.neck;

import java.util.List;
import org.neckgeom.design.Channel;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.examples.file.Section;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.LengthStyle;

/** Whether channel, cutter and blank can belong to one neck; each problem stands at the key that a maker would change. */
final class FitCheck {

    private final Section top;
    private final Channel channel;
    private final Blank blank;
    private final LengthStyle style;
    private boolean fits = true;

    private FitCheck(Section top, NeckDesign design, Blank blank) {
        this.top = top;
        this.channel = design.channel().orElseThrow();
        this.blank = blank;
        this.style = design.style();
    }

    /** Notes what does not go together; true when nothing. */
    static boolean of(Section top, NeckDesign design, Blank blank, Shop shop) {
        FitCheck check = new FitCheck(top, design, blank);
        check.cutter(shop);
        check.length(shop);
        check.start();
        check.end();
        check.width();
        return check.fits;
    }

    /** Notes where posts and strings are not as many. */
    static boolean posts(Section top, NeckDesign design, NeckDetails details) {
        int posts =
                details.headLayout().map(HeadLayout::posts).orElse(List.of()).size();
        int strings = design.hasStrings() && design.strings().across().isPresent()
                ? design.strings().courses() * design.strings().inCourse()
                : posts;
        if (posts == 0 || posts == strings) {
            return true;
        }
        Section place = top.at(NeckKeys.HEAD).value().at(HeadPart.POSTS).value();
        place.problem(PostsPart.ALONG, "has " + posts + ", but must have " + strings + ", one to a string");
        return false;
    }

    private void cutter(Shop shop) {
        double cutter = shop.cutter().diameterMm();
        if (!(cutter <= channel.widthMm())) {
            double play = cutter - channel.rod().widthMm();
            problem(
                    "shop.cutter.diameter",
                    "is " + shop.cutter().diameter() + ", but must be " + say(channel.widthMm())
                            + " or less, the channel's width: a thinner cutter, or a channel with " + say(play)
                            + " of side play");
        }
    }

    private void length(Shop shop) {
        if (!(shop.cutter().diameterMm() <= channel.lengthMm())) {
            problem(
                    "rod.length",
                    "is " + say(channel.rod().lengthMm()) + ", but its channel of " + say(channel.lengthMm())
                            + " is shorter than the cutter is wide");
        }
    }

    private void start() {
        double begins = -blank.nutFromHeadEndMm();
        if (!(channel.startMm() >= begins)) {
            problem(
                    "channel.starts at",
                    "is " + say(channel.startMm()) + ", but must be " + say(begins)
                            + " or more, where the blank begins");
        }
    }

    private void end() {
        double ends = blank.lengthMm() - blank.nutFromHeadEndMm();
        double tooLong = channel.endMm() - ends;
        double rod = channel.rod().lengthMm();
        if (!(tooLong > 0)) {
            return;
        }
        if (tooLong < rod) {
            problem(
                    "rod.length",
                    "is " + say(rod) + ", but must be " + say(rod - tooLong) + " or less: its channel ends "
                            + say(tooLong) + " past the end of the blank");
        } else {
            problem(
                    "channel.starts at",
                    "is " + say(channel.startMm()) + ", but the blank ends " + say(ends) + " from the nut");
        }
    }

    private void width() {
        double wood = Math.min(blank.widthAtMm(channel.startMm()), blank.widthAtMm(channel.endMm()));
        if (channel.hasPocket() && !(channel.pocketWidthMm() < wood)) {
            problem(
                    "channel.pocket.width",
                    "is " + say(channel.pocketWidthMm()) + ", but the blank is only " + say(wood) + " wide");
        }
        double play = channel.widthMm() - channel.rod().widthMm();
        if (!(channel.widthMm() < wood)) {
            if (play > 0) {
                problem(
                        "channel.side play",
                        "is " + say(play) + ", and makes the channel " + say(channel.widthMm()) + " wide in a blank of "
                                + say(wood));
            } else {
                problem(
                        "rod.width",
                        "is " + say(channel.rod().widthMm()) + ", but the blank is only " + say(wood) + " wide");
            }
        }
    }

    private void problem(String path, String sentence) {
        fits = false;
        top.problemAt(path, sentence);
    }

    private String say(double mm) {
        return style.brief(mm);
    }
}
