import type { PlainCourse } from '#core/outing/plain-file.ts'
import { courseText } from '../../state/course-giving.ts'
import { say } from '../../words/say-any.ts'
import { GiveText } from '../share/GiveText.tsx'

/** A course for a friend's phone, with no signal. */
export function GiveCourse({ course }: { readonly course: PlainCourse }) {
  return (
    <section className="section" aria-label={say('course-give')}>
      <h2>{say('course-give')}</h2>
      <p className="quiet">{say('course-give-hint')}</p>
      <GiveText
        text={courseText(course)}
        fileTitle={say('course-give-file')}
        fileName="course.json"
        shorter={course.sketches && { text: courseText(withoutSketches(course)), note: say('course-codes-short') }}
      />
    </section>
  )
}

/** The course as it is on a card. */
function withoutSketches({ sketches: _, ...course }: PlainCourse): PlainCourse {
  return course
}
