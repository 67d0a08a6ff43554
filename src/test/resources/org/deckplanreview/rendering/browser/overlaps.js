// Texts of each drawing that cover one another. A text covers the ink of its letters, turned as it is turned, in units of the drawing.
const TOUCHING = 0.2;
const MEASURED_PX = 100;
const pen = document.createElement('canvas').getContext('2d');

function corners(text, svg) {
  const style = getComputedStyle(text);
  const scale = parseFloat(style.fontSize) / MEASURED_PX;
  pen.font = `${style.fontWeight} ${MEASURED_PX}px ${style.fontFamily}`;
  const ink = pen.measureText(text.textContent);
  const base = parseFloat(text.getAttribute('y'));
  const top = base - ink.actualBoundingBoxAscent * scale;
  const bottom = base + ink.actualBoundingBoxDescent * scale;
  const { x: left, width } = text.getBBox();
  const turn = svg.getScreenCTM().inverse().multiply(text.getScreenCTM());
  return [[left, top], [left + width, top], [left + width, bottom], [left, bottom]]
    .map(([x, y]) => new DOMPoint(x, y).matrixTransform(turn));
}

function sides(box) {
  return [[box[0], box[1]], [box[1], box[2]]].map(([from, to]) => {
    const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
    return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  });
}

function reach(box, axis) {
  const along = box.map(p => p.x * axis.x + p.y * axis.y);
  return [Math.min(...along), Math.max(...along)];
}

// Convex shapes are apart where a line along a side of one of them parts them.
function cover(a, b) {
  return [...sides(a), ...sides(b)].every(axis => {
    const [a0, a1] = reach(a, axis);
    const [b0, b1] = reach(b, axis);
    return a1 - b0 > TOUCHING && b1 - a0 > TOUCHING;
  });
}

const found = [];
for (const svg of document.querySelectorAll('svg')) {
  const texts = [...svg.querySelectorAll('text')];
  const boxes = texts.map(text => corners(text, svg));
  for (let i = 0; i < texts.length; i++) {
    for (let j = i + 1; j < texts.length; j++) {
      if (cover(boxes[i], boxes[j])) {
        found.push(`"${texts[i].textContent}" over "${texts[j].textContent}"`);
      }
    }
  }
}
return found;
