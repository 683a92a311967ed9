package org.berrywatt.server.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.cell.FailureKind;
import org.berrywatt.cell.Stage;
import org.berrywatt.contract.CatalogueAnswer;
import org.berrywatt.leaderboard.Count;
import org.berrywatt.leaderboard.Metric;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.MeasuringUnit;
import org.berrywatt.quantity.Units;
import org.berrywatt.reading.Fields;
import org.berrywatt.reading.LeadSwap;

/** The catalogues of the science as they travel. */
final class Catalogue {

    private Catalogue() {}

    static CatalogueAnswer answer() {
        return new CatalogueAnswer(
                Units.all().stream().map(Catalogue::unit).toList(),
                Fields.all().stream().map(Catalogue::field).toList(),
                BuildCatalogue.all().stream().map(Catalogue::parameter).toList(),
                Arrays.stream(Stage.values()).map(Catalogue::stage).toList(),
                keys(Arrays.stream(Lamp.values()).map(Lamp::key)),
                keys(Arrays.stream(Instrument.values()).map(Instrument::key)),
                Metric.all().stream().map(Catalogue::metric).toList(),
                LeadSwap.ZERO_STEPS);
    }

    private static CatalogueAnswer.Unit unit(MeasuringUnit unit) {
        return new CatalogueAnswer.Unit(
                unit.key(), unit.quantity().key(), unit.symbols(), unit.toSi(), unit.offsetSi());
    }

    private static CatalogueAnswer.Field field(Field field) {
        return new CatalogueAnswer.Field(
                field.key(),
                field.quantity().key(),
                field.unitKeys(),
                field.possibleLowSi(),
                field.possibleHighSi(),
                field.usualLowSi(),
                field.usualHighSi());
    }

    private static CatalogueAnswer.Parameter parameter(BuildParameter parameter) {
        var field = parameter.field();
        return new CatalogueAnswer.Parameter(
                parameter.key(),
                parameter.stage().key(),
                parameter.kind().key(),
                field == null ? null : field.key(),
                parameter.levelKeys(),
                parameter.openLevelKeys());
    }

    private static CatalogueAnswer.StageChoice stage(Stage stage) {
        return new CatalogueAnswer.StageChoice(
                stage.key(), keys(stage.failures().stream().map(FailureKind::key)), stage.hot());
    }

    private static CatalogueAnswer.MetricChoice metric(Metric metric) {
        return new CatalogueAnswer.MetricChoice(
                metric.key(), metric.unit(), keys(metric.counts().stream().map(Count::key)));
    }

    private static List<String> keys(Stream<String> keys) {
        return keys.toList();
    }
}
