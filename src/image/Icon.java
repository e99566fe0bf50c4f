import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** The program's icon, drawn here: one pattern piece, its seam drawn out from the place it had. */
final class Icon {
    private static final int SIZE = 256;

    private Icon() {}

    /** Writes the icon in the form that this kind of system wants, and returns the file. */
    static Path write(Path folder, String system) throws IOException {
        byte[] png = png(SIZE);
        if (system.equals("windows")) {
            return Files.write(folder.resolve("easewright.ico"), ico(png));
        }
        if (system.equals("mac")) {
            return Files.write(folder.resolve("easewright.icns"), icns(png));
        }
        return Files.write(folder.resolve("easewright.png"), png);
    }

    private static byte[] png(int size) throws IOException {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.scale(size / 256.0, size / 256.0);
        g.setColor(new Color(0xF4EFE6));
        g.fill(new RoundRectangle2D.Double(8, 8, 240, 240, 52, 52));
        g.setColor(Color.WHITE);
        g.fill(piece(150, 196));
        g.setColor(new Color(0x1F2933));
        g.setStroke(new BasicStroke(9, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(piece(150, 196));
        g.setColor(new Color(0x5B6B7A));
        g.setStroke(new BasicStroke(6, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, new float[] {2, 13}, 0));
        Path2D before = new Path2D.Double();
        before.moveTo(150, 48);
        before.curveTo(158, 96, 168, 108, 168, 136);
        before.lineTo(168, 208);
        g.draw(before);
        g.setColor(new Color(0xC2410C));
        g.setStroke(new BasicStroke(9, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(new Line2D.Double(56, 130, 190, 130));
        g.fill(new Ellipse2D.Double(180, 116, 28, 28));
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    private static Path2D piece(double waist, double hip) {
        Path2D path = new Path2D.Double();
        path.moveTo(56, 58);
        path.curveTo(90, 58, 120, 55, waist, 48);
        path.curveTo(waist + 12, 92, hip, 100, hip, 136);
        path.lineTo(hip, 208);
        path.lineTo(56, 208);
        path.closePath();
        return path;
    }

    /** One picture, packed as PNG: a head, one entry, the picture. */
    private static byte[] ico(byte[] png) {
        ByteBuffer out = ByteBuffer.allocate(22 + png.length).order(ByteOrder.LITTLE_ENDIAN);
        out.putShort((short) 0).putShort((short) 1).putShort((short) 1);
        // A width and height of 256 are written as 0.
        out.put((byte) 0).put((byte) 0).put((byte) 0).put((byte) 0);
        out.putShort((short) 1).putShort((short) 32).putInt(png.length).putInt(22);
        return out.put(png).array();
    }

    /** One picture of 256 points, packed as PNG. */
    private static byte[] icns(byte[] png) {
        ByteBuffer out = ByteBuffer.allocate(16 + png.length);
        out.put("icns".getBytes(StandardCharsets.US_ASCII)).putInt(16 + png.length);
        out.put("ic08".getBytes(StandardCharsets.US_ASCII)).putInt(8 + png.length);
        return out.put(png).array();
    }
}
