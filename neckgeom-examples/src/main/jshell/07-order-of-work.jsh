// In which order? The usual neck's operations know what they need and what they leave in the way.
println(OrderOfWork.forNeck().plan());

// A veneer runs through the joint, so the wings go on before the channel is cut: what does that cost?
var work = OrderOfWork.forNeck().
    keep("glue wings").before("cut rod channel");
var order = work.plan();
println(order);                                        // numbered steps; order.table() has the why of each
println(order.step("cut rod channel"));
println(order.conflicts());                              // wings meet the fence: parallel spacer, adds its error to the centring
println(order.addedErrors());                          // named spreads, each with its component() to a budget

// My spacer is planed to two hundredths; and I set stiffening bars beside the rod, and inlay the head.
var mine = Remedy.parallelSpacer().adding(ErrorDistribution.rectangular(mm(0.02)));
var bars = Operation.alongFence("cut bar slots").
    despite(Condition.WINGS, mine).
    puts(Condition.named("bar slots"));
var inlay = Operation.named("inlay the head").
    needs(Condition.HEAD_VENEER).
    blockedBy(Condition.NUT).
    because(Condition.NUT, "it is in the way of the router's base");
var longer = work.
    replacing(work.operation("cut rod channel").despite(Condition.WINGS, mine)).
    with(bars).
    with(inlay).
    keep("cut bar slots").before("glue fingerboard").
    keep("inlay the head").before("fit the nut").
    plan();
println(longer.names());
println(longer.conflicts());

// A neck without heel block and back strap, from a blank bought flat and square.
var simple = OrderOfWork.forNeck().
    without("glue heel block").
    without("glue back strap").
    done("rest the stock").
    done("flatten the face").
    done("square the edges");
println(simple.plan());

// Two things that make it impossible are both named; where there is no remedy the answer states it.
println(OrderOfWork.forNeck().
    keep("glue fingerboard").before("cut rod channel").
    plan());
println(OrderOfWork.forNeck().
    keep("glue wings").before("glue heel block").
    keep("glue heel block").before("true the head").
    plan().conflicts());

println(order.cautions().get(0));
