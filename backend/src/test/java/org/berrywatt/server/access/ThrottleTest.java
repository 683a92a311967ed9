package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;

class ThrottleTest {

    private final Throttle throttle = new Throttle(new Journal());

    @Test
    void slowsDownAnAddressAfterThirtyWrongCodesAndNoOtherAddress() {
        for (var i = 0; i < 30; i++) {
            assertThat(refused("10.0.0.1")).isEqualTo(ProblemCode.SIGN_IN_REFUSED);
        }
        assertThat(refused("10.0.0.1")).isEqualTo(ProblemCode.SLOW_DOWN);
        assertThat(refused("10.0.0.2")).isEqualTo(ProblemCode.SIGN_IN_REFUSED);
    }

    @Test
    void slowsDownWhoeverBorrowsManyAddresses() {
        for (var i = 0; i < 300; i++) {
            assertThat(refused("10.1.0." + i)).isEqualTo(ProblemCode.SIGN_IN_REFUSED);
        }
        assertThat(refused("10.1.0.300")).isEqualTo(ProblemCode.SLOW_DOWN);
    }

    @Test
    void doesNotCountCodesThatAreRight() {
        for (var i = 0; i < 1_000; i++) {
            assertThat(throttle.guardCode(from("10.2.0.1"), () -> "Sloe")).isEqualTo("Sloe");
        }
    }

    private ProblemCode refused(String address) {
        return assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> throttle.guardCode(from(address), ThrottleTest::wrong))
                .actual()
                .code();
    }

    private static String wrong() {
        throw Refusal.of(ProblemCode.SIGN_IN_REFUSED);
    }

    private static MockHttpServletRequest from(String address) {
        var request = new MockHttpServletRequest();
        request.setRemoteAddr(address);
        return request;
    }
}
