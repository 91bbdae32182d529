package frillbook.client;

import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.extensions.XSSFCellBorder;
import org.apache.poi.xssf.usermodel.extensions.XSSFCellFill;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTBorder;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTFill;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTFont;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTXf;

/**
 * Copies what a cell looks like from one workbook to another. The library writes the font, the
 * border and the fill as XML for that and reads them again, which takes longer than all else about
 * a page.
 */
record ClientStyle(XSSFWorkbook from, XSSFWorkbook to) {
  XSSFCellStyle copied(XSSFCellStyle style) {
    XSSFCellStyle copy = to.createCellStyle();
    CTXf xf = copy.getCoreXf();
    xf.set(style.getCoreXf());
    StylesTable theirs = from.getStylesSource();
    StylesTable ours = to.getStylesSource();
    CTFill fill = (CTFill) theirs.getFillAt((int) xf.getFillId()).getCTFill().copy();
    xf.setFillId(ours.putFill(new XSSFCellFill(fill, ours.getIndexedColors())));
    CTBorder border = (CTBorder) theirs.getBorderAt((int) xf.getBorderId()).getCTBorder().copy();
    xf.setBorderId(
        ours.putBorder(new XSSFCellBorder(border, ours.getTheme(), ours.getIndexedColors())));
    copy.setDataFormat(to.createDataFormat().getFormat(style.getDataFormatString()));
    XSSFFont font = new XSSFFont((CTFont) style.getFont().getCTFont().copy());
    xf.setFontId(ours.putFont(font));
    return copy;
  }
}
