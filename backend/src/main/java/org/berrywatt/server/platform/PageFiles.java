package org.berrywatt.server.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.util.DigestUtils;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistration;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Pages and their files, kept by browsers under an {@code ETag} of their content. Dates would not do: a reproducible
 * build gives every version of a file the same one.
 */
@Configuration(proxyBeanMethods = false)
class PageFiles implements WebMvcConfigurer {

    private static final Duration LIBRARIES_STAY = Duration.ofHours(12);
    private final Map<String, String> etags = new ConcurrentHashMap<>();

    @Override
    public void addResourceHandlers(ResourceHandlerRegistry registry) {
        cached(registry, "/**", "classpath:/static/", CacheControl.noCache());
        cached(registry, "/webjars/**", "classpath:/META-INF/resources/webjars/", CacheControl.maxAge(LIBRARIES_STAY))
                .resourceChain(true);
    }

    private ResourceHandlerRegistration cached(
            ResourceHandlerRegistry registry, String addresses, String place, CacheControl keeping) {
        return registry.addResourceHandler(addresses)
                .addResourceLocations(place)
                .setCacheControl(keeping)
                .setUseLastModified(false)
                .setEtagGenerator(file -> etags.computeIfAbsent(file.getDescription(), name -> etag(file)));
    }

    private static String etag(Resource file) {
        try (var content = file.getInputStream()) {
            return DigestUtils.md5DigestAsHex(content);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
