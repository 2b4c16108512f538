// The whole neck from its file: the octave mandolin of the examples, before anything is cut.
var job = NeckFile.read("octave-mandolin.yaml");
var plan = job.plan();
println(plan);                                   // how its checks stand
for (var check : plan.checks()) println(check);  // each with what was found, its limit, what to do

// A trial cut is read, the fence is moved, a second cut is read: what comes next?
var read = job.trialCut(TrialCut.walls(mm(26.78), mm(28.20)).slot(mm(6.02)).piece(mm(61.00))).
    fenceMoved(FenceMove.away(mm(0.70))).
    trialCut(TrialCut.walls(mm(27.46), mm(27.52)).slot(mm(6.02)).piece(mm(61.00)));
println(read.plan().section(SectionCode.CENTRING).get());
println(read.plan().slot().mayCut());

// Every answer of a plan is data, too.
println(plan.passes().passes().size() + " passes, the first to " + plan.passes().passes().get(0).height());
println(plan.check(CheckCode.WOOD_LEFT).get().finding().value().get());

// The same as a page with drawings, to hang by the machine.
var page = Files.createTempDirectory("neck").resolve("octave-mandolin.html");
Files.writeString(page, Sheet.of(read).toHtml());
println(Sheet.of(read));
println(page.getFileName() + " is written");
