// A test piece as wide as the neck went past the cutter; its two walls, fence side first, were read with a calliper.
var trial = TrialCut.walls(mm(29.84), mm(31.26)).repeatability(mm(0.02));
var centring = Centring.of(trial);

println(centring.offset());
println(centring.move());
println(centring.move().leaves(FeelerSet.metric20()));
println(centring.move().handling());
println(centring.verdict(Limits.within(mm(0.10))));

// A fence that pivots at one end shows the cutter only its share: 300 mm to the cutter, 450 to the stop block.
println(centring.move().at(Fence.pivoting(mm(600)).fromPivot(mm(300), mm(450))));

// The same, after the move, in inches, with the slot and the piece read as well.
var second = TrialCut.walls(inch(1.2030), inch(1.2038)).slot(inch(0.2365)).piece(inch(2.6436)).repeatability(thou(0.8));
println(Centring.of(second).closure());
println(Centring.of(second).onWidth(inch(2.6440)).offset());

// All the rounds together: what do I know now, and is one more worth it?
var rounds = CentringRounds.of(trial).fenceMoved(FenceMove.away(mm(0.70))).trialCut(second);
println(rounds.estimate());
println(rounds.next(mm(0.1)));

// In the neck blank itself, along its whole channel: here 67.2 mm wide and a little out of parallel.
var blank = Blank.ofLength(mm(640)).section(mm(67.2), mm(20)).nutAt(mm(200)).outOfParallel(mm(0.06));
var channel = Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))).startingAt(mm(3));
var inBlank = rounds.inBlank(BlankOnFence.of(blank, channel, Fence.onePiece(mm(600))));
println(inBlank.next(mm(0.1)));
println(inBlank.place());

// Readings that contradict each other get no advice; what the slot and the piece should be helps to find the slip.
var slip = TrialCut.walls(mm(30.02), mm(30.05)).slot(mm(6.03)).piece(mm(61.06)).repeatability(mm(0.02));
println(Centring.of(slip).move());
println(Centring.of(slip).closure().cutBy(Cutter.straight(mm(6))).pieceShouldBe(mm(66.1), mm(0.1)));

// Turned pass: no walls measured at all.
println(FlippedPass.widened(mm(6.02), mm(6.31)).repeatability(mm(0.02)).offset());
