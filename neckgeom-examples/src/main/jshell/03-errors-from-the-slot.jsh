// Everything after the slot is located on the slot. What does the string line see at the bridge?
var work = DatumTree.from("rod channel", ErrorDistribution.normal(mm(0.05))).           // how well the channel sits on the blank's centreline
    place("heel").on("rod channel").at(mm(30), mm(290)).each(ErrorDistribution.rectangular(mm(0.05))).cut(ErrorDistribution.normal(mm(0.08))).
    place("side taper").on("rod channel").at(mm(20), mm(300)).each(ErrorDistribution.rectangular(mm(0.05))).cut(ErrorDistribution.normal(mm(0.06))).
    place("fingerboard").on("rod channel").at(mm(10), mm(280)).each(ErrorDistribution.rectangular(mm(0.08))).
    place("body joint").on("heel").at(mm(305), mm(345)).each(ErrorDistribution.triangular(mm(0.06)));

var bridge = work.across("fingerboard", "body joint", mm(560));   // a budget: where the body's line lies as seen from the board's
println(bridge.worstCase());
println(bridge.rootSumSquare());
println(bridge.distribution().interval(percent(95)));             // exact, not simulated
println(bridge.yield(Limits.within(mm(1.0))));
println(bridge.shares());                                         // sorted: which component matters
println(bridge.allowance("body joint", Limits.within(mm(1.0)), percent(99)));
println(Allocation.of(bridge, Limits.within(mm(0.8)), percent(99)));    // how tight must each be
println(bridge.simulate(42).trials(1_000_000));                   // Monte Carlo gives the same

// The board is glued and has been read against the channel at 250 mm. A reading counts where it was read.
var line = work.deviationAcross("fingerboard", mm(560)).minus(work.deviationAcross("body joint", mm(560)));
var glued = work.deviationAcross("fingerboard", mm(250)).minus(work.deviationAcross("rod channel", mm(250)));
var state = work.state().read(new NeckReading("board at 250 mm", glued, Estimate.of(mm(0.04), mm(0.02))));
println(state.known("string line", line));
println(state.known("string line", line).chance(Limits.within(mm(1.0))));
println(state.agreement());
