import { must } from '#core/values/assert.ts'
import { isolated } from './isolated.ts'
import type { Word, Words } from './word.ts'

/** Says the texts of one catalogue. */
export function createSpeaker<const Catalogue extends Words>(catalogue: Catalogue) {
  type Key = keyof Catalogue & string

  const isWordKey = (key: string): key is Key => Object.hasOwn(catalogue, key)

  /** The text under a key, with its places filled in. */
  function say(key: Key, fill: Readonly<Record<string, string | number>> = {}): string {
    const { text } = must<Word>(catalogue[key], key)
    return text.replaceAll(/\{([a-z]+)\}/g, (place, name: string) => isolated(String(fill[name] ?? place)))
  }

  /** The text under a key made from a code, or another text where the code is not known here. */
  function sayCode(prefix: string, code: string, otherwise: Key, fill: Readonly<Record<string, string>> = {}): string {
    const key = `${prefix}${code}`
    return say(isWordKey(key) ? key : otherwise, { ...fill, code })
  }

  return { say, sayCode, isWordKey }
}
