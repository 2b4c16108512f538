package org.neckgeom.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.order.Conflict.Kind;

class OrderOfWorkTest {

    private static final Condition JIG = Condition.named("jig");

    @Test
    void keep_movesAsLittleAsItCan() {
        OrderPlan usual = OrderOfWork.forNeck().plan();

        OrderPlan kept = OrderOfWork.forNeck()
                .keep("fret the fingerboard")
                .before("glue fingerboard")
                .plan();

        // One operation goes forward, the others stay as they were.
        assertThat(kept.conflicts().isEmpty()).isTrue();
        assertThat(kept.names().indexOf("fret the fingerboard") + 1)
                .isEqualTo(kept.names().indexOf("glue fingerboard"));
        assertThat(kept.names().stream().filter(name -> !name.equals("fret the fingerboard")))
                .containsExactlyElementsOf(usual.names().stream()
                        .filter(name -> !name.equals("fret the fingerboard"))
                        .toList());
    }

    @Test
    void keepAfter_isKeepBeforeTurnedRound() {
        OrderOfWork after = OrderOfWork.forNeck().keep("cut rod channel").after("glue wings");
        OrderOfWork before = OrderOfWork.forNeck().keep("glue wings").before("cut rod channel");

        assertThat(after).isEqualTo(before).hasSameHashCodeAs(before);
        assertThat(after.keptOrders()).containsExactly(new KeptOrder("glue wings", "cut rod channel"));
    }

    @Test
    void keep_refusesAnOperationThatIsNotThere_andGuesses() {
        assertThatThrownBy(() -> OrderOfWork.forNeck().keep("glue wing"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("operation must be one that this order of work has, but was \"glue wing\""
                        + "; did you mean \"glue wings\"?");
        assertThatThrownBy(() -> OrderOfWork.forNeck().keep("glue wings").before("polish the brass"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageEndingWith("but was \"polish the brass\"");
        assertThatThrownBy(() -> OrderOfWork.forNeck().keep("glue wings").after("glue wings"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("before itself");
    }

    @Test
    void earsBeforeChannel_meetTheFence_andTheSpacerAddsToTheBudget() {
        OrderPlan plan = OrderOfWork.forNeck()
                .keep("glue wings")
                .before("cut rod channel")
                .plan();

        assertThat(plan.works()).isTrue();
        Conflict conflict = plan.conflicts().list().get(0);
        assertThat(plan.conflicts().list()).hasSize(1);
        assertThat(conflict.kind()).isEqualTo(Kind.IN_THE_WAY);
        assertThat(conflict.operations()).containsExactly("cut rod channel", "glue wings");
        assertThat(conflict.condition()).contains(Condition.WINGS);
        assertThat(conflict.keptOrders()).containsExactly(new KeptOrder("glue wings", "cut rod channel"));
        assertThat(conflict.remedy()).contains(Remedy.parallelSpacer());
        AddedError added = plan.addedErrors().get(0);
        assertThat(added.name()).isEqualTo("spacer's thickness");
        assertThat(added.operation()).isEqualTo("cut rod channel");
        assertThat(added.way()).isEqualTo(AddedError.Way.ACROSS);
        // Within 0.05 mm anywhere alike: u = 0.05/sqrt(3) (JCGM 100:2008, 4.3.7).
        assertThat(added.spread().standardUncertainty().libraryValue()).isCloseTo(0.0288675134594813, within(1e-15));
        assertThat(plan.step("cut rod channel").remedies()).containsExactly(Remedy.parallelSpacer());
    }

    private static org.assertj.core.data.Offset<Double> within(double tolerance) {
        return org.assertj.core.data.Offset.offset(tolerance);
    }

    @Test
    void taperBeforeChannel_isCutOnTheCarrier() {
        OrderOfWork work = OrderOfWork.forNeck()
                .without("glue heel block")
                .without("cut heel joint")
                .keep("taper the sides")
                .before("cut rod channel");

        OrderPlan plan = work.plan();

        Conflict conflict = plan.conflicts().list().get(0);
        assertThat(plan.conflicts().list()).hasSize(1);
        assertThat(conflict.kind()).isEqualTo(Kind.GONE);
        assertThat(conflict.operations()).containsExactly("cut rod channel", "taper the sides");
        assertThat(conflict.remedy()).contains(Remedy.carrierBoard());
    }

    @Test
    void taperAndHeelBeforeChannel_takeTheOneRemedyThatHelpsAgainstBoth() {
        OrderPlan plan = OrderOfWork.forNeck()
                .keep("taper the sides")
                .before("cut rod channel")
                .keep("cut heel joint")
                .before("taper the sides")
                .plan();

        assertThat(plan.conflicts().list()).hasSize(2);
        assertThat(plan.step("cut rod channel").remedies()).containsExactly(Remedy.plungeRouterBetweenRails());
        assertThat(plan.conflicts().list())
                .allMatch(conflict -> conflict.remedy().orElseThrow().equals(Remedy.plungeRouterBetweenRails()));
        assertThat(plan.addedErrors()).hasSize(1);
    }

    @Test
    void addedErrors_countARemedyOnceForAnOperation() {
        Condition flatBack = Condition.named("flat back");
        Operation cut = Operation.named("cut")
                .needs(flatBack, JIG)
                .despite(flatBack, Remedy.carrierBoard())
                .despite(JIG, Remedy.carrierBoard());

        OrderPlan plan = OrderOfWork.of(cut).plan();

        assertThat(plan.conflicts().list()).hasSize(2);
        assertThat(plan.addedErrors()).hasSize(1);
    }

    @Test
    void boardBeforeChannel_isImpossible_andNamesBoth() {
        OrderPlan plan = OrderOfWork.forNeck()
                .keep("glue fingerboard")
                .before("cut rod channel")
                .plan();

        assertThat(plan.works()).isFalse();
        assertThat(plan.steps()).isEmpty();
        assertThat(plan.addedErrors()).isEmpty();
        Conflict conflict = plan.conflicts().list().get(0);
        assertThat(conflict.operations()).contains("glue fingerboard", "cut rod channel");
        assertThat(conflict.remedies()).isEmpty();
        assertThat(plan.toString()).contains("NOT POSSIBLE").contains("none: give up the kept order");
    }

    @Test
    void twoKeptOrdersAgainstEachOther_areBothNamed() {
        OrderPlan plan = OrderOfWork.forNeck()
                .keep("glue wings")
                .before("glue back strap")
                .keep("glue back strap")
                .before("cut scarf")
                .keep("cut scarf")
                .before("glue wings")
                .plan();

        assertThat(plan.works()).isFalse();
        assertThat(plan.conflicts().list()).hasSize(1);
        assertThat(plan.conflicts().list().get(0).toString())
                .contains("glue back strap before cut scarf")
                .contains("cut scarf");
    }

    @Test
    void with_takesAnOperationOfTheMakersOwn() {
        OrderOfWork work = OrderOfWork.forNeck()
                .with(Operation.named("drill side dots")
                        .needs(Condition.TRIMMED_SIDES)
                        .blockedBy(Condition.CARVED_NECK));

        OrderPlan plan = work.plan();

        int place = plan.names().indexOf("drill side dots");
        assertThat(plan.names().get(place - 1)).isEqualTo("trim to the fingerboard");
        assertThat(plan.names().get(place + 1)).isEqualTo("carve the neck");
    }

    @Test
    void with_refusesANameTwice_andMoreThanSixty() {
        OrderOfWork work = OrderOfWork.forNeck();
        OrderOfWork full = OrderOfWork.of();
        for (int i = 0; i < OrderOfWork.MOST_OPERATIONS; i++) {
            full = full.with(Operation.named("piece " + i));
        }
        OrderOfWork sixty = full;

        assertThatThrownBy(() -> work.with(Operation.named("glue wings")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("operation must have a name not yet taken, but was \"glue wings\"");
        assertThatThrownBy(() -> work.done("rest the stock").with(Operation.named("rest the stock")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("not yet taken");
        assertThatThrownBy(() -> sixty.with(Operation.named("one more")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("operations must be 60 or fewer, but were 61 with \"one more\"");
    }

    @Test
    void without_noLongerAsksForWhatOnlyThatWouldLeave() {
        OrderPlan plan = OrderOfWork.forNeck()
                .without("cut scarf")
                .without("glue head")
                .without("glue wings")
                .without("glue heel block")
                .plan();

        assertThat(plan.conflicts().isEmpty()).isTrue();
        assertThat(plan.names()).hasSize(24).doesNotContain("glue wings");
    }

    @Test
    void without_stillAsksForWhatAnotherCanLeave() {
        // Flat faces are also left by flattening again, which comes too late for the channel.
        OrderPlan plan = OrderOfWork.forNeck().without("flatten the face").plan();

        assertThat(plan.works()).isFalse();
        assertThat(plan.conflicts().toString()).contains("flat face");
    }

    @Test
    void without_refusesAnOperationInAKeptOrder() {
        OrderOfWork work = OrderOfWork.forNeck().keep("glue wings").before("cut rod channel");

        assertThatThrownBy(() -> work.without("glue wings"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("operation to leave out must be in no kept order, but was \"glue wings\""
                        + " with \"glue wings before cut rod channel\" kept");
    }

    @Test
    void done_isSoFromTheStart() {
        OrderPlan plan = OrderOfWork.forNeck()
                .done("rest the stock")
                .done("flatten the face")
                .done("square the edges")
                .plan();

        assertThat(plan.conflicts().isEmpty()).isTrue();
        assertThat(plan.names().get(0)).isEqualTo("mark the lines");
        assertThat(plan.steps().get(0).why()).contains("from the start");
    }

    @Test
    void done_leavesItsThingsInTheWay_andNobodyIsKeptResponsible() {
        OrderOfWork work = OrderOfWork.forNeck();
        for (String name : new String[] {
            "rest the stock",
            "flatten the face",
            "square the edges",
            "mark the lines",
            "cut scarf",
            "glue head",
            "true the head",
            "glue wings"
        }) {
            work = work.done(name);
        }

        Conflict conflict = work.plan().conflicts().list().get(0);

        assertThat(conflict.operations()).containsExactly("cut rod channel");
        assertThat(conflict.keptOrders()).isEmpty();
        assertThat(conflict.toString()).contains("wings in the way, there from the start");
    }

    @Test
    void done_meetsOrBreaksKeptOrders() {
        OrderOfWork work = OrderOfWork.forNeck().keep("rest the stock").before("glue wings");

        assertThat(work.done("rest the stock").keptOrders()).isEmpty();
        assertThatThrownBy(() -> work.done("glue wings"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("\"rest the stock\" not done");
    }

    @Test
    void done_untilNothingIsLeft() {
        OrderOfWork work = OrderOfWork.of(Operation.named("plane")).done("plane");

        assertThat(work.plan().works()).isTrue();
        assertThat(work.plan().toString()).isEqualTo("Order of work: 0 steps, no conflicts");
    }

    @Test
    void startingWith_standsInForAnOperation() {
        OrderOfWork work = OrderOfWork.of(Operation.named("bore").needs(JIG));

        assertThat(work.plan().conflicts().list().get(0).kind()).isEqualTo(Kind.NEVER);
        assertThat(work.plan().conflicts().toString()).contains("add an operation that puts it");
        assertThat(work.startingWith(JIG).plan().works()).isTrue();
    }

    @Test
    void replacing_keepsThePlaceAndTheOrders() {
        Remedy own = Remedy.named("taller fence");
        OrderOfWork work = OrderOfWork.forNeck().keep("glue heel block").before("cut rod channel");

        OrderPlan plan = work.replacing(work.operation("cut rod channel").despite(Condition.HEEL_BLOCK, own))
                .plan();

        assertThat(plan.conflicts().list().get(0).remedy()).contains(own);
        assertThat(plan.addedErrors()).isEmpty();
        assertThat(plan.conflicts().toString()).contains("error not given");
    }

    @Test
    void inThisOrder_judgesAnOrderOfTheMakersOwn() {
        OrderOfWork work = OrderOfWork.of(
                Operation.named("square").puts(Condition.PARALLEL_EDGES),
                Operation.named("slot")
                        .needs(Condition.PARALLEL_EDGES)
                        .despite(Condition.PARALLEL_EDGES, Remedy.cradle()),
                Operation.named("taper").takesAway(Condition.PARALLEL_EDGES));

        assertThat(work.inThisOrder("square", "slot", "taper")).isEqualTo(work.plan());
        Conflict gone =
                work.inThisOrder("square", "taper", "slot").conflicts().list().get(0);
        assertThat(gone.kind()).isEqualTo(Kind.GONE);
        assertThat(gone.operations()).containsExactly("slot", "taper");
        Conflict early =
                work.inThisOrder("slot", "square", "taper").conflicts().list().get(0);
        assertThat(early.kind()).isEqualTo(Kind.NOT_YET);
        assertThat(early.operations()).containsExactly("slot", "square");
    }

    @Test
    void inThisOrder_refusesWhatIsNotAnOrderOfAll() {
        OrderOfWork work = OrderOfWork.of(Operation.named("plane"), Operation.named("glue"))
                .keep("plane")
                .before("glue");

        assertThatThrownBy(() -> work.inThisOrder("plane"))
                .hasMessage("operations given must be all 2, but \"glue\" was missing");
        assertThatThrownBy(() -> work.inThisOrder("plane", "glue", "plane"))
                .hasMessage("operations given must come once each, but \"plane\" came twice");
        assertThatThrownBy(() -> work.inThisOrder("glue", "plane"))
                .hasMessage("operations given must keep the kept orders, but \"plane before glue\" was turned round");
    }

    @Test
    void forNeck_leavesOutWhatTheDesignHasNoUseFor() {
        Neck bare = Neck.named("plain")
                .scale(mm(560))
                .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
                .back(BackProfile.between(mm(14), mm(16)))
                .head(Head.flat());
        Neck full = bare.trussRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                .head(Head.angled(deg(13)).veneer(mm(2), mm(0)).backVeneer(mm(1)));

        OrderPlan plain = OrderOfWork.forNeck(bare).plan();
        OrderPlan whole = OrderOfWork.forNeck(full).plan();

        assertThat(plain.works()).isTrue();
        assertThat(plain.names())
                .doesNotContain(
                        "cut rod channel",
                        "lay in the rod",
                        "cut scarf",
                        "glue head",
                        "glue head veneer",
                        "glue back strap");
        assertThat(whole.names()).isEqualTo(OrderOfWork.forNeck().plan().names());
    }

    @Test
    void orderOfWork_isNotChangedByItsCopies() {
        OrderOfWork work = OrderOfWork.forNeck();
        OrderOfWork twin = OrderOfWork.forNeck();

        work.keep("glue wings").before("cut rod channel");
        work.without("glue wings");
        work.startingWith(JIG);

        assertThat(work).isEqualTo(twin).hasSameHashCodeAs(twin).hasToString(twin.toString());
        assertThat(work.toString()).hasSizeLessThan(1000).startsWith("Order of work: 28 operations");
    }

    @Test
    void lacking_leavesOutAUsualOperationAndTheOrdersKeptAboutIt() {
        OrderOfWork kept = OrderOfWork.forNeck().keep("glue wings").before("cut rod channel");

        assertThat(kept.lacking("glue wings")).isEqualTo(OrderOfWork.forNeck().without("glue wings"));
        assertThat(kept.lacking("glue wings").lacking("glue wings")).isEqualTo(kept.lacking("glue wings"));
        assertThatThrownBy(() -> kept.lacking("glue wing"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageEndingWith("did you mean \"glue wings\"?");
    }

    @Test
    void headSawnOut_takesThePlaceOfGluingItOn() {
        OrderOfWork usual = OrderOfWork.forNeck();
        OrderOfWork sawn = usual.headSawnOut();

        assertThat(sawn.operations()).hasSameSizeAs(usual.operations());
        assertThat(sawn.operations()
                        .get(usual.operations().indexOf(usual.operation("glue head")))
                        .name())
                .isEqualTo("saw out the head");
        assertThat(sawn.headSawnOut()).isEqualTo(sawn);
    }
}
