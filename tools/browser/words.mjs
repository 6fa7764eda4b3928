// The app's words as its own files have them, so that a test finds a button by what stands on it in either language.

import { readFile } from 'node:fs/promises';

/** Every message of one line of a file of words, by key. */
async function messages(language, name) {
  const text = await readFile(new URL(`../../crates/words/locales/${language}/${name}.ftl`, import.meta.url), 'utf8');
  const found = new Map();
  for (const line of text.split('\n')) {
    const message = /^([a-z0-9_-]+) = (.+)$/i.exec(line);
    if (message) found.set(message[1], message[2]);
  }
  return found;
}

/** A look-up of labels in a language. */
export async function wordsOf(language) {
  const all = new Map();
  for (const name of ['yard', 'catch', 'common', 'likely', 'symptoms', 'controller']) {
    for (const [key, text] of await messages(language, name)) all.set(key, text);
  }
  return (key) => {
    const text = all.get(key);
    if (text === undefined) throw new Error(`no words for ${key} in ${language}`);
    return text;
  };
}
