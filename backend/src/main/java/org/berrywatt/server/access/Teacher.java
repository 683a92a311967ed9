package org.berrywatt.server.access;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;

/** A teacher's account. */
@Entity
class Teacher {

    @Id
    private UUID id;

    private String name;

    @Column(nullable = false)
    private String nameFolded;

    private String passwordHash;
    private Instant createdAt;

    @NullUnmarked
    protected Teacher() {}

    Teacher(String name, String passwordHash, Instant createdAt) {
        this.id = UUID.randomUUID();
        this.name = name.strip();
        this.nameFolded = fold(name);
        this.passwordHash = passwordHash;
        this.createdAt = createdAt;
    }

    /** Names are compared without regard to case and outer spaces. */
    static String fold(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    UUID id() {
        return id;
    }

    String name() {
        return name;
    }

    String passwordHash() {
        return passwordHash;
    }

    /** Keeps the same password in another way. */
    void keep(String newHash) {
        passwordHash = newHash;
    }

    Instant createdAt() {
        return createdAt;
    }

    Caller.Teacher asCaller() {
        return new Caller.Teacher(id, name);
    }
}
