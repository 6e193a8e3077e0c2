import { allWords } from './words/all-words.ts'

/** A line each: file, key, tag, text, and of a standard's word its source. Tabs between them, a slash for a new line. */
for (const { file, key, tag, text, source } of await allWords()) {
  console.log([file, key, tag, text.replaceAll('\n', ' / '), ...(source === null ? [] : [source])].join('\t'))
}
