// What the scripts say in the site's language: nothing here, for they are written in English. A site is published
// with its own language's in this place (generator/corymb/site/script_words.py).
export const LANGUAGE = "en-GB";
export const MESSAGES = {};
