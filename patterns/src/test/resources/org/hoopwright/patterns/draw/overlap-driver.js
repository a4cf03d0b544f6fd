(() => {
  const faults = [];
  let texts = 0;
  for (const svg of document.querySelectorAll("svg")) {
    const page = svg.viewBox.baseVal;
    const boxes = Array.from(svg.querySelectorAll("text"))
      .filter((t) => t.textContent && getComputedStyle(t).display !== "none")
      .map((t) => {
        const size = Number(t.getAttribute("font-size"));
        const base = Number(t.getAttribute("y"));
        const box = t.getBBox();
        // Width as the browser measures it; height of capitals and ascenders.
        return { name: t.id + " " + t.textContent, x: box.x, right: box.x + box.width,
          y: base - 0.76 * size, bottom: base + 0.05 * size };
      });
    texts += boxes.length;
    boxes.forEach((a, i) => {
      if (a.x < page.x || a.right > page.x + page.width || a.y < page.y ||
          a.bottom > page.y + page.height) {
        faults.push(a.name + " leaves the page");
      }
      for (const b of boxes.slice(i + 1)) {
        if (a.x < b.right && b.x < a.right && a.y < b.bottom && b.y < a.bottom) {
          faults.push(a.name + " overlaps " + b.name);
        }
      }
    });
  }
  done("texts=" + texts + "\nfaults=" + faults.join("; "));
})();
