package org.setpower.plan.lighting.diagram;

import java.util.Arrays;
import java.util.List;

/** Words that the diagram adds to names and figures. */
enum DiagramWord {
  TITLE("Single-line diagram"),
  REVISION("revision {}"),
  PAGE("Page {} of {}"),
  DAY("Day shown: {}"),
  ALL_DAYS("All days, the worst figures"),
  PEAK("peak {}"),
  PEAKS("Peak: {}"),
  BOND_HERE("neutral bonded here"),
  BOND_DISTRO("neutral bonded at distro"),
  TOTAL("total {}"),
  IDLE("idle: {}"),
  OFF("not counted"),
  SHARED("shared breaker"),
  MULTI("multi-circuit"),
  SEE("→ {}, see below"),
  SEE_PAGE("→ {}, page {}"),
  FROM("{} from {}"),
  AS("as {}"),
  UPSTREAM("stop upstream: {}"),
  CONTINUED("{}, continued"),
  LOOSE("Not connected"),
  EMPTY("Nothing is connected yet: fill in Sources & distro, Outlets, Cable runs and Loads."),
  PLACES("Sources, distro, outlets: {} ok, {} check, {} stop"),
  RUNS("Cable runs: {} ok, {} check, {} stop"),
  LOADS("Loads: {} ok, {} check, {} stop"),
  UNMARKED("No word beside it: ok. Reasons of check: see the tabs."),
  STOPS("Do not switch on what is boxed."),
  SINGLES(
      "Single cores: connect earth (ground), neutral, legs. Disconnect in reverse, supply off."),
  COMPETENT("Planning figures. A competent person connects, tests and signs."),
  COLOURS("Core colours: {}. Compare the letters on site."),
  BROWN("brown"),
  BLACK("black"),
  GREY("grey"),
  RED("red"),
  BLUE("blue"),
  WHITE("white"),
  GREEN("green"),
  GREEN_YELLOW("green-yellow");

  private final String english;

  DiagramWord(String english) {
    this.english = english;
  }

  String english() {
    return english;
  }

  /** The word for a colour. */
  static DiagramWord ofColour(String english) {
    return Arrays.stream(values())
        .filter(w -> w.english.equals(english))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no word for " + english));
  }

  /** All of them in English. */
  static List<String> all() {
    return Arrays.stream(values()).map(DiagramWord::english).toList();
  }
}
