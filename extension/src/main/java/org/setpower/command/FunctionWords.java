package org.setpower.command;

import org.setpower.sheet.FunctionSpec;
import org.setpower.sheet.Parameter;
import org.setpower.sheet.Translation;

/** What is said about functions; null stands for English. */
record FunctionWords(Translation translation) {
  String sentence(FunctionSpec function) {
    return translation == null ? function.sentence() : translation.sentence(function);
  }

  String resultWords(FunctionSpec function) {
    return translation == null ? function.resultWords() : translation.resultWords(function);
  }

  String phrase(Parameter<?> parameter) {
    return translation == null ? parameter.phrase() : translation.phrase(parameter);
  }

  String description(Parameter<?> parameter) {
    return translation == null ? parameter.description() : translation.description(parameter);
  }
}
