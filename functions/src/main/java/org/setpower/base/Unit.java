package org.setpower.base;

/** The units of arguments and results, as they stand in brackets behind a name. */
public enum Unit {
  NONE(""),
  VOLT("V"),
  AMPERE("A"),
  WATT("W"),
  VOLT_AMPERE("VA"),
  KILOWATT("kW"),
  KILOVOLT_AMPERE("kVA"),
  WATT_HOUR("Wh"),
  KILOWATT_HOUR("kWh"),
  AMPERE_HOUR("Ah"),
  OHM("Ω"),
  MILLIOHM("mΩ"),
  OHM_PER_KILOMETRE("Ω/km"),
  CELSIUS("°C"),
  METRE("m"),
  SQUARE_MILLIMETRE("mm²"),
  HOUR("h"),
  DAY("days"),
  KILOGRAM("kg"),
  LITRE("L"),
  LITRE_PER_HOUR("L/h"),
  SHARE("share"),
  MONEY("money"),
  PIECES("pieces");

  private final String symbol;

  Unit(String symbol) {
    this.symbol = symbol;
  }

  public String symbol() {
    return symbol;
  }
}
