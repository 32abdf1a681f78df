package org.setpower.templates.spec;

/** How the values of a cell look. */
public enum CellFormat {
  TEXT("@"),
  /** A number of things. */
  COUNT("#,##0"),
  WHOLE("#,##0"),
  ONE("#,##0.0"),
  TWO("#,##0.00"),
  THREE("#,##0.000"),
  MONEY("#,##0.00"),
  /** A share, shown in percent. */
  SHARE("0.0%"),
  /** A share with the hundredths that a price list has. */
  FINE_SHARE("0.0#%"),
  /** A number with as many decimals as it has. */
  EXACT("General"),
  DATE("ddd d mmm yyyy"),
  /** A date of the job, shown without its year. */
  DAY("ddd d mmm"),
  /** Hours and minutes, of which a cell holds days. */
  DURATION("[h]:mm"),
  /** A time of day. */
  TIME("hh:mm");

  private final String code;

  CellFormat(String code) {
    this.code = code;
  }

  /** The number format code, en-US. */
  public String code() {
    return code;
  }

  /** The number format code of amounts with so many decimals. */
  public static String money(int decimals) {
    return decimals == 0 ? "#,##0" : "#,##0." + "0".repeat(decimals);
  }

  public boolean isDate() {
    return this == DATE || this == DAY;
  }

  /** Words and dates stand left, numbers right. */
  public boolean isLeft() {
    return isText() || isDate();
  }

  public boolean isText() {
    return this == TEXT;
  }
}
