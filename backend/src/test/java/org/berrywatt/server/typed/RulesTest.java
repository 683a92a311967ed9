package org.berrywatt.server.typed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.berrywatt.contract.ProblemCode;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RulesTest {

    @Test
    void readsEveryRuleThatMakesSense() {
        assertThat(Rule.all())
                .allSatisfy(rule -> assertThat(Rules.read("rule", rule.key())).isEqualTo(rule));
    }

    @ParameterizedTest
    @CsvSource({
        "yield.medianOfDeclared, RULE_SHARE",
        "yield.bestVerified, RULE_SHARE",
        "retention.bestVerified, RULE_AGEING",
        "luckiest, CHOICE_UNKNOWN",
        "luck.medianOfDeclared, CHOICE_UNKNOWN"
    })
    void refusesTheOthers(String key, ProblemCode why) {
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> Rules.read("rule", key))
                .satisfies(refusal -> assertThat(refusal.code()).isEqualTo(why));
    }
}
