package org.setpower.base;

/** Refusals that any parameter can meet. {0} is the name of the parameter. */
public enum BaseErrorCode implements ErrorCode {
  MISSING(ErrorKind.DOMAIN, "{0} is missing"),
  NOT_A_NUMBER(ErrorKind.WRONG_KIND, "{0} must be a number; \"{1}\" is not"),
  AMBIGUOUS_NUMBER(
      ErrorKind.DOMAIN,
      "{0} \"{1}\" could be thousands or decimals; write a thousand as 1000, and decimals with"
          + " fewer or more than three digits (1.2 or 1.2500)"),
  NOT_A_TEXT(ErrorKind.WRONG_KIND, "{0} must be text; it is the number {1}"),
  NOT_FINITE(ErrorKind.DOMAIN, "{0} is too large to compute with"),
  ZERO_OR_BLANK(
      ErrorKind.DOMAIN,
      "{0} is 0 or a blank cell; it must be more than 0: fill in the cell that it refers to"),
  TOO_SMALL(ErrorKind.DOMAIN, "{0} is {1}; it must be {2} or more"),
  NOT_ABOVE(ErrorKind.DOMAIN, "{0} is {1}; it must be more than {2}"),
  TOO_LARGE(ErrorKind.DOMAIN, "{0} is {1}; it must be {2} or less"),
  NOT_BELOW(ErrorKind.DOMAIN, "{0} is {1}; it must be less than {2}"),
  NOT_WHOLE(ErrorKind.DOMAIN, "{0} is {1}; it must be a whole number"),
  NOT_A_SHARE(
      ErrorKind.DOMAIN,
      "{0} is {1}; it is a share from 0 to 100 %: for {2} percent write {2} % or {3}"),
  UNKNOWN_UNIT(ErrorKind.DOMAIN, "{0} \"{1}\" has an unknown unit; use {2}"),
  NOT_A_DATE(
      ErrorKind.DOMAIN,
      "{0} is \"{1}\", which is not a date from 1990 to 2199; use a date cell or text such as"
          + " \"2027-01-28\""),
  UNKNOWN_WORD(ErrorKind.DOMAIN, "{0} \"{1}\" is not known; it can be {2}"),
  DC_POWER_FACTOR(
      ErrorKind.DOMAIN,
      "power_factor is {0}, but direct current has none; leave it out or write 1"),
  ONE_VALUE(ErrorKind.WRONG_KIND, "{0} must be one value, not a range of {1} cells"),
  SHAPES_DIFFER(
      ErrorKind.WRONG_KIND, "the ranges differ in size: {0} has {1}, the result would have {2}"),
  TOO_MANY_CELLS(
      ErrorKind.DOMAIN,
      "a range of {0} cells is too large; give the filled rows only, at most {1}"),
  NOTHING_TO_LIST(ErrorKind.NO_ANSWER, "{0} has nothing to list for these arguments"),
  NOT_A_RECTANGLE(ErrorKind.WRONG_KIND, "{0} must be a rectangle of cells"),
  ROW_BLANK_CELL(ErrorKind.DOMAIN, "row {1} of {0} has no {2}"),
  ROW_NOT_A_NUMBER(ErrorKind.WRONG_KIND, "row {1} of {0}: {2} must be a number; \"{3}\" is not"),
  LENGTHS_DIFFER(
      ErrorKind.WRONG_KIND,
      "{0} has {1} cells and {2} has {3}; they belong side by side, row by row"),
  ROW_WIDTH(ErrorKind.DOMAIN, "{0} must have {1} columns ({2}); it has {3}"),
  NO_ROWS(ErrorKind.DOMAIN, "there is no filled row in {0}"),
  RESULT_NOT_FINITE(ErrorKind.DOMAIN, "the result is too large to show"),
  NO_SUCH_FUNCTION(ErrorKind.DOMAIN, "there is no function \"{0}\" here"),
  TOO_MANY_ARGUMENTS(ErrorKind.DOMAIN, "{0} takes {1} arguments; {2} were given");

  private final ErrorKind fault;
  private final String sentence;

  BaseErrorCode(ErrorKind fault, String sentence) {
    this.fault = fault;
    this.sentence = sentence;
  }

  @Override
  public ErrorKind kind() {
    return fault;
  }

  @Override
  public String sentence() {
    return sentence;
  }
}
