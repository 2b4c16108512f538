package org.neckgeom.drawing;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Reads markup back with the JDK's own parser, so that what is measured is what was written. */
public final class Xml {

    private Xml() {}

    public static Document parsed(String markup) {
        try {
            DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
            builder.setErrorHandler(new Loud());
            return builder.parse(new InputSource(new StringReader(markup)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError("not well formed: " + e.getMessage(), e);
        }
    }

    public static List<Element> all(Document document, String tag) {
        return elements(document.getElementsByTagName(tag));
    }

    public static List<Element> all(Element parent, String tag) {
        return elements(parent.getElementsByTagName(tag));
    }

    /** Elements of a tag whose class list holds a word. */
    public static List<Element> all(Document document, String tag, String look) {
        return all(document, tag).stream()
                .filter(e -> List.of(e.getAttribute("class").split(" ")).contains(look))
                .toList();
    }

    public static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    private static List<Element> elements(NodeList nodes) {
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            all.add((Element) nodes.item(i));
        }
        return all;
    }

    private static final class Loud implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void error(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }
    }
}
