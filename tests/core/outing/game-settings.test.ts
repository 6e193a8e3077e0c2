import { describe, expect, it } from 'vitest'
import { formatNames } from '#core/formats/format-names.ts'
import { missingMeans, noMethods } from '#core/formats/game-methods.ts'
import { defaultGameMethods, gameFacts, methodsMeant } from '#core/outing/game-settings.ts'
import type { GameId } from '#core/values/ids.ts'

const keysOf = (format: (typeof formatNames)[number], methods = defaultGameMethods(format)) =>
  gameFacts({ id: 'g' as GameId, group: null, format, sides: [], methods }).map(({ key }) => key)

describe('settings that came after games had been stored', () => {
  it.each(formatNames)('%s: a new game writes none that says what a missing one means', format => {
    for (const name of ['course-handicap', 'skins-left', 'short-team']) {
      expect(keysOf(format)).not.toContain(`game/g/${name}`)
    }
    expect(keysOf(format)).toContain('game/g/rounding')
  })

  it('are written where they say otherwise', () => {
    const methods = { ...defaultGameMethods('skins'), skinsLeft: 'play-on' as const }
    expect(keysOf('skins', methods)).toContain('game/g/skins-left')
  })

  it('are named with their meaning where the format has them', () => {
    expect(methodsMeant('skins', noMethods)).toMatchObject({ ...missingMeans, shortTeam: null })
    expect(methodsMeant('waltz', noMethods)).toMatchObject({ ...missingMeans, skinsLeft: null })
    const said = { ...noMethods, courseHandicap: 'without-rating-minus-par' as const }
    expect(methodsMeant('stableford', said).courseHandicap).toBe('without-rating-minus-par')
  })
})
