package org.deckplanreview.rendering.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** An SVG document read back. */
record ReadSvg(Document document) {

    static ReadSvg of(Drawing drawing) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            return new ReadSvg(factory.newDocumentBuilder().parse(new InputSource(new StringReader(drawing.svg()))));
        } catch (Exception e) {
            throw new AssertionError(drawing.name() + " is not well-formed", e);
        }
    }

    Element root() {
        return document.getDocumentElement();
    }

    List<Element> all(String name) {
        return elements(document.getElementsByTagNameNS("http://www.w3.org/2000/svg", name));
    }

    List<Element> everything() {
        return elements(document.getElementsByTagName("*"));
    }

    private static List<Element> elements(NodeList nodes) {
        return IntStream.range(0, nodes.getLength())
                .mapToObj(nodes::item)
                .map(Element.class::cast)
                .toList();
    }

    /** Groups that have a class among theirs. */
    List<Element> groups(String cssClass) {
        return all("g").stream()
                .filter(g -> Stream.of(g.getAttribute("class").split(" ")).anyMatch(cssClass::equals))
                .toList();
    }

    static List<Element> within(Element parent, String name) {
        return elements(parent.getElementsByTagName(name));
    }

    /** What is lettered in groups of a class, in order. */
    List<String> lettered(String cssClass) {
        return groups(cssClass).stream()
                .flatMap(g -> within(g, "text").stream())
                .map(Node::getTextContent)
                .toList();
    }

    List<String> lettered() {
        return all("text").stream().map(Node::getTextContent).toList();
    }

    /** What each text covers, by the widths that the drawings reckon with. */
    List<Box> boxes() {
        return all("text").stream().map(ReadSvg::box).toList();
    }

    private static Box box(Element text) {
        double turned = text.hasAttribute("transform")
                ? Double.parseDouble(text.getAttribute("transform").replaceAll("rotate\\((\\S+) .*", "$1"))
                : 0;
        double radians = Math.toRadians(turned);
        return new Shape.Text(
                        text.getTextContent(),
                        new Vec(number(text, "x"), number(text, "y")),
                        new Vec(Math.cos(radians), Math.sin(radians)),
                        number(text, "font-size"),
                        text.getAttribute("text-anchor").equals("middle"),
                        Colour.INK)
                .box();
    }

    static double number(Element e, String attribute) {
        return Double.parseDouble(e.getAttribute(attribute));
    }

    /** Pairs of texts that cover each other. */
    List<String> overlaps() {
        List<Box> boxes = boxes();
        List<String> texts = lettered();
        List<String> found = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                if (boxes.get(i).grownBy(-0.01).overlaps(boxes.get(j))) {
                    found.add(texts.get(i) + " over " + texts.get(j));
                }
            }
        }
        return found;
    }
}
