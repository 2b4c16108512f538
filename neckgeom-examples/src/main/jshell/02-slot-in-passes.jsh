var blank  = Blank.ofLength(mm(640)).section(mm(61), mm(20)).outOfParallel(mm(0.06));
var rod    = TrussRod.twoWay(mm(300)).section(mm(6), mm(9)).adjuster(End.HEAD);
var cutter = Cutter.straight(mm(6)).flutes(2, mm(22)).shank(mm(12.7)).stickOut(mm(30)).carbide();
var fence  = Fence.onePiece(mm(600));

// The channel is a part of the neck; cutting it is a job of its own.
var channel = Channel.forRod(rod).startingAt(mm(3)).fillet(mm(0)).depthClearance(mm(0.2));
var slot    = RodSlot.of(channel);
var passes  = slot.passes(Passes.noDeeperThan(mm(3)).lastPass(mm(0.5)));
println(slot.depth());
println(passes);
println(slot.stops(cutter, blank));
println(BlankOnFence.of(blank, channel, Fence.onePiece(mm(600))).centred());
println(CutterLoad.of(cutter, Wood.BLACK_WALNUT, mmPerMinute(1800), rpm(16000), mm(2.9)));
println(slot.cautions(cutter));

// The depth is read after every pass: a cutter that creeps out of its collet is found before the neck is spoiled.
println(passes.creepCheck(mm(0.03)).read(mm(2.91)).read(mm(5.82)).read(mm(8.86)));

// A single-action rod laid from the front lies in an arched channel, deepest in the middle.
var arched = RodSlot.of(Channel.forRod(TrussRod.singleAction(mm(380), mm(5))).depthClearance(mm(4)).arch(mm(5)));
println(arched.depth());
println(arched.floor());

// A head wider than the shaft, wings already on: what must stand between shaft and fence?
var head = Head.angled(deg(13)).length(mm(185)).width(mm(76));
println(HeadInterference.of(head, blank, fence).spacer(mm(1)));
println(HeadInterference.of(head.swung(deg(0.6)), blank, fence).skew());
println(HeadInterference.of(head.veneer(mm(2), mm(3)), blank, fence).rocking());
