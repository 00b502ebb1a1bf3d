import { expect, test } from "vitest";
import { serverDocument, svgText } from "../../../viz/index.ts";

function element(document: Document, name: string) {
  return document.createElementNS("http://www.w3.org/2000/svg", name);
}

test("svgText escapes text and attributes, sorts attributes and names the name space once", () => {
  const document = serverDocument();
  const svg = element(document, "svg");
  svg.setAttribute("width", "9");
  svg.setAttribute("data-a", "<&\"'>");
  const text = element(document, "text");
  text.textContent = "</script> & \u0000";
  svg.append(text, element(document, "clipPath"));
  expect(svgText(svg)).toBe(
    '<svg xmlns="http://www.w3.org/2000/svg" data-a="&lt;&amp;&quot;&#39;&gt;" width="9"><text>&lt;/script&gt; &amp; \uFFFD</text><clipPath/></svg>',
  );
});
