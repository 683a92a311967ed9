package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SampleTest {

    /** JCGM 101:2008, 7.7.2: of 1,000 trials in order, q = 950, r = 25: from the 25th to the 975th. */
    @Test
    void leavesAsManyTrialsBelowAsAbove() {
        Sample sample =
                Sample.of(DoubleStream.iterate(1000, x -> x - 1).limit(1000).toArray());
        assertThat(sample.symmetricInterval(0.95)).isEqualTo(new Interval(25, 975));
    }

    /** JCGM 101:2008, 7.7.4: of squares, the lower ones lie closer; from the 1st to the 951st. */
    @Test
    void findsTheShortestIntervalOfASkewedSample() {
        double[] squares =
                DoubleStream.iterate(1, x -> x + 1).limit(1000).map(x -> x * x).toArray();
        assertThat(Sample.of(squares).shortestInterval(0.95)).isEqualTo(new Interval(1, 951.0 * 951));
    }

    @Test
    void takesTheLowestOfEquallyShortIntervals() {
        assertThat(Sample.of(new double[] {1, 2, 3, 4}).shortestInterval(0.5)).isEqualTo(new Interval(1, 3));
    }

    @Test
    void tellsTheMiddle() {
        assertThat(Sample.of(new double[] {9, 1, 4}).median()).isEqualTo(4);
        assertThat(Sample.of(new double[] {9, 1, 4, 5}).median()).isEqualTo(4.5);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -1, Double.NaN, 0.9})
    void refusesProbabilityThatLeavesNoTrialOutside(double probability) {
        Sample four = Sample.of(new double[] {1, 2, 3, 4});
        assertThatThrownBy(() -> four.shortestInterval(probability)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> four.symmetricInterval(probability))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "the probability of an interval of 4 trials must lie in (0, 1) and leave a trial outside, not "
                                + probability);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesTrialThatIsNotFinite(double trial) {
        assertThatThrownBy(() -> Sample.of(new double[] {1, trial})).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void refusesASingleTrial() {
        assertThatThrownBy(() -> Sample.of(new double[] {1}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a sample needs trials in [2, infinity), not 1");
    }
}
