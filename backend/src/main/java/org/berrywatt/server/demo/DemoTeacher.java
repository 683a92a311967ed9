package org.berrywatt.server.demo;

import org.berrywatt.server.access.Caller;
import org.berrywatt.server.access.Teachers;
import org.springframework.stereotype.Component;

/** The invented teacher. Name and password are no secret: they are printed on the console of every demo. */
@Component
class DemoTeacher {

    static final String NAME = "Demo teacher";
    static final String PASSWORD = "hedgerow cells";

    private final Teachers teachers;

    DemoTeacher(Teachers teachers) {
        this.teachers = teachers;
    }

    Caller.Teacher caller() {
        return teachers.find(NAME).orElseGet(() -> teachers.add(NAME, PASSWORD));
    }
}
