package benchful.documents.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.DeflaterOutputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfwriter.COSStandardOutputStream;
import org.apache.pdfbox.pdfwriter.COSWriter;

/**
 * Writes the objects of a PDF one behind the other and forgets them: streams as they are, all others packed into compressed
 * object streams (ISO 32000-1:2008, 7.5.7), at the end the cross-reference stream that says where each is (7.5.8). Of an object
 * only its place is held, eight bytes.
 */
final class PdfObjects {
    private static final byte[] HEADER = {'%', 'P', 'D', 'F', '-', '1', '.', '7', '\n', '%', (byte) 0xE2, (byte) 0xE3, (byte) 0xCF, (byte) 0xD3, '\n'};
    /** Readers unpack a whole object stream to find one object in it. */
    private static final int PACKED_TOGETHER = 200;
    private static final int KIND = 1;
    private static final int PLACE = 5;
    private static final int INDEX = 2;

    private final COSStandardOutputStream out;
    private long[] places = new long[1024];
    private int last;
    private final ByteArrayOutputStream packed = new ByteArrayOutputStream();
    private final StringBuilder index = new StringBuilder();
    private int inPack;
    private int pack;

    /** @param out is not closed */
    PdfObjects(OutputStream out) throws IOException {
        this.out = new COSStandardOutputStream(out);
        this.out.write(HEADER);
    }

    /** Numbers that objects can take from now on: the first is one more than what this returns. */
    int reserve(int count) {
        int before = last;
        last += count;
        if (last >= places.length) {
            places = Arrays.copyOf(places, Math.max(last + 1, places.length * 2));
        }
        return before;
    }

    /** A reference to the object of this number, written or not yet. */
    static COSObject reference(long number) {
        return new COSObject(new COSObjectKey(number, 0), null);
    }

    static int number(COSObject object) {
        return (int) object.getKey().getNumber();
    }

    /** @param number a reserved one, written once */
    void write(int number, COSBase object) throws IOException {
        if (object instanceof COSStream) {
            places[number] = out.getPos();
            ascii(number + " 0 obj\n");
            object.accept(new Text(out));
            ascii("endobj\n");
        } else {
            pack(number, object);
        }
    }

    /** @param trailer the entries that the document has, such as its catalogue */
    void finish(COSDictionary trailer) throws IOException {
        unload();
        int number = reserve(1) + 1;
        places[number] = out.getPos();
        COSDictionary dictionary = new COSDictionary(trailer);
        dictionary.setItem(COSName.TYPE, COSName.XREF);
        dictionary.setInt(COSName.SIZE, last + 1);
        dictionary.setItem(COSName.W, COSArray.ofCOSIntegers(List.of(KIND, PLACE, INDEX)));
        stream(number, dictionary, crossReferences());
        ascii("startxref\n" + places[number] + "\n%%EOF\n");
        out.flush();
    }

    private void pack(int number, COSBase object) throws IOException {
        if (inPack == 0) {
            pack = reserve(1) + 1;
        }
        places[number] = ~((long) pack << Byte.SIZE * INDEX | inPack);
        index.append(number).append(' ').append(packed.size()).append(' ');
        object.accept(new Text(packed));
        packed.write('\n');
        inPack++;
        if (inPack == PACKED_TOGETHER) {
            unload();
        }
    }

    private void unload() throws IOException {
        if (inPack == 0) {
            return;
        }
        byte[] numbers = index.toString().getBytes(StandardCharsets.US_ASCII);
        COSDictionary dictionary = new COSDictionary();
        dictionary.setItem(COSName.TYPE, COSName.OBJ_STM);
        dictionary.setInt(COSName.N, inPack);
        dictionary.setInt(COSName.FIRST, numbers.length);
        ByteArrayOutputStream content = new ByteArrayOutputStream(numbers.length + packed.size());
        content.write(numbers);
        packed.writeTo(content);
        places[pack] = out.getPos();
        stream(pack, dictionary, content.toByteArray());
        packed.reset();
        index.setLength(0);
        inPack = 0;
    }

    private void stream(int number, COSDictionary dictionary, byte[] content) throws IOException {
        ByteArrayOutputStream deflated = new ByteArrayOutputStream();
        try (OutputStream deflater = new DeflaterOutputStream(deflated)) {
            deflater.write(content);
        }
        dictionary.setItem(COSName.FILTER, COSName.FLATE_DECODE);
        dictionary.setItem(COSName.LENGTH, COSInteger.get(deflated.size()));
        ascii(number + " 0 obj\n");
        dictionary.accept(new Text(out));
        ascii("stream\n");
        deflated.writeTo(out);
        ascii("\nendstream\nendobj\n");
    }

    /** For each number: 0 for a free one, 1 and its offset, or 2, its object stream and its place in that. */
    private byte[] crossReferences() {
        byte[] table = new byte[(last + 1) * (KIND + PLACE + INDEX)];
        for (int number = 0, at = 0; number <= last; number++) {
            long place = places[number];
            long packing = ~place;
            at = put(table, at, KIND, place == 0 ? 0 : place > 0 ? 1 : 2);
            at = put(table, at, PLACE, place >= 0 ? place : packing >> Byte.SIZE * INDEX);
            at = put(table, at, INDEX, place >= 0 ? 0 : packing & 0xFFFF);
        }
        return table;
    }

    private static int put(byte[] table, int at, int bytes, long value) {
        for (int i = 0; i < bytes; i++) {
            table[at + i] = (byte) (value >> Byte.SIZE * (bytes - 1 - i));
        }
        return at + bytes;
    }

    private void ascii(String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.US_ASCII));
    }

    /** The library's writer, but with references by the numbers that objects have here. */
    private static final class Text extends COSWriter {
        Text(OutputStream out) {
            super(out);
        }

        @Override
        public void writeReference(COSBase object) throws IOException {
            if (object instanceof COSObject) {
                getStandardOutput().write((object.getKey().getNumber() + " 0 R").getBytes(StandardCharsets.US_ASCII));
            } else {
                object.accept(this);
            }
        }
    }
}
