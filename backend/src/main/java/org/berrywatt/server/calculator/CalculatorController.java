package org.berrywatt.server.calculator;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Objects;
import org.berrywatt.contract.StudyAnswer;
import org.berrywatt.contract.calculation.CurveAnswer;
import org.berrywatt.contract.calculation.CurveRequest;
import org.berrywatt.contract.calculation.DiodeAnswer;
import org.berrywatt.contract.calculation.DiodeRequest;
import org.berrywatt.contract.calculation.FindingsRequest;
import org.berrywatt.contract.calculation.LeaderboardAnswer;
import org.berrywatt.contract.calculation.LeaderboardRequest;
import org.berrywatt.contract.calculation.LightAnswer;
import org.berrywatt.contract.calculation.LightRequest;
import org.berrywatt.contract.calculation.NormalisationAnswer;
import org.berrywatt.contract.calculation.NormalisationRequest;
import org.berrywatt.contract.calculation.UncertaintyAnswer;
import org.berrywatt.contract.calculation.UncertaintyRequest;
import org.berrywatt.contract.calculation.YieldAnswer;
import org.berrywatt.contract.calculation.YieldRequest;
import org.berrywatt.findings.StudyFindings;
import org.berrywatt.server.findings.StudyAnswers;
import org.berrywatt.statistics.Resampling;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The calculator's doors. They keep nothing and need no pass: the same numbers, the same answer, for anybody. */
@RestController
@RequestMapping("/api/calculations")
class CalculatorController {

    private static final long DRAWS_OF_ONE = 40_000;
    private static final long FINDINGS = 5;

    private final Allowance allowance;

    CalculatorController(Allowance allowance) {
        this.allowance = allowance;
    }

    @PostMapping("/curve")
    CurveAnswer curve(@RequestBody CurveRequest body) {
        return Attempt.at(() -> CurveCalculation.of(body));
    }

    @PostMapping("/diode")
    DiodeAnswer diode(@RequestBody DiodeRequest body) {
        return Attempt.at(() -> DiodeCalculation.of(body));
    }

    @PostMapping("/light")
    LightAnswer light(@RequestBody LightRequest body) {
        return Attempt.at(() -> LightCalculation.of(body));
    }

    @PostMapping("/normalisation")
    NormalisationAnswer normalisation(@RequestBody NormalisationRequest body) {
        return Attempt.at(() -> NormalisationCalculation.of(body));
    }

    @PostMapping("/uncertainty")
    UncertaintyAnswer uncertainty(@RequestBody UncertaintyRequest body, HttpServletRequest request) {
        allowance.spend(request, UncertaintyCalculation.draws(body) / DRAWS_OF_ONE + 1);
        return Attempt.at(() -> UncertaintyCalculation.of(body));
    }

    @PostMapping("/leaderboard")
    LeaderboardAnswer leaderboard(@RequestBody LeaderboardRequest body, HttpServletRequest request) {
        allowance.spend(request, LeaderboardCalculation.draws(body) / DRAWS_OF_ONE + 1);
        return Attempt.at(() -> LeaderboardCalculation.of(body));
    }

    /** Draws for every parameter; so a table costs as much as five other questions. */
    @PostMapping("/findings")
    StudyAnswer findings(@RequestBody FindingsRequest body, HttpServletRequest request) {
        allowance.spend(request, FINDINGS);
        return Attempt.at(() -> StudyAnswers.of(StudyFindings.of(
                FindingsTable.study(body), Resampling.seeded(Objects.requireNonNullElse(body.seed(), 1L)))));
    }

    @PostMapping("/yield")
    YieldAnswer share(@RequestBody YieldRequest body) {
        return Attempt.at(() -> YieldCalculation.of(body));
    }
}
