package org.setpower.command.message;

import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.text.FunctionTexts;

/** What is said about functions; null stands for English. */
public record LocalizedFunctionTexts(FunctionTexts translation) {
  public String sentence(FunctionSpec function) {
    return translation == null ? function.sentence() : translation.sentence(function);
  }

  public String resultWords(FunctionSpec function) {
    return translation == null ? function.resultWords() : translation.resultWords(function);
  }

  public String phrase(Parameter<?> parameter) {
    return translation == null ? parameter.phrase() : translation.phrase(parameter);
  }

  public String description(Parameter<?> parameter) {
    return translation == null ? parameter.description() : translation.description(parameter);
  }
}
