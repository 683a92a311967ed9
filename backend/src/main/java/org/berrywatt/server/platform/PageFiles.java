package org.berrywatt.server.platform;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
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
import org.springframework.web.servlet.resource.ResourceTransformerChain;
import org.springframework.web.servlet.resource.TransformedResource;

/**
 * Pages and their files. Under an address that carries the version, a file is kept for good; everything else is kept under
 * an {@code ETag} of its content. Dates would not do: a reproducible build gives every version of a file the same one.
 */
@Configuration(proxyBeanMethods = false)
class PageFiles implements WebMvcConfigurer {

    private static final String FILES = "classpath:/static/";
    private static final String LIBRARIES = "classpath:/META-INF/resources/webjars/";
    private static final Duration LIBRARIES_STAY = Duration.ofHours(12);
    private static final CacheControl FOR_GOOD =
            CacheControl.maxAge(Duration.ofDays(365)).cachePublic().immutable();

    private final ServedPages pages;
    private final Map<String, String> etags = new ConcurrentHashMap<>();

    PageFiles(ServedPages pages) {
        this.pages = pages;
    }

    @Override
    public void addResourceHandlers(ResourceHandlerRegistry registry) {
        cached(registry, "/*.html", FILES, CacheControl.noCache())
                .resourceChain(false)
                .addTransformer(this::asServed);
        cached(registry, "/**", FILES, CacheControl.noCache());
        cached(registry, "/webjars/**", LIBRARIES, CacheControl.maxAge(LIBRARIES_STAY))
                .resourceChain(true);
        cached(registry, pages.place() + "/**", FILES, FOR_GOOD);
        cached(registry, pages.place() + "/webjars/**", LIBRARIES, FOR_GOOD).resourceChain(true);
        together(registry, pages.place() + ServedPages.TOGETHER + "*", FOR_GOOD);
        ofAnotherVersion(registry);
    }

    private void together(ResourceHandlerRegistry registry, String addresses, CacheControl keeping) {
        cached(registry, addresses, FILES, keeping)
                .resourceChain(false)
                .addResolver(new TogetherFiles(pages.together()));
    }

    /** A page that was open while the server changed goes on asking for its old version: it gets today's files, not kept. */
    private void ofAnotherVersion(ResourceHandlerRegistry registry) {
        together(registry, "/at/*" + ServedPages.TOGETHER + "*", CacheControl.noCache());
        cached(registry, "/at/*/**", FILES, CacheControl.noCache())
                .resourceChain(false)
                .addResolver(new BehindFolders(1));
        cached(registry, "/at/*/webjars/**", LIBRARIES, CacheControl.noCache())
                .resourceChain(false)
                .addResolver(new BehindFolders(2));
    }

    private ResourceHandlerRegistration cached(
            ResourceHandlerRegistry registry, String addresses, String place, CacheControl keeping) {
        return registry.addResourceHandler(addresses)
                .addResourceLocations(place)
                .setCacheControl(keeping)
                .setUseLastModified(false)
                .setEtagGenerator(this::etag);
    }

    private Resource asServed(HttpServletRequest request, Resource page, ResourceTransformerChain chain) {
        var text = pages.text(String.valueOf(page.getFilename()));
        return new TransformedResource(page, text.getBytes(StandardCharsets.UTF_8));
    }

    /** A served page is no file: its description says nothing. */
    private String etag(Resource file) {
        return file instanceof TransformedResource
                ? digest(file)
                : etags.computeIfAbsent(file.getDescription(), name -> digest(file));
    }

    private static String digest(Resource file) {
        try (var content = file.getInputStream()) {
            return DigestUtils.md5DigestAsHex(content);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
