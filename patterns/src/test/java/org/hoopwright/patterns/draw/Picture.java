package org.hoopwright.patterns.draw;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.hoopwright.geometry.Point;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A drawing read back from its text, as any reader of XML sees it. */
final class Picture {

  private final Document document;

  private Picture(Document document) {
    this.document = document;
  }

  /** A text with the room that it takes. */
  record Text(String id, String text, Box box) {}

  static Picture read(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return new Picture(
          factory
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8))));
    } catch (Exception e) {
      throw new AssertionError("Not well-formed: " + e.getMessage(), e);
    }
  }

  List<Element> elements(String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> list = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      list.add((Element) nodes.item(i));
    }
    return list;
  }

  List<String> ids() {
    return elements("*").stream()
        .map(e -> e.getAttribute("id"))
        .filter(id -> !id.isEmpty())
        .toList();
  }

  Element byId(String id) {
    List<Element> found =
        elements("*").stream().filter(e -> e.getAttribute("id").equals(id)).toList();
    if (found.size() != 1) {
      throw new AssertionError(found.size() + " elements have the id " + id);
    }
    return found.get(0);
  }

  /** The page: x, y, width and height of the view box. */
  Box page() {
    double[] v =
        Arrays.stream(document.getDocumentElement().getAttribute("viewBox").split(" ", -1))
            .mapToDouble(Double::parseDouble)
            .toArray();
    return new Box(v[0], v[1], v[0] + v[2], v[1] + v[3]);
  }

  List<Text> texts() {
    List<Text> texts = new ArrayList<>();
    for (Element e : elements("text")) {
      String text = own(e);
      double size = number(e, "font-size");
      double width =
          Words.width(text, size) * (e.getAttribute("class").contains("bold") ? Words.BOLD : 1);
      double x = number(e, "x");
      double left = e.getAttribute("text-anchor").equals("middle") ? x - width / 2 : x;
      double base = number(e, "y");
      texts.add(
          new Text(
              e.getAttribute("id"),
              text,
              new Box(left, base - 0.76 * size, left + width, base + 0.05 * size)));
    }
    return texts;
  }

  /** What is wrong with where texts stand: one over another, or off the page. */
  List<String> textFaults() {
    Box page = page();
    List<Text> texts = texts().stream().filter(t -> !t.text().isEmpty()).toList();
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      Box a = texts.get(i).box();
      if (a.minX() < page.minX()
          || a.maxX() > page.maxX()
          || a.minY() < page.minY()
          || a.maxY() > page.maxY()) {
        faults.add(texts.get(i) + " leaves the page");
      }
      for (int j = i + 1; j < texts.size(); j++) {
        if (a.overlaps(texts.get(j).box())) {
          faults.add(texts.get(i) + " overlaps " + texts.get(j));
        }
      }
    }
    return faults;
  }

  private static String own(Element e) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < e.getChildNodes().getLength(); i++) {
      if (e.getChildNodes().item(i).getNodeType() == org.w3c.dom.Node.TEXT_NODE) {
        text.append(e.getChildNodes().item(i).getNodeValue());
      }
    }
    return text.toString();
  }

  private static double number(Element e, String name) {
    return Double.parseDouble(e.getAttribute(name));
  }

  /** The points of a path made of straight lines. */
  static List<Point> points(Element path) {
    List<Point> points = new ArrayList<>();
    for (String pair : path.getAttribute("d").replace("Z", "").split("[ML]", -1)) {
      if (!pair.isBlank()) {
        String[] xy = pair.trim().split(" ", -1);
        points.add(new Point(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])));
      }
    }
    return points;
  }
}
