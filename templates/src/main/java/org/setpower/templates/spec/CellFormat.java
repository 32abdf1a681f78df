package org.setpower.templates.spec;

/** How the values of a cell look and what may be typed into it. */
public enum CellFormat {
  TEXT("@", false),
  /** A number of things: needs no unit. */
  COUNT("#,##0", false),
  WHOLE("#,##0", true),
  ONE("#,##0.0", true),
  TWO("#,##0.00", true),
  THREE("#,##0.000", true),
  /** What one of a currency costs in another. */
  RATE("0.0000", true),
  MONEY("#,##0.00", true),
  /** A share, shown in percent. */
  SHARE("0.0%", false),
  /** A share with the hundredths that a price list has. */
  FINE_SHARE("0.0#%", false),
  /** A number with as many decimals as it has. */
  EXACT("General", false),
  DATE("ddd d mmm yyyy", false),
  /** A date of the job, shown without its year. */
  DAY("ddd d mmm", false),
  /** A time of day. */
  TIME("hh:mm", false);

  private final String code;
  private final boolean wantsUnit;

  CellFormat(String code, boolean wantsUnit) {
    this.code = code;
    this.wantsUnit = wantsUnit;
  }

  /** The number format code, en-US. */
  public String code() {
    return code;
  }

  /** The number format code of amounts with so many decimals. */
  public static String money(int decimals) {
    return decimals == 0 ? "#,##0" : "#,##0." + "0".repeat(decimals);
  }

  /** Whether the heading must name a unit. */
  public boolean wantsUnit() {
    return wantsUnit;
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

  /** A formula text that gives the value of this format as words. */
  String text(String value) {
    return switch (this) {
      case TEXT, EXACT -> value;
      case COUNT, WHOLE -> "ROUND(" + value + ";0)";
      case ONE -> "ROUND(" + value + ";1)";
      case TWO, MONEY -> "ROUND(" + value + ";2)";
      case THREE -> "ROUND(" + value + ";3)";
      case RATE -> "ROUND(" + value + ";4)";
      case SHARE -> "ROUND(100*" + value + ";1)&\" %\"";
      case FINE_SHARE -> "ROUND(100*" + value + ";2)&\" %\"";
      case DATE, DAY -> "TEXT(" + value + ";\"d mmm\")";
      case TIME -> "TEXT(" + value + ";\"hh:mm\")";
    };
  }
}
