import type { PlainCourse } from '#core/outing/plain-file.ts'
import { courseFileOf } from '#shared/course-file.ts'
import { packText } from '../device/packing.ts'
import { framesOf } from '../sync/hand-over/frames.ts'
import { inventions } from './open-outing.ts'

/** A course as a file for a friend. */
export const courseText = (course: PlainCourse): string => JSON.stringify(courseFileOf(course))

/** The text of a course as codes, to be read in any order. */
export const courseCodes = async (text: string): Promise<readonly string[]> =>
  framesOf(await packText(text), inventions.hash)
