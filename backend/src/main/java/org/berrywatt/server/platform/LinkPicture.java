package org.berrywatt.server.platform;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A link as a QR code (ISO/IEC 18004), drawn as an SVG that scales to any size. */
public final class LinkPicture {

    /** Light modules around the code that a reader needs: ISO/IEC 18004, quiet zone. */
    private static final int QUIET_ZONE = 4;

    private LinkPicture() {}

    /**
     * Draws a link, dark on light whatever the page's colours.
     *
     * @param link up to about 2300 characters
     * @throws IllegalArgumentException when the link does not fit into a QR code
     */
    public static String svg(String link) {
        try {
            return svg(Encoder.encode(link, ErrorCorrectionLevel.M).getMatrix());
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException(
                    "does not fit into a QR code: " + link.length() + " characters", tooLong);
        }
    }

    private static String svg(ByteMatrix modules) {
        int side = modules.getWidth() + 2 * QUIET_ZONE;
        return """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %1$d %1$d" shape-rendering="crispEdges">\
                <path fill="#fff" d="M0 0h%1$dv%1$dH0z"/><path d="%2$s"/></svg>""".formatted(side, dark(modules));
    }

    private static String dark(ByteMatrix modules) {
        int side = modules.getWidth();
        return IntStream.range(0, side * side)
                .filter(at -> modules.get(at % side, at / side) == 1)
                .mapToObj(at -> "M" + (at % side + QUIET_ZONE) + " " + (at / side + QUIET_ZONE) + "h1v1h-1z")
                .collect(Collectors.joining());
    }
}
