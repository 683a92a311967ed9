package org.berrywatt.contract;

/** Stable codes of problem details; each has a sentence {@code problem.CODE} and a way out in the text catalogue. */
public enum ProblemCode {
    QUANTITY_EMPTY("quantity.empty"),
    QUANTITY_NOT_A_NUMBER("quantity.notANumber"),
    QUANTITY_AMBIGUOUS("quantity.ambiguous"),
    QUANTITY_UNKNOWN_UNIT("quantity.unknownUnit"),
    QUANTITY_WRONG_UNIT("quantity.wrongUnit"),
    QUANTITY_IMPOSSIBLE("quantity.impossible"),
    QUANTITY_UNUSUAL("quantity.unusual"),
    TEXT_EMPTY("text.empty"),
    TEXT_TOO_SHORT("text.tooShort"),
    TEXT_TOO_LONG("text.tooLong"),
    TEXT_UNFIT("text.unfit"),
    CHOICE_UNKNOWN("choice.unknown"),
    VALUE_MISSING("value.missing"),
    LABEL_TAKEN("label.taken"),
    NAME_TAKEN("name.taken"),
    TEAM_CODE_NEEDED("team.codeNeeded"),
    CELLS_FULL("cells.full"),
    ZONE_NOT_SIGNED_OFF("zone.notSignedOff"),
    ZONE_REASON_NEEDED("zone.reasonNeeded"),
    ZONE_BRIEFING_OPEN("zone.briefingOpen"),
    STATION_MISSING("station.missing"),
    STATION_DARK("station.dark"),
    SWEEP_TOO_SHORT("sweep.tooShort"),
    SWEEP_ROW_INCOMPLETE("sweep.rowIncomplete"),
    SWEEP_NOT_FINITE("sweep.notFinite"),
    SWEEP_TOO_FEW_LOADS("sweep.tooFewLoads"),
    SWEEP_NO_SPREAD("sweep.noSpread"),
    SWEEP_WRONG_QUADRANT("sweep.wrongQuadrant"),
    SWEEP_NOT_FALLING("sweep.notFalling"),
    TOGGLES_INCOMPLETE("toggles.incomplete"),
    CALCULATION_OUT_OF_RANGE("calculation.outOfRange"),
    CALCULATION_LIST_LENGTH("calculation.listLength"),
    CALCULATION_EITHER("calculation.either"),
    CALCULATION_TOO_NEAR("calculation.tooNear"),
    CALCULATION_SPECTRUM("calculation.spectrum"),
    CALCULATION_NO_PHOTOCURRENT("calculation.noPhotocurrent"),
    CALCULATION_TWICE("calculation.twice"),
    CALCULATION_NO_RESULT("calculation.noResult"),
    CALCULATION_TOO_MANY("calculation.tooMany"),
    HEATER_TAKEN("heater.taken"),
    HEATER_CELL_ON("heater.cellOn"),
    LESSON_FULL("lesson.full"),
    LABDAY_CLOSED("labday.closed"),
    LABDAY_FINAL("labday.final"),
    LABDAY_EXISTS("labday.exists"),
    LABDAY_TITLE_NEEDED("labday.titleNeeded"),
    ARCHIVE_UNREADABLE("archive.unreadable"),
    ARCHIVE_ALTERED("archive.altered"),
    ARCHIVE_TOO_LARGE("archive.tooLarge"),
    ARCHIVE_NEWER("archive.newer"),
    TEAM_MERGED("team.merged"),
    ID_REUSED("id.reused"),
    REPLACED_ALREADY("replaced.already"),
    EDITED_MEANWHILE("edited.meanwhile"),
    NOT_FOUND("notFound"),
    SIGN_IN_NEEDED("access.signInNeeded"),
    NOT_ALLOWED("access.notAllowed"),
    SIGN_IN_REFUSED("access.refused"),
    SLOW_DOWN("access.slowDown"),
    PAGE_OUTDATED("access.pageOutdated"),
    SETUP_DONE("setup.done"),
    PASSWORD_WEAK("password.weak"),
    REQUEST_TOO_LARGE("request.tooLarge"),
    REQUEST_UNREADABLE("request.unreadable"),
    REQUEST_METHOD("request.method"),
    REQUEST_MEDIA_TYPE("request.mediaType"),
    UNAVAILABLE("unavailable"),
    INTERNAL("internal");

    private final String code;

    ProblemCode(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
