package benchful.catalogue.suppliers;

/** Which currency a new supplier begins with; whoever knows says so. */
public interface UsualCurrency {

    /** Its code of ISO 4217. */
    String code();
}
