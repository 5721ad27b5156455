package benchful.documents.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import org.verapdf.core.EncryptedPdfException;
import org.verapdf.core.ModelParsingException;
import org.verapdf.core.ValidationException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** The rules of ISO 14289-1:2014 (PDF/UA-1) that a program can check, by the reference validator veraPDF. */
final class UniversalAccess {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private UniversalAccess() {}

    /** Each as its clause and what is wrong; empty where nothing is. */
    static List<String> barriers(byte[] pdf) throws IOException {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            return validator.validate(parser).getTestAssertions().stream().filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(assertion -> "%s: %s".formatted(assertion.getRuleId().getClause(), assertion.getMessage())).distinct().toList();
        } catch (ModelParsingException | EncryptedPdfException | ValidationException e) {
            throw new IOException(e);
        }
    }
}
