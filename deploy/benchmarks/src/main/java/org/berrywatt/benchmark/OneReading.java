package org.berrywatt.benchmark;

import static java.util.concurrent.TimeUnit.MILLISECONDS;

import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.curve.Diode;
import org.berrywatt.curve.Sweep;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.leaderboard.Board;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.leaderboard.Standing;
import org.berrywatt.leaderboard.TeamCells;
import org.berrywatt.leaderboard.Terms;
import org.berrywatt.normalise.LoadSweep;
import org.berrywatt.normalise.UnderLight;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * A leaderboard of 200 cells with 10,000 trials each after one new reading, against judging all cells and ranking all teams
 * anew. Before anything is timed, both are shown to give the same standings to the last bit.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(MILLISECONDS)
public class OneReading {
    private static final int NEW_READING = 250;

    /** Teams of five, or every cell a team of its own. */
    @Param({"5", "1"})
    int cellsPerTeam = 5;

    private SimulatedClass day = SimulatedClass.of(cellsPerTeam);
    private List<TeamCells> teams = List.of();
    private Board board = Board.of(teams, terms());
    private final UnderLight spot = SimulatedClass.spot(NEW_READING);
    private final UnderLight sweep = sweep();

    @Setup
    public void rank() {
        day = SimulatedClass.of(cellsPerTeam);
        teams = day.teams();
        board = Board.of(teams, terms());
        board.standings();
        for (UnderLight reading : List.of(spot, sweep)) {
            if (!after(reading).equals(afresh(reading))) {
                throw new IllegalStateException("the change of one cell and the full recompute differ");
            }
        }
    }

    /** One light reading: its cell judged anew, its team ranked anew. */
    @Benchmark
    public List<Standing> reading() {
        return after(spot);
    }

    /** The same for a load sweep, with the fit of its diode. */
    @Benchmark
    public List<Standing> loadSweep() {
        return after(sweep);
    }

    /** All 200 cells and all teams. */
    @Benchmark
    public List<Standing> allAnew() {
        return afresh(spot);
    }

    private List<Standing> after(UnderLight reading) {
        return board.with(changed(reading, teams.get(0))).standings();
    }

    private List<Standing> afresh(UnderLight reading) {
        var all = SimulatedClass.of(cellsPerTeam).teams().stream()
                .map(team -> team.teamId().equals(teams.get(0).teamId()) ? changed(reading, team) : team)
                .toList();
        return Board.of(all, terms()).standings();
    }

    private TeamCells changed(UnderLight reading, TeamCells team) {
        return day.with(team, day.judged(0, reading));
    }

    private Terms terms() {
        return new Terms(Rule.usual(), cellsPerTeam, true, SimulatedClass.TRIALS);
    }

    /** Twelve points, each known to 2 %. */
    private static LoadSweep sweep() {
        var cell = new Diode(150e-6, 1e-8, 1.8, 300, 20_000, 25);
        return LoadSweep.of(Sweep.of(IntStream.rangeClosed(0, 11)
                .mapToDouble(i -> cell.openCircuitVoltageV() * (i + 0.5) / 12)
                .mapToObj(voltageV -> point(voltageV, cell.currentA(voltageV)))
                .toList()));
    }

    private static SweepPoint point(double voltageV, double currentA) {
        return new SweepPoint(voltageV, currentA, 0.003 * voltageV, 0.02 * currentA);
    }
}
