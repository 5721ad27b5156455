/**
 * What a field of a spec may hold, said where the field is declared: bounds in the terms of JSON Schema, the sentence that tells
 * how to mend a wrong value, and words for what many fields hold alike. The published schemas are made of it.
 */
package benchful.web.forms.fields;
