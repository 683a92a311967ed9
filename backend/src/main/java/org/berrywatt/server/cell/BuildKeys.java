package org.berrywatt.server.cell;

import java.util.List;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.BuildParameter;

/** Keys of the build catalogue in its order. */
final class BuildKeys {

    static final List<String> PARAMETERS =
            BuildCatalogue.all().stream().map(BuildParameter::key).toList();

    private BuildKeys() {}

    static int position(String parameter) {
        return PARAMETERS.indexOf(parameter);
    }
}
