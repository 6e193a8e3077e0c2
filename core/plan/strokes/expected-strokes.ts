import { golfer90Putts, golfer90Strokes } from './golfer-90-strokes.ts'
import { mixed, skillOf } from './skill.ts'
import { type Lie, lies, type PuttTable, type StrokeTable } from './stroke-table.ts'
import { tourPutts, tourStrokes } from './tour-strokes.ts'

/** Strokes to hole out for one golfer: by yard for every lie, by foot on the green, made ready to be looked up. */
export type Strokes = Readonly<Record<Lie, Float64Array>>

const mostYd = 700
const mostFeet = 300
const feetPerYd = 3
const column = { tee: 1, fairway: 2, rough: 3, sand: 4, recovery: 5 } as const

/** The two tables mixed in a straight line, in distance and in skill. Source: derived; see the tables. */
export function strokesFor(handicapIndex: number): Strokes {
  const skill = skillOf(handicapIndex)
  const known = bySkill.get(skill)
  if (known !== undefined) return known
  const made = Object.fromEntries(
    lies.map(lie => {
      const [tour, golfer90] = lie === 'green' ? putts : byYard[lie]
      return [lie, tour.map((strokes, at) => mixed(strokes, golfer90[at] ?? strokes, skill))]
    }),
  ) as Record<Lie, Float64Array>
  if (bySkill.size >= mostKept) bySkill.clear()
  bySkill.set(skill, made)
  return made
}

/** A golfer's tables are asked for with every shot and depend on the skill alone. */
const bySkill = new Map<number, Strokes>()
const mostKept = 64

/** Strokes to hole out from a distance in yards, 0 or more. */
export function strokesAt(strokes: Strokes, lie: Lie, distanceYd: number): number {
  const table = strokes[lie]
  const place = lie === 'green' ? distanceYd * feetPerYd : distanceYd
  const at = Math.min(Math.floor(place), table.length - 2)
  const here = table[at] as number
  return here + (place - at) * ((table[at + 1] as number) - here)
}

export const expectedStrokes = (handicapIndex: number, lie: Lie, distanceYd: number): number =>
  strokesAt(strokesFor(handicapIndex), lie, distanceYd)

/** A line through points (place, value) ascending; beyond either end it goes on as it began or ended. */
function lineThrough(points: readonly (readonly [number, number])[], most: number): Float64Array {
  const values = new Float64Array(most + 1)
  let at = 0
  for (let place = 0; place <= most; place++) {
    while (at < points.length - 2 && place >= (points[at + 1]?.[0] ?? most)) at++
    const [from, low] = points[at] ?? [0, 0]
    const [to, high] = points[at + 1] ?? [1, 0]
    values[place] = low + ((place - from) / (to - from)) * (high - low)
  }
  return values
}

function lieByYard(table: StrokeTable, lie: keyof typeof column): Float64Array {
  const points = table.rows.flatMap((row): [number, number][] => {
    const strokes = row[column[lie]]
    return strokes === null ? [] : [[row[0], strokes]]
  })
  return lineThrough(points, mostYd)
}

const puttsByFoot = ({ thousandthsByFoot }: PuttTable): Float64Array =>
  lineThrough([[0, 1], ...thousandthsByFoot.map((putts, at): [number, number] => [at + 1, putts / 1000])], mostFeet)

const bothOf = <Table>(tour: Table, golfer90: Table, of: (table: Table) => Float64Array) =>
  [of(tour), of(golfer90)] as const

const putts = bothOf(tourPutts, golfer90Putts, puttsByFoot)
const byYard = {
  tee: bothOf(tourStrokes, golfer90Strokes, table => lieByYard(table, 'tee')),
  fairway: bothOf(tourStrokes, golfer90Strokes, table => lieByYard(table, 'fairway')),
  rough: bothOf(tourStrokes, golfer90Strokes, table => lieByYard(table, 'rough')),
  sand: bothOf(tourStrokes, golfer90Strokes, table => lieByYard(table, 'sand')),
  recovery: bothOf(tourStrokes, golfer90Strokes, table => lieByYard(table, 'recovery')),
}
