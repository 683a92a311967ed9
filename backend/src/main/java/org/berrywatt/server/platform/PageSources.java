package org.berrywatt.server.platform;

import static java.util.stream.Collectors.toMap;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.webjars.WebJarVersionLocator;

/** The files that pages are made of, by the addresses that browsers know: {@code /core/http.js}, {@code /webjars/idb/index.js}. */
final class PageSources {

    private static final String FOLDER = "/static";
    private static final String LIBRARIES = "/webjars/";
    private static final int DIGITS = 12;

    private final Map<String, Resource> files;
    private final WebJarVersionLocator libraries = new WebJarVersionLocator();

    PageSources() {
        try {
            var found = new PathMatchingResourcePatternResolver().getResources("classpath*:" + FOLDER + "/**/*.*");
            files = Arrays.stream(found).collect(toMap(PageSources::address, file -> file, (a, b) -> a, TreeMap::new));
        } catch (IOException missing) {
            throw new UncheckedIOException("the pages are not on the class path", missing);
        }
    }

    /** The pages by their file names, as they were written. */
    Map<String, String> pages() {
        return files.keySet().stream()
                .filter(address -> address.matches("/\\w+\\.html"))
                .collect(toMap(address -> address.substring(1), this::text));
    }

    /**
     * The text of a file.
     *
     * @throws UncheckedIOException when there is no file at this address
     */
    String text(String address) {
        return new String(content(address), StandardCharsets.UTF_8);
    }

    /**
     * One name for all files as they are: hexadecimal digits of a SHA-256 over their contents, the libraries' versions, and
     * what is made of them.
     */
    String version(ImportMap map, Collection<String> made) {
        var digest = sha256();
        files.keySet().forEach(address -> {
            digest.update(address.getBytes(StandardCharsets.UTF_8));
            digest.update(content(address));
        });
        map.libraries()
                .forEach(name -> digest.update((name + libraries.version(name)).getBytes(StandardCharsets.UTF_8)));
        made.forEach(text -> digest.update(text.getBytes(StandardCharsets.UTF_8)));
        return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
    }

    private byte[] content(String address) {
        try {
            return file(address).getContentAsByteArray();
        } catch (IOException missing) {
            throw new UncheckedIOException("no page can load " + address, missing);
        }
    }

    private Resource file(String address) {
        return address.startsWith(LIBRARIES)
                ? library(address.substring(LIBRARIES.length()))
                : files.getOrDefault(address, new ClassPathResource(FOLDER + address));
    }

    private Resource library(String path) {
        int end = path.indexOf('/');
        return new ClassPathResource(
                String.valueOf(libraries.fullPath(path.substring(0, end), path.substring(end + 1))));
    }

    private static String address(Resource file) {
        try {
            var place = file.getURL().getPath();
            return place.substring(place.lastIndexOf(FOLDER + "/") + FOLDER.length());
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java platform has SHA-256", missing);
        }
    }
}
