// The whole neck from its file: the octave mandolin that comes with the examples, before anything is cut.
var plan = NeckFile.read("octave-mandolin.yaml");
println(plan);                                   // how its checks stand
for (var check : plan.checks()) println(check);  // each with its result, its limit and the next step

// A trial cut is read, the fence goes over, a second cut is read: what is the verdict now?
var read = plan.trialCut(TrialCut.walls(mm(26.78), mm(28.20)).slot(mm(6.02)).piece(mm(61.00))).
    fenceMoved(FenceMove.away(mm(0.70))).
    trialCut(TrialCut.walls(mm(27.46), mm(27.52)).slot(mm(6.02)).piece(mm(61.00)));
println(read.sections().get(0));

// The same as a page with drawings, to hang by the machine.
var page = Files.createTempDirectory("neck").resolve("octave-mandolin.html");
Files.writeString(page, Sheet.of(read).toHtml());
println(Sheet.of(read));
println(page.getFileName() + " is written");
