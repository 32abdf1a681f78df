package org.setpower.plan.travel;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.setpower.base.TextEnum;
import org.setpower.flight.CarriageMode;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.Result;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.common.Table;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.travel.rules.CabinEdition;
import org.setpower.plan.travel.rules.FreightRule;
import org.setpower.plan.travel.rules.RoadRule;

/** What the papers hold. Only lines that pass the gate are on them. */
public final class TravelPapers {
  static final ResultTable<CheckInRow> CHECK_IN =
      ResultTable.of(CheckInRow.class, TravelResults.LIST);
  static final ResultTable<CardRow> CARDS = ResultTable.of(CardRow.class, TravelResults.LIST);
  static final ResultTable<FreightRow> FREIGHT =
      ResultTable.of(FreightRow.class, TravelResults.LIST);
  static final ResultTable<RoadRow> ROAD = ResultTable.of(RoadRow.class, TravelResults.LIST);
  static final ResultTable<QuestionRow> QUESTIONS =
      ResultTable.of(QuestionRow.class, TravelResults.LIST);
  static final ResultTable<PaperRow> PAPERS = ResultTable.of(PaperRow.class, TravelResults.LIST);

  private TravelPapers() {}

  /** Which way a shipment goes. */
  public enum Direction implements TextEnum {
    OUT("out"),
    BACK("back");

    private final String word;

    Direction(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  /** Words on the papers of the travel list that are no sentences. */
  static final class Words {
    /** A name or number that is the same in every language. */
    static final String NAME = "{0}";

    static final String PIECES = "{0,number,0} pcs";
    static final String PIECES_OF = "{0,number,0} × {1,number,0.##} Wh";

    /** In place of a packing instruction: dry batteries with covered terminals. */
    static final String UNRESTRICTED = "not restricted (SP A123, A199)";

    /** What is to confirm of such. */
    static final String ALL = "all of it";

    /** To tick by hand. */
    static final String BOX = "☐";

    private Words() {}

    /** All that is translated. */
    static List<String> patterns() {
      return Stream.of(
              Stream.of(NAME, PIECES, PIECES_OF, UNRESTRICTED, ALL),
              FreightRule.all().stream().flatMap(FreightRule::words),
              RoadRule.all().stream().map(RoadRule::provision),
              CabinEdition.all().stream().filter(CabinEdition::read).map(CabinEdition::name),
              Stream.of(
                      CarriageMode.values(),
                      Bag.values(),
                      Onward.values(),
                      Direction.values(),
                      TravelChemistry.values())
                  .flatMap(Arrays::stream)
                  .map(TextEnum::word))
          .flatMap(s -> s)
          .filter(s -> !s.isEmpty())
          .distinct()
          .toList();
    }
  }

  /** A flight, or what is carried on it of a type. */
  @Table(key = "checkin", heading = "Check-in sheet", rows = 400)
  public record CheckInRow(
      @Result(
              key = "flight",
              heading = "Flight",
              from = {},
              rule = "Each flight on which something is carried: first the flight, then its types.")
          String flight,
      @Result(
              key = "type",
              heading = "Type",
              from = {},
              rule = "Type of battery.")
          String type,
      @Result(
              key = "chemistry",
              heading = "Chemistry",
              translated = true,
              from = {},
              rule = "As typed; Li-ion where blank.")
          TravelChemistry chemistry,
      @Result(
              key = "carried",
              heading = "How carried",
              translated = true,
              from = {},
              rule = "Spare, in equipment or power bank.")
          CarriageMode carried,
      @Result(
              key = "energy",
              heading = "Energy of one",
              form = NumberForm.ONE_DECIMAL,
              unit = "Wh",
              from = {},
              rule = "Wh on the label or worked out.")
          Double energy,
      @Result(
              key = "bag",
              heading = "Bag",
              translated = true,
              from = {},
              rule = "Cabin or hold.")
          Bag bag,
      @Result(
              key = "pieces",
              heading = "Pieces",
              unit = "pcs",
              from = {},
              rule = "Of all travellers on the flight.")
          Integer pieces,
      @Result(
              key = "maxCarried",
              heading = "Max. a person",
              unit = "pcs",
              from = {},
              rule =
                  "The least of the rules' and the carrier's figures of this type; what all spares and all equipment have together is said of the flight.")
          Integer maxCarried,
      @Result(
              key = "travellers",
              heading = "Travellers",
              from = {},
              rule = "Who carries them, by role, and how many.")
          String travellers,
      @Result(
              key = "notes",
              heading = "Notes",
              from = {},
              rule =
                  "Of a flight: date, carrier, route, rules. Of a type: the carrier's written answer.")
          List<Finding> notes) {}

  /** A traveller, or what the traveller carries of a battery. */
  @Table(key = "cards", heading = "Passenger cards", rows = 400)
  public record CardRow(
      @Result(
              key = "traveller",
              heading = "Traveller",
              from = {},
              rule = "Whose card it is.")
          String traveller,
      @Result(
              key = "battery",
              heading = "Battery",
              from = {},
              rule = "What is carried.")
          String battery,
      @Result(
              key = "amount",
              heading = "Amount",
              from = {},
              rule = "Pieces, and Wh of one where they are known.")
          Phrase amount,
      @Result(
              key = "carried",
              heading = "How carried",
              translated = true,
              from = {},
              rule = "Spare, in equipment or power bank.")
          CarriageMode carried,
      @Result(
              key = "energy",
              heading = "Energy of one",
              form = NumberForm.ONE_DECIMAL,
              unit = "Wh",
              from = {},
              rule = "Wh on the label or worked out.")
          Double energy,
      @Result(
              key = "pieces",
              heading = "Pieces",
              unit = "pcs",
              from = {},
              rule = "As on the line.")
          Integer pieces,
      @Result(
              key = "bag",
              heading = "Bag",
              translated = true,
              from = {},
              rule = "Cabin or hold.")
          Bag bag,
      @Result(
              key = "packed",
              heading = "Packed",
              from = {},
              rule = "To tick by hand.")
          String packed,
      @Result(
              key = "notes",
              heading = "Notes",
              from = {},
              rule =
                  "Of a traveller: production, contact, each flight with its counts, cautions. Of a battery: what was answered in writing, ticked or worked out; nothing else.")
          List<Finding> notes) {}

  /** Data of an air freight shipment. */
  @Table(key = "freight", heading = "Freight papers", rows = 120)
  public record FreightRow(
      @Result(
              key = "direction",
              heading = "Trip",
              translated = true,
              from = {},
              rule = "Out, or on the way back.")
          Direction direction,
      @Result(
              key = "battery",
              heading = "Battery",
              from = {},
              rule = "What is shipped.")
          String battery,
      @Result(
              key = "pieces",
              heading = "Pieces",
              unit = "pcs",
              from = {},
              rule = "As on the rest.")
          Integer pieces,
      @Result(
              key = "packed",
              heading = "Packed",
              from = {},
              rule = "To tick by hand.")
          String packed,
      @Result(
              key = "energy",
              heading = "Energy of one",
              form = NumberForm.ONE_DECIMAL,
              unit = "Wh",
              from = {},
              rule = "Wh on the label or worked out.")
          Double energy,
      @Result(
              key = "aircraft",
              heading = "Aircraft",
              translated = true,
              from = {},
              rule = "Passenger or cargo aircraft.")
          Onward aircraft,
      @Result(
              key = "un",
              heading = "UN number",
              from = {},
              rule = "Of the rule on the day of handing over.")
          String un,
      @Result(
              key = "name",
              heading = "Proper shipping name",
              from = {},
              rule = "Of the rule; marked where it is from memory.")
          String name,
      @Result(
              key = "hazard",
              heading = "Class",
              from = {},
              rule = "Class of dangerous goods.")
          String hazard,
      @Result(
              key = "instruction",
              heading = "Packing instruction",
              from = {},
              rule = "Of the rule.")
          Phrase instruction,
      @Result(
              key = "section",
              heading = "Section",
              from = {},
              rule = "Small batteries of small cells, or larger ones; not known is larger.")
          String section,
      @Result(
              key = "weight",
              heading = "Net weight",
              form = NumberForm.TWO_DECIMALS,
              unit = "kg",
              from = {},
              rule = "Pieces by weight of one.")
          Double weight,
      @Result(
              key = "packages",
              heading = "Packages",
              from = {},
              rule = "Fewest of the max. net weight.")
          Integer packages,
      @Result(
              key = "maxPackage",
              heading = "Max. a package",
              form = NumberForm.ONE_DECIMAL,
              unit = "kg",
              from = {},
              rule = "Net weight.")
          Double maxPackage,
      @Result(
              key = "maxCharge",
              heading = "Max. state of charge",
              form = NumberForm.SHARE,
              from = {},
              rule = "Of the rule.")
          Double maxCharge,
      @Result(
              key = "binds",
              heading = "Mandatory",
              from = {},
              rule = "Whether that state of charge is mandatory for its energy.")
          Boolean binds,
      @Result(
              key = "charge",
              heading = "State of charge",
              form = NumberForm.SHARE,
              from = {},
              rule = "As typed.")
          Double charge,
      @Result(
              key = "packaging",
              heading = "Packaging",
              from = {},
              rule = "Of the rule.")
          Phrase packaging,
      @Result(
              key = "marks",
              heading = "Marks",
              from = {},
              rule = "On each package.")
          Phrase marks,
      @Result(
              key = "labels",
              heading = "Labels",
              from = {},
              rule = "On each package.")
          Phrase labels,
      @Result(
              key = "notes",
              heading = "Notes",
              from = {},
              rule = "Parts of the rule that are from memory.")
          List<Finding> notes) {}

  /** What travels by road. */
  @Table(key = "road", heading = "Road paper", rows = 120)
  public record RoadRow(
      @Result(
              key = "direction",
              heading = "Trip",
              translated = true,
              from = {},
              rule = "Out, or on the way back.")
          Direction direction,
      @Result(
              key = "battery",
              heading = "Battery",
              from = {},
              rule = "What travels.")
          String battery,
      @Result(
              key = "pieces",
              heading = "Pieces",
              unit = "pcs",
              from = {},
              rule = "As on the rest.")
          Integer pieces,
      @Result(
              key = "packed",
              heading = "Packed",
              from = {},
              rule = "To tick by hand.")
          String packed,
      @Result(
              key = "energy",
              heading = "Energy of one",
              form = NumberForm.ONE_DECIMAL,
              unit = "Wh",
              from = {},
              rule = "Wh on the label or worked out.")
          Double energy,
      @Result(
              key = "un",
              heading = "UN number",
              from = {},
              rule = "Alone, or with or in equipment.")
          String un,
      @Result(
              key = "name",
              heading = "Proper shipping name",
              from = {},
              rule = "Alone, or with or in equipment.")
          String name,
      @Result(
              key = "hazard",
              heading = "Class",
              from = {},
              rule = "Class of dangerous goods; blank under the provision of small batteries.")
          String hazard,
      @Result(
              key = "tunnel",
              heading = "Tunnel code",
              from = {},
              rule =
                  "Tunnel restriction code under ADR; blank under the provision of small batteries.")
          String tunnel,
      @Result(
              key = "provision",
              heading = "Special provision",
              from = {},
              rule = "SP 188 for small batteries of small cells.")
          Phrase provision,
      @Result(
              key = "weight",
              heading = "Net weight",
              form = NumberForm.TWO_DECIMALS,
              unit = "kg",
              from = {},
              rule = "Pieces by weight of one.")
          Double weight,
      @Result(
              key = "points",
              heading = "Points",
              form = NumberForm.ONE_DECIMAL,
              from = {},
              rule = "Under ADR 1.1.3.6; none under SP 188.")
          Double points,
      @Result(
              key = "notes",
              heading = "Notes",
              from = {},
              rule = "Parts of the rule that are from memory.")
          List<Finding> notes) {}

  /** What to ask a carrier in writing. */
  @Table(key = "questions", heading = "Questions to carriers", rows = 12)
  public record QuestionRow(
      @Result(
              key = "carrier",
              heading = "Carrier",
              from = {},
              rule = "Who has not answered yet what needs an answer.")
          String carrier,
      @Result(
              key = "flights",
              heading = "Flights",
              from = {},
              rule = "The flights asked about.")
          String flights,
      @Result(
              key = "text",
              heading = "Question",
              from = {},
              rule =
                  "Text to send: each type that needs a written answer on a flight and has none.")
          List<Finding> text) {}

  /** A paper as a whole: check-in sheet, passenger cards, freight papers, road paper. */
  @Table(key = "papers", heading = "Papers", rows = 4)
  public record PaperRow(
      @Result(
              key = "issued",
              heading = "Date of issue",
              from = "project.issued",
              rule = "As on Project.")
          LocalDate issued,
      @Result(
              key = "rows",
              heading = "Rows",
              from = {},
              rule = "Rows on it.")
          Integer rows,
      @Result(
              key = "withheld",
              heading = "Withheld",
              from = {},
              rule = "Rows that belong on it and have status stop, and batteries with status stop.")
          Integer withheld,
      @Result(
              key = "notes",
              heading = "Notes",
              from = {},
              rule = "What the whole paper states.")
          List<Finding> notes) {}
}
