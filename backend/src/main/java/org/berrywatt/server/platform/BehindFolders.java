package org.berrywatt.server.platform;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.Resource;
import org.springframework.web.servlet.resource.ResourceResolver;
import org.springframework.web.servlet.resource.ResourceResolverChain;

/** Finds a file by what follows the first folders of its address, whatever those are called. */
final class BehindFolders implements ResourceResolver {

    private final int folders;

    BehindFolders(int folders) {
        this.folders = folders;
    }

    @Override
    public @Nullable Resource resolveResource(
            @Nullable HttpServletRequest request,
            String path,
            List<? extends Resource> places,
            ResourceResolverChain chain) {
        return chain.resolveResource(request, behind(path), places);
    }

    @Override
    public @Nullable String resolveUrlPath(String path, List<? extends Resource> places, ResourceResolverChain chain) {
        return chain.resolveUrlPath(behind(path), places);
    }

    private String behind(String path) {
        var parts = path.split("/", folders + 1);
        return parts[parts.length - 1];
    }
}
