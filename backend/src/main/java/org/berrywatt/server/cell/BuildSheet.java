package org.berrywatt.server.cell;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import java.util.List;
import java.util.UUID;
import org.berrywatt.server.typed.Origin;
import org.hibernate.annotations.BatchSize;
import org.jspecify.annotations.Nullable;

/** Recipe and area of a cell; written once. A correction is a new sheet that names the one it replaces. */
@Entity
class BuildSheet {

    @Id
    private UUID id;

    private UUID cellId;
    private @Nullable UUID replaces;

    @Embedded
    private @Nullable TypedCellArea area;

    @ElementCollection
    @CollectionTable(name = "build_sheet_value", joinColumns = @JoinColumn(name = "sheet_id"))
    @BatchSize(size = 200)
    private List<RecipeEntry> recipe;

    @Embedded
    private Origin origin;

    protected BuildSheet() {}

    BuildSheet(UUID id, UUID cellId, @Nullable UUID replaces, BuildContent content, Origin origin) {
        this.id = id;
        this.cellId = cellId;
        this.replaces = replaces;
        this.area = content.area();
        this.recipe = content.recipe();
        this.origin = origin;
    }

    UUID id() {
        return id;
    }

    UUID cellId() {
        return cellId;
    }

    @Nullable
    UUID replaces() {
        return replaces;
    }

    @Nullable
    TypedCellArea area() {
        return area;
    }

    List<RecipeEntry> recipe() {
        return recipe;
    }

    Origin origin() {
        return origin;
    }
}
