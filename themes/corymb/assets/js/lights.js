// Shows the drawn picture and the colour band as they look in another light. The light stands in the
// page's address (?light=candle). The picture's colours in it are asked for when it is chosen, and
// not before; the drawing itself is the one that the browser has.
import { onPage } from "./page.js";
import { _ } from "./words.js";

let asked = 0;

function remember(light) {
  const address = new URL(location.href);
  if (light) address.searchParams.set("light", light);
  else address.searchParams.delete("light");
  if (address.href !== location.href) history.replaceState(history.state, "", address);
}

async function fetched(href) {
  const answer = await fetch(href);
  if (!answer.ok) throw new Error(`${answer.status} for ${href}`);
  return answer.text();
}

// The drawing in other colours, as an address that holds it whole.
async function repainted(drawing, table, light) {
  const [svg, colours] = await Promise.all([fetched(drawing), fetched(table)]);
  const seen = JSON.parse(colours)[light];
  const painted = svg.replace(
    /(fill|stroke|color)="(#[0-9a-f]{6})"/g,
    (whole, what, colour) => `${what}="${seen[colour]}"`,
  );
  return `data:image/svg+xml,${encodeURIComponent(painted)}`;
}

onPage((main) => {
  const part = main.querySelector("[data-lights]");
  if (!part) return;
  const [noon, ...others] = part.querySelectorAll("input");
  const said = part.querySelector("[data-lights-said]");
  const [photo, drawn] = ["photo", "drawn"].map((kind) => main.querySelector(`#show-${kind}`));
  const picture = main.querySelector(".showing .drawn");
  const patches = main.querySelectorAll(".band-colours rect");
  const { alt, src: drawing } = picture;
  let shown = noon;

  function put(light) {
    const colours = light.dataset.colours.split(" ");
    patches.forEach((patch, at) => patch.setAttribute("fill", colours[at]));
    const { words } = light.dataset;
    picture.alt = words ? `${alt} ${words}` : alt;
    said.textContent = words ? `${words} ${said.dataset.note}` : "";
    light.checked = true;
    shown = light;
  }

  async function choose(light) {
    const mine = ++asked;
    const late = () => mine !== asked || !part.isConnected; // another was chosen in the meantime
    if (drawn && light !== noon) drawn.checked = true;
    try {
      const src = light === noon ? drawing : await repainted(drawing, part.dataset.lights, light.value);
      if (late()) return;
      if (src !== picture.src) picture.src = src;
      put(light);
      remember(light === noon ? "" : light.value);
    } catch {
      if (late()) return;
      shown.checked = true;
      said.textContent = _("It can’t be fetched just now. Try again with a signal.");
    }
  }

  for (const light of [noon, ...others]) light.addEventListener("change", () => choose(light));
  // A photo was taken in a light of its own.
  photo?.addEventListener("change", () => choose(noon));
  delete part.dataset.waiting;
  const wanted = new URLSearchParams(location.search).get("light");
  const first = others.find((light) => light.value === wanted);
  if (first) choose(first);
});
