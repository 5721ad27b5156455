package benchful.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/**
 * Words that are spelt otherwise in the United States, or are others there, for templates: <code>{spelling:colour}</code>. Each is
 * called by its British spelling; the American ones stand in {@code messages/spelling_en-US.properties}, which {@link Writing#spelt} reads too.
 */
@MessageBundle(value = "spelling", locale = "en-GB")
public interface Spelling {
    @Message("aluminium")
    String aluminium();

    @Message("behaviour")
    String behaviour();

    @Message("behaviours")
    String behaviours();

    @Message("cancelled")
    String cancelled();

    @Message("catalogue")
    String catalogue();

    @Message("centimetre")
    String centimetre();

    @Message("centimetres")
    String centimetres();

    @Message("centre")
    String centre();

    @Message("centres")
    String centres();

    @Message("cheque")
    String cheque();

    @Message("colour")
    String colour();

    @Message("coloured")
    String coloured();

    @Message("colourful")
    String colourful();

    @Message("colouring")
    String colouring();

    @Message("colourant")
    String colourant();

    @Message("colourants")
    String colourants();

    @Message("colours")
    String colours();

    @Message("defence")
    String defence();

    @Message("draught")
    String draught();

    @Message("draughts")
    String draughts();

    @Message("favour")
    String favour();

    @Message("favourite")
    String favourite();

    @Message("fibre")
    String fibre();

    @Message("fibres")
    String fibres();

    @Message("flavour")
    String flavour();

    @Message("gramme")
    String gramme();

    @Message("grammes")
    String grammes();

    @Message("grey")
    String grey();

    @Message("honour")
    String honour();

    @Message("jeweller")
    String jeweller();

    @Message("jewellers")
    String jewellers();

    @Message("jewellery")
    String jewellery();

    @Message("judgement")
    String judgement();

    @Message("judgements")
    String judgements();

    @Message("kilogramme")
    String kilogramme();

    @Message("labelled")
    String labelled();

    @Message("labelling")
    String labelling();

    @Message("licence")
    String licence();

    @Message("licences")
    String licences();

    @Message("litre")
    String litre();

    @Message("litres")
    String litres();

    @Message("metre")
    String metre();

    @Message("metres")
    String metres();

    @Message("millilitre")
    String millilitre();

    @Message("millilitres")
    String millilitres();

    @Message("millimetre")
    String millimetre();

    @Message("millimetres")
    String millimetres();

    @Message("modelling")
    String modelling();

    @Message("mould")
    String mould();

    @Message("moulded")
    String moulded();

    @Message("moulding")
    String moulding();

    @Message("moulds")
    String moulds();

    @Message("neighbour")
    String neighbour();

    @Message("neighbouring")
    String neighbouring();

    @Message("neighbours")
    String neighbours();

    @Message("neutralise")
    String neutralise();

    @Message("odour")
    String odour();

    @Message("odours")
    String odours();

    @Message("organisation")
    String organisation();

    @Message("organise")
    String organise();

    @Message("oxidise")
    String oxidise();

    @Message("oxidised")
    String oxidised();

    @Message("practise")
    String practise();

    @Message("practised")
    String practised();

    @Message("practising")
    String practising();

    @Message("pressurised")
    String pressurised();

    @Message("programme")
    String programme();

    @Message("programmes")
    String programmes();

    @Message("recognise")
    String recognise();

    @Message("sensitise")
    String sensitise();

    @Message("sensitised")
    String sensitised();

    @Message("sensitiser")
    String sensitiser();

    @Message("sensitisers")
    String sensitisers();

    @Message("sensitises")
    String sensitises();

    @Message("sulphate")
    String sulphate();

    @Message("sulphide")
    String sulphide();

    @Message("sulphur")
    String sulphur();

    @Message("sulphuric")
    String sulphuric();

    @Message("towards")
    String towards();

    @Message("travelling")
    String travelling();

    @Message("tyre")
    String tyre();

    @Message("vapour")
    String vapour();

    @Message("vapours")
    String vapours();

    @Message("VAT")
    String VAT();
}
