package org.setpower.command.bringin;

import java.util.function.UnaryOperator;
import org.setpower.command.message.CommandMessages;
import org.setpower.plan.common.PlanModel;
import org.setpower.text.MessageCatalog;

/** Words that are typed into a document, in its language. */
final class TransferWords {
  private TransferWords() {}

  static UnaryOperator<String> in(String language) {
    MessageCatalog words = CommandMessages.in(language);
    return english -> translated(english, words);
  }

  /** What a file of a plan is called. */
  static String title(PlanModel plan) {
    return switch (plan.name()) {
      case "lighting" -> CommandMessages.say("Lighting power plan");
      case "batteries" -> CommandMessages.say("Battery plan");
      case "budget" -> CommandMessages.say("Power budget");
      case "quote" -> CommandMessages.say("Rental quote");
      case "register" -> CommandMessages.say("Battery register");
      case "travel" -> CommandMessages.say("Battery travel list");
      default -> plan.title();
    };
  }

  private static String translated(String english, MessageCatalog words) {
    return switch (english) {
      case "lighting" -> words.say("lighting");
      case "power" -> words.say("power");
      case "batteries" -> words.say("batteries");
      case "generator" -> words.say("generator");
      case "distro" -> words.say("distro");
      case "cable" -> words.say("cable");
      case "adaptor" -> words.say("adaptor");
      case "splitter" -> words.say("splitter");
      case "fuel" -> words.say("fuel");
      case "energy" -> words.say("energy");
      case "running time" -> words.say("running time");
      case "hours on site" -> words.say("hours on site");
      case "discount" -> words.say("discount");
      case "minimum hire" -> words.say("minimum hire");
      case "damage waiver, not insurance" -> words.say("damage waiver, not insurance");
      case "security deposit" -> words.say("security deposit");
      default -> english;
    };
  }
}
