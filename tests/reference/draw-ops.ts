import * as z from 'zod/mini'
import { roundFrom } from '#core/card/order-of-play.ts'
import { bracketFor, firstRoundPairs } from '#core/outing/draw/bracket.ts'
import { type ShotgunPlace, shotgunPlaces } from '#core/outing/draw/shotgun.ts'
import { formatMinuteOfDay, parseMinuteOfDay, teeTimes } from '#core/outing/draw/tee-times.ts'
import { type Calculations, calculation } from './calculation.ts'
import { hole } from './published-inputs.ts'

const count = z.int().check(z.gte(1), z.lte(999))
const entries = z.int().check(z.gte(1), z.lte(4096))

const minuteOfDay = z.pipe(
  z.string(),
  z.transform((written, context): number => {
    const minute = parseMinuteOfDay(written)
    if (minute !== null) return minute
    context.issues.push({ code: 'custom', input: written })
    return z.NEVER
  }),
)

const shotgun = z.object({ groups: count, double_order: z.array(hole) })

const placesOf = ({ groups, double_order }: z.output<typeof shotgun>): ShotgunPlace[] | null => {
  const places = shotgunPlaces(groups, double_order)
  return places.ok ? places.value : null
}

/** Starts and draws: section i of the published figures. */
export const drawOps: Calculations = [
  [
    'tee_times',
    calculation(
      z.object({ first: minuteOfDay, interval_min: count, groups: count, starter_gap_after: z.nullable(count) }),
      input => ({
        times: teeTimes({
          firstMinute: input.first,
          intervalMinutes: input.interval_min,
          groups: input.groups,
          gapAfterGroups: input.starter_gap_after,
        }).map(formatMinuteOfDay),
      }),
    ),
  ],
  [
    'shotgun_labels',
    calculation(shotgun.check(z.refine(input => placesOf(input) !== null)), input => ({
      labels: (placesOf(input) ?? []).map(place => `${place.hole}${place.letter}`),
    })),
  ],
  [
    'playing_order',
    calculation(z.object({ start_hole: hole }), ({ start_hole }) => ({
      order: roundFrom(start_hole, 18).map(each => each.hole),
    })),
  ],
  [
    'byes',
    calculation(z.object({ entries }), input => {
      const { size, byes } = bracketFor(input.entries)
      return { bracket_size: size, byes }
    }),
  ],
  [
    'first_round_pairs',
    calculation(
      z.object({
        entries: entries.check(
          z.gte(2),
          z.refine(size => bracketFor(size).byes === 0),
        ),
      }),
      input => ({ pairs: firstRoundPairs(input.entries) }),
    ),
  ],
]
