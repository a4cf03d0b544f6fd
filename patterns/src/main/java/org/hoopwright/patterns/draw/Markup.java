package org.hoopwright.patterns.draw;

import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Turns elements into text. All text of a layout passes through here and is escaped. */
final class Markup {

  private Markup() {}

  /** The element and all in it, without a declaration before it. */
  static String of(Element element) {
    StringWriter text = new StringWriter();
    try {
      XMLStreamWriter out = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
      element.write(out);
      out.flush();
      out.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("Writing to memory failed, which is a fault of ours.", e);
    }
    return text.toString();
  }

  /** Names in a sentence: {@code L1, L2 and X3}. */
  static String list(List<?> names) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < names.size(); i++) {
      text.append(i == 0 ? "" : i == names.size() - 1 ? " and " : ", ").append(names.get(i));
    }
    return text.toString();
  }

  /** The text with a capital first letter. */
  static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
