import { readdirSync } from 'node:fs'
import { fileURLToPath, pathToFileURL } from 'node:url'
import type { Word, Words } from '#client/words/word.ts'

const folder = fileURLToPath(new URL('../../client/words/', import.meta.url))

/** A text that a screen shows, with the file of the catalogue that holds it. */
export interface ListedWord extends Word {
  readonly file: string
  readonly key: string
}

/** Every text of the catalogue, file by file, in the order in which it stands there. */
export async function allWords(): Promise<readonly ListedWord[]> {
  const files = readdirSync(folder)
    .filter(file => file.endsWith('-words.ts'))
    .sort()
  return (await Promise.all(files.map(wordsOf))).flat()
}

async function wordsOf(file: string): Promise<readonly ListedWord[]> {
  const parts: Readonly<Record<string, Words>> = await import(pathToFileURL(`${folder}${file}`).href)
  return Object.values(parts).flatMap(words => Object.entries(words).map(([key, word]) => ({ file, key, ...word })))
}
