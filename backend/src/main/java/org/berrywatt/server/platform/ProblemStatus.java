package org.berrywatt.server.platform;

import org.berrywatt.contract.ProblemCode;
import org.springframework.http.HttpStatus;

/** The HTTP status that goes with each problem code. */
final class ProblemStatus {

    private ProblemStatus() {}

    static HttpStatus of(ProblemCode code) {
        return switch (code) {
            case QUANTITY_EMPTY,
                    QUANTITY_NOT_A_NUMBER,
                    QUANTITY_AMBIGUOUS,
                    QUANTITY_UNKNOWN_UNIT,
                    QUANTITY_WRONG_UNIT,
                    QUANTITY_IMPOSSIBLE,
                    QUANTITY_UNUSUAL,
                    TEXT_EMPTY,
                    TEXT_TOO_SHORT,
                    TEXT_TOO_LONG,
                    TEXT_UNFIT,
                    DATE_OUT_OF_RANGE,
                    CHOICE_UNKNOWN,
                    VALUE_MISSING,
                    ZONE_REASON_NEEDED,
                    ZONE_BRIEFING_OPEN,
                    DARK_LEADS,
                    STATION_MISSING,
                    STATION_DARK,
                    SWEEP_TOO_SHORT,
                    SWEEP_ROW_INCOMPLETE,
                    SWEEP_NOT_FINITE,
                    SWEEP_TOO_FEW_LOADS,
                    SWEEP_NO_SPREAD,
                    SWEEP_WRONG_QUADRANT,
                    SWEEP_NOT_FALLING,
                    TOGGLES_INCOMPLETE,
                    SPECTRUM_ROWS,
                    SPECTRUM_NUMBERS,
                    SPECTRUM_WAVELENGTH,
                    SPECTRUM_RISING,
                    SPECTRUM_POWER,
                    SPECTRUM_DARK,
                    SPECTRUM_BAND,
                    SPECTRUM_TOO_LARGE,
                    LIGHT_BELOW_RESOLUTION,
                    CALCULATION_OUT_OF_RANGE,
                    CALCULATION_LIST_LENGTH,
                    CALCULATION_EITHER,
                    CALCULATION_TOO_NEAR,
                    CALCULATION_NO_PHOTOCURRENT,
                    CALCULATION_TWICE,
                    FINDINGS_TABLE_TOO_LARGE,
                    FINDINGS_TABLE_FAULT,
                    RULE_SHARE,
                    RULE_AGEING,
                    CALCULATION_NO_RESULT,
                    ARCHIVE_UNREADABLE,
                    ARCHIVE_ALTERED,
                    ARCHIVE_NEWER,
                    LABDAY_TITLE_NEEDED,
                    LABDAY_KEPT_TOO_SHORT,
                    PLAN_NOTHING_VARIED,
                    PLAN_ONE_LEVEL,
                    PLAN_LEVEL_TWICE,
                    PLAN_TOO_MANY_LEVELS,
                    PLAN_TOO_MANY_FACTORS,
                    PLAN_TOO_FEW_CELLS,
                    PLAN_EVERYTHING_FORBIDDEN,
                    PLAN_LEVEL_NEVER_ALLOWED,
                    PLAN_NO_TIME,
                    PLAN_NO_HEATER,
                    PAPER_UNREADABLE,
                    PAPER_NO_TABLE,
                    PAPER_TOO_MANY_ROWS,
                    PAPER_COLUMN_MISSING,
                    PAPER_COLUMN_UNKNOWN,
                    PAPER_COLUMN_TWICE,
                    PAPER_UNIT,
                    PAPER_TOO_MANY_VALUES,
                    PAPER_QUOTE_OPEN,
                    PAPER_NAME_UNKNOWN,
                    PAPER_REPEATED,
                    PAPER_TIME,
                    PAPER_FORMULA,
                    PAPER_LIGHT,
                    PAPER_UNUSUAL,
                    PAPER_AMBIGUOUS,
                    LOGGER_NAME_UNKNOWN,
                    PASSWORD_WEAK,
                    PASSWORD_GUESSABLE,
                    PASSWORD_WRONG,
                    ACCOUNT_UNKNOWN -> HttpStatus.UNPROCESSABLE_CONTENT;
            case LABEL_TAKEN,
                    NAME_TAKEN,
                    ZONE_NOT_SIGNED_OFF,
                    CELLS_FULL,
                    HEATER_TAKEN,
                    HEATER_CELL_ON,
                    LESSON_FULL,
                    LOGGER_FULL,
                    PLAN_MISSING,
                    LABDAY_CLOSED,
                    LABDAY_FINAL,
                    LABDAY_EXISTS,
                    TEAM_MERGED,
                    ID_REUSED,
                    REPLACED_ALREADY,
                    SETUP_DONE -> HttpStatus.CONFLICT;
            case EDITED_MEANWHILE -> HttpStatus.PRECONDITION_FAILED;
            case NOT_FOUND, FINDINGS_GONE -> HttpStatus.NOT_FOUND;
            case SIGN_IN_NEEDED, SIGN_IN_REFUSED, LOGGER_TOKEN -> HttpStatus.UNAUTHORIZED;
            case NOT_ALLOWED, TEAM_CODE_NEEDED, PAGE_OUTDATED -> HttpStatus.FORBIDDEN;
            case SLOW_DOWN, LOGGER_TOO_MANY, CALCULATION_TOO_MANY, FINDINGS_BUSY -> HttpStatus.TOO_MANY_REQUESTS;
            case REQUEST_TOO_LARGE, ARCHIVE_TOO_LARGE -> HttpStatus.CONTENT_TOO_LARGE;
            case REQUEST_UNREADABLE -> HttpStatus.BAD_REQUEST;
            case REQUEST_METHOD -> HttpStatus.METHOD_NOT_ALLOWED;
            case REQUEST_MEDIA_TYPE -> HttpStatus.UNSUPPORTED_MEDIA_TYPE;
            case UNAVAILABLE, STORAGE_FULL, STORAGE_DAMAGED -> HttpStatus.SERVICE_UNAVAILABLE;
            case INTERNAL -> HttpStatus.INTERNAL_SERVER_ERROR;
        };
    }
}
