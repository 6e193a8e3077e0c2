import type { PlainCourse } from '#core/outing/plain-file.ts'
import { courseFileOf } from '#shared/course-file.ts'

/** A course as a file for a friend. */
export const courseText = (course: PlainCourse): string => JSON.stringify(courseFileOf(course))
