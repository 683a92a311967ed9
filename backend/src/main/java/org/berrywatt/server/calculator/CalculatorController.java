package org.berrywatt.server.calculator;

import org.berrywatt.contract.calculation.CurveAnswer;
import org.berrywatt.contract.calculation.CurveRequest;
import org.berrywatt.contract.calculation.DiodeAnswer;
import org.berrywatt.contract.calculation.DiodeRequest;
import org.berrywatt.contract.calculation.LightAnswer;
import org.berrywatt.contract.calculation.LightRequest;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The calculator's doors. They keep nothing and need no pass: the same numbers, the same answer, for anybody. */
@RestController
@RequestMapping("/api/calculations")
class CalculatorController {

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
}
