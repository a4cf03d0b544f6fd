package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** An element of a page while it is being made: attributes and children in order. */
final class Element {
  private final String name;
  private final Map<String, String> attributes = new LinkedHashMap<>();
  private final List<Object> children = new ArrayList<>();

  private Element(String name) {
    this.name = name;
  }

  static Element of(String name) {
    return new Element(name);
  }

  Element attr(String key, String value) {
    attributes.put(key, value);
    return this;
  }

  Element attr(String key, double value) {
    return attr(key, number(value));
  }

  Element add(Element child) {
    children.add(child);
    return this;
  }

  Element addAll(List<Element> all) {
    children.addAll(all);
    return this;
  }

  Element text(String text) {
    children.add(text);
    return this;
  }

  /** What a screen reader or a pointer held over the element tells. */
  Element title(String text) {
    return add(of("title").text(text));
  }

  void write(XMLStreamWriter out) throws XMLStreamException {
    boolean nothingInside = name.equals("input");
    if (nothingInside) {
      out.writeEmptyElement(name); // HTML knows no end tag for it
    } else {
      out.writeStartElement(name);
    }
    for (Map.Entry<String, String> a : attributes.entrySet()) {
      out.writeAttribute(a.getKey(), a.getValue());
    }
    for (Object child : children) {
      if (child instanceof Element e) {
        e.write(out);
      } else {
        out.writeCharacters(child.toString());
      }
    }
    if (!nothingInside) {
      out.writeEndElement();
    }
  }

  /** A number with one decimal at most, the same on every machine. */
  static String number(double value) {
    long tenths = Math.round(value * 10);
    long whole = Math.abs(tenths) / 10;
    long part = Math.abs(tenths) % 10;
    return (tenths < 0 ? "-" : "") + whole + (part == 0 ? "" : "." + part);
  }
}
