import { readFileSync } from 'node:fs'

const css = readFileSync(new URL('../../../client/look/tokens.css', import.meta.url), 'utf8')

/** The colours of each look by their names: the day, the night that the phone prefers, the night by the button. */
export const looksOfTokens = (): readonly Readonly<Record<string, string>>[] =>
  css
    .split('}')
    .map(block =>
      Object.fromEntries([...block.matchAll(/--([a-z-]+): (#[0-9a-f]{6})/g)].map(([, name, hex]) => [name, hex])),
    )
    .filter(look => 'paper' in look) as Record<string, string>[]
