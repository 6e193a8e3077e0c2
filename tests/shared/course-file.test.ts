import { describe, expect, test } from 'vitest'
import type { PlainCourse } from '#core/outing/plain-file.ts'
import type { TeeId } from '#core/values/ids.ts'
import { courseFileOf, parseCourseFile } from '#shared/course-file.ts'
import { quillmoor } from '#tests/kit/quillmoor.ts'

const course: PlainCourse = {
  name: quillmoor.name,
  holes: quillmoor.pars.map((par, place) => ({ par, index: quillmoor.indexes[place] ?? 1 })),
  tees: [
    {
      id: 'white' as TeeId,
      name: 'White',
      ratings: { courseRating: 71.4, slope: 128, par: 72 },
      lengths: { unit: 'yards', byHole: quillmoor.yards },
    },
  ],
}

const textOf = (value: unknown): string => JSON.stringify(value)
const [tee] = course.tees ?? []

describe('a course file', () => {
  test('gives back the course that was put in, two holes with one stroke index too', () => {
    const misprinted = {
      ...course,
      holes: course.holes.map((hole, place) => (place < 2 ? { ...hole, index: 7 } : hole)),
    }
    for (const each of [course, misprinted, { holes: course.holes.slice(0, 9) }]) {
      expect(parseCourseFile(textOf(courseFileOf(each)))).toEqual({ ok: true, value: each })
    }
  })

  test.each([
    ['no JSON', '{', '', 'not json'],
    ['an outing', textOf({ sixThrees: 'outing', version: 1 }), 'sixThrees', 'not a course file'],
    ['nothing', 'null', 'sixThrees', 'not a course file'],
    ['a newer one', textOf({ ...courseFileOf(course), version: 2 }), 'version', 'newer version'],
    ['a field too many', textOf({ ...courseFileOf(course), more: 1 }), 'more', 'unknown field'],
    [
      'a hole too few',
      textOf(courseFileOf({ ...course, holes: course.holes.slice(1) })),
      'course.holes',
      'wrong number of holes',
    ],
    [
      'a par of 9',
      textOf(courseFileOf({ holes: course.holes.map(hole => ({ ...hole, par: 9 })) })),
      'course.holes[0].par',
      'wrong value',
    ],
    [
      'a tee twice',
      textOf(courseFileOf({ ...course, tees: [tee, tee] as NonNullable<PlainCourse['tees']> })),
      'course.tees[1].id',
      'id twice',
    ],
  ])('says what is wrong with %s', (_, text, path, code) => {
    const parsed = parseCourseFile(text)
    expect(parsed.ok ? [] : parsed.error).toContainEqual({ path, code })
  })
})
