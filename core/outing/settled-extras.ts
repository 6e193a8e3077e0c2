import type { CertificationOf } from '#core/card/certification.ts'
import type { FormatName } from '#core/formats/format-names.ts'
import { fieldSizeMethods, individualStrokePlayAllowance } from '#core/handicap/allowance.ts'
import { figuresGiven, territoriesNotCovered } from '#core/handicap/coverage.ts'
import { formatDecimal } from '#core/values/decimal.ts'
import { certificationOfBall } from './certification-of.ts'
import type { AdjustedScore } from './handicapping.ts'
import { handicappingOf } from './handicapping-of.ts'
import type { Ball, Outing } from './outing.ts'
import type {
  SettledAdjustedScore,
  SettledAllowanceAdvice,
  SettledCertification,
  SettledCertifier,
  SettledCoverage,
  SettledHandicapping,
} from './settle-output-extras.ts'
import { settledHole } from './settled-side.ts'
import { formatTenths } from './tenths.ts'

export function settledCertification(outing: Outing, ball: Ball): SettledCertification {
  const { holes, isComplete, isCertified, player, marker } = certificationOfBall(outing, ball)
  return {
    ball: ball.id,
    markedBy: outing.notes.markers.get(ball.id) ?? null,
    isComplete,
    isCertified,
    player: certifier(player),
    marker: certifier(marker),
    holes: holes.map(({ key, ...hole }) => ({ ...settledHole(key), ...hole })),
  }
}

const certifier = ({ hasCertified, stands }: CertificationOf): SettledCertifier => ({ hasCertified, stands })

export function settledHandicapping(outing: Outing, ball: Ball): SettledHandicapping {
  const { holes, scores, gaps, ...head } = handicappingOf(outing, ball)
  return {
    ...head,
    holes: holes.map(({ key, par, strokes, most, score }) => ({ ...settledHole(key), par, strokes, most, score })),
    scores: scores.map(settledScore),
    gaps: gaps.map(({ code, hole }) => ({ code, at: hole === null ? null : settledHole(hole) })),
  }
}

const settledScore = ({
  notPlayed,
  total,
  holesLeftOut,
  differential: found,
}: AdjustedScore): SettledAdjustedScore => ({
  notPlayed,
  adjustedGross: total,
  holesLeftOut,
  differential: found && {
    holes: found.holes,
    unrounded: formatDecimal(found.unrounded),
    rounded: found.tenths === null ? null : formatTenths(found.tenths),
  },
})

/** Individual stroke play with a handicap, in every form. */
const individualStrokePlay: ReadonlySet<FormatName> = new Set([
  'stroke-play-net',
  'maximum-score-net',
  'stableford',
  'par-bogey',
])

/** Advice for the games whose allowance may follow the size of the field. */
export const allowanceAdvice = ({ games }: Outing): SettledAllowanceAdvice[] =>
  games.flatMap(({ id, format, sides }) => {
    if (format === null || sides === null || !individualStrokePlay.has(format)) return []
    const percents = fieldSizeMethods.map(method => ({
      method,
      percent: individualStrokePlayAllowance(method, sides.length),
    }))
    return [{ game: id, fieldSize: sides.length, percents }]
  })

export const coverage: SettledCoverage = { territoriesNotCovered, figuresGiven }
