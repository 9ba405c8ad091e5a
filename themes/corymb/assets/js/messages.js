// What the scripts say in the site's language. English is how they are written, so nothing stands here for it;
// a site in another language is published with its own words in this place (generator/corymb/site/script_words.py).
export const LANGUAGE = "en";
export const MESSAGES = {};
