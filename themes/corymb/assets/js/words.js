// A sentence in the site's language: `_("Copied")`, `_("Week {week}", { week })`, and by number
// `plural("{n} left", "{n} left", n, { n })`. What varies stands in named braces.
import { LANGUAGE, MESSAGES } from "./messages.js";

export { LANGUAGE };

const rules = new Intl.PluralRules(LANGUAGE);

function filled(sentence, values) {
  return sentence.replace(/\{(\w+)\}/g, (braced, name) => String(values[name] ?? braced));
}

export function _(sentence, values = {}) {
  return filled(MESSAGES[sentence] ?? sentence, values);
}

// A sentence that depends on a number has a form for each of the language's plural categories.
export function plural(one, many, number, values = {}) {
  const forms = MESSAGES[one] ?? { one, other: many };
  return filled(forms[rules.select(number)] ?? forms.other, values);
}
