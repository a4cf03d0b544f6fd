package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/** What the rules of one group say: the file and its format. */
final class FileTexts {

  static final RuleBook.Group GROUP =
      new RuleBook.Group(
          "The file and its format",
          List.of(
              RuleText.of(FindingCode.JSON_SYNTAX)
                  .says(
                      "The text breaks the grammar of JSON at the place named; reading stops there, and what stood before it is still checked. Comments (// and /* */) are allowed.")
                  .example("willowbank-teaching", "\"head\": 4,", "\"head\": 4"),
              RuleText.of(FindingCode.JSON_EMPTY)
                  .says(
                      "The file holds blanks or comments only. It is told apart from a broken text because a saved-too-early file is its usual cause.")
                  .inWords("{ \"format\": \"hoopwright/layout-1\", … }", "// to do"),
              RuleText.of(FindingCode.JSON_LIMIT)
                  .says(
                      "Nesting, the number of tokens, and the lengths of numbers, texts and names are limited, so that no file can take unbounded time or memory. Real layouts stay far below.")
                  .example(
                      "willowbank-teaching",
                      "\"length\": 120",
                      "\"length\": 120.00000000000000000000000000000000000000000000000000000000000000000"),
              RuleText.of(FindingCode.DUPLICATE_MEMBER)
                  .says(
                      "JSON leaves open which of two members of one name counts, so programs disagree. Here the first is looked at and the second is refused.")
                  .example("willowbank-teaching", "\"head\": 4,", "\"head\": 4, \"head\": 5,"),
              RuleText.of(FindingCode.UNKNOWN_MEMBER)
                  .says(
                      "A member that the format does not have is most often a slip of the keys; taken lightly, a rule that the author wrote would not be kept. The nearest member is named, and a needed one that is misspelt is not reported as missing too.")
                  .example("willowbank-teaching", "\"mains\": {", "\"mians\": {"),
              RuleText.of(FindingCode.MISSING_MEMBER)
                  .says("Without this member a layout says too little to lay any string.")
                  .example("willowbank-teaching", "\"head\": 4,\n", "\n"),
              RuleText.of(FindingCode.WRONG_TYPE)
                  .says(
                      "The value is a text where a number must be, a number where a list must be, and so on. Nothing is converted silently.")
                  .example("willowbank-teaching", "\"head\": 4,", "\"head\": \"4\","),
              RuleText.of(FindingCode.WRONG_VALUE)
                  .says("The format has a closed set of words here, and this is none of them.")
                  .example("willowbank-100", "\"start\": \"throat\"", "\"start\": \"bottom\""),
              RuleText.of(FindingCode.NUMBER_RANGE)
                  .says(
                      "The number is beyond what any frame can have, or beyond what the format holds. Units are the usual cause.")
                  .example("willowbank-teaching", "\"head\": 4,", "\"head\": 501,"),
              RuleText.of(FindingCode.FORMAT_VERSION)
                  .says(
                      "A file of another version may mean something else by the same words, so nothing in it is judged.")
                  .example(
                      "willowbank-teaching", "\"hoopwright/layout-1\"", "\"hoopwright/layout-2\""),
              RuleText.of(FindingCode.BAD_HOLE_NAME)
                  .says(
                      "A hole name is a number from 1 to 500 and H or T, with L or R before it for one side.")
                  .example(
                      "willowbank-teaching",
                      "[\"1H\", \"1T\", \"2T\"]",
                      "[\"1h\", \"1T\", \"2T\"]"),
              RuleText.of(FindingCode.SUSPECT_TEXT)
                  .says(
                      "Signs that do not show, or that turn the order of others, can make two names look the same. They are allowed, and told.")
                  .example(
                      "willowbank-teaching",
                      "Willowbank teaching board",
                      "Willowbank teaching\\u200b board")));

  private FileTexts() {}
}
