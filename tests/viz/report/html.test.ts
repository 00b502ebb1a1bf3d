import { expect, test } from "vitest";
import { escapeHtml, html, trusted, unbroken } from "../../../viz/report/html.ts";

test("every text put in is escaped, in content and in attributes", () => {
  const name = `</script><b a="x" b='y'>&amp;`;
  const escaped = "&lt;/script&gt;&lt;b a=&quot;x&quot; b=&#39;y&#39;&gt;&amp;amp;";
  expect(html`<p title="${name}">${name}</p>`.markup).toBe(`<p title="${escaped}">${escaped}</p>`);
  expect(escapeHtml(name)).toBe(escaped);
});

test("markup put in is kept, lists are joined, numbers are written", () => {
  expect(html`<ul>${[html`<li>${1}</li>`, trusted("<li>&</li>")]}</ul>`.markup).toBe("<ul><li>1</li><li>&</li></ul>");
});

test("an empty text is nothing", () => {
  expect(html`${""}<p>${""}</p>${""}`.markup).toBe("<p></p>");
});

test("a percent sign stays with its number, other words may part", () => {
  expect(unbroken("5 to 7 % (95 %), all %")).toBe("5 to 7\u00A0% (95\u00A0%), all %");
});
