import { type Outcome, outcomes } from '#core/plan/aim/ground.ts'
import type { TenStrokes } from '#core/plan/picture/ten-strokes.ts'
import { formatList } from './figures.ts'
import { say } from './say-any.ts'

const whereText = (outcome: Outcome): string => say(`ten-where-${outcome}`)

/** "6 of 10 in the rough, 4 on the fairway", the most first. */
export function countsText({ counts }: TenStrokes): string {
  const told = outcomes.filter(outcome => counts[outcome] > 0).sort((a, b) => counts[b] - counts[a])
  const texts = told.map((outcome, place) =>
    say(place === 0 ? 'ten-of' : 'ten-more', { n: counts[outcome], where: whereText(outcome) }),
  )
  return say('ten-counts', { list: formatList(texts) })
}

/** What the picture shows, for whoever does not see it: neighbours that end alike are told together. */
export function pictureText({ strokes }: TenStrokes): string {
  const runs: { outcome: Outcome; n: number }[] = []
  for (const { outcome } of strokes) {
    const last = runs.at(-1)
    if (last?.outcome === outcome) last.n++
    else runs.push({ outcome, n: 1 })
  }
  return say('ten-picture', {
    list: formatList(runs.map(({ outcome, n }) => say('ten-more', { n, where: whereText(outcome) }))),
  })
}
