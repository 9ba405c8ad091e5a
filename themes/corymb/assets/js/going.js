// An arrangement's picture goes along from its card to its page and back, where a browser can move from page to
// page (base.css says when). Here only its card is found: the large picture has its name in photo.css.
const NAME = "picture";
const CARDS = ".card, .variant, .lead";

const bare = (address) => address.split(/[?#]/)[0];

function pictureOf(address) {
  const links = document.querySelectorAll(".card-name a, .variant h3 a, .lead-said h2 a");
  const link = [...links].find((each) => bare(each.href) === bare(address));
  return link?.closest(CARDS)?.querySelector("img:not(.photo-under)");
}

function named(part, name, transition) {
  part.style.viewTransitionName = name;
  transition.finished.finally(() => {
    part.style.viewTransitionName = "";
  });
}

function move(address, transition) {
  const picture = pictureOf(address);
  if (!picture) return;
  const large = document.querySelectorAll(".showing > :not(figcaption)");
  for (const part of large) named(part, "none", transition); // the name is given once on a page
  named(picture, NAME, transition);
}

addEventListener("pageswap", ({ viewTransition, activation }) => {
  if (viewTransition && activation?.entry.url) move(activation.entry.url, viewTransition);
});

// Coming back to a list: from the picture that was left to its card.
addEventListener("pagereveal", ({ viewTransition }) => {
  const from = self.navigation?.activation?.from?.url;
  if (viewTransition && from && !document.querySelector(".showing")) move(from, viewTransition);
});
