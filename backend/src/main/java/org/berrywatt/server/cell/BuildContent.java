package org.berrywatt.server.cell;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a build sheet says, understood. */
record BuildContent(List<RecipeEntry> recipe, @Nullable TypedCellArea area) {}
