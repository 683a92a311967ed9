package org.berrywatt.server.platform;

import java.util.Set;

/** Which files of a database's folder a copy leaves out (PostgreSQL manual, "Backing Up the Data Directory"). */
final class DatabaseFiles {

    /** They belong to the process that runs now. */
    static final Set<String> OF_A_PROCESS = Set.of("postmaster.pid", "postmaster.opts");

    /** The log of changes is copied last, of the other folders a start makes what it needs. */
    private static final Set<String> EMPTIED = Set.of(
            "pg_wal",
            "pg_dynshmem",
            "pg_notify",
            "pg_replslot",
            "pg_serial",
            "pg_snapshots",
            "pg_stat_tmp",
            "pg_subtrans");

    private DatabaseFiles() {}

    /**
     * Whether a copy of a database at work takes a file or folder.
     *
     * @param path below the database's folder, with slashes
     */
    static boolean isCopiedAtWork(String path) {
        var name = path.substring(path.lastIndexOf('/') + 1);
        var folder = path.contains("/") ? path.substring(0, path.indexOf('/')) : "";
        return !OF_A_PROCESS.contains(path)
                && !EMPTIED.contains(folder)
                && !name.startsWith("pgsql_tmp")
                && !name.startsWith("backup_label")
                && !name.startsWith("tablespace_map")
                && !name.startsWith("pg_internal.init");
    }
}
