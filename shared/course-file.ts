import * as z from 'zod/mini'
import type { PlainFault } from '#core/outing/plain-fault.ts'
import { faultsOfPlainCourse } from '#core/outing/plain-faults.ts'
import type { PlainCourse } from '#core/outing/plain-file.ts'
import { err, type Fault, ok, type Result } from '#core/values/result.ts'
import { isTooDeep } from './op.ts'
import { plainCourseSchema } from './plain-outing.ts'
import { proves } from './proof.ts'
import { faultsOfIssues, type SchemaFault } from './schema-faults.ts'

/** A course as a value of its own, for a friend: by file or by codes. */
export interface CourseFile {
  readonly sixThrees: 'course'
  readonly version: 1
  readonly course: PlainCourse
}

export const courseFileSchema = proves<CourseFile>()(
  z.strictObject({ sixThrees: z.literal('course'), version: z.literal(1), course: plainCourseSchema }),
)

/** What can be wrong with a file as a whole. */
export const courseFileFaults = ['not json', 'too large', 'not a course file', 'newer version'] as const
export type CourseFault = Fault<(typeof courseFileFaults)[number]> | SchemaFault | PlainFault

/** Characters; eighteen holes with six tees take about eight thousand. */
const longestFile = 200_000
const deepestFile = 8

export const courseFileOf = (course: PlainCourse): CourseFile => ({ sixThrees: 'course', version: 1, course })

/** Reads a course file; every fault names the path of its field. */
export function parseCourseFile(text: string): Result<PlainCourse, readonly CourseFault[]> {
  if (text.length > longestFile || isTooDeep(text, deepestFile)) return err([{ path: '', code: 'too large' }])
  let value: unknown
  try {
    value = JSON.parse(text.replace(/^\ufeff/, ''))
  } catch {
    return err([{ path: '', code: 'not json' }])
  }
  const { sixThrees, version } = (typeof value === 'object' && value !== null ? value : {}) as Record<string, unknown>
  if (sixThrees !== 'course') return err([{ path: 'sixThrees', code: 'not a course file' }])
  if (version !== 1) return err([{ path: 'version', code: 'newer version' }])
  const parsed = courseFileSchema.safeParse(value)
  if (!parsed.success) return err(faultsOfIssues(parsed.error.issues, value))
  const course: PlainCourse = parsed.data.course
  const faults = faultsOfPlainCourse(course)
  return faults.length > 0 ? err(faults) : ok(course)
}
