package org.berrywatt.server;

import static java.util.Map.entry;

import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.berrywatt.contract.JoinRequest;
import org.berrywatt.contract.SetupRequest;
import org.berrywatt.contract.SignInRequest;
import org.berrywatt.server.access.Teachers;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The ways in and out, the tables of a day, and what is worked out for anybody, beside the doors of {@link Doors}. */
final class EntranceDoors {

    private static final String PASSWORD = "seven slow brass kettles";
    private static final String ADDRESS_OF_ITS_OWN = "192.0.2.15";

    private final Bench bench;
    private final Api own;
    private final String teacher = "Teacher " + UUID.randomUUID().toString().substring(0, 8);

    EntranceDoors(Bench bench, Api own, Teachers teachers) {
        this.bench = bench;
        this.own = own;
        teachers.add(teacher, PASSWORD);
    }

    Map<String, Function<Api, MvcTestResult>> all() {
        return Stream.concat(entrances(), Stream.concat(tables(), calculations()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private Stream<Map.Entry<String, Function<Api, MvcTestResult>>> entrances() {
        return Stream.of(
                entry("GET /api/access", by -> by.get("/api/access")),
                entry(
                        "POST /api/access/setup",
                        by -> by.from(ADDRESS_OF_ITS_OWN)
                                .post(new SetupRequest("key", teacher, PASSWORD), "/api/access/setup")),
                entry(
                        "POST /api/access/sign-in",
                        by -> by.post(new SignInRequest(teacher, PASSWORD), "/api/access/sign-in")),
                entry("PUT /api/access/password", by -> by.put("{}", "/api/access/password")),
                entry("POST /api/access/new-password", by -> by.post("{}", "/api/access/new-password")),
                entry("GET /api/access/browsers", by -> by.get("/api/access/browsers")),
                entry("POST /api/access/sign-out-elsewhere", by -> by.post("{}", "/api/access/sign-out-elsewhere")),
                entry("POST /api/access/sign-out", by -> by.post("{}", "/api/access/sign-out")),
                entry("POST /api/access/join", by -> by.post(new JoinRequest(bench.codeOf(own)), "/api/access/join")));
    }

    private Stream<Map.Entry<String, Function<Api, MvcTestResult>>> tables() {
        var day = bench.day.id();
        return Stream.of(
                entry("GET /api/labdays/{id}/tables", by -> by.get("/api/labdays/{id}/tables", day)),
                entry("GET /api/labdays/{id}/tables.zip", by -> by.get("/api/labdays/{id}/tables.zip", day)),
                entry(
                        "GET /api/labdays/{id}/tables/{name}.csv",
                        by -> by.get("/api/labdays/{id}/tables/{name}.csv", day, "cells")));
    }

    /** An empty request comes as far as the question what is missing. */
    private static Stream<Map.Entry<String, Function<Api, MvcTestResult>>> calculations() {
        return Stream.of("curve", "diode", "findings", "leaderboard", "light", "normalisation", "uncertainty", "yield")
                .map(name -> "/api/calculations/" + name)
                .map(address -> entry("POST " + address, by -> by.post("{}", address)));
    }
}
