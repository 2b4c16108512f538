package org.neckgeom.order;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.neckgeom.validation.Checks;
import org.neckgeom.validation.Source;
import org.neckgeom.validation.Status;

/** The order of work against the sequence general trade texts agree on. */
public final class PlanChecks {

    private PlanChecks() {}

    @SuppressWarnings("exports") // a package of the tests
    public static void into(Checks checks) throws IOException {
        Map<String, Integer> steps = new HashMap<>();
        for (String[] row : CommonPracticeOrderTest.rows("step")) {
            steps.put(row[2], Integer.parseInt(row[1]));
        }
        List<Integer> planned = OrderOfWork.forNeck().plan().names().stream()
                .filter(steps::containsKey)
                .map(steps::get)
                .toList();
        List<Integer> common = steps.values().stream().sorted().toList();
        var order = checks.topic("Order of work")
                .check("step of each usual operation", Source.TRADE, "common-practice-order.csv", Status.PRACTICE, "")
                .of("OrderOfWork.plan");
        for (int i = 0; i < common.size(); i++) {
            order.figure(common.get(i), planned.get(i), 0);
        }
    }
}
