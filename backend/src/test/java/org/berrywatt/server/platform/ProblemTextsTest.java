package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.context.i18n.LocaleContextHolder;

class ProblemTextsTest {

    private final ProblemSentences sentences = new ProblemSentences(Texts.load());

    @ParameterizedTest
    @EnumSource
    void everyCodeHasASentenceAndAWayOut(ProblemCode code) {
        var texts = Texts.load();
        assertThat(texts.say("problem." + code.code())).endsWith(".");
        assertThat(texts.say("problem." + code.code() + ".wayOut")).endsWith(".");
    }

    @ParameterizedTest
    @EnumSource
    void everyCodeIsAnError(ProblemCode code) {
        assertThat(ProblemStatus.of(code).isError()).isTrue();
    }

    @Test
    void tellsWhatWasGivenWhatIsAcceptedAndWhatToDo() {
        var problem = sentences.of(Refusal.of(ProblemCode.QUANTITY_IMPOSSIBLE)
                .field("voltage")
                .value("400 V")
                .limit("[-5, 5] V"));
        assertThat(problem.detail()).contains("400 V", "[-5, 5] V").endsWith(problem.wayOut());
        assertThat(problem.field()).isEqualTo("voltage");
        assertThat(problem.value()).isEqualTo("400 V");
        assertThat(problem.limit()).isEqualTo("[-5, 5] V");
        assertThat(problem.status()).isEqualTo(422);
        assertThat(problem.type()).hasToString("/api/problems/quantity.impossible");
    }

    @Test
    void carriesTheReadingsToChooseFrom() {
        var choices = List.of(new Typed("1.234", "V"), new Typed("1234", "V"));
        assertThat(sentences
                        .of(Refusal.of(ProblemCode.QUANTITY_AMBIGUOUS).choices(choices))
                        .choices())
                .isEqualTo(choices);
    }

    @Test
    void refusesInTheLanguageOfTheRequest() {
        LocaleContextHolder.setLocale(Locale.GERMANY);
        try {
            assertThat(sentences.of(Refusal.of(ProblemCode.NOT_FOUND)).detail()).startsWith("Das gibt es hier nicht");
        } finally {
            LocaleContextHolder.resetLocaleContext();
        }
    }

    @Test
    void refusesInEnglishWhereTheLanguageIsUnknown() {
        LocaleContextHolder.setLocale(Locale.ITALY);
        try {
            assertThat(sentences.of(Refusal.of(ProblemCode.NOT_FOUND)).detail()).startsWith("There is nothing here");
        } finally {
            LocaleContextHolder.resetLocaleContext();
        }
    }

    @Test
    void takesAValueWithDollarsAndBackslashesAsItIs() {
        assertThat(sentences
                        .of(Refusal.of(ProblemCode.QUANTITY_NOT_A_NUMBER).value("$1\\x"))
                        .detail())
                .contains("$1\\x");
    }
}
