import type { Page } from "playwright-core";

/**
 * Faults of reading in the pictures of an open page: text under 11 px as it shows on the screen, two texts of one picture
 * that overlap by more than 1 px both ways, and anything drawn that reaches outside its picture by more than 1 px.
 */
export async function textFaults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    document.querySelectorAll("svg").forEach((svg, index) => {
      // One that is not drawn at this width has no size.
      if (svg.getClientRects().length === 0) return;
      const name = `picture ${index + 1} (${svg.querySelector("title")?.textContent})`;
      const frame = svg.getBoundingClientRect();
      const shapes = [...svg.querySelectorAll<SVGGraphicsElement>("text, path, rect, circle")];
      // No named function in here: the browser lacks the helper with which a bundler would keep its name.
      const boxes = shapes
        .filter((element) => element.closest("defs") === null)
        .map((element) => {
          const box = element.getBBox();
          const matrix = element.getScreenCTM()!;
          const corner = new DOMPoint(box.x, box.y).matrixTransform(matrix);
          const end = new DOMPoint(box.x + box.width, box.y + box.height).matrixTransform(matrix);
          // Upright text too: a turned box has its corners the other way round.
          const [left, right] = [Math.min(corner.x, end.x), Math.max(corner.x, end.x)];
          const [top, bottom] = [Math.min(corner.y, end.y), Math.max(corner.y, end.y)];
          return { element, left, top, right, bottom, scale: Math.hypot(matrix.a, matrix.b) };
        });
      for (const box of boxes) {
        const out = Math.max(
          frame.left - box.left,
          box.right - frame.right,
          frame.top - box.top,
          box.bottom - frame.bottom,
        );
        if (out > 1)
          faults.push(
            `${name}: ${box.element.tagName} "${box.element.textContent}" is cut off by ${out.toFixed(1)} px`,
          );
      }
      const texts = boxes.filter((box) => box.element.tagName === "text");
      for (const { element, scale } of texts) {
        const size = Number.parseFloat(getComputedStyle(element).fontSize) * scale;
        if (size < 10.99) faults.push(`${name}: "${element.textContent}" is ${size.toFixed(1)} px`);
      }
      texts.forEach((a, i) => {
        for (const b of texts.slice(i + 1)) {
          const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
          const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
          if (across > 1 && down > 1)
            faults.push(`${name}: "${a.element.textContent}" overlaps "${b.element.textContent}"`);
        }
      });
    });
    document
      .querySelectorAll("p, td, th, li, dd, dt, figcaption, caption, code, span, h1, h2, h3")
      .forEach((element) => {
        const size = Number.parseFloat(getComputedStyle(element).fontSize);
        if (size < 10.99) faults.push(`page: "${element.textContent?.slice(0, 40)}" is ${size.toFixed(1)} px`);
      });
    return faults;
  });
}
