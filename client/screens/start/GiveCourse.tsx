import { useEffect, useState } from 'react'
import type { PlainCourse } from '#core/outing/plain-file.ts'
import { courseCodes, courseText } from '../../state/course-giving.ts'
import { say } from '../../words/say.ts'
import { CodeTurner } from '../share/CodeTurner.tsx'

/** A course for a friend's phone, with no signal: as codes, or as a file. */
export function GiveCourse({ course }: { readonly course: PlainCourse }) {
  const [isShown, setShown] = useState(false)
  return (
    <section className="section" aria-label={say('course-give')}>
      <h2>{say('course-give')}</h2>
      <p className="quiet">{say('course-give-hint')}</p>
      <div className="pair">
        <button type="button" className="button grow" aria-expanded={isShown} onClick={() => setShown(!isShown)}>
          {say(isShown ? 'course-give-hide' : 'course-give-show')}
        </button>
        <CourseFileLink text={courseText(course)} />
      </div>
      {isShown && <CodesOfCourse text={courseText(course)} />}
    </section>
  )
}

function CourseFileLink({ text }: { readonly text: string }) {
  const [url, setUrl] = useState('')
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([text], { type: 'application/json' }))
    setUrl(made)
    return () => URL.revokeObjectURL(made)
  }, [text])
  return (
    <a className="button grow" href={url} download="course.json">
      {say('course-give-file')}
    </a>
  )
}

function CodesOfCourse({ text }: { readonly text: string }) {
  const [codes, setCodes] = useState<readonly string[] | null>(null)
  useEffect(() => {
    let isWanted = true
    courseCodes(text).then(
      made => isWanted && setCodes(made),
      (reason: unknown) => reportError(reason),
    )
    return () => {
      isWanted = false
    }
  }, [text])
  return codes === null ? <p role="status">{say('working')}</p> : <CodeTurner codes={codes} />
}
