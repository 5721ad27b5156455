package benchful.web.tables;

import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.Locale;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/**
 * Looks through a workbook before it is read: a small file can unpack to a huge one, and a cell that claims to stand in
 * column ZZZZZZ makes a reader lay out all the columns before it. The workbook's reader takes whatever part the workbook names for
 * its sheet, so every part is looked through, with the parser that this reader uses.
 * Source of the last cell, XFD1048576: ECMA-376 part 1, 18.2.27 (from memory).
 */
final class WorkbookBounds {
    private static final int LARGEST_UNPACKED = 40 * 1024 * 1024;
    private static final int MOST_PARTS = 1_000;
    private static final int MOST_LETTERS = 3;
    private static final int MOST_DIGITS = 7;
    private static final int MOST_CELLS_OF_A_ROW = 16_384;
    private static final XMLInputFactory PARSERS = parsers();

    private WorkbookBounds() {}

    static void check(byte[] bytes) throws TableFile.Unreadable {
        long left = LARGEST_UNPACKED;
        try (ZipFile zip = ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes)).get()) {
            int parts = 0;
            for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
                byte[] part = unpacked(zip, entry, left);
                left -= part.length;
                if (left < 0 || ++parts > MOST_PARTS) {
                    throw new TableFile.Unreadable("The file unpacks to more than 40 MB, or to more than 1,000 parts. Save only the table itself.");
                }
                checkCells(part);
            }
        } catch (IOException | IllegalArgumentException e) {
            throw new TableFile.Unreadable("The file is damaged. Save it again as XLSX or CSV.");
        }
    }

    private static byte[] unpacked(ZipFile zip, ZipArchiveEntry entry, long left) throws IOException {
        try (InputStream in = zip.getInputStream(entry)) {
            return in.readNBytes((int) left + 1);
        }
    }

    private static void checkCells(byte[] part) throws TableFile.Unreadable {
        int cells = 0;
        try {
            XMLStreamReader reader = PARSERS.createXMLStreamReader(new ByteArrayInputStream(part));
            while (reader.hasNext()) {
                if (reader.next() == XMLStreamReader.START_ELEMENT) {
                    cells = reader.getLocalName().equals("row") ? 0 : reader.getLocalName().equals("c") ? cells + 1 : cells;
                    checkAddress(reader, cells);
                }
            }
        } catch (XMLStreamException | RuntimeException e) {
            // Not XML, or broken from here on: the reader gets no further either, and says so where it needs this part.
        }
    }

    private static void checkAddress(XMLStreamReader reader, int cells) throws TableFile.Unreadable {
        if (cells > MOST_CELLS_OF_A_ROW) {
            throw new TableFile.Unreadable("A row of the workbook has more than 16,384 cells. Save only the table itself.");
        }
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String value = reader.getAttributeValue(i);
            boolean address = reader.getAttributeLocalName(i).equals("r") && reader.getLocalName().equals("c");
            if (address && (value.chars().filter(Character::isLetter).count() > MOST_LETTERS || value.chars().filter(Character::isDigit).count() > MOST_DIGITS)) {
                throw new TableFile.Unreadable("The workbook has a cell %s; spreadsheets end at XFD1048576. Save only the table itself."
                        .formatted(value.substring(0, Math.min(20, value.length())).toUpperCase(Locale.ROOT)));
            }
        }
    }

    private static XMLInputFactory parsers() {
        XMLInputFactory factory = new InputFactoryImpl();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        return factory;
    }
}
