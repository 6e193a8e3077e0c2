import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { settingsOf } from '#client/screens/games/format-settings.ts'
import { countbackHoles } from '#core/card/countback-methods.ts'
import { formatNames } from '#core/formats/format-names.ts'
import { type GameSetting, mixedTeesMethods, pressMethods, tieSchemes } from '#core/formats/game-methods.ts'
import { shortTeamMethods } from '#core/formats/ghost.ts'
import { skinsLeftMethods, skinsMethods } from '#core/formats/skins-methods.ts'
import { notPlayedMethods } from '#core/handicap/adjusted-gross.ts'
import { fieldSizeMethods } from '#core/handicap/allowance.ts'
import { courseHandicapMethods, halfIndexMethods } from '#core/handicap/course-handicap.ts'
import { exceptionalMethods } from '#core/handicap/exceptional-score.ts'
import { foursomesMatchMethods } from '#core/handicap/foursomes-match-strokes.ts'
import { firstIndexMethods } from '#core/handicap/handicap-index.ts'
import { matchStrokesMethods } from '#core/handicap/match-strokes.ts'
import { allowanceRoundings } from '#core/handicap/playing-handicap.ts'
import { defaultGameMethods } from '#core/outing/game-settings.ts'

const core = fileURLToPath(new URL('../../core/', import.meta.url))
const readme = readFileSync(join(core, 'README.md'), 'utf8')
const named = new Set([...readme.matchAll(/`([\w/-]+\.ts)`/g)].map(([, path]) => path))

const files = readdirSync(core, { recursive: true, withFileTypes: true })
  .filter(entry => entry.isFile() && entry.name.endsWith('.ts'))
  .map(entry => relative(core, join(entry.parentPath, entry.name)))

/** A doc comment that names where a rule is from. */
const sourced = /\*[^/]*(?:\bSource\b|[Cc]ommon practice)/

describe('the list of rules in core', () => {
  it('names files that exist', () => {
    expect([...named].filter(path => !existsSync(join(core, path ?? '')))).toEqual([])
  })

  it('has every file that names a source', () => {
    const withSource = files.filter(path => sourced.test(readFileSync(join(core, path), 'utf8')))
    expect(withSource.length).toBeGreaterThan(50)
    expect(withSource.filter(path => !named.has(path))).toEqual([])
  })
})

const methods = {
  rounding: allowanceRoundings,
  courseHandicap: courseHandicapMethods,
  nineHoleIndex: halfIndexMethods,
  matchStrokes: matchStrokesMethods,
  sideStrokes: foursomesMatchMethods,
  mixedTees: mixedTeesMethods,
  skins: skinsMethods,
  skinsLeft: skinsLeftMethods,
  shortTeam: shortTeamMethods,
  presses: pressMethods,
} as const satisfies Partial<Record<GameSetting, readonly string[]>>

describe('where two methods exist', () => {
  const rows = [...readme.matchAll(/^\| `(\w+)`:[^|]*\|([^|]*)\|/gm)].map(([, setting = '', cell = '']) => ({
    setting: setting as keyof typeof methods,
    listed: [...cell.matchAll(/`([\w-]+)`/g)].map(([, method = '']) => method),
  }))

  it('the list has every choice of a game', () => {
    expect(rows.map(({ setting }) => setting).sort()).toEqual(Object.keys(methods).sort())
  })

  it.each(rows)('$setting: every method, and first the one that new games propose', ({ setting, listed }) => {
    expect([...listed].sort()).toEqual([...methods[setting]].sort())
    const asking = formatNames.filter(format => settingsOf(format).some(each => each === setting))
    expect(asking.length).toBeGreaterThan(0)
    for (const format of asking) expect([format, defaultGameMethods(format)[setting]]).toEqual([format, listed[0]])
  })

  it('the list has every method that no game chooses', () => {
    const all = [notPlayedMethods, fieldSizeMethods, firstIndexMethods, exceptionalMethods, countbackHoles, tieSchemes]
    expect(all.flat().filter(method => !readme.includes(`\`${method}\``))).toEqual([])
  })
})
