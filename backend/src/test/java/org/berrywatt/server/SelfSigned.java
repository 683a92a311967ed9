package org.berrywatt.server;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.Base64;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/**
 * A certificate for this computer that nobody vouches for, made by the Java platform's own tool.
 *
 * @param pem file with the certificate
 * @param privateKey file with its key
 * @param trust believes this certificate and no other
 */
record SelfSigned(Path pem, Path privateKey, SSLContext trust) {

    private static final String PASSWORD = "only-for-this-test";

    static SelfSigned in(Path folder) throws Exception {
        var store = Files.createDirectories(folder).resolve("store.p12");
        make(store);
        var keys = KeyStore.getInstance(store.toFile(), PASSWORD.toCharArray());
        var pem = write(
                folder.resolve("certificate.pem"),
                "CERTIFICATE",
                keys.getCertificate("berrywatt").getEncoded());
        var key = keys.getKey("berrywatt", PASSWORD.toCharArray()).getEncoded();
        return new SelfSigned(pem, write(folder.resolve("key.pem"), "PRIVATE KEY", key), trust(keys));
    }

    private static void make(Path store) throws IOException, InterruptedException {
        var tool = Path.of(System.getProperty("java.home"), "bin", "keytool").toString();
        var made = new ProcessBuilder(
                        tool,
                        "-genkeypair",
                        "-alias",
                        "berrywatt",
                        "-keyalg",
                        "EC",
                        "-groupname",
                        "secp256r1",
                        "-validity",
                        "2",
                        "-dname",
                        "CN=localhost",
                        "-ext",
                        "san=dns:localhost,ip:127.0.0.1",
                        "-storetype",
                        "PKCS12",
                        "-storepass",
                        PASSWORD,
                        "-keystore",
                        store.toString())
                .inheritIO()
                .start();
        if (!made.waitFor(2, TimeUnit.MINUTES) || made.exitValue() != 0) {
            throw new AssertionError("keytool made no certificate");
        }
    }

    private static Path write(Path file, String what, byte[] bytes) throws IOException {
        var lines = Base64.getMimeEncoder(64, "\n".getBytes(StandardCharsets.US_ASCII))
                .encodeToString(bytes);
        return Files.writeString(file, "-----BEGIN " + what + "-----\n" + lines + "\n-----END " + what + "-----\n");
    }

    private static SSLContext trust(KeyStore keys) throws GeneralSecurityException, IOException {
        var known = KeyStore.getInstance("PKCS12");
        known.load(null, null);
        known.setCertificateEntry("berrywatt", keys.getCertificate("berrywatt"));
        var factory = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        factory.init(known);
        var context = SSLContext.getInstance("TLS");
        context.init(null, factory.getTrustManagers(), null);
        return context;
    }
}
