import { emptyLog, foldOps } from '#core/log/fold.ts'
import type { Outing } from '#core/outing/outing.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import type { PlainCourse, PlainTee } from '#core/outing/plain-file.ts'
import { plainOf } from '#core/outing/plain-of.ts'
import type { Fault, Result } from '#core/values/result.ts'
import { parseCourseFile } from '#shared/course-file.ts'
import { isKnownValue } from '#shared/facts.ts'
import { parseOutingFile } from '#shared/outing-file.ts'
import type { Draft, TeeDraft } from './draft.ts'

/** The course in a course file, or in an outing file of either form; null where it is not whole. */
export function courseOfFile(text: string): Result<PlainCourse | null, readonly Fault[]> {
  const own = parseCourseFile(text)
  if (own.ok || own.error.every(({ code }) => code !== 'not a course file' && code !== 'too large')) return own
  const file = parseOutingFile(text)
  if (!file.ok) return file
  if (file.value.form === 'plain') return { ok: true, value: file.value.course }
  return { ok: true, value: courseOfOuting(outingOf(foldOps(emptyLog, file.value.ops), isKnownValue)) }
}

export const courseOfOuting = (outing: Outing): PlainCourse | null => plainOf(outing)?.course ?? null

/** The draft with this course in its fields, to be looked over. */
export function withCourse(draft: Draft, course: PlainCourse, from: string): Draft {
  const length = course.holes.length < 18 ? 9 : draft.length
  const holes = draft.holes.map((hole, place) => {
    const taken = course.holes[place]
    return taken ? { par: taken.par, index: String(taken.index) } : hole
  })
  const par = holes.slice(0, length).reduce((sum, hole) => sum + hole.par, 0)
  const tees = (course.tees ?? []).map(tee => teeDraft(tee, length, par))
  const { sketches } = course
  return { ...draft, courseName: course.name ?? '', courseFrom: from, length, holes, tees, sketches, startHole: 1 }
}

/** A tee without ratings of these holes keeps its name and lengths. */
function teeDraft(tee: PlainTee, length: 9 | 18, par: number): TeeDraft {
  const ratings = length === 9 ? tee.frontRatings : tee.ratings
  return {
    id: tee.id,
    name: tee.name,
    courseRating: ratings ? String(ratings.courseRating) : '',
    slope: ratings ? String(ratings.slope) : '',
    par: String(ratings?.par ?? par),
    lengths: tee.lengths?.byHole.map(String) ?? [],
    unit: tee.lengths?.unit ?? 'yards',
    kept: tee,
  }
}
