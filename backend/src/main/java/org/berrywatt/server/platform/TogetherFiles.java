package org.berrywatt.server.platform;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.core.io.Resource;
import org.springframework.web.servlet.resource.ResourceResolver;
import org.springframework.web.servlet.resource.ResourceResolverChain;

/** Finds files that were put together by the last part of their address. */
final class TogetherFiles implements ResourceResolver {

    private final Map<String, String> texts;

    TogetherFiles(Map<String, String> texts) {
        this.texts = texts;
    }

    @Override
    public @Nullable Resource resolveResource(
            @Nullable HttpServletRequest request,
            String path,
            List<? extends Resource> places,
            ResourceResolverChain chain) {
        var name = path.substring(path.lastIndexOf('/') + 1);
        return texts.containsKey(name) ? new InMemory(name, texts.get(name)) : null;
    }

    @Override
    public @Nullable String resolveUrlPath(String path, List<? extends Resource> places, ResourceResolverChain chain) {
        return null;
    }

    /** It has a name, which tells browsers its type, and a description, which tells it from others. */
    private static final class InMemory extends ByteArrayResource {

        private final String name;

        private InMemory(String name, String text) {
            super(text.getBytes(StandardCharsets.UTF_8), name);
            this.name = name;
        }

        @Override
        public String getFilename() {
            return name;
        }
    }
}
