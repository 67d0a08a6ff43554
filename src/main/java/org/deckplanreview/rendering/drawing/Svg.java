package org.deckplanreview.rendering.drawing;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes SVG with presentation attributes alone. Whatever is text is escaped by the XML writer. */
final class Svg {

    private static final int DECIMALS = 3;

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter xml;

    /** What can be written to a string cannot fail. */
    private interface Step {
        void run() throws XMLStreamException;
    }

    Svg() {
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
        } catch (XMLStreamException e) {
            throw new IllegalStateException("A string can be written to", e);
        }
    }

    /** Opens an element; attributes in pairs of name and value. */
    Svg open(String name, String... attributes) {
        write(() -> {
            xml.writeCharacters("\n");
            xml.writeStartElement(name);
            if (name.equals("svg")) {
                xml.writeDefaultNamespace("http://www.w3.org/2000/svg");
            }
            attributes(attributes);
        });
        return this;
    }

    Svg close() {
        write(xml::writeEndElement);
        return this;
    }

    Svg empty(String name, String... attributes) {
        write(() -> {
            xml.writeCharacters("\n");
            xml.writeEmptyElement(name);
            attributes(attributes);
        });
        return this;
    }

    /** An element that holds text alone. */
    Svg text(String name, String content, String... attributes) {
        open(name, attributes);
        write(() -> xml.writeCharacters(content));
        return close();
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            if (!attributes[i + 1].isEmpty()) {
                xml.writeAttribute(attributes[i], attributes[i + 1]);
            }
        }
    }

    private static void write(Step step) {
        try {
            step.run();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("A string can be written to", e);
        }
    }

    String document() {
        write(xml::flush);
        return text.toString().strip() + "\n";
    }

    /** A number with at most three decimals. */
    static String number(double value) {
        BigDecimal n =
                new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return n.signum() == 0 ? "0" : n.toPlainString();
    }
}
