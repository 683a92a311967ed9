package org.berrywatt.findings;

import java.util.Arrays;
import org.berrywatt.statistics.RandomIntercept;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.special.Beta;

/** Wald tests of the terms of a joint model. */
final class Wald {

    private final JointTerms terms;
    private final RealMatrix covariance;
    private final double[] coefficients;
    private final int[] groups;
    private final int groupCount;
    private final int withinColumns;
    private final int betweenColumns;

    Wald(JointTerms terms, RandomIntercept fit, int[] groups) {
        this.terms = terms;
        this.covariance = fit.covariance();
        this.coefficients = fit.coefficients();
        this.groups = groups;
        this.groupCount = fit.groupCount();
        int within = 0;
        int between = 0;
        for (int term = 0; term < terms.taken().size(); term++) {
            if (varies(term)) {
                within += terms.places(term).length;
            } else {
                between += terms.places(term).length;
            }
        }
        this.withinColumns = within;
        this.betweenColumns = between;
    }

    private boolean varies(int term) {
        double[] column = terms.columns()[terms.places(term)[0]];
        double[] first = new double[column.length];
        Arrays.fill(first, Double.NaN);
        boolean single = groupCount == column.length;
        for (int i = 0; i < column.length; i++) {
            if (Double.isNaN(first[groups[i]])) {
                first[groups[i]] = column[i];
            } else if (first[groups[i]] != column[i]) {
                return true;
            }
        }
        return single;
    }

    double f(int term) {
        int[] places = Arrays.stream(terms.places(term)).map(place -> place + 1).toArray();
        RealVector own = new ArrayRealVector(
                Arrays.stream(places).mapToDouble(place -> coefficients[place]).toArray());
        RealMatrix inverse = new LUDecomposition(covariance.getSubMatrix(places, places), 0)
                .getSolver()
                .getInverse();
        return own.dotProduct(inverse.operate(own)) / places.length;
    }

    /** One at the least. */
    int degreesWithin(int term) {
        boolean allAlone = groupCount == groups.length;
        int degrees = allAlone
                ? groups.length - 1 - withinColumns - betweenColumns
                : varies(term) ? groups.length - groupCount - withinColumns : groupCount - 1 - betweenColumns;
        return Math.max(1, degrees);
    }

    /** The upper tail of F. */
    double p(int term) {
        int between = terms.places(term).length;
        int within = degreesWithin(term);
        return Beta.regularizedBeta(within / (within + between * f(term)), within / 2.0, between / 2.0);
    }
}
