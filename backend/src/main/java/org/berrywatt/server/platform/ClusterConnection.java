package org.berrywatt.server.platform;

import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;

/** How the connection pool reaches the server's own database. */
record ClusterConnection(ClusterStart start) implements JdbcConnectionDetails {

    @Override
    public String getUsername() {
        return "postgres";
    }

    @Override
    public String getPassword() {
        return start.await().password();
    }

    @Override
    public String getJdbcUrl() {
        return start.await().jdbcUrl();
    }
}
