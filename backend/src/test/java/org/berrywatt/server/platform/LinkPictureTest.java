package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class LinkPictureTest {

    private static final int PIXELS_PER_MODULE = 4;

    @Test
    void readsBackAsTheSameLink() throws Exception {
        var link = "http://192.0.2.2:8080/join.html#KLMN-PQRS";
        var read = new QRCodeReader().decode(photograph(LinkPicture.svg(link)));
        assertThat(read.getText()).isEqualTo(link);
        assertThat(read.getBarcodeFormat()).isEqualTo(BarcodeFormat.QR_CODE);
    }

    @Test
    void refusesALinkThatFitsIntoNoCode() {
        assertThatIllegalArgumentException().isThrownBy(() -> LinkPicture.svg("x".repeat(4000)));
    }

    /** Paints the squares of the path on white. */
    private static BinaryBitmap photograph(String svg) {
        var size = Pattern.compile("viewBox=\"0 0 (\\d+)").matcher(svg);
        assertThat(size.find()).isTrue();
        int side = Integer.parseInt(size.group(1)) * PIXELS_PER_MODULE;
        var pixels = new int[side * side];
        Arrays.fill(pixels, 0xFFFFFF);
        Pattern.compile("M(\\d+) (\\d+)h1v1h-1z")
                .matcher(svg)
                .results()
                .forEach(dark -> paint(pixels, side, Integer.parseInt(dark.group(1)), Integer.parseInt(dark.group(2))));
        return new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels)));
    }

    private static void paint(int[] pixels, int side, int column, int row) {
        for (int y = row * PIXELS_PER_MODULE; y < (row + 1) * PIXELS_PER_MODULE; y++) {
            Arrays.fill(pixels, y * side + column * PIXELS_PER_MODULE, y * side + (column + 1) * PIXELS_PER_MODULE, 0);
        }
    }
}
