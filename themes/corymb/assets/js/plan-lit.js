// The plan from above with the numbers of some stems standing out: white on a dark patch, so that it is seen in black
// and white, too. The list beside it says the same for whoever can't see the plan, or has no signal to fetch it.
const NUMBER = /<text[^>]* stroke-width="([\d.]+)"[^>]*>(\d+)<\/text>/g;
const PATCH = 4.5; // times as wide a rim about the number as it has for legibility

function lit(svg, numbers) {
  return svg.replace(NUMBER, (whole, rim, number) => {
    if (!numbers.includes(number)) return whole;
    return whole
      .replace('"normal"', '"bold"')
      .replace(/fill="[^"]*"/, 'fill="#ffffff"')
      .replace(/stroke="[^"]*"/, 'stroke="#000000" stroke-linejoin="round"')
      .replace(/stroke-width="[^"]*"/, `stroke-width="${(PATCH * Number(rim)).toFixed(1)}"`);
  });
}

async function fetched(href) {
  const answer = await fetch(href);
  if (!answer.ok) throw new Error(`${answer.status} for ${href}`);
  return answer.text();
}

// How to light some numbers, given as texts, in the plan that an image shows; none puts it back as it was.
export function lighting(image) {
  const plain = image.src;
  let drawing = null;
  let asked = 0;
  return async (numbers) => {
    asked += 1;
    const mine = asked;
    let src = plain;
    try {
      if (numbers.length) src = `data:image/svg+xml,${encodeURIComponent(lit(await (drawing ??= fetched(plain)), numbers))}`;
    } catch {
      drawing = null;
    }
    if (mine === asked && image.src !== src) image.src = src;
  };
}
