import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { roles } from '#core/outing/facts.ts'
import { factKinds, keyPatterns } from '#core/outing/keys.ts'
import { playerFactKinds, playerKeyPatterns } from '#core/plan/keys.ts'
import { rolesTable } from '#shared/roles.ts'

const file = new URL('../../shared/README.md', import.meta.url)
const [begin, end] = ['<!-- roles -->', '<!-- /roles -->']

const lineOf = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`

/** Kinds with the same rights share a line, for a table of sixty is read by nobody. */
function printedTable(): string {
  const patternsOf = { ...keyPatterns, ...playerKeyPatterns } as Readonly<Record<string, string | readonly string[]>>
  const byRights = new Map<string, string[]>()
  for (const kind of [...factKinds, ...playerFactKinds]) {
    const rights = lineOf(roles.map(role => rolesTable[kind][role]))
    const keys = [patternsOf[kind] ?? []].flat().map(pattern => `\`${pattern}\``)
    byRights.set(rights, [...(byRights.get(rights) ?? []), ...keys])
  }
  const head = [lineOf([...roles, 'keys']), lineOf([...roles, ''].map(() => '---'))]
  const lines = [...byRights].map(([rights, keys]) => `${rights.slice(0, -2)} | ${keys.join(', ')} |`)
  return [begin, '', ...head, ...lines, '', end].join('\n')
}

describe('the roles table', () => {
  it('is printed in the documentation as it is', () => {
    const text = readFileSync(file, 'utf8')
    const printed = text.slice(text.indexOf(begin), text.indexOf(end) + end.length)
    if (process.env.UPDATE_GOLDEN === '1')
      writeFileSync(
        file,
        text.replace(printed, () => printedTable()),
      )
    else expect(printed).toBe(printedTable())
  })
})
