// The minutes of one recipe's pieces, dots, beside what was expected of each, a line. The table below tells the same.
const [WIDE, HIGH, EDGE] = [320, 90, 8];
const SVG = "http://www.w3.org/2000/svg";

function drawn(kind, attributes) {
  const part = document.createElementNS(SVG, kind);
  for (const [name, value] of Object.entries(attributes)) part.setAttribute(name, value);
  return part;
}

export function draw(svg, pieces) {
  const most = Math.max(...pieces.flatMap((piece) => [piece.minutes, piece.expected]));
  const step = (WIDE - 2 * EDGE) / Math.max(pieces.length - 1, 1);
  const x = (at) => (EDGE + at * step).toFixed(1);
  const y = (minutes) => (HIGH - EDGE - (minutes / most) * (HIGH - 2 * EDGE)).toFixed(1);
  const points = pieces.map((piece, at) => `${x(at)},${y(piece.expected)}`).join(" ");
  const line = drawn("polyline", { points, fill: "none", stroke: "currentColor", "stroke-width": 1 });
  const dots = pieces.map((piece, at) =>
    drawn("circle", { cx: x(at), cy: y(piece.minutes), r: 4, fill: "currentColor" }));
  svg.replaceChildren(line, ...dots);
  svg.toggleAttribute("hidden", pieces.length < 2);
}
