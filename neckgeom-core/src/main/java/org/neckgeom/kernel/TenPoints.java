package org.neckgeom.kernel;

import java.util.function.DoubleUnaryOperator;

/** Gauss and Legendre's rule of ten points in panels: all but exact where the function is smooth. */
public final class TenPoints {

    /** Places on one side of a panel's middle, in half panels, and their weights. */
    private static final double[] PLACES = {
        0.1488743389816312, 0.4333953941292472, 0.6794095682990244, 0.8650633666889845, 0.9739065285171717
    };

    private static final double[] WEIGHTS = {
        0.2955242247147529, 0.2692667193099963, 0.2190863625159820, 0.1494513491505806, 0.0666713443086881
    };

    private TenPoints() {}

    /** Integral of a function from one end to the other, the stretch cut into equal panels. */
    public static double integral(DoubleUnaryOperator f, double from, double to, int panels) {
        double h = (to - from) / panels;
        double sum = 0;
        for (int panel = 0; panel < panels; panel++) {
            double middle = from + h * (panel + 0.5);
            for (int i = 0; i < PLACES.length; i++) {
                double aside = h / 2 * PLACES[i];
                sum += WEIGHTS[i] * (f.applyAsDouble(middle - aside) + f.applyAsDouble(middle + aside));
            }
        }
        return sum * h / 2;
    }
}
