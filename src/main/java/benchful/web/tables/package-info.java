/** Tables as people keep them in spreadsheets: CSV and XLSX, in and out. */
package benchful.web.tables;
