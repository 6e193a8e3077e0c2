import * as z from 'zod/mini'
import { countbackHoles, countbackMethods } from '#core/card/countback-methods.ts'
import { formatNames } from '#core/formats/format-names.ts'
import { tieEnds } from '#core/formats/game-methods.ts'
import { gameGaps, holeNoteCodes, matchEndings, matchHoleReasons, voidReasons } from '#core/formats/game-result.ts'
import { partNames } from '#core/formats/parts-result.ts'
import { shareHoleKinds } from '#core/formats/shares-result.ts'
import type { SettledGame } from '#core/outing/settle-output-games.ts'
import { gameMethods } from './game-methods.ts'
import { proves } from './proof.ts'

const text = z.string()
const whole = z.int()
const texts = z.array(text)
const hole = z.strictObject({ hole: whole, lap: whole })

export const courseHandicap = z.nullable(z.strictObject({ unrounded: text, rounded: whole }))
export const gap = { code: z.enum(gameGaps), ball: z.nullable(text), setting: text }
const winOrLoss = z.literal([1, 0, -1])
const side = z.nullable(z.enum(['A', 'B']))

const sideHole = {
  kind: z.enum(['value', 'none', 'out', 'open', 'two']),
  value: z.nullable(whole),
  values: z.array(z.nullable(whole)),
  balls: texts,
}

const gameHead = {
  id: text,
  group: z.nullable(text),
  format: z.nullable(z.enum(formatNames)),
  sides: z.nullable(z.array(texts)),
  over: z.nullable(z.strictObject({ from: z.nullable(hole), to: z.nullable(hole) })),
  settings: z.strictObject({
    allowance: z.nullable(gameMethods.allowancePercent),
    rounding: z.nullable(gameMethods.rounding),
    courseHandicap: z.nullable(gameMethods.courseHandicap),
    nineHoleIndex: z.nullable(gameMethods.nineHoleIndex),
    matchStrokes: z.nullable(gameMethods.matchStrokes),
    sideStrokes: z.nullable(gameMethods.sideStrokes),
    handicapShares: z.nullable(gameMethods.handicapShares),
    mixedTees: z.nullable(gameMethods.mixedTees),
    countingBalls: z.nullable(gameMethods.countingBalls),
    shortTeam: z.nullable(gameMethods.shortTeam),
    drawnCard: z.nullable(gameMethods.drawnCard),
    maximumScore: z.nullable(gameMethods.maximumScore),
    skins: z.nullable(gameMethods.skins),
    skinsLeft: z.nullable(gameMethods.skinsLeft),
    presses: z.nullable(gameMethods.presses),
    ties: z.nullable(gameMethods.ties),
  }),
}

const strokes = z.array(
  z.strictObject({
    ball: text,
    courseHandicap,
    playingHandicap: whole,
    strokes: whole,
    forTeePar: whole,
    byHole: z.array(z.extend(hole, { strokes: whole })),
  }),
)

const withReason = z.nullable(z.strictObject({ reason: z.nullable(text) }))

const line = z.strictObject({
  side: texts,
  names: texts,
  place: z.nullable(whole),
  isTied: z.boolean(),
  total: z.nullable(whole),
  overPar: z.nullable(whole),
  through: whole,
  isFinished: z.boolean(),
  isNoReturn: z.boolean(),
  penalty: whole,
  withdrawn: withReason,
  disqualified: withReason,
  ghost: z.nullable(whole),
  drawnCard: z.nullable(text),
  drives: z.array(z.strictObject({ ball: text, player: text, count: whole })),
  holes: z.array(
    z.extend(hole, {
      ...sideHole,
      notes: z.array(z.strictObject({ code: z.enum(holeNoteCodes), ball: z.nullable(text) })),
    }),
  ),
  unsettled: z.array(hole),
})

const tie = z.strictObject({
  sides: z.array(texts),
  method: z.enum(countbackMethods),
  holes: z.enum(countbackHoles),
  working: z.array(z.strictObject({ name: text, figures: texts })),
  decidedBy: z.array(z.nullable(text)),
  playOffs: z.array(z.strictObject({ sides: z.array(texts), holes: z.array(hole), figures: z.array(whole) })),
  ifStillTied: z.nullable(z.enum(tieEnds)),
})

const match = z.strictObject({
  sides: z.array(texts),
  names: z.array(texts),
  text,
  line: text,
  leader: side,
  winner: side,
  lead: whole,
  holesPlayed: whole,
  toPlay: whole,
  gaps: whole,
  isDormie: z.boolean(),
  isFinished: z.boolean(),
  decidedBy: z.nullable(z.enum(matchEndings)),
  strokes: z.array(z.strictObject({ ball: text, strokes: whole })),
  holes: z.array(
    z.extend(hole, {
      result: z.nullable(winOrLoss),
      outcomes: z.array(winOrLoss),
      reason: z.nullable(z.enum(matchHoleReasons)),
      by: texts,
      values: z.array(z.strictObject(sideHole)),
    }),
  ),
  unsettled: z.array(hole),
  voids: z.array(z.extend(hole, { by: text, reason: z.enum(voidReasons) })),
})

const shareLine = z.strictObject({
  side: texts,
  names: texts,
  total: text,
  place: z.nullable(whole),
  isTied: z.boolean(),
})

const shares = {
  unit: z.enum(['skins', 'points']),
  holes: z.array(
    z.extend(hole, {
      kind: z.enum(shareHoleKinds),
      pot: z.nullable(whole),
      shares: z.nullable(texts),
      values: z.array(z.strictObject(sideHole)),
    }),
  ),
  lines: z.array(shareLine),
  carried: z.nullable(whole),
  unclaimed: whole,
  sharedOut: whole,
  unsettled: z.array(hole),
  isFinished: z.boolean(),
}

const part = z.strictObject({
  name: z.enum(partNames),
  number: whole,
  holes: z.array(hole),
  by: z.nullable(text),
  match: z.nullable(match),
  up: whole,
  tallies: z.array(z.strictObject({ side: texts, points: whole, mostPossible: whole })),
  shares: z.nullable(texts),
})

const parts = {
  parts: z.array(part),
  lines: z.array(shareLine),
  unsettled: z.array(hole),
  isFinished: z.boolean(),
}

/** A game with its settings and what it comes to. */
export const gameSchema = proves<SettledGame>()(
  z.discriminatedUnion('kind', [
    z.strictObject({ ...gameHead, kind: z.literal('gap'), gaps: z.array(z.strictObject(gap)) }),
    z.strictObject({
      ...gameHead,
      kind: z.literal('total'),
      unit: z.enum(['strokes', 'points', 'holes']),
      strokes,
      lines: z.array(line),
      ties: z.array(tie),
      gaps: z.array(z.strictObject(gap)),
    }),
    z.strictObject({ ...gameHead, kind: z.literal('match'), strokes, matches: z.array(match) }),
    z.strictObject({ ...gameHead, kind: z.literal('shares'), strokes, ...shares, gaps: z.array(z.strictObject(gap)) }),
    z.strictObject({ ...gameHead, kind: z.literal('parts'), strokes, ...parts }),
  ]),
)
