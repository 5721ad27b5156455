package benchful.documents.parts;

import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;

/** Drawings of our own turned into dots. */
final class Stamps {
    /** Across 6 mm this is 600 dots per inch. */
    private static final float DOTS = 142;

    private Stamps() {}

    static byte[] png(String svg) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PNGTranscoder transcoder = new PNGTranscoder();
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, DOTS);
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_HEIGHT, DOTS);
        try {
            transcoder.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput(out));
        } catch (TranscoderException e) {
            throw new IllegalArgumentException("A sign's drawing can't be turned into dots.", e);
        }
        return out.toByteArray();
    }
}
