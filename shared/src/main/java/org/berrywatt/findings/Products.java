package org.berrywatt.findings;

import java.util.Arrays;
import java.util.List;

/** Sums of products of columns less their means. */
final class Products {

    private Products() {}

    static double[][] centred(List<double[]> columns) {
        double[][] moved = columns.stream().map(Products::lessMean).toArray(double[][]::new);
        double[][] products = new double[moved.length][moved.length];
        for (int i = 0; i < moved.length; i++) {
            for (int j = 0; j <= i; j++) {
                products[i][j] = dot(moved[i], moved[j]);
                products[j][i] = products[i][j];
            }
        }
        return products;
    }

    /** Of columns with some spread. */
    static double[][] correlations(List<double[]> columns) {
        double[][] products = centred(columns);
        double[][] correlations = new double[products.length][products.length];
        for (int i = 0; i < products.length; i++) {
            for (int j = 0; j < products.length; j++) {
                correlations[i][j] = products[i][j] / Math.sqrt(products[i][i] * products[j][j]);
            }
        }
        return correlations;
    }

    private static double[] lessMean(double[] column) {
        double mean = Arrays.stream(column).average().orElse(0);
        return Arrays.stream(column).map(value -> value - mean).toArray();
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
